using MomentArm.Body;
using MomentArm.Content;

namespace MomentArm.Cli;

/// <summary>A calculated quantity, or why there is none.</summary>
/// <param name="Value">The value.</param>
/// <param name="Why">Why there is none.</param>
/// <param name="Awaited">Whether there is none only because the way of holding poses does not calculate such a thing.</param>
internal readonly record struct Calculated(double? Value, string? Why, bool Awaited = false)
{
    internal static Calculated No(string why) => new(null, why);

    internal static Calculated NotYet(string why) => new(null, why, true);

    public static implicit operator Calculated(double value) =>
        double.IsFinite(value) ? new(value, null) : No("It does not come to a number.");
}

/// <summary>Calculates the quantities of checks. The right side works throughout; the left is its mirror image to the last digit.</summary>
internal sealed class Quantities(CheckPeople people)
{
    private const double Degree = Math.PI / 180;
    private const Side Working = Side.Right;

    /// <summary>Steps along poses before a crossing or a largest value is narrowed down.</summary>
    private const int Steps = 45;

    /// <summary>Calculates a quantity.</summary>
    /// <param name="q">The quantity.</param>
    /// <param name="at">Defaults of the check, the variation, and the place along poses.</param>
    internal Calculated Of(QuantityFile q, Place at) => q.Kind switch
    {
        QuantityKind.Sum => Combined(q, at, values => values.Sum()),
        QuantityKind.Difference => Combined(q, at, values => values[0] - values[1]),
        QuantityKind.Ratio => Combined(q, at, values => values[0] / values[1]),
        QuantityKind.Crossing => Crossing(q, at),
        QuantityKind.Largest => Largest(q, at),
        QuantityKind.Lever => LeverBalance.Of(q.Lever!),
        QuantityKind.Capacity => Capacity(q, at),
        QuantityKind.ShortestPath => 1000 * Range(q, at).ShortestM,
        QuantityKind.LongestPath => 1000 * Range(q, at).LongestM,
        _ => InPose(q, at),
    };

    private Calculated Combined(QuantityFile q, Place at, Func<double[], double> combine)
    {
        var values = new double[q.Of.Count];
        for (var i = 0; i < values.Length; i++)
        {
            var part = Of(q.Of[i], at);
            if (part.Value is not { } value)
                return part;
            values[i] = value;
        }

        return combine(values);
    }

    private Calculated Capacity(QuantityFile q, Place at)
    {
        var person = at.Person(q);
        var torque = people.Capacity(person, q.Action!.Value, (q.AngleDeg ?? double.Parse(at.Row!, System.Globalization.CultureInfo.InvariantCulture)) * Degree);
        return torque is { } t ? t / people.Model(person).MassKg : Calculated.No("Nothing is published for it.");
    }

    private PathRange Range(QuantityFile q, Place at)
    {
        var set = people.Muscles(at.Person(q));
        return set.Ranges[set.IndexOf(at.Muscle(q), Working)];
    }

    private Calculated InPose(QuantityFile q, Place at)
    {
        var person = at.Person(q);
        var held = people.Hold(person, Input(q, at), at.Variation);
        if (held.Refusal is { } refusal)
            return Calculated.No(refusal);
        var model = held.Model;
        var side = q.Limb.On(Working);
        switch (q.Kind)
        {
            case QuantityKind.Moment:
                return Moment(held, q) / model.MassKg;
            case QuantityKind.TendonForce:
                var arm = q.ArmMm ?? Math.Abs(Arm(at.Muscle(q), q.Action!.Value.Coordinate(side).Motion, side, person, held));
                return Moment(held, q) / (arm / 1000) / (model.MassKg * BodyModel.Gravity);
            case QuantityKind.SupportShare:
                var named = held.Supports.Where(s => q.Contacts!.Contains(s.Contact.Point));
                return 100 * named.Sum(s => s.Force.Y) / (model.MassKg * BodyModel.Gravity);
            case QuantityKind.JointForce:
                return held.JointForces is { } forces
                    ? 100 * forces[(q.Joint!.Value, side)]
                    : Calculated.NotYet("Joint forces are not calculated yet.");
            case QuantityKind.Effort:
                return Effort(held, q, side);
            case QuantityKind.ActionShare:
                return Share(held, q, person, side);
            case QuantityKind.PathLength or QuantityKind.PathChange:
                return 1000 * Length(q.Kind, at.Muscle(q), side, person, held);
            case QuantityKind.MomentArm:
                return Arm(at.Muscle(q), q.Motion!.Value, side, person, held);
            case QuantityKind.GroupArm:
                return GroupArm(q, side, person, held);
            default:
                return PostureOf(q, side, held);
        }
    }

    private static Calculated Effort(HeldBody held, QuantityFile q, Side side)
    {
        if (held is not { Efforts: { } efforts, Lines: { } lines })
            return Calculated.NotYet("Muscle effort is not calculated yet.");
        if (q.Function is { } function)
            return 100 * efforts[(function, side)];
        var named = q.Muscles!.Select(id => lines[(id, side)]).ToArray();
        return 100 * named.Sum(l => l.Activation * l.StrengthN) / named.Sum(l => l.StrengthN);
    }

    private Calculated Share(HeldBody held, QuantityFile q, string person, Side side)
    {
        var angle = Posture.ClinicalAngle(held, q.Action!.Value.Coordinate(side).Motion, side);
        return people.Capacity(person, q.Action.Value, angle) is { } torque
            ? 100 * Math.Max(0, Moment(held, q)) / torque
            : Calculated.No("Nothing is published for it.");
    }

    private static Calculated PostureOf(QuantityFile q, Side side, HeldBody held) => q.Kind switch
    {
        QuantityKind.JointPlace => 1000 * Posture.Place(held, q.Segment!.Value, q.Within, q.Axis!, side),
        QuantityKind.Lean => Posture.Lean(held, q.Segment!.Value, side) / Degree,
        QuantityKind.Angle => Posture.ClinicalAngle(held, q.Motion!.Value, side) / Degree,
        _ => Posture.FreeBody(held, side) / held.Model.MassKg,
    };

    private static double Moment(HeldBody held, QuantityFile q)
    {
        var (index, sign) = q.Action!.Value.On(held.Model, q.Limb.On(Working));
        return sign * held.Moments[index];
    }

    private MuscleState MuscleStateOf(string person, HeldBody held)
    {
        var state = new MuscleState(people.Muscles(person), people.Use(person));
        state.Update(held.State, held.Placed.Pose);
        return state;
    }

    private double Length(QuantityKind kind, string muscle, Side side, string person, HeldBody held)
    {
        var state = MuscleStateOf(person, held);
        var index = state.Set.IndexOf(muscle, side);
        return kind == QuantityKind.PathLength ? state.Lengths[index] : state.Lengthening(index).ChangeM;
    }

    private double Arm(string muscle, Motion motion, Side side, string person, HeldBody held)
    {
        var state = MuscleStateOf(person, held);
        return 1000 * state.Arm(state.Set.IndexOf(muscle, side), held.Model.IndexOf(motion, Posture.SideOf(motion, side)));
    }

    private double GroupArm(QuantityFile q, Side side, string person, HeldBody held)
    {
        var set = people.Muscles(person);
        double Force(string id) => set.Muscles[set.IndexOf(id, side)].ForceN;
        return q.Muscles!.Sum(id => Force(id) * Arm(id, q.Motion!.Value, side, person, held)) / q.Muscles!.Sum(Force);
    }

    private PoseInput Input(QuantityFile q, Place at)
    {
        if (q.Along is not { } along)
            return people.Checks.Poses[q.Pose ?? at.Pose!];
        var poses = along.Select(name => people.Checks.Poses[name]).ToArray();
        var movement = new Movement { Frames = [.. poses.Select(p => p.Frame)], Props = [], Loads = poses[0].Loads, View = ViewKind.Side };
        return new PoseInput(FrameBetween.At(movement, at.Fraction), poses[0].Loads) { Pulls = poses[0].Pulls };
    }

    /// <summary>Where the first two operands are equal, told by the third: the first change of sign along the poses, halved until it stands.</summary>
    private Calculated Crossing(QuantityFile q, Place at)
    {
        Calculated Gap(double fraction) => Combined(q with { Of = [q.Of[0], q.Of[1]] }, at with { Fraction = fraction }, v => v[0] - v[1]);
        (double At, double Gap)? before = null;
        string? why = null;
        for (var step = 0; step <= Steps; step++)
        {
            var gap = Gap((double)step / Steps);
            why ??= gap.Why;
            if (gap.Value is not { } value)
            {
                before = null;
                continue;
            }

            if (before is { } last && last.Gap * value <= 0)
            {
                var (low, high) = (last.At, (double)step / Steps);
                for (var halving = 0; halving < 20; halving++)
                {
                    var middle = (low + high) / 2;
                    if (Gap(middle).Value is not { } between)
                        break;
                    (low, high) = between * last.Gap > 0 ? (middle, high) : (low, middle);
                }

                return Of(q.Of[2], at with { Fraction = (low + high) / 2 });
            }

            before = ((double)step / Steps, value);
        }

        return Calculated.No(why ?? "They do not cross.");
    }

    private Calculated Largest(QuantityFile q, Place at)
    {
        var best = (At: -1.0, Value: double.NegativeInfinity);
        string? why = null;
        for (var step = 0; step <= Steps; step++)
        {
            var fraction = (double)step / Steps;
            var found = Of(q.Of[0], at with { Fraction = fraction });
            why ??= found.Why;
            if (found.Value > best.Value)
                best = (fraction, found.Value.Value);
        }

        return best.At < 0 ? Calculated.No(why!) : Of(q.Of[1], at with { Fraction = best.At });
    }
}

/// <summary>Where a quantity is calculated: what the check gives, the row of a table, a variation, and how far along poses.</summary>
internal sealed record Place(CheckFile Check, Variation Variation, string? Row = null, double Fraction = 0)
{
    internal string? Pose => Check.Pose;

    internal string Person(QuantityFile q) => q.Person ?? Check.Person!;

    internal string Muscle(QuantityFile q) => q.Muscle ?? Row!;
}
