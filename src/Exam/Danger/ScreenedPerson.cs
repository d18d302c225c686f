using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>What decides which danger signs are asked.</summary>
/// <param name="Regions">Regions of the complaint; empty while none is named: then the questions of every region are open.</param>
/// <param name="AgeYears">Age in years; null when not known.</param>
public sealed record ScreenedPerson(ImmutableArray<BodyRegion> Regions, double? AgeYears)
{
    /// <summary>The questions for this person: the general ones, then those of the regions.</summary>
    /// <param name="signs">All signs.</param>
    /// <returns>The signs asked, in their order.</returns>
    public ImmutableArray<DangerSign> Asked(IEnumerable<DangerSign> signs) => [.. signs.Where(s => s.IsAskedOf(this))];
}
