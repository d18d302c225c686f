using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>
/// The least-squares problem of settling: height, pitch, roll and yaw of the pelvis, the distance of each wall and every joint
/// angle; rows for each contact's gap, each tie and each point of the skin in floor or wall; pulls toward the author's angles;
/// no joint leaves its usual range. Gauss-Newton with a projected active set; every step lowers the sum of squares.
/// </summary>
internal sealed class SettlingProblem
{
    // What one unit of misfit is worth: a contact half a millimetre off weighs as much as three degrees of a joint.
    private const double GapUnit = 0.0005;
    private const double SkinUnit = 0.002;
    private const double Sinks = 0.005;
    private const double JointUnit = 3 * Math.PI / 180;
    private const double PitchUnit = 6 * Math.PI / 180;

    // Rolling is dear: a body on its side must not turn onto its front or back to hide a misfit.
    private const double RollUnit = 0.5 * Math.PI / 180;
    private const double LongestStep = 0.2;
    private const int Halvings = 6;

    // Columns: height, pitch, roll, yaw, the walls, the joints.
    private const int Joints = 4 + MostWalls;
    private const int MostWalls = 6;

    private readonly BodyModel model;
    private readonly BodyState state;
    private readonly SettlingRows rows;
    private readonly (int Segment, Vec3 Local)[] skin;
    private readonly double[] authored;
    private readonly double[] least;
    private readonly double[] most;
    private readonly double[] stiffness;
    private readonly double[] inverse;
    private readonly double[] pulls;
    private readonly double[] gradient;
    private readonly double[] step;
    private readonly bool[] atEnd;
    private readonly double[] angles;
    private readonly double[] walls = new double[MostWalls];
    private Laid laid = null!;
    private bool turns;
    private Vec3 lean;

    internal SettlingProblem(BodyState state, SurfacePoints points)
    {
        this.state = state;
        model = state.Model;
        var count = model.Coordinates.Length;
        rows = new SettlingRows(Joints + count);
        skin = Skin(model, points);
        authored = new double[count];
        least = new double[count];
        most = new double[count];
        stiffness = new double[count];
        atEnd = new bool[count];
        angles = new double[count];
        inverse = new double[Joints + count];
        pulls = new double[Joints + count];
        gradient = new double[Joints + count];
        step = new double[Joints + count];
        for (var k = 0; k < count; k++)
            stiffness[k] = Ease(model.Coordinates[k].Motion) / JointUnit;
    }

    /// <summary>Takes a laid frame whose state is current.</summary>
    internal void Begin(Laid frame)
    {
        laid = frame;
        turns = frame.WallsAt.Length > 0 || frame.Planes.Any(p => p.Reference >= 0);
        lean = Vec3.Zero;
        Array.Clear(atEnd);
        for (var k = 0; k < authored.Length; k++)
        {
            // An author may go beyond the usual range on purpose; settling may not go farther.
            var coordinate = model.Coordinates[k];
            authored[k] = frame.Pose.Angles[k];
            least[k] = Math.Min(coordinate.NormalLeast, authored[k]);
            most[k] = Math.Max(coordinate.NormalMost, authored[k]);
        }
    }

    /// <summary>Starts where a neighbor ended when that is nearer to the goal.</summary>
    internal void StartFrom(SettledStart start)
    {
        if (start.Given.Length != authored.Length)
            return;
        var cost = Cost();
        var (rotation, position) = (laid.Pose.PelvisRotation, laid.Pose.PelvisPosition);
        for (var k = 0; k < authored.Length; k++)
            laid.Pose.Angles[k] = Math.Clamp(authored[k] + start.Given[k], least[k], most[k]);
        lean = turns ? start.Lean : start.Lean with { Y = 0 };
        laid.Pose.PelvisRotation = Turned(lean) * rotation;
        Refresh();
        Rest();
        if (Cost() <= cost)
            return;
        authored.CopyTo(laid.Pose.Angles, 0);
        lean = Vec3.Zero;
        (laid.Pose.PelvisRotation, laid.Pose.PelvisPosition) = (rotation, position);
        Refresh();
        laid.UpdateWalls();
    }

    internal SettledStart End() => new([.. laid.Pose.Angles.Select((angle, k) => angle - authored[k])], lean);

    /// <summary>Whether some part of the skin goes through the floor or a wall.</summary>
    internal bool Sinking()
    {
        foreach (var (segment, local) in skin)
        {
            var point = state.Point(segment, local);
            if (point.Y < -Sinks)
                return true;
            for (var wall = 0; wall < laid.WallsAt.Length; wall++)
            {
                if (laid.WallNormals[wall].Dot(point) - laid.WallsAt[wall] < -Sinks)
                    return true;
            }
        }

        return false;
    }

    /// <summary>Height of the lowest point of the skin, metres.</summary>
    internal double Lowest()
    {
        var lowest = double.PositiveInfinity;
        foreach (var (segment, local) in skin)
            lowest = Math.Min(lowest, state.Point(segment, local).Y);
        return lowest;
    }

    /// <summary>One step; returns how far it went (the largest of radians and metres), 0 when nothing gets better.</summary>
    internal double Step()
    {
        var before = Cost();
        Assemble();
        rows.Solve(inverse, pulls, step);

        // A step longer than about eleven degrees is cut: angles are far from straight lines beyond it.
        var largest = 0.0;
        foreach (var part in step)
            largest = Math.Max(largest, Math.Abs(part));
        var share = largest > LongestStep ? LongestStep / largest : 1;
        laid.Pose.Angles.CopyTo(angles, 0);
        laid.WallsAt.CopyTo(walls, 0);
        var (rotation, position, leaned) = (laid.Pose.PelvisRotation, laid.Pose.PelvisPosition, lean);
        for (var halving = 0; halving <= Halvings; halving++, share /= 2)
        {
            var moved = Apply(share, rotation, position, leaned);
            Refresh();
            if (Cost() <= before)
                return moved;
        }

        Apply(0, rotation, position, leaned);
        Refresh();
        return 0;
    }

    internal ImmutableArray<JointChange> Changes() =>
    [
        .. Enumerable.Range(0, authored.Length)
            .Select(k => new JointChange(model.Coordinates[k].Motion, model.Coordinates[k].Side, authored[k], laid.Pose.Angles[k]))
            .Where(c => c.Size >= Settling.Told)
            .OrderByDescending(c => Math.Round(c.Size, 9))
            .ThenBy(c => c.Motion)
            .ThenBy(c => c.Side),
    ];

    /// <summary>Joints held at the end of their range while the contacts would push them farther, the hardest pushed first.</summary>
    internal ImmutableArray<JointEnd> Ends() =>
    [
        .. Enumerable.Range(0, authored.Length)
            .Where(k => atEnd[k] && Math.Abs(gradient[Joints + k]) > 1)
            .OrderByDescending(k => Math.Round(Math.Abs(gradient[Joints + k]), 6))
            .Select(k => new JointEnd(
                model.Coordinates[k].Motion, model.Coordinates[k].Side, laid.Pose.Angles[k], laid.Pose.Angles[k] >= most[k])),
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

    private static (int Segment, Vec3 Local)[] Skin(BodyModel model, SurfacePoints points)
    {
        var ordered = points.Ordered;
        var skin = new (int Segment, Vec3 Local)[ordered.Length + ordered.Count(p => p.BothSides)];
        var next = 0;
        foreach (var point in ordered)
        {
            skin[next++] = point.On(model, Side.Right);
            if (point.BothSides)
                skin[next++] = point.On(model, Side.Left);
        }

        return skin;
    }

    private static Mat3 Turned(Vec3 by) =>
        Mat3.Rotation(Vec3.UnitY, by.Y) * Mat3.Rotation(Vec3.UnitZ, by.Z) * Mat3.Rotation(Vec3.UnitX, by.X);

    /// <summary>Writes the start plus a share of the step into the pose; returns the largest part that moved.</summary>
    private double Apply(double share, in Mat3 rotation, Vec3 position, Vec3 leaned)
    {
        var by = new Vec3(share * step[2], share * step[3], share * step[1]);
        lean = leaned + by;
        laid.Pose.PelvisRotation = share > 0 ? Turned(by) * rotation : rotation;
        laid.Pose.PelvisPosition = position + new Vec3(0, share * step[0], 0);
        var moved = Math.Max(Math.Max(Math.Abs(by.X), Math.Abs(by.Y)), Math.Max(Math.Abs(by.Z), Math.Abs(share * step[0])));
        for (var wall = 0; wall < laid.WallsAt.Length; wall++)
        {
            laid.WallsAt[wall] = walls[wall] + share * step[4 + wall];
            moved = Math.Max(moved, Math.Abs(share * step[4 + wall]));
        }

        for (var k = 0; k < authored.Length; k++)
        {
            laid.Pose.Angles[k] = Math.Clamp(angles[k] + share * step[Joints + k], least[k], most[k]);
            moved = Math.Max(moved, Math.Abs(laid.Pose.Angles[k] - angles[k]));
        }

        return moved;
    }

    private void Refresh()
    {
        state.Update(laid.Pose);
        laid.UpdatePoints(state);
    }

    /// <summary>Sets height and walls to the middle of what touches, without turning or bending.</summary>
    private void Rest()
    {
        var sum = 0.0;
        var count = 0;
        for (var i = 0; i < laid.Planes.Length; i++)
        {
            if (laid.Planes[i].Wall >= 0 || laid.Planes[i].Reference >= 0)
                continue;
            sum += laid.Gap(i);
            count++;
        }

        if (count > 0)
            laid.Pose.PelvisPosition -= new Vec3(0, sum / count, 0);
        Refresh();
        laid.UpdateWalls();
    }

    /// <summary>The sum of squares that settling lowers.</summary>
    private double Cost()
    {
        var cost = Square(lean.Z / PitchUnit) + Square(lean.X / RollUnit) + Square(lean.Y / PitchUnit);
        for (var k = 0; k < authored.Length; k++)
            cost += Square((laid.Pose.Angles[k] - authored[k]) * stiffness[k]);
        for (var i = 0; i < laid.Planes.Length; i++)
            cost += Square(laid.Gap(i) / GapUnit);
        for (var i = 0; i < laid.Ties.Length; i++)
        {
            var apart = Apart(i);
            cost += laid.Ties[i].Kind == TieKind.Hold ? apart.Dot(apart) / (GapUnit * GapUnit)
                : laid.Ties[i].LengthM is { } length ? Square((apart.Length - length) / GapUnit) : 0;
        }

        foreach (var (segment, local) in skin)
        {
            var point = state.Point(segment, local);
            if (laid.Points.Length > 0)
                cost += Square(Math.Min(0, point.Y + Sinks) / SkinUnit);
            for (var wall = 0; wall < laid.WallsAt.Length; wall++)
                cost += Square(Math.Min(0, laid.WallNormals[wall].Dot(point) - laid.WallsAt[wall] + Sinks) / SkinUnit);
        }

        return cost;

        static double Square(double value) => value * value;
    }

    private Vec3 Apart(int tie)
    {
        var ((from, fromLocal), (to, toLocal)) = (laid.TieEnds[2 * tie], laid.TieEnds[2 * tie + 1]);
        return state.Point(to, toLocal) - state.Point(from, fromLocal);
    }

    private void Assemble()
    {
        rows.Clear();
        for (var i = 0; i < laid.Planes.Length; i++)
        {
            ref readonly var plane = ref laid.Planes[i];
            var row = rows.Add(laid.Gap(i) / GapUnit);
            var direction = (1 / GapUnit) * plane.Normal;
            AddPoint(row, laid.At[i].Segment, laid.Points[i], direction);
            if (plane.Reference >= 0)
                AddPoint(row, laid.At[plane.Reference].Segment, laid.Points[plane.Reference], -direction);
            if (plane.Wall >= 0)
                row[4 + plane.Wall] = -1 / GapUnit;
        }

        for (var i = 0; i < laid.Ties.Length; i++)
            AddTie(i);
        AddSkin();
        AddPulls();
    }

    private void AddTie(int i)
    {
        var tie = laid.Ties[i];
        var apart = Apart(i);
        if (tie.Kind == TieKind.Hold)
        {
            AddTieRow(i, apart.X / GapUnit, (1 / GapUnit) * Vec3.UnitX);
            AddTieRow(i, apart.Y / GapUnit, (1 / GapUnit) * Vec3.UnitY);
            AddTieRow(i, apart.Z / GapUnit, (1 / GapUnit) * Vec3.UnitZ);
        }
        else if (tie.LengthM is { } wanted)
        {
            // Two points that coincide have no direction to be drawn apart; up serves.
            var length = apart.Length;
            AddTieRow(i, (length - wanted) / GapUnit, (1 / GapUnit) * (length > 1e-9 ? (1 / length) * apart : Vec3.UnitY));
        }
    }

    private void AddTieRow(int i, double residual, Vec3 direction)
    {
        var ((from, fromLocal), (to, toLocal)) = (laid.TieEnds[2 * i], laid.TieEnds[2 * i + 1]);
        var row = rows.Add(residual);
        AddPoint(row, to, state.Point(to, toLocal), direction);
        AddPoint(row, from, state.Point(from, fromLocal), -direction);
    }

    /// <summary>No part of the skin goes through the floor or a wall: points that do are brought to just under it.</summary>
    private void AddSkin()
    {
        foreach (var (segment, local) in skin)
        {
            var point = state.Point(segment, local);
            if (point.Y < -Sinks && laid.Points.Length > 0)
                AddPoint(rows.Add((point.Y + Sinks) / SkinUnit), segment, point, (1 / SkinUnit) * Vec3.UnitY);
            for (var wall = 0; wall < laid.WallsAt.Length; wall++)
            {
                var above = laid.WallNormals[wall].Dot(point) - laid.WallsAt[wall];
                if (above >= -Sinks)
                    continue;
                var row = rows.Add((above + Sinks) / SkinUnit);
                AddPoint(row, segment, point, (1 / SkinUnit) * laid.WallNormals[wall]);
                row[4 + wall] = -1 / SkinUnit;
            }
        }
    }

    /// <summary>Adds how the point moves along a direction for each column: the joints between it and the pelvis, and the pelvis itself.</summary>
    private void AddPoint(Span<double> row, int segment, Vec3 point, Vec3 direction)
    {
        var arm = point - state.Origins[0];
        row[0] += direction.Y;
        row[1] += direction.Y * arm.X - direction.X * arm.Y;
        row[2] += direction.Z * arm.Y - direction.Y * arm.Z;
        row[3] += direction.X * arm.Z - direction.Z * arm.X;
        for (var s = segment; s > 0; s = model.Segments[s].Parent)
        {
            var joint = model.Segments[s];
            var fromJoint = point - state.Origins[s];
            for (var k = joint.FirstCoordinate; k < joint.FirstCoordinate + joint.CoordinateCount; k++)
                row[Joints + k] += direction.Dot(state.Axes[k].Cross(fromJoint) + state.Slides[k]);
        }
    }

    /// <summary>Pulls, and which joints must stay at the end of their range: those that everything together would push farther.</summary>
    private void AddPulls()
    {
        // Height and walls are free; a touch of damping keeps the system regular and does not move the optimum.
        inverse.AsSpan(0, Joints).Fill(1);
        inverse[1] = PitchUnit * PitchUnit;
        inverse[2] = RollUnit * RollUnit;
        inverse[3] = turns ? PitchUnit * PitchUnit : 0;
        pulls[1] = lean.Z / (PitchUnit * PitchUnit);
        pulls[2] = lean.X / (RollUnit * RollUnit);
        pulls[3] = lean.Y / (PitchUnit * PitchUnit);
        for (var k = 0; k < authored.Length; k++)
        {
            var weight = stiffness[k] * stiffness[k];
            inverse[Joints + k] = 1 / weight;
            pulls[Joints + k] = weight * (laid.Pose.Angles[k] - authored[k]);
        }

        pulls.CopyTo(gradient, 0);
        rows.AddGradient(gradient);
        for (var k = 0; k < authored.Length; k++)
        {
            var push = gradient[Joints + k];
            atEnd[k] = (laid.Pose.Angles[k] <= least[k] && push > 0) || (laid.Pose.Angles[k] >= most[k] && push < 0);
            if (atEnd[k])
                inverse[Joints + k] = 0;
        }
    }
}
