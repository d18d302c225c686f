using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>
/// Whether contacts can hold a body: level ones by the rule of the mass center (<see cref="VerticalSupport"/>); with a wall or a
/// tilted board by forces inside their friction pyramids that balance weight and tipping, the nearest in least squares.
/// </summary>
internal static class Standing
{
    /// <summary>Friction of soles and hands on a surface (our choice, to be replaced where the surface is known).</summary>
    private const double SoleFriction = 0.5;

    /// <summary>Friction of clothing on mat or wall (our choice likewise).</summary>
    private const double ClothFriction = 0.3;

    /// <summary>Friction without end, for asking whether it falls or only slips.</summary>
    private const double Sticky = 50;

    /// <summary>The words of a fault; null when it stands.</summary>
    internal static string? Fault(BodyModel model, PlacedBody settled)
    {
        var state = new BodyState(model);
        state.Update(settled.Pose);
        var massCenter = state.MassCenter();
        var bearing = settled.Contacts.Where(c => c.Contact.BearsWeight).ToArray();
        var level = bearing.Where(c => c.Contact.Surface != SurfaceKind.Wall).ToArray();
        var simple = VerticalSupport.Solve(
            [.. level.Select(c => c.Point)], [], massCenter, model.MassKg * BodyModel.Gravity, state.Rotations[0] * Vec3.UnitX);
        if (bearing.All(c => c.Normal.Y > 1 - 1e-9))
            return simple.Reason;
        if (Miss(model, bearing, massCenter, 1) <= VerticalSupport.Slack)
            return null;
        if (Miss(model, bearing, massCenter, Sticky) > VerticalSupport.Slack)
            return simple.Reason ?? "Falls: no forces at the contacts can hold the body. It needs a hand, another contact, or a change of pose.";
        var off = bearing.Where(c => c.Contact.Surface == SurfaceKind.Board).MaxBy(c => Math.Abs(c.Contact.Tilt));
        return off is not null && Math.Tan(Math.Abs(off.Contact.Tilt)) > Friction(model, off)
            ? FormattableString.Invariant(
                $"Slips off: {off.Contact.Point}{Words.Whose(off.Contact.Limb)} does not hold on a board tilted {Math.Abs(off.Contact.Tilt) * 180 / Math.PI:0} degrees (friction {Friction(model, off):0.0}). It needs a flatter board or another contact.")
            : FormattableString.Invariant(
                $"Slips: the push of the wall or board needs more friction than {SoleFriction:0.0} under soles and hands and {ClothFriction:0.0} under clothing gives. Bring the feet nearer to under the body, or add a contact.");
    }

    private static double Friction(BodyModel model, PlacedContact contact) => model.Segments[contact.Segment].Kind is
        SegmentKind.Foot or SegmentKind.Toes or SegmentKind.Hand ? SoleFriction : ClothFriction;

    /// <summary>
    /// How far from balance the best forces stay, in body weights (forces) and metres (moments per body weight) together.
    /// Edges of the pyramids are the unknowns, none negative; active-set least squares (Lawson and Hanson).
    /// </summary>
    private static double Miss(BodyModel model, PlacedContact[] bearing, Vec3 massCenter, double stickier)
    {
        var edges = new double[4 * bearing.Length][];
        for (var i = 0; i < bearing.Length; i++)
        {
            var contact = bearing[i];
            var mu = stickier > 1 ? stickier : Friction(model, contact);
            var along = (Math.Abs(contact.Normal.Z) < 0.9 ? contact.Normal.Cross(Vec3.UnitZ) : contact.Normal.Cross(Vec3.UnitX)).Normalized();
            var across = contact.Normal.Cross(along);
            for (var edge = 0; edge < 4; edge++)
            {
                var sideways = edge switch { 0 => along, 1 => -along, 2 => across, _ => -across };
                var force = (contact.Normal + mu * sideways).Normalized();
                var moment = (contact.Point - massCenter).Cross(force);
                edges[4 * i + edge] = [force.X, force.Y, force.Z, moment.X, moment.Y, moment.Z];
            }
        }

        return NonNegative.Residual(edges, [0, 1, 0, 0, 0, 0]);
    }
}
