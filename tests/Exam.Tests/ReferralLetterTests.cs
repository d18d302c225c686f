using System.Collections.Immutable;
using MomentArm.Body;
using static MomentArm.Exam.Tests.RuleCases;

namespace MomentArm.Exam.Tests;

/// <summary>Invented people. The first is the written case of the clot score after a hip replacement (Riddle and Wells 2004).</summary>
public class ReferralLetterTests
{
    [Fact]
    public void The_letter_says_who_what_how_urgent_asks_and_tells_what_was_done()
    {
        var letter = ReferralLetter.Draft(Facts("age=68 suspected=yes bed=yes tender=yes whole=yes alternative=yes", "calf-clot"));
        Assert.Equal(["Who", "How urgent", "What was found", "The question", "What was done"], letter.Parts.Select(p => p.Title));
        var text = letter.ToText();
        foreach (var part in new[]
                 {
                     "Robin Marsh (invented), 68 years", "see the person today", "Clot likely: same-day referral", "score without the last item between 3 and 9 points",
                     "present: In bed 3 days", "not known: Active cancer", "Nothing is diagnosed here", "May the limb be loaded", "No exercise is prescribed",
                     "Medical contact today", "March 2, 2026", "A. Quill",
                 })
            Assert.Contains(part, text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_emergency_outranks_and_a_decided_sign_does_not_hurry()
    {
        Assert.Contains("emergency", ReferralLetter.Draft(Facts(null, "calf-clot", "hip-broken")).Subject, StringComparison.Ordinal);
        var decided = ReferralLetter.Draft(Facts(null, new DangerDecision("calf-clot", "Dr. Example", "Ultrasound clear.", new DateOnly(2026, 3, 2)), "calf-clot"));
        Assert.Contains("for advice", decided.Subject, StringComparison.Ordinal);
        Assert.Contains("Decided by Dr. Example: Ultrasound clear.", decided.ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_not_asked_is_not_told_as_no()
    {
        var facts = Facts(null);
        var letter = ReferralLetter.Draft(facts with { Gate = DangerScreen.Judge(Shipped.Exam.DangerSigns, new ScreenedPerson([BodyRegion.Hip], 68), new Dictionary<string, DangerAnswer>(), []) });
        Assert.Contains("Not asked yet:", letter.ToText(), StringComparison.Ordinal);
        Assert.DoesNotContain("answered no", letter.ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Positive_rules_stop_like_signs_and_a_decision_lifts_them()
    {
        var positive = Apply("ottawa-knee", "age=60 days=1 unfit=no");
        var sign = Assert.Single(RuleSigns.Of([positive, Apply("ottawa-foot", "age=60"), ElseNo("hip-five-findings", "rotation=20")]));
        Assert.Equal(("rule/ottawa-knee", Urgency.SameDay), (sign.Id, sign.Urgency));
        var answers = new Dictionary<string, DangerAnswer> { [sign.Id] = DangerAnswer.Yes };
        Assert.True(DangerScreen.Judge([sign], answers, []).PrescribingStopped);
        Assert.False(DangerScreen.Judge([sign], answers, [new DangerDecision(sign.Id, "Dr. Example", "Film clear.", new DateOnly(2026, 3, 2))]).PrescribingStopped);
    }

    private static ReferralFacts Facts(string? wells, params string[] yes) => Facts(wells, null, yes);

    private static ReferralFacts Facts(string? wells, DangerDecision? decision, params string[] yes)
    {
        var signs = Shipped.Exam.DangerSigns;
        var answers = signs.ToDictionary(s => s.Id, s => yes.Contains(s.Id) ? DangerAnswer.Yes : DangerAnswer.No);
        var given = wells is null ? [] : Answers(Rule("wells-dvt"), wells, null);
        return new ReferralFacts
        {
            Patient = "Robin Marsh (invented)",
            AgeYears = 68,
            Complaint = "right hip",
            Day = new DateOnly(2026, 3, 2),
            From = "A. Quill",
            Clinic = "Pier Street Clinic",
            Gate = DangerScreen.Judge(signs, new ScreenedPerson([BodyRegion.Hip], 68), answers, decision is null ? [] : [decision]),
            Rules = wells is null ? [] : [RuleEvaluation.Of(Rule("wells-dvt"), given)],
            Answers = ImmutableDictionary<string, IReadOnlyDictionary<string, RuleValue>>.Empty.Add("wells-dvt", given),
        };
    }
}
