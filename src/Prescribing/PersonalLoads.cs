using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Prescribing;

/// <summary>One person's body and capacities, ready to be loaded with exercises.</summary>
/// <param name="Person">The person's body, muscles and capacities.</param>
public sealed record PersonalLoads(PersonBody Person)
{
    /// <summary>The person's body.</summary>
    public BodyModel Model => Person.Model;

    /// <summary>Named surface points.</summary>
    public SurfacePoints Points => Person.Points;

    /// <summary>The load of an exercise for a working side, with a weight added by the dose.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="working">The side that works.</param>
    /// <param name="weightKg">Weight of the dose in kilograms, 0 for none.</param>
    /// <returns>The load.</returns>
    public MovementLoad Of(Exercise exercise, Side working, double weightKg)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return Loading.Of(Person, exercise.Movement, working, weightKg);
    }

    /// <summary>The poses of an exercise for this person's body, so that load and reach can share them.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="working">The side that works.</param>
    /// <returns>The settled poses.</returns>
    public SettledMovement Settle(Exercise exercise, Side working)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return SettledMovement.Of(Model, Points, exercise.Movement, working);
    }

    /// <summary>The load of an exercise whose poses are settled already.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="settled">Its poses for this person's body.</param>
    /// <param name="weightKg">Weight of the dose in kilograms, 0 for none.</param>
    /// <returns>The load.</returns>
    public MovementLoad Of(Exercise exercise, SettledMovement settled, double weightKg)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return Loading.Of(Person, exercise.Movement, settled, weightKg);
    }

    /// <summary>The share that counts for an exercise: of the first action it is meant to load that it does load.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="load">Its load.</param>
    /// <param name="working">The side that works.</param>
    /// <returns>The share, or null for release and stretch or where none was computed.</returns>
    public static LoadShare? Main(Exercise exercise, MovementLoad load, Side working)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(load);
        return exercise.Purpose.Loads()
            ? exercise.Loads.Select(action => load.Of(action, working)).FirstOrDefault(s => s is not null)
            : null;
    }
}
