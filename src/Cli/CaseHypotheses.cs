using System.Collections.Immutable;
using MomentArm.Content;
using MomentArm.Exam;
using MomentArm.Prescribing;

namespace MomentArm.Cli;

/// <summary>The reasoning about a case file.</summary>
internal sealed record CaseHypotheses(
    ImmutableArray<Hypothesis> Ranked, ImmutableArray<NextTest> Next, YellowReading Yellow, IrritabilityReading? Irritability)
{
    internal static CaseHypotheses Of(ReasoningBasis basis, CaseInput input, CaseReading reading)
    {
        var told = input.Reasoning with { Findings = reading.Findings };
        var ranked = Reasoner.Judge(basis, told);
        var open = ranked.Where(h => h.Fit != PatternFit.Against).ToArray();
        return new CaseHypotheses(
            ranked,
            NextTests.Rank(basis, told, open),
            YellowScreen.Read(basis.YellowFlags, input.YellowFlags),
            input.IrritabilityAsked is { } asked
                ? IrritabilityReading.Of(new IrritabilityAnswers(
                    WorstPain(reading), asked.Rest, asked.FlareHours, asked.Disability, asked.InRange, asked.ActiveLessThanPassive))
                : null);
    }

    private static double? WorstPain(CaseReading reading)
    {
        var pains = reading.Interpretations.Where(i => i.Measure.Kind == MeasureKind.PainRating)
            .SelectMany(i => i.Readings.Select(r => r.Value)).ToArray();
        return pains.Length == 0 ? null : pains.Max();
    }
}
