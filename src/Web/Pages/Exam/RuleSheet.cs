using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Records;
using MomentArm.Web.Clinic;

namespace MomentArm.Web.Pages.Exam;

/// <summary>The decision rules and the referral letter of one visit as one person fills them in: each answer is saved at once.</summary>
public sealed class RuleSheet
{
    /// <summary>The sheet and item that keep a changed letter.</summary>
    public const string LetterSheet = "referral";

    private const string LetterItem = "letter";
    private readonly CaseDesk desk;
    private readonly Acting who;
    private readonly Dictionary<string, (string Typed, string Fault)> faults = [];
    private VisitRecord record;

    private RuleSheet(CaseDesk desk, Acting who, VisitRecord record)
    {
        (this.desk, this.who, this.record) = (desk, who, record);
        Rules = [];
        Read();
    }

    /// <summary>The rules offered: those of the regions of the complaint, those for everyone, and any that was begun.</summary>
    public ImmutableArray<VisitRule> Rules { get; private set; }

    /// <summary>What could not be saved, and why; null when all is well.</summary>
    public string? Trouble { get; private set; }

    /// <summary>The letter as kept; null when none was.</summary>
    public string? Letter => Row(LetterSheet, LetterItem)?.Value;

    /// <summary>Reads a visit; null when this clinic has no such visit of that patient.</summary>
    public static async Task<RuleSheet?> LoadAsync(CaseDesk desk, Acting who, Guid patientId, Guid visitId)
    {
        ArgumentNullException.ThrowIfNull(desk);
        var record = await desk.Stores.Visits.GetAsync(who, visitId);
        return record is null || record.Patient.Id != patientId ? null : new RuleSheet(desk, who, record);
    }

    /// <summary>What a field shows: what was typed when it could not be read, else what is stored.</summary>
    public string Shown(DecisionRule rule, RuleItem item) =>
        faults.TryGetValue(Key(rule, item), out var wrong) ? wrong.Typed : Row(VisitRules.SheetOf(rule), item.Id)?.Value ?? "";

    /// <summary>Why what was typed could not be read; null when it could.</summary>
    public string? FaultOf(DecisionRule rule, RuleItem item) =>
        faults.TryGetValue(Key(rule, item), out var wrong) ? wrong.Fault : null;

    /// <summary>Saves one answer; blank or unknown takes it back.</summary>
    public async Task AnswerAsync(DecisionRule rule, RuleItem item, string? typed)
    {
        ArgumentNullException.ThrowIfNull(rule);
        ArgumentNullException.ThrowIfNull(item);
        var reading = RuleReading.Of(item, typed);
        if (reading.Fault is { } fault)
        {
            faults[Key(rule, item)] = (typed ?? "", fault);
            return;
        }

        faults.Remove(Key(rule, item));
        await SaveAsync(VisitRules.SheetOf(rule), item.Id, reading.Value?.ToString());
    }

    /// <summary>The draft of a letter from what the visit holds now.</summary>
    public async Task<string> DraftAsync()
    {
        await ReloadAsync();
        var begun = VisitRules.Of(record, desk.Content.Exam.Rules);
        return ReferralLetter.Draft(new ReferralFacts
        {
            Patient = record.Patient.DisplayName,
            AgeYears = record.Patient.AgeOn(record.Visit.Day),
            Complaint = record.Episode.Title,
            Day = record.Visit.Day,
            From = who.Name,
            Clinic = (await desk.Stores.Patients.ClinicAsync(who)).Name,
            Gate = desk.GateOf(record),
            Rules = [.. begun.Select(r => r.Told)],
            Answers = begun.ToDictionary(r => r.Rule.Id, r => (IReadOnlyDictionary<string, RuleValue>)r.All),
        }).ToText();
    }

    /// <summary>Keeps the letter with the visit; blank takes it back.</summary>
    public Task KeepLetterAsync(string? text) => SaveAsync(LetterSheet, LetterItem, text?.ReplaceLineEndings("\n"));

    /// <summary>Reads the visit again.</summary>
    public async Task ReloadAsync()
    {
        record = await desk.Stores.Visits.GetAsync(who, record.Visit.Id) ?? record;
        Read();
    }

    private async Task SaveAsync(string sheet, string item, string? value)
    {
        var input = new VisitAnswerInput(sheet, item, null, value, Row(sheet, item)?.RowVersion);
        var outcome = await desk.Stores.Visits.SaveAnswersAsync(who, record.Visit.Id, [input]);
        Trouble = outcome switch
        {
            SaveOutcome<IReadOnlyList<VisitAnswerRow>>.Conflict conflict =>
                $"{conflict.Who} answered at the same time. Nothing was overwritten: what is shown now is theirs; you typed \"{value ?? "unknown"}\".",
            SaveOutcome<IReadOnlyList<VisitAnswerRow>>.Refused refused => refused.Sentence,
            _ => null,
        };
        await ReloadAsync();
    }

    private void Read()
    {
        var regions = VisitRules.PersonOf(record).Regions;
        Rules =
        [
            .. desk.Content.Exam.Rules
                .Where(r => r.Regions.Any(region => region == BodyRegion.WholeBody || regions.Contains(region)) || record.Answers.Any(a => a.Sheet == VisitRules.SheetOf(r)))
                .OrderBy(r => r.Regions.Contains(BodyRegion.WholeBody))
                .Select(r => VisitRules.One(record, r)),
        ];
    }

    private VisitAnswerRow? Row(string sheet, string item) => record.Answers.FirstOrDefault(a => a.Sheet == sheet && a.Item == item);

    private static string Key(DecisionRule rule, RuleItem item) => $"{rule.Id}/{item.Id}";
}
