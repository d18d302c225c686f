namespace MomentArm.Body;

/// <summary>
/// The published strength of one person's sex, age, mass and stature, worked out once: for each action the sum of at most four
/// cosines (two sexes where the sex is not known, two age groups between which the age lies).
/// </summary>
internal sealed class PublishedStrength
{
    /// <summary>A curve never goes below this part of its peak, so that shares stay finite at the ends of range.</summary>
    private const double LeastOfPeak = 0.05;

    /// <summary>Age taken when none is given: the youngest published group.</summary>
    private const double YoungAdult = 21.5;

    private static readonly JointAction[] Actions = Enum.GetValues<JointAction>();

    private readonly Figure[] figures = new Figure[Actions.Length];

    internal PublishedStrength(CapacityTables tables, Physique physique, BodyModel model)
    {
        var age = physique.AgeYears is { } given ? Quantity.Within(given, 0, 120, "years", "age") : YoungAdult;
        var sexes = physique.Sex is { } sex ? [sex] : new[] { Sex.Female, Sex.Male };
        var weightTimesStature = model.MassKg * BodyModel.Gravity * model.StatureM;
        foreach (var action in Actions)
            figures[(int)action] = FigureOf(tables, action, sexes, age, weightTimesStature);
    }

    /// <summary>Whether anything is published for the action.</summary>
    internal bool Has(JointAction action) => (uint)action < (uint)figures.Length && figures[(int)action].Terms is not null;

    /// <summary>Whether the figure is weak.</summary>
    internal bool IsWeak(JointAction action) => figures[(int)action].Weak;

    /// <summary>Standard deviation between people as a fraction.</summary>
    internal double Spread(JointAction action) => figures[(int)action].Spread;

    /// <summary>The torque, N m, of an action that is published; and whether the angle lies beyond its curve.</summary>
    internal double At(JointAction action, double clinicalAngle, out bool beyond)
    {
        ref readonly var figure = ref figures[(int)action];
        var angle = Math.Min(Math.Max(clinicalAngle, figure.Least), figure.Most);
        beyond = angle != clinicalAngle;
        var sum = 0.0;
        foreach (ref readonly var term in figure.Terms.AsSpan())
        {
            var argument = Math.Min(Math.Max(term.C2 * (angle - term.C3), -Math.PI / 2), Math.PI / 2);
            sum += term.Peak * Math.Max(LeastOfPeak, Math.Cos(argument));
        }

        return sum;
    }

    private static Figure FigureOf(CapacityTables tables, JointAction action, Sex[] sexes, double age, double weightTimesStature)
    {
        var terms = new List<Term>();
        var spread = tables.UntestedSpread;
        var weak = false;
        foreach (var sex in sexes)
        {
            var curves = CurvesOf(tables, action, sex);
            if (curves.Length > 0)
            {
                var (older, part) = Group(curves, age);
                terms.Add(TermOf(curves[older], part * weightTimesStature / sexes.Length));
                if (part < 1)
                    terms.Add(TermOf(curves[older - 1], (1 - part) * weightTimesStature / sexes.Length));
                continue;
            }

            if (tables.Constants.FirstOrDefault(c => c.Action == action && c.Sex == sex) is not { } constant)
                return default;
            var torque = constant.FractionOfWeightTimesStature * weightTimesStature + constant.TorqueNm;
            terms.Add(new Term(torque * (constant.CarriedToOtherAges ? AgeFactor(tables, sex, age) : 1) / sexes.Length, 0, 0));
            spread = Math.Max(spread, constant.Spread);
            weak |= constant.Weak;
        }

        var (least, most) = tables.Angles.TryGetValue(action, out var range) ? range : (double.NegativeInfinity, double.PositiveInfinity);
        return new Figure([.. terms], least, most, spread, weak);
    }

    private static Term TermOf(CapacityCurve curve, double times) => new(curve.C1 * times, curve.C2, curve.C3);

    private static CapacityCurve[] CurvesOf(CapacityTables tables, JointAction action, Sex sex) =>
        [.. tables.Curves.Where(c => c.Action == action && c.Sex == sex).OrderBy(c => c.AgeYears)];

    /// <summary>
    /// The group at or after the age and its part, the rest belonging to the group before: even interpolation between the
    /// middles of the published age groups (our choice); outside them the end group counts.
    /// </summary>
    private static (int Older, double Part) Group(CapacityCurve[] curves, double age)
    {
        if (age <= curves[0].AgeYears)
            return (0, 1);
        for (var i = 1; i < curves.Length; i++)
        {
            if (age <= curves[i].AgeYears)
                return (i, (age - curves[i - 1].AgeYears) / (curves[i].AgeYears - curves[i - 1].AgeYears));
        }

        return (curves.Length - 1, 1);
    }

    /// <summary>
    /// How the hip's published peaks change from young adults to this age: carries young adults' torques to other ages
    /// (our choice, for want of published curves).
    /// </summary>
    private static double AgeFactor(CapacityTables tables, Sex sex, double age)
    {
        var (sum, count) = (0.0, 0);
        foreach (var action in new[] { JointAction.HipFlexion, JointAction.HipExtension })
        {
            var curves = CurvesOf(tables, action, sex);
            if (curves.Length == 0)
                continue;
            var (older, part) = Group(curves, age);
            var peak = part * curves[older].C1 + (part < 1 ? (1 - part) * curves[older - 1].C1 : 0);
            sum += peak / curves[0].C1;
            count++;
        }

        return count > 0 ? sum / count : 1;
    }

    private readonly record struct Term(double Peak, double C2, double C3);

    private readonly record struct Figure(Term[] Terms, double Least, double Most, double Spread, bool Weak);
}
