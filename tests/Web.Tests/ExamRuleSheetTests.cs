using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Prescribing;
using MomentArm.Records;
using MomentArm.Web.Clinic;
using MomentArm.Web.Pages.Exam;
using MomentArm.Web.Pages.Program;

namespace MomentArm.Web;

public sealed class ExamRuleSheetTests
{
    [Fact]
    public async Task Rules_of_the_region_are_offered_and_an_answer_is_kept_with_the_visit()
    {
        await using var made = await ExamCase.CreateAsync();
        var sheet = await SheetAsync(made);
        Assert.Contains(sheet.Rules, r => r.Rule.Id == "hip-five-findings");
        Assert.DoesNotContain(sheet.Rules, r => r.Rule.Id == "ottawa-knee");
        await AnswerAsync(sheet, "hip-five-findings", "rotation", " 25 degrees");
        await AnswerAsync(sheet, "hip-five-findings", "squat", "y");
        var again = (await SheetAsync(made)).Rules.Single(r => r.Rule.Id == "hip-five-findings");
        Assert.Equal(["rotation", "squat"], again.Given.Keys.Order());
        Assert.Equal((2, 5), (again.Result.Scores[0].Low, again.Result.Scores[0].High));
        await AnswerAsync(sheet, "hip-five-findings", "squat", "unknown");
        Assert.Single((await made.RecordAsync()).Answers);
    }

    [Fact]
    public async Task What_cannot_be_read_stays_as_typed_with_what_to_do_and_is_not_saved()
    {
        await using var made = await ExamCase.CreateAsync();
        var sheet = await SheetAsync(made);
        await AnswerAsync(sheet, "hip-five-findings", "rotation", "400");
        var rule = sheet.Rules.Single(r => r.Rule.Id == "hip-five-findings").Rule;
        Assert.Equal("400", sheet.Shown(rule, rule.Item("rotation")!));
        Assert.Contains("give -20 to 90 degrees", sheet.FaultOf(rule, rule.Item("rotation")!), StringComparison.Ordinal);
        Assert.Empty((await made.RecordAsync()).Answers);
    }

    [Fact]
    public async Task An_answer_given_otherwise_meanwhile_is_not_overwritten()
    {
        await using var made = await ExamCase.CreateAsync();
        var hers = await SheetAsync(made);
        var his = (await RuleSheet.LoadAsync(made.Desk, made.Ben, made.Patient.Id, made.Visit.Id))!;
        await AnswerAsync(hers, "hip-five-findings", "squat", "yes");
        await AnswerAsync(his, "hip-five-findings", "squat", "no");
        Assert.Contains(made.Ada.Name, his.Trouble, StringComparison.Ordinal);
        Assert.Equal("yes", Assert.Single((await made.RecordAsync()).Answers).Value);
        Assert.Null(await RuleSheet.LoadAsync(made.Desk, made.Stranger, made.Patient.Id, made.Visit.Id));
    }

    [Fact]
    public async Task A_positive_rule_stops_the_program_until_a_decision_is_recorded()
    {
        await using var made = await ExamCase.CreateAsync();
        var danger = await DangerAsync(made);
        await danger.AllOthersNoAsync();
        Assert.Equal(GateState.Clear, danger.Gate.State);
        var sheet = await SheetAsync(made);
        foreach (var item in new[] { "suspected", "tender", "whole" })
            await AnswerAsync(sheet, "wells-dvt", item, "yes");
        var refused = await new ProgramDesk(made.Desk).SaveAsync(made.Ada, made.Patient.Id, new HomeProgram { Items = [], DaysPerWeek = 3, EngineVersion = "1", ContentVersion = "1" }, null, null);
        Assert.Equal(ProgramDesk.StoppedSentence, Assert.IsType<SaveOutcome<ProgramVersion>.Refused>(refused).Sentence);
        await danger.ReloadAsync();
        var sign = Assert.Single(danger.PositiveRules);
        Assert.Equal(("rule/wells-dvt", GateState.SameDay), (sign.Id, danger.Gate.State));
        await danger.DecideAsync(sign, "ultrasound clear, invented");
        Assert.False(danger.Gate.PrescribingStopped);
        Assert.Equal(GateState.ProceedWithCare, danger.Gate.State);
    }

    [Fact]
    public async Task An_emergency_of_the_region_stops_the_program_until_a_decision()
    {
        await using var made = await ExamCase.CreateAsync();
        var danger = await DangerAsync(made);
        await danger.AnswerAsync(danger.Signs.Single(s => s.Id == "hip-broken"), DangerAnswer.Yes);
        await danger.AllOthersNoAsync();
        Assert.Equal(GateState.Emergency, (await made.Desk.LoadAsync(made.Ada, made.Patient.Id))!.Gate.State);
        await danger.DecideAsync(danger.Signs.Single(s => s.Id == "hip-broken"), "films clear, invented");
        Assert.False((await made.Desk.LoadAsync(made.Ada, made.Patient.Id))!.Gate.PrescribingStopped);
    }

    [Fact]
    public async Task Naming_another_region_asks_its_questions_and_reopens_the_screen()
    {
        await using var made = await ExamCase.CreateAsync();
        var danger = await DangerAsync(made);
        Assert.Equal([BodyRegion.Hip], danger.Regions);
        await danger.AllOthersNoAsync();
        await danger.NameRegionAsync(BodyRegion.Knee);
        Assert.Null(danger.Trouble);
        Assert.Equal([BodyRegion.Knee], danger.Regions);
        Assert.Equal(GateState.Unfinished, danger.Gate.State);
        Assert.All(danger.Gate.Unasked, s => Assert.Contains(BodyRegion.Knee, s.Regions!));
    }

    [Fact]
    public async Task A_letter_is_drafted_changed_kept_and_printed_alone()
    {
        await using var made = await ExamCase.CreateAsync();
        var danger = await DangerAsync(made);
        await danger.AnswerAsync(danger.Signs.Single(s => s.Id == "calf-clot"), DangerAnswer.Yes);
        var sheet = await SheetAsync(made);
        var draft = await sheet.DraftAsync();
        Assert.Contains("see the person today", draft, StringComparison.Ordinal);
        Assert.Contains(made.Ada.Name, draft, StringComparison.Ordinal);
        await sheet.KeepLetterAsync(draft + "Dr. Example called at noon (invented).");
        using var browser = await made.App.SignedInBrowserAsync();
        var page = await browser.GetStringAsync($"/patients/{made.Patient.Id}/letter");
        Assert.Contains("Dr. Example called at noon (invented).", page, StringComparison.Ordinal);
        Assert.Contains("Danger signs and decision rules", await browser.GetStringAsync($"/patients/{made.Patient.Id}/screen"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_signed_visit_takes_no_rule_answer()
    {
        await using var made = await ExamCase.CreateAsync();
        await made.SignAsync();
        var sheet = await SheetAsync(made);
        await AnswerAsync(sheet, "hip-five-findings", "squat", "yes");
        Assert.NotNull(sheet.Trouble);
        Assert.Empty((await made.RecordAsync()).Answers);
    }

    private static Task AnswerAsync(RuleSheet sheet, string rule, string item, string typed)
    {
        var found = sheet.Rules.Single(r => r.Rule.Id == rule).Rule;
        return sheet.AnswerAsync(found, found.Item(item)!, typed);
    }

    private static async Task<RuleSheet> SheetAsync(ExamCase made) =>
        (await RuleSheet.LoadAsync(made.Desk, made.Ada, made.Patient.Id, made.Visit.Id))!;

    private static async Task<DangerSheet> DangerAsync(ExamCase made) =>
        (await DangerSheet.LoadAsync(made.Desk, made.Ada, made.Patient.Id, made.Visit.Id))!;
}
