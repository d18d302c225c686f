namespace MomentArm.Body;

/// <summary>
/// The whole body held still: contact forces, muscle effort, torque actuators, straps and end stops in one convex program of least effort.
/// Equations: the moment of every joint coordinate and the six of the whole body. What nothing explains is reported
/// (<see cref="Reserve"/>, <see cref="Unbalanced"/>), never hidden. Made once for a body and its strength; <see cref="Solve"/> allocates nothing. See docs/models/body.md, section 7.
/// </summary>
public sealed partial class BodyBalance
{
    /// <summary>Most contact points of one pose.</summary>
    public const int MostContacts = 48;

    /// <summary>Most straps and grips of one pose.</summary>
    public const int MostTies = 8;

    /// <summary>Most author's splits of one pose.</summary>
    public const int MostSplits = 8;

    // Cost of a unit (the body's weight) of contact force: decides only between splits that cost muscles the same (our choice).
    private const double ContactCurvature = 0.05;
    private const double FrictionCurvature = 100;

    // Cost of a fully used actuator, as of so many fully active muscle lines: about as many as share a leg joint (our choice).
    private const double ActuatorCurvature = 10;

    // A line costs by its published size, so that a muscle drawn as three lines shares like the same muscle drawn as one.
    private const double MuscleCurvature = 2;
    private const double UsualLineN = 600;

    private const double EndStopCurvature = 0.01;
    private const double TieCurvature = 0.05;

    // In units of a tenth of the weight times a metre: a reserve of 1 N m costs a body of 70 kg as much as ten fully active lines (our choice).
    // A miss of the whole body's balance costs so much that it is nil where it can be.
    private const double ReserveSoftness = 1e-5;
    // Poses are typed to the degree: what little is missing shall be a moment, a mass center a little outside, not a force.
    private const double ForceSoftness = 1e-9;
    private const double MomentSoftness = 1e-7;

    // An author's share of the weight outweighs effort but never the balance: against gravity nothing can be wished.
    private const double SplitSoftness = 3e-4;

    // Up to this part of the weight a miss of the whole body's balance is the price of softness and is taken back.
    private const double TakenBack = 1e-4;
    private const double Balanced = 1e-11;

    private const double AtEnd = 1 * Math.PI / 180;

    private readonly BalanceLayout layout;
    private readonly JointStrength strength;
    private readonly BodyModel model;
    private readonly MuscleState muscleState;
    private readonly SeparableProgram program;
    private readonly DualNewtonSolver solver;
    private readonly double[] free;
    private readonly double[] angles;
    private readonly double[] forceN;
    private readonly int[] raisingActuator;
    private readonly int[] loweringActuator;
    private readonly int[] endStop;
    private readonly int[] firstEdge;
    private readonly ContactPoint[] contact;
    private readonly BodyTie[] tie;
    private readonly Vec3[] beyondForce;
    private readonly bool[] carries;
    private readonly double[] addedBack = new double[BalanceLayout.RootRows];
    private BodyState? posed;
    private Solution solution;
    private double weight;
    private double momentUnit;
    private int contacts;
    private int ties;
    private int firstTie;
    private int splits;

    /// <summary>Makes the work space for a body.</summary>
    /// <param name="muscles">The body's muscles.</param>
    /// <param name="strength">What the person's joints can hold.</param>
    public BodyBalance(MuscleSet muscles, JointStrength strength)
    {
        ArgumentNullException.ThrowIfNull(muscles);
        ArgumentNullException.ThrowIfNull(strength);
        (layout, this.strength, model) = (new BalanceLayout(muscles), strength, muscles.Model);
        muscleState = new MuscleState(muscles);
        var coordinates = model.Coordinates.Length;
        var unknowns = layout.Lines.Length + 3 * coordinates + 5 * MostContacts + MostTies;
        program = new SeparableProgram(layout.Rows + MostSplits, unknowns, unknowns * 20);
        solver = new DualNewtonSolver(program);
        (free, angles) = (new double[coordinates], new double[coordinates]);
        (raisingFactor, loweringFactor) = (new double[coordinates], new double[coordinates]);
        hipMoments = new double[5 * layout.Hips.Max(h => h.Lines.Length)];
        (raisingActuator, loweringActuator, endStop) = (new int[coordinates], new int[coordinates], new int[coordinates]);
        forceN = new double[layout.Lines.Length];
        (beyondForce, carries) = (new Vec3[model.Segments.Length], new bool[model.Segments.Length]);
        (firstEdge, contact, tie) = (new int[MostContacts + 1], new ContactPoint[MostContacts], new BodyTie[MostTies]);
    }

    /// <summary>The body's muscles.</summary>
    public MuscleSet Muscles => layout.Muscles;

    /// <summary>Muscle lengths and arms of the pose last solved.</summary>
    public MuscleState MuscleState => muscleState;

    /// <summary>The program last solved, for checks by other solvers.</summary>
    public SeparableProgram Program => program;

    /// <summary>How the program last solved came out.</summary>
    public Solution Outcome => solution;

    /// <summary>Solves a pose.</summary>
    /// <param name="state">The posed body.</param>
    /// <param name="pose">The same pose.</param>
    /// <param name="contactPoints">Where it is supported.</param>
    /// <param name="forces">Given forces besides gravity: weights, bands, help.</param>
    /// <param name="bodyTies">Straps and grips between two points of the body.</param>
    /// <param name="weightSplits">Shares of the weight an author gives to some contacts.</param>
    /// <param name="rule">How effort is shared out.</param>
    /// <param name="warmStart">Begin from the pose before: quicker along a movement.</param>
    /// <returns>The outcome of the program; its numbers are read from this object until the next call.</returns>
    /// <exception cref="ArgumentException">More contacts, ties or splits than there is room for, another body, or numbers that are not finite.</exception>
    public Solution Solve(
        BodyState state, BodyPose pose, ReadOnlySpan<ContactPoint> contactPoints, ReadOnlySpan<PointForce> forces,
        ReadOnlySpan<BodyTie> bodyTies, ReadOnlySpan<WeightSplit> weightSplits, EffortRule rule, bool warmStart = false)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(pose);
        if (contactPoints.Length > MostContacts || bodyTies.Length > MostTies || weightSplits.Length > MostSplits)
            throw new ArgumentException($"A pose has at most {MostContacts} contact points, {MostTies} ties and {MostSplits} splits.", nameof(contactPoints));
        muscleState.Update(state, pose);
        pose.Angles.CopyTo(angles, 0);
        (posed, contacts, ties, splits) = (state, contactPoints.Length, bodyTies.Length, weightSplits.Length);
        contactPoints.CopyTo(contact);
        bodyTies.CopyTo(tie);
        weight = model.MassKg * BodyModel.Gravity;
        momentUnit = 0.1 * weight;

        program.Clear(layout.Rows + splits, ReserveSoftness);
        RightSides(state, forces, weightSplits);
        AddMuscles(rule);
        AddActuators(rule);
        AddContacts(state);
        AddTies(state);
        solution = solver.Solve(program, warmStart);
        TakeBackSoftness();
        return solution;
    }

    /// <summary>
    /// A body that can be held still misses its balance by softness times multiplier. With that much added to the right sides the next
    /// solution, a step or two away, misses next to nothing. A body that cannot be held keeps its miss.
    /// </summary>
    private void TakeBackSoftness()
    {
        var root = program.RightSide.Slice(layout.JointRows, BalanceLayout.RootRows);
        addedBack.AsSpan().Clear();
        for (var again = 0; again < 4; again++)
        {
            // Lengths, not components: a body turned in the room is judged alike.
            var most = Math.Max(
                new Vec3(Lacking(0), Lacking(1), Lacking(2)).Length, new Vec3(Lacking(3), Lacking(4), Lacking(5)).Length);
            if (!(most < TakenBack) || most < Balanced)
                return;
            for (var i = 0; i < addedBack.Length; i++)
            {
                var miss = Lacking(i);
                addedBack[i] += miss;
                root[i] += miss;
            }

            var next = solver.Solve(program, true);
            solution = next with { Steps = solution.Steps + next.Steps, Objective = next.Objective - PriceOfSoftness() };
        }
    }

    /// <summary>What the softness of the whole body's balance adds to the cost: a body held exactly does not pay it.</summary>
    private double PriceOfSoftness()
    {
        var price = 0.0;
        for (var i = layout.JointRows; i < layout.Rows; i++)
            price += solver.Miss(i) * solver.Miss(i) / (2 * program.Softness[i]);
        return price;
    }

    private double Lacking(int i) => solver.Miss(layout.JointRows + i) - addedBack[i];

    /// <summary>What gravity and given forces ask of each joint and of the ground, and what the author's splits ask of the contacts.</summary>
    private void RightSides(BodyState state, ReadOnlySpan<PointForce> forces, ReadOnlySpan<WeightSplit> weightSplits)
    {
        var (force, moment) = JointMoments.Required(state, forces, free);
        beyondForce.AsSpan().Clear();
        foreach (var f in forces)
            beyondForce[f.Segment] += f.Force;
        var b = program.RightSide;
        for (var k = 0; k < free.Length; k++)
        {
            if (layout.RowOf[k] >= 0)
                b[layout.RowOf[k]] = free[k] / momentUnit;
        }

        var root = layout.JointRows;
        (b[root], b[root + 1], b[root + 2]) = (force.X / weight, force.Y / weight, force.Z / weight);
        (b[root + 3], b[root + 4], b[root + 5]) = (moment.X / momentUnit, moment.Y / momentUnit, moment.Z / momentUnit);
        program.Softness.Slice(root, 3).Fill(ForceSoftness);
        program.Softness.Slice(root + 3, 3).Fill(MomentSoftness);
        for (var i = 0; i < splits; i++)
        {
            b[layout.Rows + i] = weightSplits[i].Share * force.Length / weight;
            program.Softness[layout.Rows + i] = SplitSoftness;
        }

        splitOf.AsSpan(0, contacts).Fill(-1);
        for (var i = 0; i < splits; i++)
            splitOf.AsSpan(weightSplits[i].First, weightSplits[i].Count).Fill(i);
    }

    /// <summary>One unknown for each line, its force scaled so that the group gives what this person's joint can hold at this angle.</summary>
    private void AddMuscles(EffortRule rule)
    {
        ScaleLines();
        var arms = muscleState.Arms;
        for (var i = 0; i < layout.Lines.Length; i++)
        {
            var size = layout.Lines[i].ForceN / UsualLineN;
            if (rule.Cubes)
                program.AddUnknown(1e-3 * size, 0, 0, 1, 3 * size);
            else
                program.AddUnknown(MuscleCurvature * size, 0, 0, 1);
            foreach (var (row, arm, _) in layout.Lines[i].Entries)
                program.AddEntry(row, arms[arm] * forceN[i] / momentUnit);
        }
    }

    /// <summary>Torques both ways where no muscles are modelled, and end stops where a joint lies at the end of its range.</summary>
    private void AddActuators(EffortRule rule)
    {
        carries.AsSpan().Clear();
        for (var i = 0; i < contacts; i++)
            Carry(contact[i].Segment);
        for (var i = 0; i < ties; i++)
        {
            Carry(tie[i].SegmentA);
            Carry(tie[i].SegmentB);
        }

        for (var k = 0; k < angles.Length; k++)
        {
            (raisingActuator[k], loweringActuator[k], endStop[k]) = (-1, -1, -1);
            var row = layout.RowOf[k];
            if (row < 0)
                continue;
            if (!layout.Driven[k])
            {
                raisingActuator[k] = program.AddUnknown(ActuatorCurvature, 0, 0, 1);
                program.AddEntry(row, strength.TorqueAt(k, 1, angles[k]) / momentUnit);
                loweringActuator[k] = program.AddUnknown(ActuatorCurvature, 0, 0, 1);
                program.AddEntry(row, -strength.TorqueAt(k, -1, angles[k]) / momentUnit);
            }

            var coordinate = model.Coordinates[k];
            var (hasLeast, hasMost) = EndsOf(coordinate.Motion);
            var atMost = hasMost && angles[k] >= coordinate.NormalMost - AtEnd;
            if (!rule.EndStops || (!atMost && !(hasLeast && angles[k] <= coordinate.NormalLeast + AtEnd)))
                continue;
            // Nothing rests beyond an open joint: its end carries no more than gravity and given forces press on it, so no muscle can lean on it.
            var pressing = atMost ? -free[k] : free[k];
            var most = carries[coordinate.Segment] ? double.PositiveInfinity : Math.Max(0, pressing / momentUnit);
            endStop[k] = program.AddUnknown(EndStopCurvature, 0, 0, most);
            program.AddEntry(row, atMost ? -1 : 1);
        }
    }

    /// <summary>
    /// The ends at which a joint rests on bone and ligament: knee and elbow straight, forearm and wrist turned all the way. Not the ankle, whose
    /// usual range is that of an unloaded foot, nor hip, shoulder and spine, whose ends are soft (our choice).
    /// </summary>
    private static (bool Least, bool Most) EndsOf(Motion motion) => motion switch
    {
        Motion.KneeExtension => (false, true),
        Motion.ElbowFlexion => (true, false),
        Motion.ForearmPronation or Motion.WristFlexion or Motion.WristDeviation => (true, true),
        _ => (false, false),
    };

    /// <summary>A contact or tie on a segment loads every joint from there to the pelvis.</summary>
    private void Carry(int segment)
    {
        for (var s = segment; s > 0; s = model.Segments[s].Parent)
            carries[s] = true;
    }
}
