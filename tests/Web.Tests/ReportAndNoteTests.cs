using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Prescribing;
using MomentArm.Records;
using MomentArm.Web.Pages.Exam;
using MomentArm.Web.Pages.Report;

namespace MomentArm.Web;

public sealed class ReportAndNoteTests
{
    [Fact]
    public async Task The_report_of_one_visit_says_that_nothing_can_be_compared()
    {
        await using var made = await ExamCase.CreateAsync();
        await MeasureAsync(made, made.Visit, 100);
        var page = await (await made.App.SignedInBrowserAsync()).GetStringAsync(Report(made));
        Assert.Contains("One visit so far", page, StringComparison.Ordinal);
        Assert.Contains("Hip abduction strength, left 100 N", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Start against now", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_report_of_two_visits_tells_start_against_now_with_error_and_goals_with_what_was_measured_last()
    {
        await using var made = await ExamCase.CreateAsync();
        await MeasureAsync(made, made.Visit, 100);
        await made.Desk.Stores.Goals.AddOnceAsync(made.Ada, Guid.CreateVersion7(), made.Episode.Id, new GoalDetails("Ladders, invented", made.Visit.Day)
        {
            MeasureId = "hip-abduction-strength", Side = Side.Left, Baseline = 100, Target = 130,
        });
        var second = await LaterAsync(made, 140);
        var report = (await CareReport.LoadAsync(made.Desk, made.Ada, made.Patient.Id))!;
        var line = Assert.Single(report.Compared);
        Assert.Equal(("100 N", "140 N", second.Day), (line.First, line.Last, line.LastDay));
        // SEM 5 % of the mean of 120 N (thorborg-2010): 1.96 sqrt 2 x 6 = 16.6 N, so 40 N are real.
        Assert.Contains("really better (beyond 17 N)", line.Verdict, StringComparison.Ordinal);
        Assert.Contains("from 100 N, now 140 N, to 130 N: reached", Assert.Single(report.Goals).Standing, StringComparison.Ordinal);
        var page = await (await made.App.SignedInBrowserAsync()).GetStringAsync(Report(made) + "?kind=discharge");
        Assert.Contains("1 better beyond error, 0 worse beyond error, 0 within error", page, StringComparison.Ordinal);
        Assert.Contains("The episode is still open", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_clinicians_sentences_are_kept_a_kind_each_and_a_signed_visit_takes_none()
    {
        await using var made = await ExamCase.CreateAsync();
        var browser = await made.App.SignedInBrowserAsync();
        await ClinicApp.SubmitAsync(browser, Report(made), "report-own", new() { ["Text"] = "Going well, invented.", ["Version"] = "" });
        await ClinicApp.SubmitAsync(browser, Report(made) + "?kind=discharge", "report-own", new() { ["Text"] = "Keep at it, invented.", ["Version"] = "" });
        Assert.Equal(
            ["discharge: Keep at it, invented.", "progress: Going well, invented."],
            (await made.RecordAsync()).Answers.Select(a => $"{a.Item}: {a.Value}").Order(StringComparer.Ordinal));
        await made.SignAsync();
        var answer = await ClinicApp.SubmitAsync(browser, Report(made), "report-own", new() { ["Text"] = "Changed after signing, invented." });
        Assert.Contains("Changed after signing, invented.</textarea>", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Contains("Going well, invented.", await browser.GetStringAsync(Report(made)), StringComparison.Ordinal);
        Assert.DoesNotContain((await made.RecordAsync()).Answers, a => a.Value.Contains("after signing", StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_report_of_another_clinic_is_not_found()
    {
        await using var made = await ExamCase.CreateAsync();
        var (patient, _, _) = await made.AddVisitAsync(made.Stranger);
        var browser = await made.App.SignedInBrowserAsync();
        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await browser.GetAsync($"/patients/{patient.Id}/report")).StatusCode);
    }

    [Fact]
    public void Taking_over_puts_lines_below_what_was_typed_and_none_twice()
    {
        Assert.Equal("Sore, invented.\nA.\nB.", NoteView.TakeOver("Sore, invented.\n", ["A.", "B."]));
        Assert.Equal("A.\nSore.\nB.", NoteView.TakeOver("A.\nSore.", ["A.", "B."]));
        Assert.Equal("A.", NoteView.TakeOver(" ", ["A."]));
        Assert.Equal("A.\nmine", NoteView.TakeOver("A.\nmine", ["A."]));
    }

    [Fact]
    public async Task The_note_takes_over_the_records_lines_and_keeps_what_was_typed()
    {
        await using var made = await ExamCase.CreateAsync();
        await MeasureAsync(made, made.Visit, 100);
        var browser = await made.App.SignedInBrowserAsync();
        await ClinicApp.SubmitAsync(browser, Note(made), "note", new()
        {
            ["Form.Objective"] = "Limps, invented.", ["Form.Plan"] = "Call, invented.", ["Form.Act"] = "take/Objective",
            ["Form.Version"] = $"{(await made.RecordAsync()).Visit.RowVersion}",
        });
        var visit = (await made.RecordAsync()).Visit;
        Assert.StartsWith("Limps, invented.\nDanger signs:", visit.Objective, StringComparison.Ordinal);
        Assert.Contains("Hip abduction strength: Left: 100 N", visit.Objective, StringComparison.Ordinal);
        Assert.Equal("Call, invented.", visit.Plan);
    }

    [Fact]
    public async Task The_note_tells_conditions_codes_goals_and_the_program_as_they_stood_at_the_signing()
    {
        await using var made = await ExamCase.CreateAsync();
        var stores = made.Desk.Stores;
        await MeasureAsync(made, made.Visit, 100, new TestConditions { Device = "strap, invented", Position = ExamPosition.Supine, Printed = "79 %" });
        await stores.Goals.AddOnceAsync(made.Ada, Guid.CreateVersion7(), made.Episode.Id, new GoalDetails("Ladders, invented", made.Visit.Day));
        await stores.Visits.SaveAnswersAsync(made.Ada, made.Visit.Id, [new VisitAnswerInput("code", "M76.32", null, "M76.32 iliotibial band syndrome, left")]);
        var saved = (await stores.Programs.SaveAsync(made.Ada, made.Episode.Id, Program("bridge"), null, null)).Require();
        var browser = await made.App.SignedInBrowserAsync();
        var open = await browser.GetStringAsync(Note(made));
        foreach (var line in new[] { "taken supine (usually side-lying), with strap, invented, printed or told as 79 %", "Codes: M76.32", "Goal: Ladders, invented.", "Home program, version 1", "not handed over at this visit" })
            Assert.Contains(line, open, StringComparison.Ordinal);
        await made.SignAsync();
        (await stores.Programs.SaveAsync(made.Ada, made.Episode.Id, Program("clam"), "Another, invented.", saved.Id)).Require();
        var signed = await browser.GetStringAsync(Note(made));
        Assert.Contains("Home program, version 1", signed, StringComparison.Ordinal);
        Assert.DoesNotContain("Home program, version 2", signed, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_goals_page_shows_the_course_of_accepted_hypotheses_only_and_says_where_there_is_none()
    {
        await using var made = await ExamCase.CreateAsync();
        var browser = await made.App.SignedInBrowserAsync();
        var path = $"/patients/{made.Patient.Id}/goals";
        Assert.Contains("No working hypothesis is accepted yet", await browser.GetStringAsync(path), StringComparison.Ordinal);
        await made.Desk.Stores.Visits.SaveAnswersAsync(made.Ada, made.Visit.Id,
        [
            new VisitAnswerInput("hypothesis", "iliotibial-band-syndrome", null, "accepted"),
            new VisitAnswerInput("hypothesis", "knee-osteoarthritis", null, "accepted: age"),
            new VisitAnswerInput("hypothesis", "patellofemoral-pain", null, "dismissed: front is quiet"),
        ]);
        var page = await browser.GetStringAsync(path);
        Assert.Contains("44 of 100 fully well after 8 weeks", page, StringComparison.Ordinal);
        Assert.Contains("No published course found", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Patellofemoral", page, StringComparison.Ordinal);
    }

    private static async Task MeasureAsync(ExamCase made, Visit visit, double newtons, TestConditions? how = null) =>
        (await made.Desk.Stores.Visits.SaveMeasurementAsync(made.Ada, visit.Id, new Measurement
        {
            MeasureId = "hip-abduction-strength", Side = Side.Left, Trials = [newtons], LeverArmM = 0.36, Conditions = how ?? TestConditions.None,
        }, null)).Require();

    private static async Task<Visit> LaterAsync(ExamCase made, double newtons)
    {
        await made.SignAsync();
        var visit = (await made.Desk.Stores.Visits.OpenAsync(made.Ada, made.Episode.Id, made.Visit.Day.AddDays(1))).Require();
        await MeasureAsync(made, visit, newtons);
        return visit;
    }

    private static HomeProgram Program(string exercise) => new()
    {
        Items = [new ProgramItem { ExerciseId = exercise, WorkingSide = Side.Left, Dose = new Dose { Sets = 2, Repetitions = 10, DaysPerWeek = 4 } }],
        DaysPerWeek = 4,
        EngineVersion = "0",
        ContentVersion = "0",
    };

    private static string Report(ExamCase made) => $"/patients/{made.Patient.Id}/report";

    private static string Note(ExamCase made) => $"/patients/{made.Patient.Id}/note";
}
