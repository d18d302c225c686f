namespace MomentArm.Body;

/// <summary>
/// What a person's joints can hold: published curves by sex, age, mass and stature, lifted or lowered by this person's
/// own strength tests. Every capacity is an interval. See docs/models/body.md, section 5.
/// </summary>
public sealed class PatientCapacity
{
    /// <summary>Half of an 80 % interval in standard deviations of a normal spread (our choice of 80 %).</summary>
    private const double EightyPercent = 1.2816;

    /// <summary>Extra relative spread for each missing fact of sex, age, stature or mass (our choice).</summary>
    private const double MissingFactSpread = 0.10;

    private readonly CapacityTables tables;
    private readonly Physique physique;
    private readonly double weightTimesStature;
    private readonly double missingSpread;
    private readonly Dictionary<(JointAction, Side), (double Factor, bool PainLimited)> tested = [];

    /// <summary>Makes the capacities of a person.</summary>
    /// <param name="tables">Published strength.</param>
    /// <param name="physique">What is known of the person.</param>
    /// <param name="model">The person's body, for mass and stature as used.</param>
    /// <param name="tests">This person's strength tests; of several of one action and side, the last counts.</param>
    /// <exception cref="ArgumentException">A test of an action for which nothing is published, or without torque.</exception>
    public PatientCapacity(CapacityTables tables, Physique physique, BodyModel model, IEnumerable<StrengthTest> tests)
    {
        ArgumentNullException.ThrowIfNull(tables);
        ArgumentNullException.ThrowIfNull(physique);
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(tests);
        this.tables = tables;
        this.physique = physique;
        weightTimesStature = model.MassKg * BodyModel.Gravity * model.StatureM;
        var missing = (physique.Sex is null ? 1 : 0) + (physique.AgeYears is null ? 1 : 0)
            + (physique.StatureM is null ? 1 : 0) + (physique.MassKg is null ? 1 : 0);
        missingSpread = missing * MissingFactSpread;
        foreach (var test in tests)
        {
            if (!(test.MuscleTorque > 0) || !double.IsFinite(test.MuscleTorque))
                throw new ArgumentException($"A test of {test.Action} without torque says nothing about capacity.", nameof(tests));
            var published = Published(test.Action, test.ClinicalAngle)
                ?? throw new ArgumentException($"Nothing is published for {test.Action} to hold the test against.", nameof(tests));
            tested[(test.Action, test.Side)] = (test.MuscleTorque / published, test.PainLimited);
        }
    }

    /// <summary>What an action can hold at an angle.</summary>
    /// <param name="action">The action.</param>
    /// <param name="side">The side.</param>
    /// <param name="clinicalAngle">Joint angle in clinical sign, radians.</param>
    /// <returns>The capacity, or null when nothing is published for the action: then a load share cannot be computed.</returns>
    public Capacity? At(JointAction action, Side side, double clinicalAngle)
    {
        if (Published(action, clinicalAngle) is not { } published)
            return null;
        var beyond = Held(action, clinicalAngle) != clinicalAngle;
        if (tested.TryGetValue((action, side), out var test))
        {
            // The test's own error; mass and stature cancel, since the test was taken on this very body.
            var half = EightyPercent * tables.TestedRelativeError;
            var middle = test.Factor * published;
            return new Capacity(
                middle * (1 - half), middle, middle * (1 + half),
                test.PainLimited ? CapacityBasis.TestedPainLimited : CapacityBasis.Tested, beyond);
        }

        var factors = tested.Where(t => t.Key.Item2 == side).Select(t => t.Value.Factor).ToArray();
        if (factors.Length == 0)
            factors = [.. tested.Select(t => t.Value.Factor)];
        if (factors.Length > 0)
        {
            // Half of the spread between people is taken to be common to all of one person's muscles (our choice).
            var spread = EightyPercent * Math.Sqrt(0.5 * Square(tables.UntestedSpread) + Square(tables.TestedRelativeError));
            var middle = factors.Average() * published;
            return new Capacity(middle * (1 - spread), middle, middle * (1 + spread), CapacityBasis.ScaledFromTested, beyond);
        }

        var wide = Math.Min(0.9, EightyPercent * Math.Sqrt(Square(tables.UntestedSpread) + Square(missingSpread)));
        return new Capacity(published * (1 - wide), published, published * (1 + wide), CapacityBasis.PublishedOnly, beyond);
    }

    /// <summary>The published torque for this person's sex, age, mass and stature, N m; null when nothing is published.</summary>
    /// <param name="action">The action.</param>
    /// <param name="clinicalAngle">Joint angle in clinical sign, radians.</param>
    /// <returns>The torque, N m, never below a twentieth of the curve's peak so that shares stay finite at the ends of range.</returns>
    public double? Published(JointAction action, double clinicalAngle)
    {
        var sexes = physique.Sex is { } sex ? [sex] : new[] { Sex.Female, Sex.Male };
        var sum = 0.0;
        foreach (var s in sexes)
        {
            if (Fraction(action, s, Held(action, clinicalAngle)) is not { } fraction)
                return null;
            sum += fraction;
        }

        return sum / sexes.Length * weightTimesStature;
    }

    /// <summary>The angle, held inside the angles over which the action's curve is used.</summary>
    private double Held(JointAction action, double angle) =>
        tables.Angles.TryGetValue(action, out var range) ? Math.Clamp(angle, range.Least, range.Most) : angle;

    private static double Square(double x) => x * x;

    /// <summary>Torque over weight times stature.</summary>
    private double? Fraction(JointAction action, Sex sex, double angle)
    {
        var age = physique.AgeYears ?? 21.5;
        var curves = tables.Curves.Where(c => c.Action == action && c.Sex == sex).OrderBy(c => c.AgeYears).ToArray();
        if (curves.Length > 0)
            return BetweenAges(curves, age, curve => OnCurve(curve, angle));
        var constant = tables.Constants.FirstOrDefault(c => c.Action == action && c.Sex == sex);
        return constant is null ? null : constant.FractionOfWeightTimesStature * AgeFactor(sex, age);
    }

    private static double OnCurve(CapacityCurve curve, double angle)
    {
        var argument = Math.Clamp(curve.C2 * (angle - curve.C3), -Math.PI / 2, Math.PI / 2);
        return curve.C1 * Math.Max(0.05, Math.Cos(argument));
    }

    /// <summary>Interpolates evenly between the middles of the published age groups; outside them the end group counts.</summary>
    private static double BetweenAges(CapacityCurve[] curves, double age, Func<CapacityCurve, double> value)
    {
        if (age <= curves[0].AgeYears)
            return value(curves[0]);
        for (var i = 1; i < curves.Length; i++)
        {
            if (age <= curves[i].AgeYears)
            {
                var t = (age - curves[i - 1].AgeYears) / (curves[i].AgeYears - curves[i - 1].AgeYears);
                return value(curves[i - 1]) * (1 - t) + value(curves[i]) * t;
            }
        }

        return value(curves[^1]);
    }

    /// <summary>
    /// How the hip's published peaks change from young adults to this age: carries young adults' abduction and adduction
    /// to other ages (our choice, for want of a published curve).
    /// </summary>
    private double AgeFactor(Sex sex, double age)
    {
        var factors = new List<double>();
        foreach (var action in new[] { JointAction.HipFlexion, JointAction.HipExtension })
        {
            var curves = tables.Curves.Where(c => c.Action == action && c.Sex == sex).OrderBy(c => c.AgeYears).ToArray();
            if (curves.Length > 0)
                factors.Add(BetweenAges(curves, age, c => c.C1) / curves[0].C1);
        }

        return factors.Count > 0 ? factors.Average() : 1;
    }
}
