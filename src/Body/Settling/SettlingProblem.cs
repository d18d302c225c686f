using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>
/// The least-squares problem of settling: height, pitch and roll of the pelvis and every joint angle; rows for each contact's
/// gap and for staying near the author's angles; no joint leaves its usual range.
/// </summary>
internal sealed class SettlingProblem
{
    // What one unit of misfit is worth: a contact half a millimetre off weighs as much as three degrees of a joint.
    private const double GapUnit = 0.0005;
    private const double FloorUnit = 0.002;
    private const double Sinks = 0.005;
    private const double JointUnit = 3 * Math.PI / 180;
    private const double PitchUnit = 6 * Math.PI / 180;

    // Rolling is dear: a body on its side must not turn onto its front or back to hide a misfit.
    private const double RollUnit = 0.5 * Math.PI / 180;
    private const double LongestStep = 0.2;

    private readonly BodyModel model;
    private readonly PlacedContact[] level;
    private readonly (int Segment, Vec3 Local)[] skin;
    private readonly double[] authored;
    private readonly double[] least;
    private readonly double[] most;
    private readonly double[] stiffness;
    private readonly bool[] atEnd;
    private readonly double[] hessian;
    private readonly double[] gradient;
    private readonly double[] row;
    private double pitched;
    private double rolled;

    internal SettlingProblem(BodyModel model, SurfacePoints points, PlacedBody placed)
    {
        this.model = model;
        skin = [.. Skin(model, points)];
        level = [.. placed.Contacts.Where(c => c.Contact.Surface != SurfaceKind.Wall)];
        authored = [.. placed.Pose.Angles];
        var count = authored.Length;

        // An author may go beyond the usual range on purpose; settling may not go farther.
        least = new double[count];
        most = new double[count];
        stiffness = new double[count];
        atEnd = new bool[count];
        for (var k = 0; k < count; k++)
        {
            var coordinate = model.Coordinates[k];
            least[k] = Math.Min(coordinate.NormalLeast, authored[k]);
            most[k] = Math.Max(coordinate.NormalMost, authored[k]);
            stiffness[k] = Ease(coordinate.Motion) / JointUnit;
        }

        hessian = new double[(count + 3) * (count + 3)];
        gradient = new double[count + 3];
        row = new double[count + 3];
    }

    /// <summary>Whether some part of the skin goes through the floor.</summary>
    internal bool SinksIntoFloor(BodyState state) => skin.Any(p => state.Point(p.Segment, p.Local).Y < -Sinks);

    /// <summary>One damped Gauss-Newton step; returns how far it went (radians and metres together).</summary>
    internal double Step(BodyState state, BodyPose pose)
    {
        Array.Clear(hessian);
        Array.Clear(gradient);
        AddContacts(state);
        AddFloor(state);
        AddPulls(pose);
        DenseCholesky.SolveInPlace(hessian, gradient, gradient.Length);

        // A step longer than about eleven degrees is cut: angles are far from straight lines beyond it.
        var largest = gradient.Max(Math.Abs);
        var cut = largest > LongestStep ? LongestStep / largest : 1;
        var turn = Mat3.Rotation(Vec3.UnitZ, -cut * gradient[1]) * Mat3.Rotation(Vec3.UnitX, -cut * gradient[2]);
        pitched -= cut * gradient[1];
        rolled -= cut * gradient[2];
        pose.PelvisRotation = turn * pose.PelvisRotation;
        pose.PelvisPosition -= new Vec3(0, cut * gradient[0], 0);
        for (var k = 0; k < authored.Length; k++)
        {
            // A joint that comes to the end of its range stays there: the others must do the rest.
            if (atEnd[k])
                continue;
            var wanted = pose.Angles[k] - cut * gradient[k + 3];
            pose.Angles[k] = Math.Clamp(wanted, least[k], most[k]);
            atEnd[k] = pose.Angles[k] != wanted;
        }

        return cut * largest;
    }

    internal ImmutableArray<JointChange> Changes(BodyPose pose) =>
    [
        .. Enumerable.Range(0, authored.Length)
            .Select(k => new JointChange(model.Coordinates[k].Motion, model.Coordinates[k].Side, authored[k], pose.Angles[k]))
            .Where(c => c.Size >= Settling.Told)
            .OrderByDescending(c => Math.Round(c.Size, 9))
            .ThenBy(c => c.Motion)
            .ThenBy(c => c.Side),
    ];

    /// <summary>How unwilling a joint is to give way: limbs bend, the trunk and the head keep what the author gave.</summary>
    private static double Ease(Motion motion) => motion switch
    {
        Motion.TrunkExtension or Motion.TrunkBending or Motion.TrunkRotation => 3,
        Motion.NeckExtension or Motion.NeckBending or Motion.NeckRotation => 3,
        Motion.HipRotation or Motion.HipAdduction => 2,
        Motion.SubtalarInversion or Motion.ToeExtension => 1,
        Motion.HipFlexion or Motion.KneeExtension or Motion.AnkleDorsiflexion => 1,
        Motion.ShoulderFlexion or Motion.ShoulderAdduction or Motion.ElbowFlexion => 1,
        Motion.ShoulderRotation or Motion.ForearmPronation or Motion.WristFlexion or Motion.WristDeviation => 1,
    };

    private void AddContacts(BodyState state)
    {
        foreach (var contact in level)
        {
            var point = state.Point(contact.Segment, contact.Local);
            AddHeight(state, contact.Segment, point, contact.Contact.HeightM, GapUnit);
        }
    }

    /// <summary>No part of the skin goes through the floor: points that do are lifted to just under it.</summary>
    private void AddFloor(BodyState state)
    {
        foreach (var (segment, local) in skin)
        {
            var point = state.Point(segment, local);
            if (point.Y < -Sinks)
                AddHeight(state, segment, point, -Sinks, FloorUnit);
        }
    }

    private void AddHeight(BodyState state, int segment, Vec3 point, double height, double unit)
    {
        var arm = point - state.Origins[0];
        row[0] = 1 / unit;
        row[1] = arm.X / unit;
        row[2] = -arm.Z / unit;
        for (var k = 0; k < authored.Length; k++)
            row[k + 3] = atEnd[k] ? 0 : state.PointVelocity(k, segment, point).Y / unit;
        AddRow((point.Y - height) / unit);
    }

    private static IEnumerable<(int Segment, Vec3 Local)> Skin(BodyModel model, SurfacePoints points)
    {
        foreach (var point in points.Points.Values.OrderBy(p => p.Name, StringComparer.Ordinal))
        {
            yield return point.On(model, Side.Right);
            if (point.BothSides)
                yield return point.On(model, Side.Left);
        }
    }

    private void AddPulls(BodyPose pose)
    {
        var size = gradient.Length;
        hessian[0] += 1e-6;
        AddPull(1, pitched / PitchUnit, 1 / PitchUnit);
        AddPull(2, rolled / RollUnit, 1 / RollUnit);
        for (var k = 0; k < authored.Length; k++)
        {
            AddPull(k + 3, (pose.Angles[k] - authored[k]) * stiffness[k], stiffness[k]);
        }

        void AddPull(int index, double residual, double weight)
        {
            hessian[index * size + index] += weight * weight;
            gradient[index] += weight * residual;
        }
    }

    private void AddRow(double residual)
    {
        var size = gradient.Length;
        for (var i = 0; i < size; i++)
        {
            if (row[i] == 0)
                continue;
            gradient[i] += row[i] * residual;
            for (var j = 0; j <= i; j++)
                hessian[i * size + j] += row[i] * row[j];
        }
    }
}
