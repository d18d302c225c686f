using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>
/// What a person's joints can hold: published figures by sex, age, mass and stature, lifted or lowered by this person's
/// own tests, with a force reader or without. Every capacity is an interval. Worked out once; asking is fast and allocates
/// nothing. See docs/models/body.md, section 5.
/// </summary>
public sealed class PatientCapacity
{
    /// <summary>Half of an 80 % interval in standard deviations of a normal spread (our choice of 80 %).</summary>
    private const double EightyPercent = 1.2816;

    /// <summary>Extra relative spread for each missing fact of sex, age, stature or mass (our choice).</summary>
    private const double MissingFactSpread = 0.10;

    /// <summary>Part of the variance between people that is common to all of one person's muscles (our choice).</summary>
    private const double SharedVariance = 0.5;

    private const double MostTorque = 2000;

    private static readonly JointAction[] Actions = Enum.GetValues<JointAction>();

    private readonly PublishedStrength published;
    private readonly List<CapacityEvidence>[] evidence = new List<CapacityEvidence>[2 * Actions.Length];
    private readonly Estimate[] estimates = new Estimate[2 * Actions.Length];
    private readonly double missingSpread;

    /// <summary>Makes the capacities of a person.</summary>
    /// <param name="tables">Published strength.</param>
    /// <param name="physique">What is known of the person.</param>
    /// <param name="model">The person's body, for mass and stature as used.</param>
    /// <param name="tests">This person's strength tests; several of one action and side are combined, so give only those that still hold.</param>
    /// <param name="enduranceTests">This person's repetitions and holds, in tasks whose demand was computed on this very body.</param>
    /// <exception cref="ArgumentException">A test of an action for which nothing is published, or with a torque or angle that cannot be.</exception>
    public PatientCapacity(
        CapacityTables tables, Physique physique, BodyModel model, IEnumerable<StrengthTest> tests,
        IEnumerable<EnduranceTest>? enduranceTests = null)
    {
        ArgumentNullException.ThrowIfNull(tables);
        ArgumentNullException.ThrowIfNull(physique);
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(tests);
        published = new PublishedStrength(tables, physique, model);
        var missing = (physique.Sex is null ? 1 : 0) + (physique.AgeYears is null ? 1 : 0)
            + (physique.StatureM is null ? 1 : 0) + (physique.MassKg is null ? 1 : 0);
        missingSpread = missing * MissingFactSpread;
        for (var i = 0; i < evidence.Length; i++)
            evidence[i] = [];
        foreach (var test in tests)
            Add(tables, test);
        foreach (var test in enduranceTests ?? [])
            Add(tables, test);
        EstimateAll();
    }

    /// <summary>What an action can hold at an angle.</summary>
    /// <param name="action">The action.</param>
    /// <param name="side">The side; of no meaning for flexion and extension of trunk and neck.</param>
    /// <param name="clinicalAngle">Joint angle in clinical sign, radians, finite.</param>
    /// <returns>The capacity, or null when nothing is published for the action: then a load share cannot be computed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The angle is NaN or infinite.</exception>
    public Capacity? At(JointAction action, Side side, double clinicalAngle)
    {
        if (!published.Has(action))
            return null;
        if (!double.IsFinite(clinicalAngle))
            RefuseAngle(clinicalAngle);
        var torque = published.At(action, clinicalAngle, out var beyond);
        ref readonly var estimate = ref estimates[Index(action, side)];
        return new Capacity(
            estimate.Low * torque, estimate.Middle * torque, estimate.High * torque, estimate.Basis, beyond, estimate.Weak);
    }

    /// <summary>The published torque for this person's sex, age, mass and stature, N m; null when nothing is published.</summary>
    /// <param name="action">The action.</param>
    /// <param name="clinicalAngle">Joint angle in clinical sign, radians, finite.</param>
    /// <returns>The torque, N m, never below a twentieth of the curve's peak so that shares stay finite at the ends of range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The angle is NaN or infinite.</exception>
    public double? Published(JointAction action, double clinicalAngle)
    {
        if (!published.Has(action))
            return null;
        if (!double.IsFinite(clinicalAngle))
            RefuseAngle(clinicalAngle);
        return published.At(action, clinicalAngle, out _);
    }

    /// <summary>The evidence an action's capacity rests on, in the order given; empty when it was not tested.</summary>
    /// <param name="action">The action.</param>
    /// <param name="side">The side.</param>
    /// <returns>The evidence.</returns>
    public ImmutableArray<CapacityEvidence> EvidenceFor(JointAction action, Side side) => [.. evidence[Index(action, side)]];

    /// <summary>Where an action and side are kept: actions without sides in one place.</summary>
    private static int Index(JointAction action, Side side) => 2 * (int)action + (side == Side.Left && action.HasSides() ? 1 : 0);

    private static double Square(double x) => x * x;

    private static void RefuseAngle(double angle) => throw new ArgumentOutOfRangeException(
        nameof(angle), FormattableString.Invariant($"{angle} rad is not a joint angle: give a finite number."));

    private void Add(CapacityTables tables, StrengthTest test)
    {
        if (!(test.MuscleTorque > 0) || !(test.MuscleTorque <= MostTorque))
        {
            throw new ArgumentException(
                FormattableString.Invariant(
                    $"A test of {test.Action} with {test.MuscleTorque} N m says nothing about capacity: give more than 0 and at most {MostTorque} N m; check force, unit and lever arm."),
                nameof(test));
        }

        var torque = Torque(test.Action, test.ClinicalAngle, nameof(test));
        evidence[Index(test.Action, test.Side)].Add(new CapacityEvidence(
            CapacityEvidenceKind.Force, test.MuscleTorque / torque, tables.ErrorOf(test.Reader, test.Action), test.PainLimited));
    }

    private void Add(CapacityTables tables, EnduranceTest test)
    {
        var torque = Torque(test.Action, test.ClinicalAngle, nameof(test));
        var (share, spread) = EnduranceRelation.ShareOfMaximum(tables.Endurance, test);
        evidence[Index(test.Action, test.Side)].Add(new CapacityEvidence(
            test.Repetitions is null ? CapacityEvidenceKind.Hold : CapacityEvidenceKind.Repetitions,
            test.DemandNm / share / torque, spread, test.PainLimited));
    }

    private double Torque(JointAction action, double clinicalAngle, string name)
    {
        if (!double.IsFinite(clinicalAngle))
            throw new ArgumentException($"A test of {action} needs the joint angle at which it was done.", name);
        return Published(action, clinicalAngle)
            ?? throw new ArgumentException($"Nothing is published for {action} to hold the test against.", name);
    }

    private void EstimateAll()
    {
        var combined = new CombinedEvidence?[evidence.Length];
        foreach (var action in Actions.Where(published.Has))
        {
            foreach (var side in new[] { Side.Right, Side.Left })
                combined[Index(action, side)] = CombinedEvidence.Of(evidence[Index(action, side)], PublishedSpread(action));
        }

        foreach (var action in Actions.Where(published.Has))
        {
            foreach (var side in new[] { Side.Right, Side.Left })
            {
                estimates[Index(action, side)] = combined[Index(action, side)] is { } own
                    ? new Estimate(Math.Exp(own.LogFactor), own.Spread, own.Basis, false)
                    : Untested(action, side, combined);
            }
        }
    }

    /// <summary>Spread of the published figure for this person: between people, and for what is not known of this one.</summary>
    private double PublishedSpread(JointAction action) => Math.Sqrt(Square(published.Spread(action)) + Square(missingSpread));

    /// <summary>
    /// An untested action: the mean factor of the tested ones of its side, or of both when that side has none, weighted by
    /// their uncertainty. What pain stopped says nothing about other muscles and is left out.
    /// </summary>
    private Estimate Untested(JointAction action, Side side, CombinedEvidence?[] combined)
    {
        var weak = published.IsWeak(action);
        var alone = PublishedSpread(action);
        var tested = Tested(combined, side);
        if (tested.Count == 0)
            tested = Tested(combined, null);
        if (tested.Count == 0)
            return new Estimate(1, alone, CapacityBasis.PublishedOnly, weak);
        var own = SharedVariance * Square(published.Spread(action));
        var (weights, factors, variances) = (0.0, 0.0, 0.0);
        foreach (var one in tested)
        {
            var weight = 1 / (own + Square(one.Spread));
            weights += weight;
            factors += weight * Math.Exp(one.LogFactor);
            variances += weight * Square(one.Spread);
        }

        var spread = Math.Min(alone, Math.Sqrt(own + variances / weights));
        return new Estimate(factors / weights, spread, CapacityBasis.ScaledFromTested, weak);
    }

    private static List<(double LogFactor, double Spread)> Tested(CombinedEvidence?[] combined, Side? side)
    {
        var tested = new List<(double LogFactor, double Spread)>();
        foreach (var action in Actions)
        {
            foreach (var one in action.HasSides() ? new[] { Side.Right, Side.Left } : [Side.Right])
            {
                if ((side is null || side == one || !action.HasSides())
                    && combined[Index(action, one)] is { WithoutPain: { } found })
                {
                    tested.Add(found);
                }
            }
        }

        return tested;
    }

    /// <summary>Factors on the published torque.</summary>
    private readonly record struct Estimate(double Low, double Middle, double High, CapacityBasis Basis, bool Weak)
    {
        internal Estimate(double middle, double spread, CapacityBasis basis, bool weak)
            : this(middle * Math.Exp(-EightyPercent * spread), middle, middle * Math.Exp(EightyPercent * spread), basis, weak)
        {
        }
    }
}
