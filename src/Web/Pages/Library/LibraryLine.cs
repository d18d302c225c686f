using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Web.Pages.Library;

/// <summary>What a list needs of an exercise computed for a person; the curves are computed again where one is looked at.</summary>
/// <param name="Load">The share that counts; null where none does.</param>
/// <param name="Reach">The largest reach of what it is meant to lengthen; null for what is no stretch.</param>
/// <param name="Problem">Why nothing could be computed; null when it could.</param>
public sealed record LibraryLine(LoadShare? Load, Body.Reach? Reach, string? Problem)
{
    /// <summary>The line of an exercise.</summary>
    public static LibraryLine Of(ExerciseFigures figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        return new LibraryLine(figures.MainLoad, figures.MainReach?.Peak, figures.Load.Computed ? null : figures.Load.Problems.FirstOrDefault());
    }

    /// <summary>The lines of all exercises for a person.</summary>
    public static ImmutableDictionary<string, LibraryLine> All(IEnumerable<Exercise> exercises, PersonalLoads loads, PersonalReach reach, Side working) =>
        exercises.ToImmutableDictionary(e => e.Id, e => Of(ExerciseFigures.Of(e, loads, reach, working)));
}
