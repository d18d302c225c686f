using System.Globalization;

namespace MomentArm.Exam;

/// <summary>Writes the sentences about change over time.</summary>
internal static class ChangeSentences
{
    public static IEnumerable<Statement> Of(Interpretation found) =>
        found.Changes.Select(c => new Statement(
            c.SinceFirst ? StatementTopic.SinceFirst : StatementTopic.SinceLast, c.Side, Text(found.Measure, c), ToneOf(c)));

    private static string Text(Measure measure, ChangeOverTime change)
    {
        var isMean = measure.Kind == MeasureKind.PatientSpecific && change.Activity is null && change.Side is null;
        var start = isMean ? "Mean of the activities: " : Sentences.Start(change.Side, change.Activity);
        var day = change.SinceDay.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        var values = $"{Value(measure, change, change.Before)} to {Value(measure, change, change.After)} since {day}";
        return $"{start}{values}: {Verdict(measure, change)}.";
    }

    /// <summary>A value of a change with its unit.</summary>
    public static string Value(Measure measure, ChangeOverTime change, double value) =>
        change.ByTorque ? Say.Torque(value) : Say.Shown(measure, value);

    /// <summary>What a change amounts to, without a full stop: "really better (beyond 16 N)".</summary>
    public static string Verdict(Measure measure, ChangeOverTime change)
    {
        var way = change.Better switch { true => "better", false => "worse", null => "changed" };
        if (change.Before == change.After && change.Verdict != ChangeVerdict.NotComparable)
            return "no change";
        var limit = change.Detectable is { } d ? Sentences.Amount(measure, change.ByTorque, d) : "";
        var matters = change.Mcid is { } m ? Sentences.Amount(measure, change.ByTorque, m) : "";
        return change.Verdict switch
        {
            ChangeVerdict.NotComparable => "not taken alike, so the two are shown and not judged",
            ChangeVerdict.WithinError => $"within error (a change under {limit} can be chance)",
            ChangeVerdict.NoErrorKnown => $"{way} by {Gap(measure, change)}; no error is published, so it is not judged",
            ChangeVerdict.Real when change.Mcid is null => $"really {way} (beyond {limit}); what matters to patients is not published",
            ChangeVerdict.Real => $"really {way} (beyond {limit}), under the {matters} that matter to patients",
            ChangeVerdict.RealAndWorthwhile => $"really {way} and large enough to matter (beyond {limit} and {matters})",
        };
    }

    private static string Gap(Measure measure, ChangeOverTime change) =>
        Sentences.Amount(measure, change.ByTorque, Math.Abs(change.After - change.Before));

    private static Tone ToneOf(ChangeOverTime change)
    {
        if (change.Verdict is not (ChangeVerdict.Real or ChangeVerdict.RealAndWorthwhile))
            return Tone.Neutral;
        return change.Better switch { true => Tone.Good, false => Tone.Watch, null => Tone.Neutral };
    }
}
