using CsCheck;

namespace MomentArm.Exam.Tests;

public class DangerScreenTests
{
    private static readonly IReadOnlyList<DangerSign> Signs = Shipped.Exam.DangerSigns;

    [Fact]
    public void Everything_asked_and_nothing_present_is_clear()
    {
        var gate = Judge(AllNo());
        Assert.Equal(GateState.Clear, gate.State);
        Assert.False(gate.PrescribingStopped);
    }

    [Fact]
    public void One_unasked_sign_stops_the_plan()
    {
        // Design rule: not asked is not no.
        var answers = AllNo();
        answers.Remove("calf-clot");
        var gate = Judge(answers);
        Assert.Equal(GateState.Unfinished, gate.State);
        Assert.True(gate.PrescribingStopped);
        Assert.Equal("calf-clot", Assert.Single(gate.Unasked).Id);
    }

    [Fact]
    public void An_emergency_outranks_what_is_unasked()
    {
        var gate = Judge(new() { ["chest-pain-or-fainting"] = DangerAnswer.Yes });
        Assert.Equal(GateState.Emergency, gate.State);
        Assert.Contains("emergency service", gate.WhatToDo[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("calf-clot", GateState.SameDay)]
    [InlineData("one-spot-bone-pain", GateState.ReferBeforeExercise)]
    [InlineData("young-hip", GateState.SameDay)]
    [InlineData("saddle-numbness-or-bladder", GateState.Emergency)]
    public void A_yes_stops_by_its_urgency(string id, GateState expected)
    {
        var answers = AllNo();
        answers[id] = DangerAnswer.Yes;
        var gate = Judge(answers);
        Assert.Equal(expected, gate.State);
        Assert.True(gate.PrescribingStopped);
    }

    [Fact]
    public void A_caution_lets_exercise_go_on()
    {
        var answers = AllNo();
        answers["surgery-or-blood-thinner"] = DangerAnswer.Yes;
        var gate = Judge(answers);
        Assert.Equal(GateState.ProceedWithCare, gate.State);
        Assert.False(gate.PrescribingStopped);
    }

    [Fact]
    public void A_recorded_decision_lifts_the_stop_and_keeps_the_sign()
    {
        var answers = AllNo();
        answers["calf-clot"] = DangerAnswer.Yes;
        var gate = Judge(answers, new DangerDecision("calf-clot", "Dr. Example", "Ultrasound clear.", new DateOnly(2026, 3, 2)));
        Assert.Equal(GateState.ProceedWithCare, gate.State);
        Assert.False(gate.PrescribingStopped);
        Assert.Equal("Ultrasound clear.", Assert.Single(gate.Present).Decision!.Reason);
        Assert.Contains(gate.WhatToDo, w => w.Contains("Dr. Example", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", "why")]
    [InlineData("who", "  ")]
    public void A_decision_without_name_or_reason_is_refused(string who, string reason) =>
        Assert.Throws<ArgumentException>(() => new DangerDecision("calf-clot", who, reason, new DateOnly(2026, 3, 2)));

    [Fact]
    public void A_yes_to_a_question_that_is_gone_still_stops()
    {
        var answers = AllNo();
        answers["removed-question"] = DangerAnswer.Yes;
        var gate = Judge(answers);
        Assert.True(gate.PrescribingStopped);
        Assert.Equal("removed-question", Assert.Single(gate.UnknownYes));
    }

    [Fact]
    public void A_stopping_sign_always_stops_whatever_else_is_answered() =>
        Gen.Int[0, 2].Array[10].Select(Gen.Int[0, 9]).Sample((values, yes) =>
        {
            var answers = Signs.Select((s, i) => (s.Id, Answer: (DangerAnswer)values[i % values.Length])).ToDictionary(a => a.Id, a => a.Answer);
            var sign = Signs[yes];
            answers[sign.Id] = DangerAnswer.Yes;
            if (sign.Urgency != Urgency.ProceedWithCare)
                Assert.True(Judge(answers).PrescribingStopped);
        });

    private static Dictionary<string, DangerAnswer> AllNo() => Signs.ToDictionary(s => s.Id, _ => DangerAnswer.No);

    private static DangerGate Judge(Dictionary<string, DangerAnswer> answers, params DangerDecision[] decisions) =>
        DangerScreen.Judge(Signs, answers, decisions);
}
