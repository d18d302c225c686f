namespace MomentArm.Body;

/// <summary>
/// From repetitions or seconds to the share of maximal strength that a task asked, with its spread.
/// See docs/models/body.md, section 5.
/// </summary>
public static class EnduranceRelation
{
    /// <summary>Repetitions a person misjudges at failure, and more for each repetition left (our choice; stated reserves miss by about one on average, Halperin et al. 2022).</summary>
    private const double ReserveSpreadAtFailure = 0.5;

    /// <summary>Spread of the logarithm of holding time for each point of effort short of 10 (our choice).</summary>
    private const double EffortSpreadPerPoint = 0.1;

    /// <summary>The share of maximal strength that a test's task asked of this person.</summary>
    /// <param name="tables">The published relations.</param>
    /// <param name="test">The test.</param>
    /// <returns>
    /// The share, above 0 up to 1, and the standard deviation of its logarithm, in which the spread between people, the
    /// misjudged effort, the unfitting task or region and the computed demand are together.
    /// </returns>
    /// <exception cref="ArgumentException">The tables lack a curve for the task or region.</exception>
    public static (double Share, double Spread) ShareOfMaximum(EnduranceTables tables, EnduranceTest test)
    {
        ArgumentNullException.ThrowIfNull(tables);
        ArgumentNullException.ThrowIfNull(test);
        return test.Repetitions is { } repetitions
            ? OfRepetitions(tables, test, repetitions)
            : OfHold(tables, test, test.HoldSeconds ?? 0);
    }

    /// <summary>The mean share of the one-repetition maximum with which so many repetitions are possible.</summary>
    /// <param name="curve">The published curve.</param>
    /// <param name="repetitions">Repetitions to failure, at least 1.</param>
    /// <returns>
    /// The share and the slope of its logarithm for each repetition. Between the published points a straight line; beyond the
    /// last, share = 1 / (1 + repetitions / k) through the last point (our choice).
    /// </returns>
    public static (double Share, double Slope) Lifted(RepetitionCurve curve, double repetitions)
    {
        ArgumentNullException.ThrowIfNull(curve);
        var points = curve.Points;
        for (var i = 1; i < points.Length; i++)
        {
            var (from, to) = (points[i - 1], points[i]);
            if (repetitions <= to.Repetitions)
            {
                var slope = (to.Share - from.Share) / (to.Repetitions - from.Repetitions);
                var share = from.Share + slope * (Math.Max(1, repetitions) - from.Repetitions);
                return (share, slope / share);
            }
        }

        var last = points[^1];
        var k = last.Repetitions * last.Share / (1 - last.Share);
        return (1 / (1 + repetitions / k), -1 / (k + repetitions));
    }

    /// <summary>The share of the isometric maximum that is held for so long.</summary>
    /// <param name="curve">The published curve.</param>
    /// <param name="seconds">Seconds to failure, above 0.</param>
    /// <returns>The share; over 1 for times shorter than the curve knows.</returns>
    public static double Held(HoldingCurve curve, double seconds)
    {
        ArgumentNullException.ThrowIfNull(curve);
        return Math.Exp((Math.Log(seconds) - Math.Log(curve.B)) / curve.M);
    }

    /// <summary>Whose holding curves an action takes: two where it lies between them, and whether they are its own.</summary>
    internal static (HoldingRegion First, HoldingRegion Second, bool Own) Regions(JointAction action) => action switch
    {
        JointAction.KneeFlexion or JointAction.KneeExtension => (HoldingRegion.Knee, HoldingRegion.Knee, true),
        JointAction.AnkleDorsiflexion or JointAction.AnklePlantarflexion => (HoldingRegion.Ankle, HoldingRegion.Ankle, true),
        JointAction.AnkleInversion or JointAction.AnkleEversion => (HoldingRegion.Ankle, HoldingRegion.Ankle, false),
        JointAction.TrunkFlexion or JointAction.TrunkExtension or JointAction.TrunkSideBend or JointAction.TrunkRotation =>
            (HoldingRegion.Trunk, HoldingRegion.Trunk, true),
        JointAction.ShoulderFlexion or JointAction.ShoulderExtension or JointAction.ShoulderAbduction or JointAction.ShoulderAdduction
            or JointAction.ShoulderInternalRotation or JointAction.ShoulderExternalRotation => (HoldingRegion.Shoulder, HoldingRegion.Shoulder, true),
        JointAction.ElbowFlexion or JointAction.ElbowExtension => (HoldingRegion.Elbow, HoldingRegion.Elbow, true),
        JointAction.ForearmPronation or JointAction.ForearmSupination or JointAction.WristFlexion or JointAction.WristExtension
            or JointAction.WristUlnarDeviation or JointAction.WristRadialDeviation => (HoldingRegion.Grip, HoldingRegion.Grip, false),
        JointAction.NeckFlexion or JointAction.NeckExtension or JointAction.NeckSideBend or JointAction.NeckRotation =>
            (HoldingRegion.Pooled, HoldingRegion.Pooled, false),
        JointAction.HipFlexion or JointAction.HipExtension or JointAction.HipAbduction or JointAction.HipAdduction
            or JointAction.HipInternalRotation or JointAction.HipExternalRotation => (HoldingRegion.Trunk, HoldingRegion.Knee, false),
    };

    private static (double Share, double Spread) OfRepetitions(EnduranceTables tables, EnduranceTest test, double repetitions)
    {
        var curve = tables.Repetitions.FirstOrDefault(c => c.Task == test.Task)
            ?? throw new ArgumentException($"Nothing is published for repetitions of a {test.Task} task.", nameof(tables));
        var reserve = test.Effort.InReserve;
        var (share, _) = Lifted(curve, Math.Min(tables.MostRepetitions, repetitions + reserve));
        var (people, slope) = Widest(tables, curve);
        var misjudged = ReserveSpreadAtFailure * (1 + reserve);
        return (share, Math.Sqrt(
            Square(people) + Square(slope * misjudged)
            + Square(tables.TaskSpread) + Square(tables.LiftedSpread) + Square(tables.DemandSpread)));
    }

    /// <summary>
    /// The largest spread between people on a curve, in the logarithm of the share, and its steepest slope. They are used at
    /// every count (our choice), so that one repetition more never lowers what is concluded from it.
    /// </summary>
    private static (double People, double Slope) Widest(EnduranceTables tables, RepetitionCurve curve)
    {
        var (widest, steepest) = (0.0, 0.0);
        for (var repetitions = 1.0; repetitions <= tables.MostRepetitions; repetitions++)
        {
            var (share, slope) = Lifted(curve, repetitions);
            var people = tables.PersonSpreadAt80 + (tables.PersonSpreadAt60 - tables.PersonSpreadAt80) / 0.2 * (0.8 - share);
            widest = Math.Max(widest, -slope * people);
            steepest = Math.Max(steepest, -slope);
        }

        return (widest, steepest);
    }

    private static (double Share, double Spread) OfHold(EnduranceTables tables, EnduranceTest test, double seconds)
    {
        HoldingCurve Curve(HoldingRegion region) => tables.Holding.FirstOrDefault(c => c.Region == region)
            ?? throw new ArgumentException($"No holding times are published for {region}.", nameof(tables));
        var (first, second, own) = Regions(test.Action);
        var (a, b) = (Curve(first), Curve(second));

        // Effort is taken to rise evenly with time while a load is held (our choice).
        var toFailure = seconds * 10 / test.Effort.OfTen;
        var (logA, logB) = (Math.Log(Held(a, toFailure)), Math.Log(Held(b, toFailure)));
        var time = Square(tables.HoldingStudySpread) + Square(tables.HoldingPersonSpread)
            + Square(EffortSpreadPerPoint * (10 - test.Effort.OfTen));
        return (
            Math.Clamp(Math.Exp(0.5 * (logA + logB)), tables.LeastHoldingShare, 1),
            Math.Sqrt(
                time / Square(0.5 * (a.M + b.M))
                + (own ? 0 : Square(tables.NearestRegionSpread)) + Square(tables.DemandSpread)));
    }

    private static double Square(double x) => x * x;
}
