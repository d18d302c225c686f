using MomentArm.Exam;
using MomentArm.Web.Pages.Exam;

namespace MomentArm.Web;

public sealed class ExamDangerSheetTests
{
    [Fact]
    public async Task Not_asked_is_not_no_and_all_others_no_leaves_a_yes_alone()
    {
        await using var made = await ExamCase.CreateAsync();
        var sheet = await SheetAsync(made);
        Assert.True(sheet.Gate.PrescribingStopped);
        Assert.Equal(GateState.Unfinished, sheet.Gate.State);
        var care = sheet.Signs.First(s => s.Urgency == Urgency.ProceedWithCare);
        await sheet.AnswerAsync(care, DangerAnswer.Yes);
        await sheet.AllOthersNoAsync();
        Assert.Equal(DangerAnswer.Yes, sheet.AnswerTo(care));
        Assert.Equal(GateState.ProceedWithCare, sheet.Gate.State);
        Assert.False(sheet.Gate.PrescribingStopped);
        Assert.Equal(sheet.Signs.Count, (await made.RecordAsync()).DangerAnswers.Count);
    }

    [Fact]
    public async Task An_emergency_sign_stops_prescribing_until_a_decision_with_a_reason_and_stays_on_record()
    {
        await using var made = await ExamCase.CreateAsync();
        var sheet = await SheetAsync(made);
        var sign = sheet.Signs.First(s => s.Urgency == Urgency.EmergencyNow);
        await sheet.AnswerAsync(sign, DangerAnswer.Yes);
        await sheet.AllOthersNoAsync();
        Assert.Equal(GateState.Emergency, sheet.Gate.State);
        await sheet.DecideAsync(sign, "  ");
        Assert.NotNull(sheet.Trouble);
        Assert.True(sheet.Gate.PrescribingStopped);
        await sheet.DecideAsync(sign, "seen in emergency care and cleared, invented");
        Assert.Null(sheet.Trouble);
        Assert.False(sheet.Gate.PrescribingStopped);
        Assert.Single(sheet.Gate.Present);
        Assert.Equal(made.Ada.Name, sheet.DecisionOn(sign)!.ByName);
    }

    [Fact]
    public async Task An_answer_that_someone_else_gave_otherwise_meanwhile_is_not_overwritten()
    {
        await using var made = await ExamCase.CreateAsync();
        var hers = await SheetAsync(made);
        var his = (await DangerSheet.LoadAsync(made.Desk, made.Ben, made.Patient.Id, made.Visit.Id))!;
        await hers.AnswerAsync(hers.Signs[0], DangerAnswer.Yes);
        await his.AnswerAsync(his.Signs[0], DangerAnswer.No);
        Assert.Contains(made.Ada.Name, his.Trouble, StringComparison.Ordinal);
        Assert.Contains("you typed no", his.Trouble, StringComparison.Ordinal);
        Assert.Equal(DangerAnswer.Yes, his.AnswerTo(his.Signs[0]));
        await his.AnswerAsync(his.Signs[0], DangerAnswer.No);
        Assert.Null(his.Trouble);
        Assert.Equal(DangerAnswer.No, Assert.Single((await made.RecordAsync()).DangerAnswers).Answer);
    }

    private static async Task<DangerSheet> SheetAsync(ExamCase made) =>
        (await DangerSheet.LoadAsync(made.Desk, made.Ada, made.Patient.Id, made.Visit.Id))!;
}
