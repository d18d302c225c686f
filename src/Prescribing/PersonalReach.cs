using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Prescribing;

/// <summary>
/// One person's muscles, limits of length and joint ranges, ready to tell how far an exercise lengthens them. The limits are computed
/// when first asked for (a few milliseconds), since most readings of a case never ask.
/// </summary>
/// <param name="points">Named surface points.</param>
/// <param name="ranges">The person's joint ranges.</param>
/// <param name="limits">Makes the person's limits of length; called once.</param>
public sealed class PersonalReach(SurfacePoints points, JointRanges ranges, Func<LengthLimits> limits)
{
    private readonly Lazy<LengthLimits> known = new(limits);

    /// <summary>The person's limits of length.</summary>
    public LengthLimits Limits => known.Value;

    /// <summary>The person's joint ranges.</summary>
    public JointRanges Ranges { get; } = ranges;

    /// <summary>The reach of an exercise.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="working">The side that works.</param>
    /// <returns>The reach of both sides.</returns>
    public MovementReach Of(Exercise exercise, Side working)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return Reaching.Of(points, exercise.Movement, working, Limits);
    }

    /// <summary>The reach of poses that are settled already.</summary>
    /// <param name="settled">The poses, of this person's body.</param>
    /// <returns>The reach of both sides.</returns>
    public MovementReach Of(SettledMovement settled) => Reaching.Of(settled, Limits);

    /// <summary>Ranks exercises by how far they lengthen a group of the working side.</summary>
    /// <param name="exercises">The exercises.</param>
    /// <param name="group">The group.</param>
    /// <param name="working">The side that works.</param>
    /// <returns>Largest peak reach first.</returns>
    public ImmutableArray<RankedReach> Rank(IEnumerable<Exercise> exercises, MuscleGroup group, Side working)
    {
        ArgumentNullException.ThrowIfNull(exercises);
        return ReachRanking.Of(exercises.Select(e => (e.Id, Of(e, working))), group, working);
    }

    /// <summary>The group whose reach counts for an exercise: the first it is meant to lengthen and does, else the most lengthened.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="reach">Its reach.</param>
    /// <param name="working">The side that works.</param>
    /// <returns>The group; null when nothing is brought beyond its length in standing.</returns>
    public static GroupReach? Main(Exercise exercise, MovementReach reach, Side working)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(reach);
        return exercise.Groups.Select(g => reach.Of(g, working)).Concat(reach.Lengthened).FirstOrDefault(g => g.Lengthens);
    }

    /// <summary>The motions that would lengthen a group most from a pose of an exercise.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="working">The side that works.</param>
    /// <param name="group">The group.</param>
    /// <param name="side">The side of the group.</param>
    /// <param name="fraction">Where in the movement, 0 start to 1 end.</param>
    /// <returns>Motions with room left, largest gain first.</returns>
    public ImmutableArray<LengtheningStep> Farther(Exercise exercise, Side working, MuscleGroup group, Side side, double fraction)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return Farther(Settling.Settle(Limits.Set.Model, points, FrameBetween.At(exercise.Movement, fraction), working), group, side);
    }

    /// <summary>The motions that would lengthen a group most from a settled pose.</summary>
    /// <param name="placed">The pose, of this person's body.</param>
    /// <param name="group">The group.</param>
    /// <param name="side">The side of the group.</param>
    /// <returns>Motions with room left, largest gain first.</returns>
    public ImmutableArray<LengtheningStep> Farther(PlacedBody placed, MuscleGroup group, Side side)
    {
        ArgumentNullException.ThrowIfNull(placed);
        var pose = placed.Pose;
        var state = new BodyState(Limits.Set.Model);
        state.Update(pose);
        var muscles = new MuscleState(Limits.Set);
        muscles.Update(state, pose);
        return LengtheningDirection.Of(Limits, muscles, pose, Ranges, group, side);
    }
}
