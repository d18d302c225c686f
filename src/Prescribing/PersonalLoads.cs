using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Prescribing;

/// <summary>One person's body and capacities, ready to be loaded with exercises.</summary>
/// <param name="Model">The person's body.</param>
/// <param name="Points">Named surface points.</param>
/// <param name="Capacity">What the person's joints can hold.</param>
public sealed record PersonalLoads(BodyModel Model, SurfacePoints Points, PatientCapacity Capacity)
{
    /// <summary>The load of an exercise for a working side, with a weight added by the dose.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="working">The side that works.</param>
    /// <param name="weightKg">Weight of the dose in kilograms, 0 for none.</param>
    /// <returns>The load.</returns>
    public MovementLoad Of(Exercise exercise, Side working, double weightKg)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return Loading.Of(Model, Points, exercise.Movement, working, Capacity, weightKg);
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
        return exercise.Purpose is Purpose.Strengthen or Purpose.Functional
            ? exercise.Loads.Select(action => load.Of(action, working)).FirstOrDefault(s => s is not null)
            : null;
    }
}
