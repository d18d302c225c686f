using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Prescribing;

/// <summary>A case read: what the measurements say, what follows from them, and the body that exercises are loaded on.</summary>
public sealed record CaseReading
{
    /// <summary>Interpretations of today's visit in exam order.</summary>
    public required ImmutableArray<Interpretation> Interpretations { get; init; }

    /// <summary>Ranked findings of today's visit.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>Irritability and the load window it permits.</summary>
    public required IrritabilityGrade Irritability { get; init; }

    /// <summary>The person's body and capacities.</summary>
    public required PersonalLoads Loads { get; init; }

    /// <summary>The person's limits of length.</summary>
    public required PersonalReach Reach { get; init; }

    /// <summary>What was assumed or could not be used, in sentences for the screen.</summary>
    public required ImmutableArray<string> Notes { get; init; }

    /// <summary>Reads a case. Values in, values out; the same facts always give the same reading.</summary>
    /// <param name="basis">What it is read against.</param>
    /// <param name="facts">The case.</param>
    /// <returns>The reading.</returns>
    public static CaseReading Of(CaseBasis basis, CaseFacts facts)
    {
        ArgumentNullException.ThrowIfNull(basis);
        ArgumentNullException.ThrowIfNull(facts);
        var model = BodyModelBuilder.Build(basis.Skeleton, basis.Tables, facts.Person);
        var visits = facts.Visits.OrderBy(v => v.Order).Select(v => v with { Measurements = JudgedReadings.Of(v.Measurements) }).ToImmutableArray();
        var today = visits.LastOrDefault();
        var notes = model.Assumptions.ToBuilder();
        var gravity = new GravityOfTests(model, basis.Points);
        var interpretations = today is null ? [] : Interpret(basis, facts, visits, today, gravity);
        var tests = StrengthTests(basis, visits, gravity, model, notes);
        if (tests.IsEmpty)
            notes.Add("No strength test with a lever arm: capacities are published values for sex and age, with wide intervals.");
        var muscles = MuscleSet.Build(basis.Muscles, basis.Skeleton, model);
        var reach = CaseLengths.Read(basis, facts.Person, visits, muscles, notes);
        return new CaseReading
        {
            Interpretations = interpretations,
            Findings = FindingsMaker.From(interpretations, facts.AffectedSide, today?.Observations, basis.Measures, facts.Relevance),
            Irritability = Grade(facts, basis, today),
            Loads = new PersonalLoads(new PersonBody(
                model, basis.Points, muscles, new PatientCapacity(basis.Capacities, facts.Person, model, tests))),
            Reach = reach,
            Notes = notes.ToImmutable(),
        };
    }

    private static ImmutableArray<Interpretation> Interpret(
        CaseBasis basis, CaseFacts facts, ImmutableArray<CaseVisit> visits, CaseVisit today, GravityOfTests gravity)
    {
        var earlier = visits.Where(v => v.Order < today.Order)
            .Select(v => new EarlierVisit(v.Order, v.Day, v.Measurements))
            .ToImmutableArray();
        var made = ImmutableArray.CreateBuilder<Interpretation>();
        foreach (var measure in TypedEntry.InExamOrder(basis.Measures))
        {
            var now = today.Measurements.Where(m => m.MeasureId == measure.Id).ToImmutableArray();
            if (now.IsEmpty)
                continue;
            made.Add(Interpreter.Interpret(new InterpretationInput
            {
                Measure = measure,
                Now = now,
                Earlier = earlier,
                Person = facts.Person,
                AffectedSide = facts.AffectedSide,
                Norms = basis.Norms,
                Predictions = basis.Predictions,
                ShowUnverified = facts.ShowUnverified,
                GravityTorqueLeftNm = gravity.Of(measure, Side.Left),
                GravityTorqueRightNm = gravity.Of(measure, Side.Right),
            }));
        }

        return made.ToImmutable();
    }

    /// <summary>The latest test of each action and side, as muscle torques.</summary>
    private static ImmutableArray<StrengthTest> StrengthTests(
        CaseBasis basis, ImmutableArray<CaseVisit> visits, GravityOfTests gravity, BodyModel model, ImmutableArray<string>.Builder notes)
    {
        var tests = new Dictionary<(JointAction, Side), StrengthTest>();
        foreach (var measurement in visits.SelectMany(v => v.Measurements))
        {
            var measure = basis.Measures.FirstOrDefault(m => m.Id == measurement.MeasureId);
            if (measure is not { Strength: { } setUp, Action: { } action } || measurement.Side is not { } side)
                continue;
            if (!basis.Capacities.Has(action))
            {
                Note(notes, $"{measure.Name}: no published strength to hold it against, so it does not scale the capacities.");
                continue;
            }

            if (measurement.LeverArmM is not { } lever)
            {
                Note(notes, $"{measure.Name}: no lever arm, so the force could not become a torque. Add \"at ... cm\".");
                continue;
            }

            var torque = measure.Combine(measurement.Trials) * lever + (gravity.Of(measure, side) ?? 0);
            if (torque > 0)
            {
                var (index, _) = action.On(model, side);
                var angle = ClinicalPose.Of(model, setUp.Pose, side).Angles[index];
                tests[(action, side)] = new StrengthTest(action, side, torque, action.ClinicalAngle(angle), measurement.PainDuring >= FindingRules.PainUnderLoadFrom);
            }
        }

        return [.. tests.Values];
    }

    private static void Note(ImmutableArray<string>.Builder notes, string note)
    {
        if (!notes.Contains(note))
            notes.Add(note);
    }

    private static IrritabilityGrade Grade(CaseFacts facts, CaseBasis basis, CaseVisit? today)
    {
        if (facts.Irritability is { } given)
            return new IrritabilityGrade(given, ["Graded by the clinician."], IrritabilityRule.WindowFor(given));
        var pains = today?.Measurements
            .Where(m => basis.Measures.Any(x => x.Id == m.MeasureId && x.Kind == MeasureKind.PainRating))
            .SelectMany(m => m.Trials)
            .ToArray() ?? [];
        return IrritabilityRule.Grade(pains.Length > 0 ? pains.Max() : null, null, null);
    }

    /// <summary>The limb's weight in each strength test, computed once for each measure and side.</summary>
    private sealed class GravityOfTests(BodyModel model, SurfacePoints points)
    {
        private readonly Dictionary<(string, Side), double> known = [];

        internal double? Of(Measure measure, Side side)
        {
            if (measure is not { Strength: { } setUp, Action: { } action })
                return null;
            if (!known.TryGetValue((measure.Id, side), out var torque))
            {
                torque = StrengthTesting.LimbTorque(model, points, setUp.Pose, action, side);
                known[(measure.Id, side)] = torque;
            }

            return torque;
        }
    }
}
