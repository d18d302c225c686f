using System.Net;
using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Records;
using MomentArm.Web.Pages.Reasoning;

namespace MomentArm.Web;

public sealed class ReasoningSheetTests
{
    [Fact]
    public async Task Answers_and_tests_are_stored_and_move_the_hypothesis_at_once()
    {
        await using var made = await ExamCase.CreateAsync();
        var sheet = await SheetAsync(made, made.Ada);
        Assert.Equal(BodyRegion.Hip, sheet.Input.Region);
        await sheet.SetAnswerAsync(sheet.Basis.Question("weight-bearing-hip-pain")!, "yes");
        await sheet.SetTestAsync(sheet.Basis.Test("hip-abductor-weakness")!, "positive");
        await sheet.SetTestAsync(sheet.Basis.Test("age-sixty")!, "unclear");
        await sheet.SetTestAsync(sheet.Basis.Test("hip-stairs-pain")!, "positive");
        Assert.Null(sheet.Trouble);

        // Metcalfe 2019: 34 %, 4.5 and 2.1 at half weight: 77.1 %.
        var again = await SheetAsync(made, made.Ben);
        Assert.Equal(0.771, again.Ranked.Single(h => h.Pattern.Id == "hip-osteoarthritis").Probability!.Value, 0.001);
        Assert.Contains((await made.RecordAsync()).Answers, a => a is { Sheet: "test", Item: "hip-abductor-weakness", Side: Side.Left, Value: "positive" });
        await sheet.SetTestAsync(sheet.Basis.Test("hip-abductor-weakness")!, null);
        Assert.DoesNotContain((await made.RecordAsync()).Answers, a => a.Item == "hip-abductor-weakness");
    }

    [Fact]
    public async Task A_hypothesis_is_accepted_by_the_clinician_only_and_dismissed_with_a_reason_only()
    {
        await using var made = await ExamCase.CreateAsync();
        var sheet = await SheetAsync(made, made.Ada);
        Assert.Null(sheet.Stored(ReasoningAnswers.HypothesisSheet, "hip-osteoarthritis"));
        await sheet.DecideAsync("hip-osteoarthritis", false, " ");
        Assert.Contains("Write why", sheet.Trouble, StringComparison.Ordinal);
        Assert.Empty((await made.RecordAsync()).Answers);
        await sheet.DecideAsync("hip-osteoarthritis", false, "X-ray clear, invented");
        Assert.Equal("dismissed: X-ray clear, invented", Assert.Single((await made.RecordAsync()).Answers).Value);
        await sheet.DecideAsync("hip-osteoarthritis", true, null);
        Assert.Equal("accepted", Assert.Single((await made.RecordAsync()).Answers).Value);
    }

    [Theory]
    [InlineData(130.0, null, null)]
    [InlineData(0.0, null, null)]
    [InlineData(30.0, 40.0, 50.0)]
    [InlineData(null, 10.0, 50.0)]
    public async Task A_starting_value_that_is_none_is_refused_in_words(double? value, double? low, double? high)
    {
        await using var made = await ExamCase.CreateAsync();
        var sheet = await SheetAsync(made, made.Ada);
        await sheet.SetPriorAsync("gluteal-tendinopathy", value, low, high);
        Assert.Contains("was not saved", sheet.Trouble, StringComparison.Ordinal);
        Assert.Empty((await made.RecordAsync()).Answers);
    }

    [Fact]
    public async Task A_starting_value_with_its_range_is_kept_and_taken_back()
    {
        await using var made = await ExamCase.CreateAsync();
        var sheet = await SheetAsync(made, made.Ada);
        await sheet.SetPriorAsync("gluteal-tendinopathy", 40, 25, 60);
        Assert.Equal(0.4, Gluteal(await SheetAsync(made, made.Ada)).Probability!.Value, 1e-12);
        Assert.Equal(0.25, Gluteal(sheet).Probability!.Low, 1e-9);
        await sheet.SetPriorAsync("gluteal-tendinopathy", null, null, null);
        Assert.Null(Gluteal(sheet).Probability);
    }

    [Fact]
    public async Task An_answer_that_someone_else_gave_meanwhile_is_not_overwritten()
    {
        await using var made = await ExamCase.CreateAsync();
        var hers = await SheetAsync(made, made.Ada);
        var his = await SheetAsync(made, made.Ben);
        var test = hers.Basis.Test("trochanter-tenderness")!;
        await hers.SetTestAsync(test, "positive");
        await his.SetTestAsync(test, "negative");
        Assert.Contains(made.Ada.Name, his.Trouble, StringComparison.Ordinal);
        Assert.Contains("you gave \"negative\"", his.Trouble, StringComparison.Ordinal);
        Assert.Equal("positive", Assert.Single((await made.RecordAsync()).Answers).Value);
        await his.SetTestAsync(test, "negative");
        Assert.Null(his.Trouble);
    }

    [Fact]
    public async Task A_signed_visit_takes_no_answer_and_another_clinic_sees_nothing()
    {
        await using var made = await ExamCase.CreateAsync();
        var sheet = await SheetAsync(made, made.Ada);
        await made.SignAsync();
        await sheet.SetTestAsync(sheet.Basis.Test("trochanter-tenderness")!, "positive");
        Assert.Contains("signed", sheet.Trouble, StringComparison.Ordinal);
        Assert.Empty((await made.RecordAsync()).Answers);
        Assert.Null(await ReasoningSheet.LoadAsync(made.Desk, made.Stranger, made.Patient.Id, made.Visit.Id));
    }

    [Fact]
    public async Task An_injury_after_the_visit_is_refused()
    {
        await using var made = await ExamCase.CreateAsync();
        var sheet = await SheetAsync(made, made.Ada);
        await sheet.SetInjuryDayAsync(made.Visit.Day.AddDays(1));
        Assert.Contains("after this visit", sheet.Trouble, StringComparison.Ordinal);
        await sheet.SetInjuryDayAsync(made.Visit.Day.AddDays(-2));
        Assert.Equal(2, sheet.Input.DaysSinceInjury);
    }

    [Fact]
    public async Task Yellow_flags_are_counted_and_stored()
    {
        await using var made = await ExamCase.CreateAsync();
        var sheet = await SheetAsync(made, made.Ada);
        Assert.Equal("Not asked yet.", sheet.Yellow.Sentence);
        await sheet.SetYellowAsync(sheet.Basis.YellowFlags[0], "yes");
        Assert.Single((await SheetAsync(made, made.Ben)).Yellow.Present);
    }

    [Fact]
    public async Task The_page_shows_the_ranked_list_and_every_key_to_press()
    {
        await using var made = await ExamCase.CreateAsync();
        var browser = await made.App.SignedInBrowserAsync();
        var page = await browser.GetStringAsync($"/patients/{made.Patient.Id}/reasoning");
        Assert.Contains("<h1", page, StringComparison.Ordinal);
        Assert.Contains("Working hypotheses, visit 1", page, StringComparison.Ordinal);
        Assert.Contains("id=\"pick-gluteal-tendinopathy\"", page, StringComparison.Ordinal);
        Assert.Contains("What to test next", page, StringComparison.Ordinal);
        Assert.Contains("none is a diagnosis", page, StringComparison.Ordinal);
        Assert.DoesNotContain("style=", page, StringComparison.Ordinal);
        var gone = await browser.GetAsync($"/patients/{Guid.NewGuid()}/reasoning");
        Assert.Equal(HttpStatusCode.NotFound, gone.StatusCode);
    }

    private static Hypothesis Gluteal(ReasoningSheet sheet) => sheet.Ranked.Single(h => h.Pattern.Id == "gluteal-tendinopathy");

    private static async Task<ReasoningSheet> SheetAsync(ExamCase made, Acting who) =>
        (await ReasoningSheet.LoadAsync(made.Desk, who, made.Patient.Id, made.Visit.Id))!;
}
