using System.Collections.Immutable;
using System.Globalization;

namespace MomentArm.Exam;

/// <summary>The way to a probability in plain sentences, with every number.</summary>
internal static class ChainWords
{
    public static ImmutableArray<string> NotKnown(ReasoningBasis basis, ReasoningInput input, Pattern pattern, ChosenPrior? prior)
    {
        var list = new List<string>();
        var figures = basis.Tests.SelectMany(t => t.Figures).Where(f => f.Pattern == pattern.Id).ToArray();
        if (figures.All(f => f.Origin == RatioOrigin.None))
            list.Add("No accuracy data: no test for this has a usable likelihood ratio, so no test moves its probability. The pattern and what else was ruled out must carry it.");
        else if (!figures.Any(f => TestReader.MayMove(f, input)))
            list.Add("No accuracy data fit for use: what is known is from memory or in conflict, so no test moves its probability.");
        if (prior is null)
        {
            var others = pattern.Priors.Select(p => $"{Say.Percent(p.Value)} ({p.Population}{(p.Usable ? "" : "; from memory")})").ToArray();
            list.Add(others.Length == 0
                ? "No published starting value was found: give your own to see a probability."
                : $"No published starting value fits what is known so far. Known: {string.Join("; ", others)}. Give your own to see a probability.");
        }
        return [.. list];
    }

    public static ImmutableArray<string> Of(ChosenPrior? prior, ProbabilityEstimate? estimate, IReadOnlyList<TestReading> readings)
    {
        if (prior is null || estimate is null)
            return [.. readings.Select(r => $"{r.Test.ShortName}, {r.ResultWords}: {WithoutStart(r)}")];
        var list = new List<string>
        {
            $"Start: {Say.Percent(prior.Value)}{RangeText(prior.Range)}, {prior.Words}.",
        };
        foreach (var step in estimate.Steps)
            list.Add(step.Weight > 0 ? Counted(step) : $"{step.Reading.Test.ShortName}, {step.Reading.ResultWords}: does not count; {step.Why}.");
        if (estimate.Capped is { } capped)
            list.Add($"Limit: {capped}.");
        list.Add(
            $"Now: {Say.Percent(estimate.Value)}{(estimate.Low < estimate.High ? $", {Say.Percent(estimate.Low)} to {Say.Percent(estimate.High)}" : ", no interval is known")}: {Band(estimate.Band)}.");
        return [.. list];
    }

    public static string Band(ProbabilityBand band) => band switch
    {
        ProbabilityBand.Unlikely => "unlikely",
        ProbabilityBand.Possible => "possible",
        ProbabilityBand.Probable => "probable",
        ProbabilityBand.VeryProbable => "very probable",
    };

    private static string Counted(ChainStep step)
    {
        var ratio = step.Reading.Ratio!;
        var interval = ratio.Used.Interval!;
        var origin = ratio.Origin switch
        {
            IntervalOrigin.Published => "published",
            IntervalOrigin.FromAccuracyIntervals => "computed from the intervals of sensitivity and specificity",
            IntervalOrigin.FromCounts => "computed from the numbers of the study",
            IntervalOrigin.Assumed => "assumed",
        };
        var why = step.Why.Length > 0 ? $" ({step.Why})" : "";
        var half = step.Weight < 1 ? $", at half weight {Digits(Math.Pow(ratio.Used.Value, step.Weight))}" : "";
        return $"{step.Reading.Test.ShortName}, {step.Reading.ResultWords}: likelihood ratio {Digits(ratio.Used.Value)} "
            + $"({RatioRules.Text(interval)}, {origin}){half}, to {Say.Percent(step.After!.Value)}{why}.";
    }

    private static string WithoutStart(TestReading reading) => reading.Ratio is { } ratio
        ? $"likelihood ratio {Digits(ratio.Used.Value)}{(ratio.Note is { } note ? "; " + note : "")}."
        : $"{reading.WhyNot}.";

    private static string RangeText(RatioSpan? range) =>
        range is null ? "" : string.Create(CultureInfo.InvariantCulture, $" ({Say.Percent(range.Low)} to {Say.Percent(range.High)})");

    private static string Digits(double ratio) => Say.Number(ratio, 2);
}
