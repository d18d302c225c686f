using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>
/// Path lengths and moment arms of all muscles for one pose. Made once for a <see cref="MuscleSet"/> and updated in place;
/// <see cref="Update"/> allocates nothing. Arms are minus the derivative of length by the coordinate, so a pull f gives the
/// moment arm x f in the coordinate's positive direction. See docs/models/body.md, section 6.
/// </summary>
public sealed class MuscleState
{
    private readonly double[] lengths;
    private readonly double[] arms;
    private readonly bool[] active;
    private readonly bool[] extrapolated;
    private readonly double[] excess;
    private readonly PathUse use;
    private readonly BodyPose trustedPose;
    private readonly BodyState trustedState;
    private readonly Vec3[] across;
    private BodyState used;

    /// <summary>Makes the state in the neutral pose.</summary>
    /// <param name="set">The muscles.</param>
    /// <param name="use">What to do beyond the trusted ranges.</param>
    public MuscleState(MuscleSet set, PathUse use = PathUse.Trusted)
    {
        ArgumentNullException.ThrowIfNull(set);
        Set = set;
        this.use = use;
        lengths = new double[set.Spans.Length];
        arms = new double[set.ArmCoordinates.Length];
        active = new bool[set.Points.Length];
        extrapolated = new bool[set.Spans.Length];
        excess = new double[set.Model.Coordinates.Length];
        trustedPose = new BodyPose(set.Model);
        trustedState = new BodyState(set.Model);
        across = new Vec3[set.Crossings.Length];
        used = trustedState;
        Update(trustedState, new BodyPose(set.Model));
    }

    /// <summary>The muscles.</summary>
    public MuscleSet Set { get; }

    /// <summary>Path length of each muscle, metres, in the order of <see cref="MuscleSet.Muscles"/>.</summary>
    public ReadOnlySpan<double> Lengths => lengths;

    /// <summary>Moment arms, metres, laid out as <see cref="MuscleSet.ArmCoordinates"/>.</summary>
    public ReadOnlySpan<double> Arms => arms;

    /// <summary>Whether a muscle crosses a joint beyond its trusted range.</summary>
    public ReadOnlySpan<bool> Extrapolated => extrapolated;

    /// <summary>Arms of one muscle, beside <see cref="ArmCoordinatesOf"/>.</summary>
    /// <param name="muscle">Index of the muscle.</param>
    /// <returns>Its arms, metres.</returns>
    public ReadOnlySpan<double> ArmsOf(int muscle) => Arms.Slice(Set.Muscles[muscle].FirstArm, Set.Muscles[muscle].ArmCount);

    /// <summary>Coordinates on which one muscle acts.</summary>
    /// <param name="muscle">Index of the muscle.</param>
    /// <returns>Indexes into <see cref="BodyModel.Coordinates"/>.</returns>
    public ReadOnlySpan<int> ArmCoordinatesOf(int muscle) =>
        Set.ArmCoordinates.Slice(Set.Muscles[muscle].FirstArm, Set.Muscles[muscle].ArmCount);

    /// <summary>The arm of a muscle about one coordinate.</summary>
    /// <param name="muscle">Index of the muscle.</param>
    /// <param name="coordinate">Index of the coordinate.</param>
    /// <returns>Metres; 0 when the muscle does not cross it.</returns>
    public double Arm(int muscle, int coordinate)
    {
        var at = ArmCoordinatesOf(muscle).IndexOf(coordinate);
        return at < 0 ? 0 : ArmsOf(muscle)[at];
    }

    /// <summary>How far the pose lengthens a muscle.</summary>
    /// <param name="muscle">Index of the muscle.</param>
    /// <returns>The three figures.</returns>
    public Lengthening Lengthening(int muscle)
    {
        var change = lengths[muscle] - Set.Muscles[muscle].NeutralLengthM;
        var range = Set.Ranges[muscle];
        return new Lengthening(
            change, 100 * (lengths[muscle] - range.ShortestM) / (range.LongestM - range.ShortestM), change / Set.Muscles[muscle].OptimalFiberM);
    }

    /// <summary>
    /// The direction in which a muscle leads outward across a joint it crosses, in the room: it pulls what lies beyond the joint the
    /// other way. Valid until the state used for the last update changes; beyond the trusted ranges that of the last trusted angle, carried with the inner segment.
    /// </summary>
    /// <param name="muscle">Index of the muscle.</param>
    /// <param name="joint">Index of the segment that the joint turns.</param>
    /// <param name="state">The posed body of the last update.</param>
    /// <returns>A unit vector; zero when the muscle does not cross the joint.</returns>
    public Vec3 Across(int muscle, int joint, BodyState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        ref readonly var span = ref Set.Spans[muscle];
        for (var c = span.FirstCrossing; c < span.FirstCrossing + span.CrossingCount; c++)
        {
            if (Set.Crossings[c].Segment != joint)
                continue;
            if (used == state)
                return across[c];
            var inner = Set.Model.Segments[joint].Parent;
            return state.Rotations[inner] * (used.Rotations[inner].Transposed * across[c]);
        }

        return Vec3.Zero;
    }

    /// <summary>The points of a path that the pose keeps, from the trunk outward, in the room; for drawing it.</summary>
    /// <param name="muscle">Index of the muscle.</param>
    /// <param name="state">The posed body of the last update.</param>
    /// <param name="pose">The same pose.</param>
    /// <returns>Two points or more, metres; points that run round an obstacle are left out.</returns>
    public ImmutableArray<Vec3> PathPoints(int muscle, BodyState state, BodyPose pose)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(pose);
        ref readonly var span = ref Set.Spans[muscle];
        var points = ImmutableArray.CreateBuilder<Vec3>(span.PointCount);
        for (var p = span.FirstPoint; p < span.FirstPoint + span.PointCount; p++)
        {
            var point = Set.Points[p];
            if (point.Condition >= 0 && !active[p])
                continue;
            var local = point.Moving < 0 ? point.Local : Set.Travels[point.Moving].Evaluate(pose.Angles[Set.Travels[point.Moving].Coordinate]).At;
            points.Add(state.Point(point.Segment, local));
        }

        return points.ToImmutable();
    }

    /// <summary>Lengths and arms of every muscle. Points that come and go are chosen by the pose.</summary>
    /// <param name="state">The posed body, updated for <paramref name="pose"/>.</param>
    /// <param name="pose">The pose; not changed.</param>
    /// <exception cref="ArgumentException">State or pose belong to another body, or an angle is not a finite number.</exception>
    public void Update(BodyState state, BodyPose pose) => Compute(state, pose, true);

    /// <summary>
    /// The same with the points that were part of the paths at the last <see cref="Update"/>, for small steps
    /// around a pose: a point that came or went would show as a jump of length.
    /// </summary>
    /// <param name="state">The posed body, updated for <paramref name="pose"/>.</param>
    /// <param name="pose">The pose; not changed.</param>
    /// <exception cref="ArgumentException">State or pose belong to another body, or an angle is not a finite number.</exception>
    public void UpdateKeepingPoints(BodyState state, BodyPose pose) => Compute(state, pose, false);

    /// <summary>Length of one path by the published geometry; its arms are overwritten too.</summary>
    internal double LengthAsPublished(int muscle, BodyState state, BodyPose pose)
    {
        Evaluate(muscle, state, pose.Angles, true);
        return lengths[muscle];
    }

    private void Compute(BodyState state, BodyPose pose, bool choose)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(pose);
        if (state.Model != Set.Model || pose.Angles.Length != excess.Length)
            throw new ArgumentException("State and pose must belong to the body of the muscles.", nameof(state));
        foreach (var angle in pose.Angles)
        {
            if (!double.IsFinite(angle))
                throw new ArgumentException("An angle of the pose is not a finite number.", nameof(pose));
        }

        var beyond = use == PathUse.Trusted && HoldInside(pose);
        used = beyond ? trustedState : state;
        var angles = beyond ? trustedPose.Angles : pose.Angles;
        for (var m = 0; m < lengths.Length; m++)
            Evaluate(m, used, angles, choose);
        Array.Clear(extrapolated);
        if (beyond)
            Extend();
    }

    /// <summary>Poses the body at the last trusted angles. Returns whether any coordinate lies beyond.</summary>
    private bool HoldInside(BodyPose pose)
    {
        var beyond = false;
        foreach (var range in Set.Trusted)
        {
            var angle = pose.Angles[range.Coordinate];
            excess[range.Coordinate] = angle - Math.Clamp(angle, range.Least, range.Most);
            beyond |= excess[range.Coordinate] != 0;
        }

        if (!beyond)
            return false;
        for (var k = 0; k < excess.Length; k++)
            trustedPose.Angles[k] = pose.Angles[k] - excess[k];
        trustedState.Update(trustedPose);
        return true;
    }

    /// <summary>L(q) = L(held) - sum of arm(held) x (q - held).</summary>
    private void Extend()
    {
        var coordinates = Set.ArmCoordinates;
        var muscles = Set.Muscles.AsSpan();
        for (var m = 0; m < muscles.Length; m++)
        {
            var first = muscles[m].FirstArm;
            for (var a = first; a < first + muscles[m].ArmCount; a++)
            {
                var beyond = excess[coordinates[a]];
                if (beyond == 0)
                    continue;
                lengths[m] -= arms[a] * beyond;
                extrapolated[m] = true;
            }
        }
    }

    /// <summary>Sum of the straight pieces; each piece adds unit vector times difference of point velocities to the arms.</summary>
    private void Evaluate(int muscle, BodyState state, double[] angles, bool choose)
    {
        var origins = state.Origins;
        var rotations = state.Rotations;
        ref readonly var span = ref Set.Spans[muscle];
        var crossings = Set.Crossings.AsSpan(span.FirstCrossing, span.CrossingCount);
        foreach (ref readonly var crossing in crossings)
            arms.AsSpan(crossing.FirstArm, crossing.Count).Clear();
        var length = 0.0;
        var before = Vec3.Zero;
        var beforeSegment = -1;
        var beforeMoving = -1;
        var beforeVelocity = Vec3.Zero;
        for (var p = span.FirstPoint; p < span.FirstPoint + span.PointCount; p++)
        {
            ref readonly var point = ref Set.Points[p];
            if (point.Condition >= 0)
            {
                if (choose)
                    active[p] = angles[point.Condition] >= point.From && angles[point.Condition] <= point.To;
                if (!active[p])
                    continue;
            }

            ref readonly var rotation = ref rotations[point.Segment];
            var local = point.Local;
            var velocity = Vec3.Zero;
            if (point.Moving >= 0)
            {
                ref readonly var travel = ref Set.Travels[point.Moving];
                (local, var derivative) = travel.Evaluate(angles[travel.Coordinate]);
                velocity = rotation * derivative;
            }

            var at = origins[point.Segment] + rotation * local;
            if (beforeSegment >= 0)
            {
                var along = at - before;
                var piece = along.Length;
                length += piece;

                // Points that coincide have no direction and pull nowhere.
                var unit = piece > 1e-9 ? (1 / piece) * along : Vec3.Zero;
                if (span.Obstacle >= 0 && use == PathUse.Trusted && beforeSegment != point.Segment && beforeSegment == Set.Obstacles[span.Obstacle].Segment
                    && Round(Set.Obstacles[span.Obstacle], before, at, state) is { } way)
                {
                    length += way.Length - piece;
                    unit = way.Unit;
                }

                if (beforeSegment != point.Segment)
                    AddPiece(span, beforeSegment, point.Segment, at, unit, state);
                if (point.Moving >= 0)
                    arms[Set.Travels[point.Moving].Arm] -= unit.Dot(velocity);
                if (beforeMoving >= 0)
                    arms[Set.Travels[beforeMoving].Arm] += unit.Dot(beforeVelocity);
            }

            (before, beforeSegment, beforeMoving, beforeVelocity) = (at, point.Segment, point.Moving, velocity);
        }

        lengths[muscle] = length;
    }

    /// <summary>The way round an obstacle in the room; null where the straight line passes clear.</summary>
    private static (double Length, Vec3 Unit)? Round(in ScaledObstacle obstacle, Vec3 before, Vec3 at, BodyState state)
    {
        ref readonly var rotation = ref state.Rotations[obstacle.Segment];
        var back = rotation.Transposed;
        var origin = state.Origins[obstacle.Segment];
        return obstacle.Round(back * (before - origin), back * (at - origin), out var length, out var unit) ? (length, rotation * unit) : null;
    }

    /// <summary>
    /// A joint between the two segments moves the outer end only: dL/dq = unit . (axis x (at - center) + slide)
    /// = axis . ((at - center) x unit) + slide . unit. A joint inward of both moves them alike, one outward neither.
    /// </summary>
    private void AddPiece(in PathSpan span, int inner, int outer, Vec3 at, Vec3 unit, BodyState state)
    {
        var origins = state.Origins;
        var axes = state.Axes;
        var slides = state.Slides;
        for (var c = span.FirstCrossing; c < span.FirstCrossing + span.CrossingCount; c++)
        {
            ref readonly var crossing = ref Set.Crossings[c];
            if (crossing.Segment <= inner || crossing.Segment > outer)
                continue;
            across[c] = unit;
            var turning = (at - origins[crossing.Segment]).Cross(unit);
            for (var k = 0; k < crossing.Count; k++)
            {
                var coordinate = crossing.FirstCoordinate + k;
                arms[crossing.FirstArm + k] -= axes[coordinate].Dot(turning) + slides[coordinate].Dot(unit);
            }
        }
    }
}
