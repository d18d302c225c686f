namespace MomentArm.Body;

/// <summary>The contacts of a placed body as the balance needs them.</summary>
public static class SupportPoints
{
    /// <summary>Friction of a sole or a palm on a floor (our choice, for shoe on floor).</summary>
    public const double SoleFriction = 0.5;

    /// <summary>Friction of clothing on a mat, a seat or a wall (our choice).</summary>
    public const double ClothFriction = 0.3;

    /// <summary>The weight-bearing contacts of a placed body.</summary>
    /// <param name="model">The body.</param>
    /// <param name="placed">The placed body.</param>
    /// <returns>One point for each contact that may bear weight, in the order of <see cref="PlacedBody.Contacts"/>.</returns>
    public static ContactPoint[] Of(BodyModel model, PlacedBody placed)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(placed);
        var bearing = placed.Contacts.Where(c => c.Contact.BearsWeight).ToArray();
        var resting = RestingWeight.On(model, [.. bearing.Select(c => c.Segment)]);
        return [.. bearing.Select((c, i) => new ContactPoint(c.Segment, c.Point, c.Normal, Friction(model, c), resting[i]))];
    }

    private static double Friction(BodyModel model, PlacedContact contact) =>
        model.Segments[contact.Segment].Kind is SegmentKind.Foot or SegmentKind.Toes or SegmentKind.Hand ? SoleFriction : ClothFriction;
}
