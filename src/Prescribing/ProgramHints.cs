using System.Collections.Immutable;

namespace MomentArm.Prescribing;

/// <summary>Hints on a program while it is built. They inform; none blocks.</summary>
public static class ProgramHints
{
    /// <summary>From this many exercises on, the hint about numbers appears.</summary>
    public const int ManyExercises = 5;

    /// <summary>The hints.</summary>
    /// <param name="program">The program.</param>
    /// <param name="exercise">Finds an exercise by id.</param>
    /// <param name="limits">What limits the choice.</param>
    /// <returns>Sentences, most important first; empty when there is nothing to say.</returns>
    public static ImmutableArray<string> For(HomeProgram program, Func<string, Exercise?> exercise, Limits limits)
    {
        ArgumentNullException.ThrowIfNull(program);
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(limits);
        var hints = ImmutableArray.CreateBuilder<string>();
        if (program.Items.IsEmpty)
            hints.Add("No exercise chosen yet.");

        // Henry, Rosemond and Eckert 1999, Phys Ther 79:270 (15 older adults: 2 were done better than 8); Eckard 2015, Mil Med 180:186.
        if (program.Items.Length >= ManyExercises)
        {
            hints.Add(FormattableString.Invariant(
                $"{program.Items.Length} exercises. Two to four are done; more are done less and less well (Henry 1999, Eckard 2015)."));
        }

        var minutes = SessionTime.Seconds(program.Items, exercise) / 60;
        if (limits.Minutes is { } allowed && minutes > allowed)
            hints.Add(FormattableString.Invariant($"{Math.Ceiling(minutes):0} minutes a session; {allowed} were agreed."));

        // Two to three non-consecutive days for strengthening: ACSM 2009 and 2011 position stands.
        var strengthening = program.Items.Any(i => exercise(i.ExerciseId)?.Purpose == Purpose.Strengthen && i.Dose.Effort is >= 6);
        if (strengthening && program.DaysPerWeek > 5)
            hints.Add("Strengthening at an effort of 6 or more wants a day of rest between sessions (ACSM 2009).");
        foreach (var twice in program.Items.GroupBy(i => (i.ExerciseId, i.WorkingSide)).Where(g => g.Count() > 1))
            hints.Add($"{exercise(twice.Key.ExerciseId)?.Name ?? twice.Key.ExerciseId} is there twice.");
        return hints.ToImmutable();
    }
}
