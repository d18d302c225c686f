using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>
/// A person's own limits of length, muscle by muscle, from muscle length tests replayed in their own poses; and the reach of any
/// pose against them. Constant and shareable; asking for a reach allocates nothing. See docs/models/body.md.
/// </summary>
public sealed class LengthLimits
{
    /// <summary>Half width of an 80 % interval in standard deviations, as for capacities.</summary>
    public const double EightyPercent = 1.2816;

    /// <summary>Spread between people of the end of a usual joint range, radians (10 degrees: our choice, the length tests print 7 to 10).</summary>
    public const double UsualSpread = 10 * Math.PI / 180;

    /// <summary>Added to the error when a test of one side stands for the other, radians (5 degrees: our choice).</summary>
    public const double OtherSideSpread = 5 * Math.PI / 180;

    /// <summary>Reach never counts a span smaller than this share of the usual range of path length (our choice).</summary>
    private const double LeastSpan = 0.1;

    private static readonly int GroupCount = Enum.GetValues<MuscleGroup>().Length;

    private readonly LengthLimit[] limits;
    private readonly bool[] limited;
    private readonly int[][] members;
    private readonly double[] weights;

    private LengthLimits(MuscleSet set)
    {
        Set = set;
        limits = new LengthLimit[set.Muscles.Length];
        limited = new bool[set.Muscles.Length];
        weights = new double[set.Muscles.Length];
        members = [.. Enumerable.Range(0, 2 * GroupCount).Select(_ => Array.Empty<int>())];
        foreach (var lines in Enumerable.Range(0, limits.Length).Where(Counts).GroupBy(i => Slot(set.Muscles[i].LengthGroup!.Value, set.Muscles[i].Side)))
        {
            members[lines.Key] = [.. lines];
            var force = lines.Sum(i => set.Muscles[i].PublishedForceN);
            foreach (var i in lines)
            {
                weights[i] = set.Muscles[i].PublishedForceN / force;
                limits[i] = Usual(i);
                limited[i] = true;
            }
        }
    }

    /// <summary>The muscles the limits are of.</summary>
    public MuscleSet Set { get; }

    /// <summary>
    /// The limits of a person. For every line the strongest basis counts; among tests of one basis the longest length, since a
    /// length once reached is within reach. A test of one side never limits the other unless it is marked for both.
    /// </summary>
    /// <param name="set">The person's muscles.</param>
    /// <param name="tests">Tests of the person and norms for what was not tested, in any order; may be empty.</param>
    /// <returns>The limits.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A reading or its error is no number, or a reading lies outside what can be true.</exception>
    /// <exception cref="ArgumentException">A test reads a joint that its group does not cross.</exception>
    public static LengthLimits For(MuscleSet set, IEnumerable<LengthTest> tests)
    {
        ArgumentNullException.ThrowIfNull(set);
        ArgumentNullException.ThrowIfNull(tests);
        var made = new LengthLimits(set);
        var state = new BodyState(set.Model);
        var muscles = new MuscleState(set);
        foreach (var test in tests)
        {
            made.Add(test, state, muscles);
            if (test.ForBothSides)
                made.Add(OnOtherSide(test), state, muscles);
        }

        return made;
    }

    /// <summary>The limit of one muscle.</summary>
    /// <param name="muscle">Index of the muscle.</param>
    /// <returns>The limit; null for a muscle of no length group and for parts of the iliotibial band, which are lines for load only.</returns>
    public LengthLimit? Of(int muscle) => limited[muscle] ? limits[muscle] : null;

    /// <summary>The lines of a group.</summary>
    /// <param name="group">The group.</param>
    /// <param name="side">The side.</param>
    /// <returns>Indexes into <see cref="MuscleSet.Muscles"/>, at least one.</returns>
    public ReadOnlySpan<int> MembersOf(MuscleGroup group, Side side) => members[Slot(group, side)];

    /// <summary>The weight of a line in its group: its published force over that of the whole group.</summary>
    /// <param name="muscle">Index of the muscle.</param>
    /// <returns>0 to 1; the weights of a group add to 1; 0 for a line without limit.</returns>
    public double WeightOf(int muscle) => weights[muscle];

    /// <summary>What the limit of a group rests on.</summary>
    /// <param name="group">The group.</param>
    /// <param name="side">The side.</param>
    /// <returns>The basis, the same for all lines of the group.</returns>
    public LimitBasis BasisOf(MuscleGroup group, Side side) => limits[members[Slot(group, side)][0]].Basis;

    /// <summary>The tests that limit a group.</summary>
    /// <param name="group">The group.</param>
    /// <param name="side">The side.</param>
    /// <returns>Their names; empty for the end of the usual range.</returns>
    public ImmutableArray<string> TestsOf(MuscleGroup group, Side side) =>
        [.. members[Slot(group, side)].Select(i => limits[i].Test).OfType<string>().Distinct()];

    /// <summary>The reach of one muscle in a pose.</summary>
    /// <param name="muscle">Index of a muscle with a limit.</param>
    /// <param name="state">The muscles in the pose.</param>
    /// <returns>The reach.</returns>
    /// <exception cref="ArgumentException">The muscle has no limit.</exception>
    public Reach Reach(int muscle, MuscleState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return limited[muscle]
            ? limits[muscle].Of(state.Lengths[muscle])
            : throw new ArgumentException($"{Set.Muscles[muscle].Name} has no limit of length.", nameof(muscle));
    }

    /// <summary>
    /// The reach of a group in a pose: force-weighted mean lengthening of its lines over their force-weighted mean lengthening at the
    /// limit. The errors of the lines go together, since one reading makes them all.
    /// </summary>
    /// <param name="group">The group.</param>
    /// <param name="side">The side.</param>
    /// <param name="state">The muscles in the pose.</param>
    /// <returns>The reach.</returns>
    public Reach Reach(MuscleGroup group, Side side, MuscleState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        var lengths = state.Lengths;
        double low = 0, middle = 0, high = 0, lowSpan = 0, middleSpan = 0, highSpan = 0;
        foreach (var i in members[Slot(group, side)])
        {
            ref readonly var limit = ref limits[i];
            low += weights[i] * (lengths[i] - limit.LowM);
            middle += weights[i] * (lengths[i] - limit.MiddleM);
            high += weights[i] * (lengths[i] - limit.HighM);
            lowSpan += weights[i] * limit.Span(limit.LowM);
            middleSpan += weights[i] * limit.Span(limit.MiddleM);
            highSpan += weights[i] * limit.Span(limit.HighM);
        }

        return MomentArm.Body.Reach.Ordered(1 + low / lowSpan, 1 + middle / middleSpan, 1 + high / highSpan);
    }

    /// <summary>Change of length of a group from the neutral pose: the force-weighted mean of its lines.</summary>
    /// <param name="group">The group.</param>
    /// <param name="side">The side.</param>
    /// <param name="state">The muscles in the pose.</param>
    /// <returns>Metres; negative when the group is shorter than in the neutral pose.</returns>
    public double ChangeM(MuscleGroup group, Side side, MuscleState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        var lengths = state.Lengths;
        var sum = 0.0;
        foreach (var i in members[Slot(group, side)])
            sum += weights[i] * (lengths[i] - Set.Muscles[i].NeutralLengthM);
        return sum;
    }

    private static int Slot(MuscleGroup group, Side side)
    {
        if (!Enum.IsDefined(group))
            throw new ArgumentOutOfRangeException(nameof(group), $"There is no muscle group {group}.");
        return 2 * (int)group + (side == Side.Right ? 1 : 0);
    }

    private static LengthTest OnOtherSide(LengthTest test) => test with
    {
        Side = test.Side.Other(),
        Basis = LimitBasis.OtherSide,
        Error = Math.Sqrt(test.Error * test.Error + OtherSideSpread * OtherSideSpread),
    };

    private bool Counts(int muscle) => Set.Muscles[muscle].LengthGroup is not null && !Set.Muscles[muscle].IsBand;

    private LengthLimit Usual(int muscle)
    {
        var usual = Set.UsualLengths[muscle];
        var half = EightyPercent * UsualSpread * usual.SlopeM;
        return new LengthLimit(
            usual.LongestM - half, usual.LongestM, usual.LongestM + half, Set.Muscles[muscle].NeutralLengthM,
            LeastSpan * (usual.LongestM - usual.ShortestM), LimitBasis.UsualRange, null, false);
    }

    /// <summary>Replays a test at its reading and across its interval; takes it where it is the stronger or the longer one.</summary>
    private void Add(LengthTest test, BodyState state, MuscleState muscles)
    {
        var lines = members[Slot(test.Group, test.Side)];
        var (coordinate, sign) = LengthTesting.Checked(test, Set, lines);
        var pose = ClinicalPose.Of(Set.Model, test.Pose, test.Side);
        Span<double> low = stackalloc double[lines.Length];
        Span<double> middle = stackalloc double[lines.Length];
        Span<double> high = stackalloc double[lines.Length];
        low.Fill(double.PositiveInfinity);
        high.Fill(double.NegativeInfinity);
        for (var step = -LengthTesting.Steps; step <= LengthTesting.Steps; step++)
        {
            pose.Angles[coordinate] = sign * (test.Reading + EightyPercent * test.Error * step / LengthTesting.Steps);
            state.Update(pose);
            muscles.Update(state, pose);
            for (var i = 0; i < lines.Length; i++)
            {
                var length = muscles.Lengths[lines[i]];
                (low[i], high[i]) = (Math.Min(low[i], length), Math.Max(high[i], length));
                if (step == 0)
                    middle[i] = length;
            }
        }

        pose.Angles[coordinate] = sign * test.Reading;
        state.Update(pose);
        muscles.Update(state, pose);
        for (var i = 0; i < lines.Length; i++)
        {
            var old = limits[lines[i]];
            if (Rank(test.Basis) > Rank(old.Basis) || (Rank(test.Basis) == Rank(old.Basis) && middle[i] <= old.MiddleM))
                continue;
            limits[lines[i]] = old with
            {
                LowM = low[i], MiddleM = middle[i], HighM = high[i], Basis = test.Basis, Test = test.Name,
                Extrapolated = muscles.Extrapolated[lines[i]],
            };
        }
    }

    /// <summary>A test with pain and one without are equally strong: both show a length that was reached.</summary>
    private static int Rank(LimitBasis basis) => basis switch
    {
        LimitBasis.Tested or LimitBasis.TestedPainLimited => 0,
        LimitBasis.OtherSide => 1,
        LimitBasis.Norm => 2,
        LimitBasis.UsualRange => 3,
    };
}
