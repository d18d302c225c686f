using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>Findings from words and manual grades: taken seriously, ranked low, never turned into a measured number.</summary>
internal static class WordFindings
{
    private static readonly ImmutableArray<string> Lacks =
        ["limited", "weak", "tight", "short", "stiff", "reduced", "poor", "decreased", "less", "restricted", "low", "unable", "cannot"];

    private static readonly ImmutableArray<string> Fine = ["normal", "full", "good", "ok", "fine", "equal", "strong", "not", "no", "wnl", "intact"];

    public static Finding? Of(Measure measure, Observation observation, Side? affected)
    {
        if (FindingsMaker.KindOf(measure) is not { } kind || kind == ImpairmentKind.Activity)
            return null;
        if (observation.Grade is { } grade)
            return grade.StartsWith('5') ? null : Make(measure, observation.Side, kind, $"grade {grade} by hand", affected);
        var words = observation.Text.ToLowerInvariant().Split([' ', ',', '.', ';'], StringSplitOptions.RemoveEmptyEntries);
        if (words.Contains("painful") && measure.Kind == MeasureKind.Strength && !words.Any(Fine.Contains))
            return Make(measure, observation.Side, ImpairmentKind.PainUnderLoad, $"\"{observation.Text}\"", affected);
        return words.Any(Lacks.Contains) && !words.Any(Fine.Contains)
            ? Make(measure, observation.Side, kind, $"\"{observation.Text}\"", affected)
            : null;
    }

    private static Finding Make(Measure measure, Side? side, ImpairmentKind kind, string what, Side? affected) =>
        FindingsMaker.Make(
            measure, side, kind, $"{FindingsMaker.Thing(measure, side)}: {what}",
            "No number was given, so its size and error are not known; it ranks as a small lack.",
            FindingRules.DeficitOfWords, affected, null);
}
