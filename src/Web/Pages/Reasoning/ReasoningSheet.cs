using System.Collections.Immutable;
using System.Globalization;
using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Records;
using MomentArm.Web.Clinic;

namespace MomentArm.Web.Pages.Reasoning;

/// <summary>The reasoning of one visit as one clinician works on it: each answer is saved at once, everything is computed anew.</summary>
public sealed class ReasoningSheet
{
    private readonly CaseDesk desk;
    private readonly Acting who;
    private readonly Guid patientId;
    private readonly Guid visitId;
    private ImmutableArray<DatedAnswer> answers = [];

    private ReasoningSheet(CaseDesk desk, Acting who, PatientCase loaded)
    {
        (this.desk, this.who, Case) = (desk, who, loaded);
        (patientId, visitId) = (loaded.Patient.Id, loaded.Shown!.Visit.Id);
    }

    /// <summary>The case.</summary>
    public PatientCase Case { get; private set; }

    /// <summary>Patterns, questions and tests.</summary>
    public ReasoningBasis Basis => desk.Content.Exam.Reasoning;

    /// <summary>What the reasoning was told.</summary>
    public ReasoningInput Input { get; private set; } = new();

    /// <summary>Hypotheses, the best fitting first.</summary>
    public ImmutableArray<Hypothesis> Ranked { get; private set; } = [];

    /// <summary>Tests not done, the most telling first.</summary>
    public ImmutableArray<NextTest> Next { get; private set; } = [];

    /// <summary>The yellow flags.</summary>
    public YellowReading Yellow { get; private set; } = YellowScreen.Read([], new Dictionary<string, ItemAnswer>());

    /// <summary>What could not be saved, and why; null when all is well.</summary>
    public string? Trouble { get; private set; }

    /// <summary>Day of the injury; null when none is written down.</summary>
    public DateOnly? InjuryDay => DateOnly.TryParseExact(
        Stored(ReasoningAnswers.HypothesisSheet, ReasoningAnswers.InjuryItem)?.Row.Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    /// <summary>Reads a visit's reasoning; null when this clinic has no such visit of that patient.</summary>
    public static async Task<ReasoningSheet?> LoadAsync(CaseDesk desk, Acting who, Guid patientId, Guid visitId)
    {
        ArgumentNullException.ThrowIfNull(desk);
        if (await Exam.VisitPages.FindAsync(desk, who, patientId, visitId) is not { Shown: not null } loaded)
            return null;
        var sheet = new ReasoningSheet(desk, who, loaded);
        await sheet.ReadAsync();
        return sheet;
    }

    /// <summary>The latest answer on a sheet; null when there is none.</summary>
    public DatedAnswer? Stored(string sheet, string item) => answers.FirstOrDefault(a => a.Row.Sheet == sheet && a.Row.Item == item);

    /// <summary>The side a test is recorded on.</summary>
    public Side? SideOf(ClinicalTest test)
    {
        ArgumentNullException.ThrowIfNull(test);
        return test.Sided ? Case.Episode.AffectedSide : null;
    }

    /// <summary>Saves the outcome of a test; null takes it back.</summary>
    public Task SetTestAsync(ClinicalTest test, string? value) => SaveAsync(ReasoningAnswers.TestSheet, test.Id, value, SideOf(test));

    /// <summary>Saves the answer to a question.</summary>
    public Task SetAnswerAsync(PatternQuestion question, string? value) => SaveAsync(ReasoningAnswers.QuestionSheet, question.Id, value);

    /// <summary>Saves the answer to a yellow flag.</summary>
    public Task SetYellowAsync(YellowFlag flag, string? value) => SaveAsync(ReasoningAnswers.YellowSheet, flag.Id, value);

    /// <summary>Saves the part of the body; null for what the episode says.</summary>
    public Task SetRegionAsync(BodyRegion? region) => SaveAsync(ReasoningAnswers.HypothesisSheet, ReasoningAnswers.RegionItem, region?.ToString());

    /// <summary>Saves the day of the injury.</summary>
    public async Task SetInjuryDayAsync(DateOnly? day)
    {
        if (day > Case.Shown!.Visit.Day)
        {
            Trouble = "The injury lies after this visit. Give a day on or before it.";
            return;
        }
        await SaveAsync(ReasoningAnswers.HypothesisSheet, ReasoningAnswers.InjuryItem, day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
    }

    /// <summary>Saves a starting value of the clinician's own, in percent; nothing given takes it back.</summary>
    public async Task SetPriorAsync(string patternId, double? percent, double? low, double? high)
    {
        if (percent is null && low is null && high is null)
        {
            await SaveAsync(ReasoningAnswers.HypothesisSheet, ReasoningAnswers.PriorStart + patternId, null);
            return;
        }
        var range = low is null && high is null ? null : new RatioSpan((low ?? percent ?? 0) / 100, (high ?? percent ?? 0) / 100);
        var text = percent is { } value ? ReasoningAnswers.PriorText(new OwnPrior(value / 100, range)) : "";
        if (ReasoningAnswers.Prior(text) is null)
        {
            Trouble = "The starting value was not saved: give percents between 0 and 100, with lowest, value and highest in order.";
            return;
        }
        await SaveAsync(ReasoningAnswers.HypothesisSheet, ReasoningAnswers.PriorStart + patternId, text);
    }

    /// <summary>Records that the clinician read a figure in its paper and takes it over.</summary>
    public Task ConfirmFigureAsync(string figureId, bool confirmed) =>
        SaveAsync(ReasoningAnswers.HypothesisSheet, ReasoningAnswers.ConfirmStart + figureId, confirmed ? "yes" : "no");

    /// <summary>Records what the clinician makes of a hypothesis; dismissing needs a reason.</summary>
    public async Task DecideAsync(string patternId, bool accepted, string? reason)
    {
        if (!accepted && string.IsNullOrWhiteSpace(reason))
        {
            Trouble = "Write why the hypothesis is dismissed; nothing was changed.";
            return;
        }
        var word = accepted ? ReasoningAnswers.AcceptedStart : ReasoningAnswers.DismissedStart;
        await SaveAsync(ReasoningAnswers.HypothesisSheet, patternId, string.IsNullOrWhiteSpace(reason) ? word : $"{word}: {reason.Trim()}");
    }

    private async Task SaveAsync(string sheet, string item, string? value, Side? side = null)
    {
        var cell = VisitAnswerRow.CellOf(sheet, item, side);
        var mine = Case.Shown!.Answers.FirstOrDefault(a => a.Cell == cell);
        if (value is null && mine is null)
            return;
        var outcome = await desk.Stores.Visits.SaveAnswersAsync(who, visitId, [new VisitAnswerInput(sheet, item, side, value, mine?.RowVersion)]);
        Trouble = outcome switch
        {
            SaveOutcome<IReadOnlyList<VisitAnswerRow>>.Conflict conflict =>
                $"{conflict.Who} answered at the same time. Nothing was overwritten: what is shown now is theirs; you gave \"{value ?? "nothing"}\". Answer again if it should be otherwise.",
            SaveOutcome<IReadOnlyList<VisitAnswerRow>>.Refused refused => refused.Sentence,
            _ => null,
        };
        Case = await desk.LoadAsync(who, patientId, visitId, Case.Episode.Id) ?? Case;
        await ReadAsync();
    }

    private async Task ReadAsync()
    {
        answers = ReasoningAnswers.Latest(await desk.Stores.Visits.AnswersOfEpisodeAsync(who, Case.Episode.Id), Case.Shown!.Visit.Number);
        Input = MakeInput();
        Ranked = Reasoner.Judge(Basis, Input);
        Next = NextTests.Rank(Basis, Input, [.. Ranked.Where(h => h.Fit != PatternFit.Against)]);
        Yellow = YellowScreen.Read(Basis.YellowFlags, On(ReasoningAnswers.YellowSheet).ToDictionary(a => a.Item, a => ReasoningAnswers.Answer(a.Value)));
    }

    private IEnumerable<VisitAnswerRow> On(string sheet) => answers.Select(a => a.Row).Where(r => r.Sheet == sheet);

    private ReasoningInput MakeInput()
    {
        var visit = Case.Shown!.Visit;
        var own = On(ReasoningAnswers.HypothesisSheet).ToArray();
        var physique = Case.Patient.PhysiqueOn(visit.Day);
        return new ReasoningInput
        {
            Side = Case.Episode.AffectedSide,
            Region = Enum.TryParse<BodyRegion>(own.FirstOrDefault(o => o.Item == ReasoningAnswers.RegionItem)?.Value, out var chosen)
                ? chosen
                : ReasoningAnswers.RegionOf(Case.Episode.Region) ?? ReasoningAnswers.RegionOf(Case.Episode.Title),
            AgeYears = physique.AgeYears,
            Sex = physique.Sex,
            DaysSinceInjury = InjuryDay is { } day && day <= visit.Day ? visit.Day.DayNumber - day.DayNumber : null,
            Tests = [.. On(ReasoningAnswers.TestSheet).Select(r => Basis.Test(r.Item) is { } test ? ReasoningAnswers.Result(test, r.Side, r.Value) : null).OfType<TestResult>()],
            Answers = On(ReasoningAnswers.QuestionSheet).ToImmutableDictionary(r => r.Item, r => ReasoningAnswers.Answer(r.Value)),
            Findings = Case.Accepted,
            Priors = own.Where(o => o.Item.StartsWith(ReasoningAnswers.PriorStart, StringComparison.Ordinal))
                .Select(o => (Id: o.Item[ReasoningAnswers.PriorStart.Length..], Prior: ReasoningAnswers.Prior(o.Value)))
                .Where(p => p.Prior is not null).ToImmutableDictionary(p => p.Id, p => p.Prior!),
            Confirmed = [.. own.Where(o => o.Item.StartsWith(ReasoningAnswers.ConfirmStart, StringComparison.Ordinal) && o.Value == "yes").Select(o => o.Item[ReasoningAnswers.ConfirmStart.Length..])],
        };
    }
}
