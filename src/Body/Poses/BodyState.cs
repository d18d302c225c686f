namespace MomentArm.Body;

/// <summary>
/// Everything computed for one pose of one body: where each segment is and how each joint coordinate would move it.
/// Made once for a body and updated in place; <see cref="Update"/> allocates nothing.
/// </summary>
public sealed class BodyState
{
    private readonly Mat3[] rotations;
    private readonly Vec3[] origins;
    private readonly Vec3[] axes;
    private readonly Vec3[] slides;

    /// <summary>Makes the state in the neutral pose.</summary>
    /// <param name="model">The body.</param>
    public BodyState(BodyModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        Model = model;
        rotations = new Mat3[model.Segments.Length];
        origins = new Vec3[model.Segments.Length];
        axes = new Vec3[model.Coordinates.Length];
        slides = new Vec3[model.Coordinates.Length];
        Update(new BodyPose(model));
    }

    /// <summary>The body.</summary>
    public BodyModel Model { get; }

    /// <summary>Orientation of each segment in the room.</summary>
    public ReadOnlySpan<Mat3> Rotations => rotations;

    /// <summary>Joint centre (frame origin) of each segment in the room, metres.</summary>
    public ReadOnlySpan<Vec3> Origins => origins;

    /// <summary>Axis of each joint coordinate in the room, unit length.</summary>
    public ReadOnlySpan<Vec3> Axes => axes;

    /// <summary>How each joint coordinate slides its own joint centre, metres per radian, in the room; zero but for the knee.</summary>
    public ReadOnlySpan<Vec3> Slides => slides;

    /// <summary>Forward kinematics: one sweep from the pelvis outward.</summary>
    /// <param name="pose">The pose; not changed.</param>
    /// <exception cref="ArgumentException">The pose belongs to another body.</exception>
    public void Update(BodyPose pose)
    {
        ArgumentNullException.ThrowIfNull(pose);
        if (pose.Angles.Length != axes.Length)
            throw new ArgumentException("The pose belongs to another body model.", nameof(pose));
        rotations[0] = pose.PelvisRotation;
        origins[0] = pose.PelvisPosition;
        var segments = Model.Segments.AsSpan();
        var coordinates = Model.Coordinates.AsSpan();
        for (var i = 1; i < segments.Length; i++)
        {
            var segment = segments[i];
            ref readonly var parent = ref rotations[segment.Parent];

            // The joint centre, with the knee's slide over its angle.
            var offset = segment.Offset;
            if (segment.SlideX is { } slideX && segment.SlideY is { } slideY)
            {
                var angle = pose.Angles[segment.FirstCoordinate];
                var (x, dx) = slideX.At(angle);
                var (y, dy) = slideY.At(angle);
                offset += segment.SlideScale * new Vec3(x, y, 0);
                slides[segment.FirstCoordinate] = parent * (segment.SlideScale * new Vec3(dx, dy, 0));
            }

            origins[i] = origins[segment.Parent] + parent * offset;

            // Turn about each axis in order, each fixed in the frame already turned.
            var rotation = parent;
            for (var k = segment.FirstCoordinate; k < segment.FirstCoordinate + segment.CoordinateCount; k++)
            {
                axes[k] = rotation * coordinates[k].Axis;
                rotation *= Mat3.Rotation(coordinates[k].Axis, pose.Angles[k]);
            }

            rotations[i] = rotation;
        }
    }

    /// <summary>A point of a segment in the room.</summary>
    /// <param name="segment">Index of the segment.</param>
    /// <param name="local">The point in the segment's frame, metres.</param>
    /// <returns>The point in the room, metres.</returns>
    public Vec3 Point(int segment, Vec3 local) => origins[segment] + rotations[segment] * local;

    /// <summary>How a point fixed to a segment moves per radian of one joint coordinate: a column of its Jacobian.</summary>
    /// <param name="coordinate">Index of the coordinate.</param>
    /// <param name="segment">Index of the segment that carries the point.</param>
    /// <param name="point">The point in the room, metres.</param>
    /// <returns>Metres per radian; zero when the coordinate is not between the pelvis and the segment.</returns>
    public Vec3 PointVelocity(int coordinate, int segment, Vec3 point)
    {
        var turned = Model.Coordinates[coordinate].Segment;
        for (var s = segment; s >= turned; s = Model.Segments[s].Parent)
        {
            if (s == turned)
                return axes[coordinate].Cross(point - origins[turned]) + slides[coordinate];
        }

        return Vec3.Zero;
    }

    /// <summary>Mass centre of the whole body in the room, metres.</summary>
    /// <returns>The point; the pelvis origin for a body without mass.</returns>
    public Vec3 MassCenter()
    {
        var sum = Vec3.Zero;
        var mass = 0.0;
        for (var i = 0; i < origins.Length; i++)
        {
            var segment = Model.Segments[i];
            sum += segment.MassKg * Point(i, segment.MassCenter);
            mass += segment.MassKg;
        }

        return mass > 0 ? (1 / mass) * sum : origins[0];
    }
}
