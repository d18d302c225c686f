using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>Writes the sentences about norms: the most fitting row of each side.</summary>
internal static class NormSentences
{
    public static IEnumerable<Statement> Of(Interpretation found, InterpretationInput input)
    {
        foreach (var reading in found.Readings)
        {
            if (found.Norms.FirstOrDefault(n => n.Side == reading.Measurement.Side) is { } best)
                yield return One(found.Measure, best);
        }

        if (found.Norms.IsEmpty && input.Norms.Any(n => n.MeasureId == found.Measure.Id))
            yield return new Statement(StatementTopic.Norm, null, Missing(input), Tone.Neutral);
    }

    private static string Missing(InterpretationInput input)
    {
        if (input.Person.AgeYears is null)
            return "Age is not known, so no norm is shown.";
        return input.Person.Sex is null
            ? "Sex is not known; the norms for this age are given by sex."
            : "No published norm fits this person, or body mass, stature or lever arm is missing.";
    }

    private static Statement One(Measure measure, NormComparison norm)
    {
        var row = norm.Norm;
        var text = $"{Sentences.Start(norm.Side)}{Amount(measure, row, norm.Value)} beside {Middle(measure, row)} in {row.Population}";
        if (norm is { Low: not null, ZScore: { } z, Percentile: { } percentile })
            text += $": z {Say.Number(z, 2)}, percentile {(percentile < 0.1 ? "under 0.1" : Say.Number(percentile, percentile < 10 ? 1 : 0))}";
        return new Statement(StatementTopic.Norm, norm.Side, $"{text}. {Quality(measure, norm)}", ToneOf(norm));
    }

    private static string Middle(Measure measure, Norm row)
    {
        var parts = new List<string>();
        if (row.Mean is { } mean)
        {
            var spread = row is { IsMedian: false, Spread: { } sd } ? $" (SD {Amount(measure, row, sd)})" : "";
            parts.Add($"a {(row.IsMedian ? "median" : "mean")} of {Amount(measure, row, mean)}{spread}");
        }
        if (row is { Quarter: { } low, ThreeQuarters: { } high })
            parts.Add($"a middle half of {Amount(measure, row, low)} to {Amount(measure, row, high)}");
        if (row.Limit is { } limit)
            parts.Add($"a limit of {Amount(measure, row, limit)}");
        return string.Join(", ", parts);
    }

    private static Tone ToneOf(NormComparison norm) => norm.Low switch
    {
        true => Tone.Watch,
        false => Tone.Good,
        null => Tone.Neutral,
    };

    private static string Quality(Measure measure, NormComparison norm)
    {
        var row = norm.Norm;
        if (norm.Low is { } low)
            return (low, row.Limit) switch
            {
                (true, null) => "Low for age and sex.",
                (false, null) => "Within what is usual for age and sex.",
                (true, _) => "On the worse side of the published limit.",
                (false, _) => "Not on the worse side of the published limit.",
            };
        if (!row.Verified)
            return "From memory, not verified: shown, not used to grade.";
        if ((row.Spread ?? row.Limit ?? row.Quarter) is null)
            return row.MeanFrom is null
                ? "The spread between people is not published: no grade."
                : "Only the uncertainty of the mean is published, not the spread between people: no grade.";
        return NormChoice.OtherMode(measure, row)
            ? $"Measured as {row.Mode.ToString().ToLowerInvariant()} movement: no grade."
            : "Other people or method than here: shown beside, no grade.";
    }

    private static string Amount(Measure measure, Norm row, double value) => row.Unit switch
    {
        NormUnit.Measure => Say.Shown(measure, value),
        NormUnit.TorquePerMass => Say.Number(value, 2) + " N m/kg",
        NormUnit.PercentWeightHeight => Say.Number(value, 2) + " % of weight x height",
        NormUnit.ForcePerMass => Say.Number(value, 2) + " N/kg",
        NormUnit.PercentWeight => Say.Number(value) + " % of body weight",
    };
}
