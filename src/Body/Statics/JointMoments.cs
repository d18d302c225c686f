namespace MomentArm.Body;

/// <summary>
/// Moments that the muscles must supply at each joint coordinate to hold a pose: minus the generalized force of gravity
/// and of the given point forces. Newton metres, in the model's sign. Two routes that must agree: cross products in one
/// inward sweep, and virtual work. See docs/models/body.md, section 3.
/// </summary>
public static class JointMoments
{
    /// <summary>Moments by cross products: forces and their moments are carried inward from the outermost segments.</summary>
    /// <param name="state">The posed body; not changed.</param>
    /// <param name="forces">Forces besides gravity: added loads and contact.</param>
    /// <param name="moments">Receives one moment for each joint coordinate, N m.</param>
    /// <returns>The force and moment (about the pelvis origin) that the surroundings still must supply: zero for a balanced body.</returns>
    /// <exception cref="ArgumentException">The span has another length than the body has coordinates.</exception>
    public static (Vec3 Force, Vec3 Moment) Required(BodyState state, ReadOnlySpan<PointForce> forces, Span<double> moments)
    {
        ArgumentNullException.ThrowIfNull(state);
        CheckSize(state, moments);
        var model = state.Model;
        var count = model.Segments.Length;
        Span<Vec3> force = stackalloc Vec3[count];
        Span<Vec3> moment = stackalloc Vec3[count];

        // Each segment's own load about its joint centre.
        for (var i = 0; i < count; i++)
        {
            var segment = model.Segments[i];
            var weight = new Vec3(0, -segment.MassKg * BodyModel.Gravity, 0);
            force[i] = weight;
            moment[i] = (state.Rotations[i] * segment.MassCenter).Cross(weight);
        }

        foreach (var f in forces)
        {
            force[f.Segment] += f.Force;
            moment[f.Segment] += (f.Point - state.Origins[f.Segment]).Cross(f.Force);
        }

        // Inward: a joint carries everything beyond it.
        for (var i = count - 1; i >= 1; i--)
        {
            var segment = model.Segments[i];
            for (var k = segment.FirstCoordinate; k < segment.FirstCoordinate + segment.CoordinateCount; k++)
                moments[k] = -(state.Axes[k].Dot(moment[i]) + state.Slides[k].Dot(force[i]));
            var parent = segment.Parent;
            moment[parent] += moment[i] + (state.Origins[i] - state.Origins[parent]).Cross(force[i]);
            force[parent] += force[i];
        }

        return (-force[0], -moment[0]);
    }

    /// <summary>The same moments by virtual work: each force times how its point moves per radian.</summary>
    /// <param name="state">The posed body; not changed.</param>
    /// <param name="forces">Forces besides gravity.</param>
    /// <param name="moments">Receives one moment for each joint coordinate, N m.</param>
    /// <exception cref="ArgumentException">The span has another length than the body has coordinates.</exception>
    public static void RequiredByVirtualWork(BodyState state, ReadOnlySpan<PointForce> forces, Span<double> moments)
    {
        ArgumentNullException.ThrowIfNull(state);
        CheckSize(state, moments);
        var model = state.Model;
        for (var k = 0; k < moments.Length; k++)
        {
            var work = 0.0;
            for (var i = 0; i < model.Segments.Length; i++)
            {
                var segment = model.Segments[i];
                if (segment.MassKg > 0)
                {
                    var point = state.Point(i, segment.MassCenter);
                    work -= segment.MassKg * BodyModel.Gravity * state.PointVelocity(k, i, point).Y;
                }
            }

            foreach (var f in forces)
                work += f.Force.Dot(state.PointVelocity(k, f.Segment, f.Point));
            moments[k] = -work;
        }
    }

    private static void CheckSize(BodyState state, Span<double> moments)
    {
        if (moments.Length != state.Model.Coordinates.Length)
            throw new ArgumentException("One moment is needed for each joint coordinate.", nameof(moments));
    }
}
