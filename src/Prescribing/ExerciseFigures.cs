using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Prescribing;

/// <summary>What an exercise asks of a person, load and reach from the same settled poses.</summary>
/// <param name="Exercise">The exercise.</param>
/// <param name="Working">The side that works.</param>
/// <param name="Load">Its load, with the weight of its usual dose.</param>
/// <param name="Reach">How far it lengthens.</param>
public sealed record ExerciseFigures(Exercise Exercise, Side Working, MovementLoad Load, MovementReach Reach)
{
    /// <summary>The share that counts: see <see cref="PersonalLoads.Main"/>.</summary>
    public LoadShare? MainLoad => PersonalLoads.Main(Exercise, Load, Working);

    /// <summary>The reach that counts: see <see cref="PersonalReach.Main"/>; null for an exercise that is no stretch.</summary>
    public GroupReach? MainReach => Exercise.Purpose == Purpose.Stretch ? PersonalReach.Main(Exercise, Reach, Working) : null;

    /// <summary>Computes an exercise for a person.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="loads">The person's body and capacities.</param>
    /// <param name="reach">The person's limits of length.</param>
    /// <param name="working">The side that works.</param>
    /// <returns>The figures.</returns>
    public static ExerciseFigures Of(Exercise exercise, PersonalLoads loads, PersonalReach reach, Side working)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(loads);
        ArgumentNullException.ThrowIfNull(reach);
        var settled = loads.Settle(exercise, working);
        return new ExerciseFigures(exercise, working, loads.Of(exercise, settled, exercise.Dose.WeightKg ?? 0), reach.Of(settled));
    }

    /// <summary>Computes many exercises for a person.</summary>
    /// <param name="exercises">The exercises.</param>
    /// <param name="loads">The person's body and capacities.</param>
    /// <param name="reach">The person's limits of length.</param>
    /// <param name="working">The side that works.</param>
    /// <returns>The figures by exercise id.</returns>
    public static ImmutableDictionary<string, ExerciseFigures> Of(IEnumerable<Exercise> exercises, PersonalLoads loads, PersonalReach reach, Side working)
    {
        ArgumentNullException.ThrowIfNull(exercises);
        return exercises.ToImmutableDictionary(e => e.Id, e => Of(e, loads, reach, working));
    }
}
