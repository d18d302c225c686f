using System.Collections.Immutable;

namespace MomentArm.Prescribing;

/// <summary>
/// The usual order of a session: release, lengthen, strengthen, functional; inside each from the floor to standing.
/// Common practice, no source.
/// </summary>
public static class ProgramOrder
{
    /// <summary>Sorts items into the usual order; items of the same rank keep their order, unknown exercises go last.</summary>
    /// <param name="items">Items.</param>
    /// <param name="exercise">Finds an exercise by id.</param>
    /// <returns>The same items in order.</returns>
    public static ImmutableArray<ProgramItem> Sort(ImmutableArray<ProgramItem> items, Func<string, Exercise?> exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return [.. items.OrderBy(item => exercise(item.ExerciseId) is { } e ? ((int)e.Purpose * 100) + (int)e.Position : int.MaxValue)];
    }
}
