using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>
/// Which equation each joint coordinate has in the balance of a body, and which unknowns work on it: made once for a body. Limbs
/// come first, then trunk and neck, the six equations of the whole body last, so that limbs meet only at the end of the elimination.
/// </summary>
internal sealed class BalanceLayout
{
    internal const int RootRows = 6;

    internal BalanceLayout(MuscleSet muscles)
    {
        Muscles = muscles;
        var model = muscles.Model;
        RowOf = new int[model.Coordinates.Length];
        Array.Fill(RowOf, -1);
        foreach (var k in Enumerable.Range(0, model.Coordinates.Length)
            .Where(k => model.Coordinates[k].Motion != Motion.ToeExtension).OrderBy(k => Place(model.Coordinates[k])).ThenBy(k => k))
            RowOf[k] = JointRows++;
        Chains = [.. Enumerable.Range(0, model.Segments.Length).Select(Chain)];
        Lines = [.. Enumerable.Range(0, muscles.Muscles.Length).Select(Line).OfType<MuscleLine>()];
        Hips = [.. new[] { Side.Right, Side.Left }.Select(Hip)];
        Driven = new bool[model.Coordinates.Length];
        foreach (var entry in Lines.SelectMany(l => l.Entries))
            Driven[entry.Coordinate] = true;
    }

    internal MuscleSet Muscles { get; }

    /// <summary>Equation of each coordinate; -1 for the toes, which are left out: they carry little and the toe muscles' arms are rough.</summary>
    internal int[] RowOf { get; }

    /// <summary>How many joint equations there are; the six of the whole body follow.</summary>
    internal int JointRows { get; }

    internal int Rows => JointRows + RootRows;

    /// <summary>For each segment the coordinates between pelvis and segment, by rising equation.</summary>
    internal ImmutableArray<ImmutableArray<(int Row, int Coordinate)>> Chains { get; }

    /// <summary>The muscle lines that share effort: those of the legs.</summary>
    internal ImmutableArray<MuscleLine> Lines { get; }

    /// <summary>The lines that cross each hip, the right one first.</summary>
    internal ImmutableArray<HipLines> Hips { get; }

    /// <summary>Whether muscles work on a coordinate; the others have torque actuators.</summary>
    internal bool[] Driven { get; }

    private static int Place(JointCoordinate coordinate) => coordinate.Motion switch
    {
        Motion.HipFlexion or Motion.HipAdduction or Motion.HipRotation or Motion.KneeExtension or Motion.AnkleDorsiflexion
            or Motion.SubtalarInversion => coordinate.Side == Side.Right ? 0 : 1,
        Motion.TrunkExtension or Motion.TrunkBending or Motion.TrunkRotation => 5,
        Motion.NeckExtension or Motion.NeckBending or Motion.NeckRotation => 4,
        _ => coordinate.Side == Side.Right ? 2 : 3,
    };

    private ImmutableArray<(int Row, int Coordinate)> Chain(int segment)
    {
        var model = Muscles.Model;
        var chain = new List<(int Row, int Coordinate)>();
        for (var s = segment; s > 0; s = model.Segments[s].Parent)
        {
            for (var k = model.Segments[s].FirstCoordinate; k < model.Segments[s].FirstCoordinate + model.Segments[s].CoordinateCount; k++)
            {
                if (RowOf[k] >= 0)
                    chain.Add((RowOf[k], k));
            }
        }

        return [.. chain.OrderBy(c => c.Row)];
    }

    private MuscleLine? Line(int index)
    {
        // The three trunk lines a side are not the trunk's strength: its net moment is held against published capacities.
        var muscle = Muscles.Muscles[index];
        if (muscle.ForceN <= 0 || muscle.Function is MuscleFunction.TrunkFlexor or MuscleFunction.TrunkExtensor)
            return null;
        var entries = Enumerable.Range(muscle.FirstArm, muscle.ArmCount)
            .Select(a => (Row: RowOf[Muscles.ArmCoordinates[a]], Arm: a, Coordinate: Muscles.ArmCoordinates[a]))
            .Where(e => e.Row >= 0).OrderBy(e => e.Row).ToImmutableArray();
        var motions = entries.Select(e => Muscles.Model.Coordinates[e.Coordinate].Motion).ToArray();
        var (first, second) = Strengths(muscle.Function, motions);
        return new MuscleLine(index, muscle.ForceN, entries, On(first, muscle.Side), second is { } also ? On(also, muscle.Side) : null);
    }

    private HipLines Hip(Side side)
    {
        var model = Muscles.Model;
        int[] axes = [.. new[] { Motion.HipFlexion, Motion.HipAdduction, Motion.HipRotation }.Select(m => model.IndexOf(m, side))];
        var crossing = Enumerable.Range(0, Lines.Length).Where(i => Lines[i].Entries.Any(e => e.Coordinate == axes[0]));
        return new HipLines(
            [.. axes],
            [.. crossing.Select(i => new HipLine(i, [.. axes.Select(axis => Lines[i].Entries.Single(e => e.Coordinate == axis).Arm)]))],
            [.. Lines.Select(l => l.First).Where(a => axes.Contains(a.Coordinate)).Distinct().OrderBy(a => a.Coordinate).ThenBy(a => a.Sign)]);
    }

    private (int Coordinate, int Sign) On(JointAction action, Side side) => action.On(Muscles.Model, side);

    /// <summary>The action whose measured strength scales a muscle; two-joint thigh muscles belong to two.</summary>
    private static (JointAction First, JointAction? Second) Strengths(MuscleFunction function, Motion[] crossed) => function switch
    {
        MuscleFunction.HipFlexor => (JointAction.HipFlexion, null),
        MuscleFunction.HipExtensor => (JointAction.HipExtension, null),
        MuscleFunction.HipAbductor => (JointAction.HipAbduction, null),
        MuscleFunction.HipAdductor => (JointAction.HipAdduction, null),
        MuscleFunction.HipExternalRotator => (JointAction.HipExternalRotation, null),
        MuscleFunction.Hamstring => (JointAction.KneeFlexion, crossed.Contains(Motion.HipFlexion) ? JointAction.HipExtension : null),
        MuscleFunction.KneeExtensor => (JointAction.KneeExtension, crossed.Contains(Motion.HipFlexion) ? JointAction.HipFlexion : null),
        MuscleFunction.AnkleDorsiflexor or MuscleFunction.ToeExtensor => (JointAction.AnkleDorsiflexion, null),
        _ => (JointAction.AnklePlantarflexion, null),
    };
}

/// <summary>A muscle line in the balance.</summary>
/// <param name="Muscle">Index into the muscle set.</param>
/// <param name="ForceN">Published force it may share out, newtons.</param>
/// <param name="Entries">Its equations, rising, with the index of the arm and the coordinate.</param>
/// <param name="First">Coordinate and sign of the action whose measured strength scales it.</param>
/// <param name="Second">The same for a second action; null for none.</param>
internal sealed record MuscleLine(
    int Muscle, double ForceN, ImmutableArray<(int Row, int Arm, int Coordinate)> Entries, (int Coordinate, int Sign) First,
    (int Coordinate, int Sign)? Second);

/// <summary>The muscle lines that cross one hip.</summary>
/// <param name="Axes">The hip's three coordinates.</param>
/// <param name="Lines">The lines.</param>
/// <param name="Actions">Coordinate and sign of the actions whose measured strength scales lines.</param>
internal sealed record HipLines(ImmutableArray<int> Axes, ImmutableArray<HipLine> Lines, ImmutableArray<(int Coordinate, int Sign)> Actions);

/// <summary>A line that crosses a hip.</summary>
/// <param name="Line">Index of the line in the balance.</param>
/// <param name="Arms">Index of its arm about each of the hip's axes.</param>
internal sealed record HipLine(int Line, ImmutableArray<int> Arms);
