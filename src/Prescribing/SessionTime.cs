using System.Collections.Immutable;

namespace MomentArm.Prescribing;

/// <summary>
/// Minutes of one home session: work of every set on every side, rests, getting into position, and changes of position.
/// The change-over times are our choice (docs/models/prescribing.md).
/// </summary>
public static class SessionTime
{
    /// <summary>Seconds to change from one body position to another.</summary>
    public const int ChangeOfPositionSeconds = 20;

    /// <summary>Seconds of one exercise: set-up, work and rests on every side that works.</summary>
    /// <param name="item">The program item.</param>
    /// <param name="exercise">Its exercise.</param>
    /// <returns>Seconds.</returns>
    public static double Seconds(ProgramItem item, Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(item);
        ArgumentNullException.ThrowIfNull(exercise);
        var sides = item.BothSides ? 2 : 1;
        var sets = item.Dose.Sets * sides;
        return exercise.SetUpSeconds + sets * item.Dose.SetSeconds + (sets - 1) * item.Dose.RestSeconds;
    }

    /// <summary>Seconds of a whole program, done once.</summary>
    /// <param name="items">Items in order.</param>
    /// <param name="exercise">Finds an exercise by id.</param>
    /// <returns>Seconds; items whose exercise is unknown are left out.</returns>
    public static double Seconds(ImmutableArray<ProgramItem> items, Func<string, Exercise?> exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        var seconds = 0.0;
        BodyPosition? before = null;
        foreach (var item in items)
        {
            if (exercise(item.ExerciseId) is not { } known)
                continue;
            seconds += Seconds(item, known);
            if (before is { } position && position != known.Position)
                seconds += ChangeOfPositionSeconds;
            before = known.Position;
        }

        return seconds;
    }
}
