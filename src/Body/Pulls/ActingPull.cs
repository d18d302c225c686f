using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>One load or pull as it acts on a posed body.</summary>
/// <param name="Name">What it is, in words.</param>
/// <param name="SizeN">Newtons; for a loop what it draws the limbs together with.</param>
/// <param name="Band">What the band does; null where it is no band.</param>
/// <param name="FromOutside">Whether it comes from outside the body: then the ground has to hold against it. Bands between two places of the body do not.</param>
/// <param name="Forces">The forces on the body: two, equal and opposite, for what lies between two places of the body.</param>
public sealed record ActingPull(string Name, double SizeN, BandTension? Band, bool FromOutside, ImmutableArray<PointForce> Forces);

/// <summary>Everything that loads and pulls on a posed body besides its own weight and its contacts.</summary>
/// <param name="Parts">Weights first, then pulls, each in the movement's order.</param>
/// <param name="Warnings">What should be told, in sentences for the screen.</param>
/// <param name="Refusal">Why there are no forces to use, in words; null when there are.</param>
public sealed record PullForces(ImmutableArray<ActingPull> Parts, ImmutableArray<string> Warnings, string? Refusal)
{
    /// <summary>All forces in one row.</summary>
    public IEnumerable<PointForce> All => Parts.SelectMany(p => p.Forces);

    /// <summary>The forces that come from outside the body.</summary>
    public IEnumerable<PointForce> FromOutside => Parts.Where(p => p.FromOutside).SelectMany(p => p.Forces);
}
