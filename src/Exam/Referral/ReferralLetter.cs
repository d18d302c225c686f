using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>What a referral letter is written from.</summary>
public sealed record ReferralFacts
{
    /// <summary>The patient as the clinic names them.</summary>
    public required string Patient { get; init; }

    /// <summary>Age in whole years; null when not known.</summary>
    public int? AgeYears { get; init; }

    /// <summary>The complaint, such as "left hip, outer side".</summary>
    public required string Complaint { get; init; }

    /// <summary>The day of the visit.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>Who writes.</summary>
    public required string From { get; init; }

    /// <summary>The clinic that writes.</summary>
    public required string Clinic { get; init; }

    /// <summary>The gate of the visit.</summary>
    public required DangerGate Gate { get; init; }

    /// <summary>Rules that were begun in the visit, told or not.</summary>
    public required ImmutableArray<RuleResult> Rules { get; init; }

    /// <summary>The answers of each rule, by rule id.</summary>
    public required IReadOnlyDictionary<string, IReadOnlyDictionary<string, RuleValue>> Answers { get; init; }
}

/// <summary>One part of a letter.</summary>
/// <param name="Title">Heading, such as "What was found".</param>
/// <param name="Lines">Sentences, one a line.</param>
public sealed record LetterPart(string Title, ImmutableArray<string> Lines);

/// <summary>
/// A draft of a referral letter, for the clinician to read, change and sign. It says what was asked, found and done, and asks a
/// question; it names no diagnosis.
/// </summary>
/// <param name="Subject">The first line.</param>
/// <param name="Parts">Who, urgency, what was found, the question, what was done.</param>
public sealed record ReferralLetter(string Subject, ImmutableArray<LetterPart> Parts)
{
    /// <summary>Writes the draft.</summary>
    /// <param name="facts">What is known.</param>
    /// <returns>The draft.</returns>
    public static ReferralLetter Draft(ReferralFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var urgency = UrgencyOf(facts);
        return new ReferralLetter(
            $"Referral: {facts.Patient}, {Day(facts.Day)}, {Speed(urgency).Title}",
            [
                new LetterPart("Who", [Who(facts), $"From {facts.From}, {facts.Clinic}, visit of {Day(facts.Day)}."]),
                new LetterPart("How urgent", [Speed(urgency).Sentence]),
                new LetterPart("What was found", Found(facts)),
                new LetterPart("The question", Question(facts, urgency)),
                new LetterPart("What was done", Done(facts)),
            ]);
    }

    /// <summary>The letter as plain text.</summary>
    /// <returns>Subject, then each part under its heading.</returns>
    public string ToText() =>
        Subject + "\n\n" + string.Join("\n\n", Parts.Select(p => p.Title + "\n" + string.Join("\n", p.Lines))) + "\n";

    private static Urgency? UrgencyOf(ReferralFacts facts)
    {
        var signs = facts.Gate.Present.Where(p => p.Decision is null).Select(p => (Urgency?)p.Sign.Urgency);
        var rules = facts.Rules.Select(r => r.Advice?.Urgency);
        return signs.Concat(rules).Max();
    }

    private static (string Title, string Sentence) Speed(Urgency? urgency) => urgency switch
    {
        Urgency.EmergencyNow => ("emergency", "Emergency: the person is sent now."),
        Urgency.SameDay => ("same day", "Please see the person today."),
        Urgency.ReferBeforeExercise => ("before exercise", "Please see the person before exercise begins; new loading waits for your answer."),
        Urgency.ProceedWithCare => ("for advice", "Not urgent: exercise goes on with care meanwhile."),
        null => ("for advice", "Not urgent: no danger sign stands."),
    };

    private static string Who(ReferralFacts facts) => facts.AgeYears is { } age
        ? $"{facts.Patient}, {Say.Number(age, 0)} years, in care for: {facts.Complaint}."
        : $"{facts.Patient}, age not recorded, in care for: {facts.Complaint}.";

    private static ImmutableArray<string> Found(ReferralFacts facts)
    {
        var lines = new List<string>();
        foreach (var present in facts.Gate.Present.Where(p => !p.Sign.Id.StartsWith(RuleSigns.Prefix, StringComparison.Ordinal)))
            lines.Add($"Answered yes: {present.Sign.Question}");
        lines.AddRange(facts.Rules.Select(rule => Rule(rule, facts.Answers.GetValueOrDefault(rule.Rule.Id))));
        if (lines.Count == 0)
            lines.Add("No danger sign was answered yes and no decision rule was used.");
        if (!facts.Gate.Unasked.IsEmpty)
            lines.Add($"Not asked yet: {Say.Number(facts.Gate.Unasked.Length, 0)} danger-sign question{(facts.Gate.Unasked.Length == 1 ? "" : "s")}.");
        else
            lines.Add("All other danger-sign questions were asked and answered no.");
        return [.. lines];
    }

    private static string Rule(RuleResult result, IReadOnlyDictionary<string, RuleValue>? answers)
    {
        var points = string.Join(", ", result.Scores.Select(s => $"{s.Score.Name} {RuleText.Points(s)}"));
        var met = string.Join("; ", result.Criteria.Where(c => c.Met == true).Select(c => c.Criterion.Text));
        var unknown = result.Rule.Items.Where(i => answers?.ContainsKey(i.Id) != true).Select(i => i.Text).ToArray();
        var parts = new[]
        {
            result.State switch
            {
                RuleState.Told => result.Advice!.Name,
                RuleState.NotYet => "cannot be told yet",
                RuleState.NotForThisPerson => "not for this person",
            },
            points,
            met.Length == 0 ? "" : "present: " + met,
            unknown.Length == 0 ? "" : "not known: " + string.Join("; ", unknown),
        };
        return $"{result.Rule.Name}: {string.Join(". ", parts.Where(p => p.Length > 0))}.";
    }

    private static ImmutableArray<string> Question(ReferralFacts facts, Urgency? urgency)
    {
        var may = facts.Gate.Present.Where(p => p.Decision is null && !p.Sign.Id.StartsWith(RuleSigns.Prefix, StringComparison.Ordinal))
            .Select(p => p.Sign.MayMean).Distinct().ToArray();
        var lines = new List<string>();
        if (may.Length > 0)
            lines.Add($"Such answers can go with: {string.Join("; ", may)}. Nothing is diagnosed here; can it be ruled out, or what does it need?");
        lines.AddRange(facts.Rules.Where(r => r.Advice?.Urgency >= Urgency.ReferBeforeExercise)
            .Select(r => $"{r.Rule.Decides} By the {r.Rule.Name}: {r.Advice!.Name}."));
        lines.Add(urgency >= Urgency.ReferBeforeExercise
            ? "May the limb be loaded, from when, and with which limits?"
            : "Is there anything that speaks against an exercise program?");
        return [.. lines];
    }

    private static ImmutableArray<string> Done(ReferralFacts facts)
    {
        var lines = new List<string>
        {
            facts.Gate.PrescribingStopped ? "No exercise is prescribed until this is settled." : "Exercise goes on with the limits on record.",
        };
        lines.AddRange(facts.Gate.Present.Where(p => p.Decision is null).Select(p => $"Advised: {p.Sign.Action}"));
        lines.AddRange(facts.Gate.Present.Where(p => p.Decision is not null).Select(p => $"Decided by {p.Decision!.Who}: {p.Decision.Reason}"));
        return [.. lines];
    }

    private static string Day(DateOnly day) => FormattableString.Invariant($"{day:MMMM d, yyyy}");
}
