namespace MomentArm.Body;

/// <summary>
/// Whether contacts alone can hold a posed body up, muscles aside: forces that push, and rub within friction, against gravity and
/// given forces. Says in words why they cannot.
/// </summary>
public static class Standing
{
    /// <summary>A mass center this far outside the support (metres) still counts as standing: poses are typed to the degree.</summary>
    public const double Slack = 0.02;

    /// <summary>Part of the weight by which the forces may fail to add up and still count as standing (our choice).</summary>
    public const double ForceSlack = 0.02;

    private const double MostFriction = 10;

    /// <summary>Why a pose cannot be held by its contacts; null when it can.</summary>
    /// <param name="state">The posed body.</param>
    /// <param name="contacts">Its contacts.</param>
    /// <param name="forces">Given forces besides gravity.</param>
    /// <returns>A sentence that says what happens and what would help.</returns>
    public static string? Refusal(BodyState state, ReadOnlySpan<ContactPoint> contacts, ReadOnlySpan<PointForce> forces)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (contacts.IsEmpty)
            return "Nothing bears the weight: name a contact that does.";
        var (force, moment) = Lacking(state, contacts, forces, 0);
        if (Stands(state.Model, force, moment))
            return null;
        return NeededFriction(state, contacts, forces) is { } needed
            ? FormattableString.Invariant($"Slips: the contacts would need a friction of {needed:0.0}. It needs a rougher surface, another contact, or a change of pose.")
            : Falls(state, force, moment);
    }

    /// <summary>Whether what is lacking is no more than poses typed to the degree explain.</summary>
    /// <param name="model">The body.</param>
    /// <param name="force">Force that the contacts cannot supply, newtons.</param>
    /// <param name="moment">Moment that they cannot supply, N m.</param>
    /// <returns>True for a body that stands.</returns>
    public static bool Stands(BodyModel model, Vec3 force, Vec3 moment)
    {
        ArgumentNullException.ThrowIfNull(model);
        var weight = model.MassKg * BodyModel.Gravity;
        return force.Length <= ForceSlack * weight && moment.Length <= Slack * weight;
    }

    /// <summary>The force and the moment about the pelvis origin that the contacts cannot supply, a moment rather than a force.</summary>
    private static (Vec3 Force, Vec3 Moment) Lacking(
        BodyState state, ReadOnlySpan<ContactPoint> contacts, ReadOnlySpan<PointForce> forces, double leastFriction)
    {
        var model = state.Model;
        var weight = model.MassKg * BodyModel.Gravity;
        var program = new SeparableProgram(6, 5 * contacts.Length, 30 * contacts.Length);
        program.Clear(6, 1e-7);
        program.Softness[..3].Fill(1e-9);
        var moments = new double[model.Coordinates.Length];
        var (force, moment) = JointMoments.Required(state, forces, moments);
        var b = program.RightSide;
        (b[0], b[1], b[2]) = (force.X / weight, force.Y / weight, force.Z / weight);
        (b[3], b[4], b[5]) = (10 * moment.X / weight, 10 * moment.Y / weight, 10 * moment.Z / weight);
        foreach (var at in contacts)
        {
            var friction = Math.Max(at.Friction, leastFriction);
            var (ahead, aside) = FrictionPyramid.Tangents(state, at.Normal);
            foreach (var edge in (ReadOnlySpan<Vec3>)[at.Normal, at.Normal + friction * ahead, at.Normal - friction * ahead, at.Normal + friction * aside, at.Normal - friction * aside])
            {
                program.AddUnknown(1, 0, 0, double.PositiveInfinity);
                FrictionPyramid.AddRoot(program, 0, at.Point - state.Origins[0], edge, 10);
            }
        }

        var solver = new DualNewtonSolver(program);
        solver.Solve(program);
        return (
            weight * new Vec3(solver.Miss(0), solver.Miss(1), solver.Miss(2)),
            weight / 10 * new Vec3(solver.Miss(3), solver.Miss(4), solver.Miss(5)));
    }

    /// <summary>The least friction with which the body would stand; null when none helps.</summary>
    private static double? NeededFriction(BodyState state, ReadOnlySpan<ContactPoint> contacts, ReadOnlySpan<PointForce> forces)
    {
        bool With(double friction, ReadOnlySpan<ContactPoint> points, ReadOnlySpan<PointForce> given)
        {
            var (force, moment) = Lacking(state, points, given, friction);
            return Stands(state.Model, force, moment);
        }

        if (!With(MostFriction, contacts, forces))
            return null;
        double low = 0, high = MostFriction;
        for (var i = 0; i < 12; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = With(middle, contacts, forces) ? (low, middle) : (middle, high);
        }

        return high;
    }

    /// <summary>What is lacking turns the body over: the way its top goes, seen from where the person faces.</summary>
    private static string Falls(BodyState state, Vec3 force, Vec3 moment)
    {
        var weight = state.Model.MassKg * BodyModel.Gravity;
        if (force.Length > 0.2 * weight && moment.Length < Slack * weight)
            return "Cannot be held: the contacts cannot push in the direction that is needed. It needs another contact.";

        // The unbalanced moment on the body is minus what is lacking; it carries the top along (-moment) x up.
        var miss = (1 / weight) * (-moment).Cross(Vec3.UnitY);
        var forward = state.Rotations[0] * Vec3.UnitX;
        var level = new Vec3(forward.X, 0, forward.Z);
        var verb = "Tips over";
        if (level.Length > 0.2)
        {
            var ahead = miss.Dot(level.Normalized());
            var aside = Math.Sqrt(Math.Max(0, miss.Dot(miss) - ahead * ahead));
            verb = "Falls " + (Math.Abs(ahead) >= aside ? (ahead > 0 ? "forward" : "backward") : "sideways");
        }

        return FormattableString.Invariant(
            $"{verb}: the mass center is about {miss.Length * 100:0} cm outside the contacts. It needs a hand, another contact, or a change of pose.");
    }
}
