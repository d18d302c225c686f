using MomentArm.Body;
using MomentArm.Content;

namespace MomentArm.Cli;

/// <summary>What body pose tells, with the unit in every name. Rounded to what the model can carry.</summary>
internal sealed record PoseReport(
    string Pose,
    Side WorkingSide,
    double StatureM,
    double MassKg,
    IReadOnlyList<PoseMoment> Moments,
    IReadOnlyList<PoseContact> Contacts,
    IReadOnlyList<PoseJointForce> JointForces,
    IReadOnlyList<PoseEffort> Efforts,
    IReadOnlyList<PoseMuscle> Muscles,
    IReadOnlyList<PoseChange> Settled,
    double LargestGapMm,
    double MassCenterForwardMm,
    double MassCenterRightMm,
    double MassCenterHeightMm,
    IReadOnlyList<string> Problems,
    IReadOnlyList<string> Assumptions)
{
    private const double Degree = Math.PI / 180;

    internal static PoseReport Of(HeldBody held, MuscleSet muscles, PoseInput input, Side side)
    {
        var state = new MuscleState(muscles);
        state.Update(held.State, held.Placed.Pose);
        var center = held.State.MassCenter();
        var (ahead, right) = Facing(held);
        return new PoseReport(
            input.Frame.Name, side, Rounded(held.Model.StatureM, 3), Rounded(held.Model.MassKg, 1),
            [.. MomentsOf(held)],
            [.. ContactsOf(held, ahead, right)],
            [.. (held.JointForces ?? new Dictionary<(LoadedJoint, Side), double>()).Select(f => new PoseJointForce(f.Key.Item1, f.Key.Item2, Rounded(100 * f.Value, 0)))],
            [.. (held.Efforts ?? new Dictionary<(MuscleFunction, Side), double>()).Where(e => e.Value >= 0.005)
                .Select(e => new PoseEffort(e.Key.Item1, e.Key.Item2, Rounded(100 * e.Value, 1)))],
            [.. muscles.Muscles.Select((m, i) => new PoseMuscle(
                m.Id, m.Name, m.Side, Rounded(1000 * state.Lengths[i], 1), Rounded(1000 * state.Lengthening(i).ChangeM, 1),
                Rounded(state.Lengthening(i).PercentOfRange, 1), state.Extrapolated[i]))],
            [.. held.Placed.Changes.Select(c => new PoseChange(
                c.Motion, c.Side, Rounded(Clinical(c.Motion, c.From) / Degree, 1), Rounded(Clinical(c.Motion, c.To) / Degree, 1)))],
            Rounded(1000 * held.Placed.LargestGapM, 2),
            Rounded(1000 * center.Dot(ahead), 1),
            Rounded(1000 * center.Dot(right), 1),
            Rounded(1000 * center.Y, 1),
            held.Problems, held.Model.Assumptions);
    }

    /// <summary>Each joint coordinate with an action once, in the direction that is asked: no action shows a negative moment.</summary>
    private static IEnumerable<PoseMoment> MomentsOf(HeldBody held)
    {
        foreach (var action in Enum.GetValues<JointAction>())
        {
            foreach (var side in new[] { Side.Right, Side.Left })
            {
                var (index, sign) = action.On(held.Model, side);
                var moment = sign * held.Moments[index];
                if (moment >= 0.05 && !(action.IsMidline() && action != JointAction.TrunkSideBend && side == Side.Left))
                {
                    yield return new PoseMoment(
                        action, action.IsMidline() && action != JointAction.TrunkSideBend ? null : side, Rounded(moment, 2), Rounded(moment / held.Model.MassKg, 3),
                        Rounded(Posture.ClinicalAngle(held, held.Model.Coordinates[index].Motion, side) / Degree, 1));
                }
            }
        }
    }

    /// <summary>Level directions forward and right of the pelvis; of the room when the pelvis faces up or down.</summary>
    private static (Vec3 Ahead, Vec3 Right) Facing(HeldBody held)
    {
        var axis = held.State.Rotations[0] * Vec3.UnitX;
        var level = new Vec3(axis.X, 0, axis.Z);
        var ahead = level.Length > 0.1 ? level.Normalized() : Vec3.UnitX;
        return (ahead, ahead.Cross(Vec3.UnitY));
    }

    /// <summary>Each named contact; without forces when the pose cannot be held.</summary>
    private static IEnumerable<PoseContact> ContactsOf(HeldBody held, Vec3 ahead, Vec3 right) =>
        held.Placed.Contacts.GroupBy(c => (c.Contact.Point, c.Contact.Limb)).Select(group =>
        {
            var up = held.Supports.Where(s => (s.Contact.Point, s.Contact.Limb) == group.Key).Sum(s => s.NormalN);
            double Mean(Vec3 axis) => Rounded(1000 * group.Average(c => c.Point.Dot(axis)), 1);
            return new PoseContact(
                group.Key.Point, group.Key.Limb, Rounded(up, 1), Rounded(100 * up / (held.Model.MassKg * BodyModel.Gravity), 1), Mean(ahead), Mean(right));
        });

    private static double Clinical(Motion motion, double angle) => Posture.IsTurnedRound(motion) ? -angle : angle;

    private static double Rounded(double value, int decimals) => Math.Round(value, decimals) + 0.0;
}

/// <summary>Moment of one joint action.</summary>
internal sealed record PoseMoment(JointAction Action, Side? Side, double MomentNm, double MomentNmPerKg, double ClinicalAngleDeg);

/// <summary>Force between the bones of a joint.</summary>
internal sealed record PoseJointForce(LoadedJoint Joint, Side Side, double PercentOfBodyWeight);

/// <summary>Effort of a muscle group, an estimate.</summary>
internal sealed record PoseEffort(MuscleFunction Function, Side Side, double EffortPercent);

/// <summary>Force of the surface on a contact, and the middle of its points from the first contact point.</summary>
internal sealed record PoseContact(
    string Point, Limb? Limb, double ForceN, double PercentOfBodyWeight, double ForwardMm, double RightMm);

/// <summary>Length of one muscle.</summary>
internal sealed record PoseMuscle(
    string Id, string Name, Side Side, double LengthMm, double ChangeFromNeutralMm, double PercentOfRange, bool BeyondTrustedAngles);

/// <summary>A joint that gave way, clinical sign.</summary>
internal sealed record PoseChange(Motion Motion, Side? Side, double FromDeg, double ToDeg);
