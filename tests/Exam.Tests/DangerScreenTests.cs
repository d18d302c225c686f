using CsCheck;
using MomentArm.Body;

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
        Gen.Int[0, 2].Array[10].Select(Gen.Int[0, Signs.Count - 1]).Sample((values, yes) =>
        {
            var answers = Signs.Select((s, i) => (s.Id, Answer: (DangerAnswer)values[i % values.Length])).ToDictionary(a => a.Id, a => a.Answer);
            var sign = Signs[yes];
            answers[sign.Id] = DangerAnswer.Yes;
            if (sign.Urgency != Urgency.ProceedWithCare)
                Assert.True(Judge(answers).PrescribingStopped);
        });

    [Theory]
    [InlineData(40.0, BodyRegion.Hip, 17)]
    [InlineData(40.0, BodyRegion.Knee, 17)]
    [InlineData(70.0, BodyRegion.Hip, 18)]
    [InlineData(8.0, BodyRegion.Hip, 20)]
    [InlineData(null, BodyRegion.Hip, 21)]
    [InlineData(40.0, BodyRegion.WholeBody, 12)]
    public void Twelve_general_questions_then_those_of_the_region_and_age(double? age, BodyRegion region, int count)
    {
        var asked = new ScreenedPerson([region], age).Asked(Signs);
        Assert.Equal(count, asked.Length);
        Assert.All(asked.Take(12), s => Assert.True(s.IsGeneral()));
        Assert.All(asked, s => Assert.True(s.IsGeneral() || s.Regions!.Contains(region)));
    }

    [Fact]
    public void Every_limb_region_the_back_and_the_neck_have_an_emergency_question() =>
        Assert.All(
            Enum.GetValues<BodyRegion>().Except([BodyRegion.WholeBody]),
            region => Assert.Contains(Signs, s => s.Urgency == Urgency.EmergencyNow && s.Regions?.Contains(region) == true));

    [Fact]
    public void A_region_that_was_not_asked_stops_the_plan()
    {
        // Own case on the design rule: a plan cannot be issued with an unasked general or region block.
        var general = Signs.Where(s => s.IsGeneral()).ToDictionary(s => s.Id, _ => DangerAnswer.No);
        var gate = DangerScreen.Judge(Signs, new ScreenedPerson([BodyRegion.Knee], 40), general, []);
        Assert.Equal((GateState.Unfinished, true), (gate.State, gate.PrescribingStopped));
        Assert.All(gate.Unasked, s => Assert.Contains(BodyRegion.Knee, s.Regions!));
        Assert.Equal(GateState.Clear, DangerScreen.Judge(Signs, new ScreenedPerson([BodyRegion.WholeBody], 40), general, []).State);
    }

    [Fact]
    public void Without_a_region_the_questions_of_every_region_are_open()
    {
        Assert.Equal(GateState.Clear, DangerScreen.Judge(Signs, new ScreenedPerson([], 40), AllNo(), []).State);
        var general = Signs.Where(s => s.IsGeneral()).ToDictionary(s => s.Id, _ => DangerAnswer.No);
        var gate = DangerScreen.Judge(Signs, new ScreenedPerson([], 40), general, []);
        Assert.True(gate.RegionUnknown && gate.PrescribingStopped);
        Assert.Contains("No part of the body is named", gate.Headline, StringComparison.Ordinal);
        Assert.Contains(gate.WhatToDo, w => w.Contains("Name the region", StringComparison.Ordinal));
    }

    [Fact]
    public void An_emergency_of_a_region_stops_until_a_decision_and_counts_even_when_the_region_changes()
    {
        var answers = AllNo();
        answers["knee-cold-foot"] = DangerAnswer.Yes;
        foreach (var region in new[] { BodyRegion.Knee, BodyRegion.Hip })
        {
            var person = new ScreenedPerson([region], 40);
            Assert.Equal(GateState.Emergency, DangerScreen.Judge(Signs, person, answers, []).State);
            var decided = DangerScreen.Judge(Signs, person, answers, [new DangerDecision("knee-cold-foot", "Dr. Example", "Pulse and scan normal.", new DateOnly(2026, 3, 2))]);
            Assert.Equal((GateState.ProceedWithCare, false), (decided.State, decided.PrescribingStopped));
        }
    }

    [Fact]
    public void A_twelve_year_old_with_knee_pain_is_asked_about_the_hip()
    {
        // Peck 2017: up to 15 % of slipped growth plates of the hip show as thigh or knee pain alone.
        Assert.Contains(new ScreenedPerson([BodyRegion.Knee], 12).Asked(Signs), s => s is { Id: "young-hip", Urgency: Urgency.SameDay });
        Assert.DoesNotContain(new ScreenedPerson([BodyRegion.Knee], 40).Asked(Signs), s => s.Id == "young-hip");
    }

    [Theory]
    [InlineData(null, "left hip, outer side", new[] { BodyRegion.Hip })]
    [InlineData("knee", "left hip, outer side", new[] { BodyRegion.Knee })]
    [InlineData(null, "Low back and right leg", new[] { BodyRegion.Trunk })]
    [InlineData(null, "Back of the knee, left", new[] { BodyRegion.Knee })]
    [InlineData(null, "right Achilles tendon", new[] { BodyRegion.AnkleFoot })]
    [InlineData("AnkleFoot", null, new[] { BodyRegion.AnkleFoot })]
    [InlineData(null, "hamstring strain", new[] { BodyRegion.Hip, BodyRegion.Knee })]
    [InlineData(null, "sore after running", new BodyRegion[0])]
    [InlineData(null, "shipyard work", new BodyRegion[0])]
    public void The_region_is_read_from_the_words_of_the_episode(string? region, string? title, BodyRegion[] expected) =>
        Assert.Equal(expected, RegionWords.Read(region, title));

    [Fact]
    public void Every_region_is_read_back_from_its_own_name() =>
        Assert.All(Enum.GetValues<BodyRegion>(), r => Assert.Contains(r, RegionWords.Read(RegionWords.Name(r), null)));

    private static Dictionary<string, DangerAnswer> AllNo() => Signs.ToDictionary(s => s.Id, _ => DangerAnswer.No);

    private static DangerGate Judge(Dictionary<string, DangerAnswer> answers, params DangerDecision[] decisions) =>
        DangerScreen.Judge(Signs, answers, decisions);
}
