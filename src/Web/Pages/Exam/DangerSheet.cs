using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Records;
using MomentArm.Web.Clinic;

namespace MomentArm.Web.Pages.Exam;

/// <summary>The danger signs of one visit as one person asks them: each answer is saved at once.</summary>
public sealed class DangerSheet
{
    private readonly CaseDesk desk;
    private readonly Acting who;
    private VisitRecord record;

    private DangerSheet(CaseDesk desk, Acting who, VisitRecord record)
    {
        (this.desk, this.who, this.record) = (desk, who, record);
        Gate = desk.GateOf(record);
    }

    /// <summary>
    /// The questions of this visit: the general ones, those of its region and age, and any that was answered yes. While no
    /// region is named, the general ones.
    /// </summary>
    public IReadOnlyList<DangerSign> Signs
    {
        get
        {
            var person = VisitRules.PersonOf(record);
            return
            [
                .. desk.Content.Exam.DangerSigns.Where(sign => AnswerTo(sign) == DangerAnswer.Yes
                    || (sign.IsAskedOf(person) && (sign.IsGeneral() || !person.Regions.IsEmpty))),
            ];
        }
    }

    /// <summary>Rules that came out positive; each stops like a sign until a decision is recorded.</summary>
    public IReadOnlyList<DangerSign> PositiveRules =>
        [.. Gate.Present.Select(p => p.Sign).Where(sign => sign.Id.StartsWith(RuleSigns.Prefix, StringComparison.Ordinal))];

    /// <summary>The regions the complaint names; empty while none is.</summary>
    public IReadOnlyList<BodyRegion> Regions => VisitRules.PersonOf(record).Regions;

    /// <summary>The visit as read last.</summary>
    public VisitRecord Record => record;

    /// <summary>Where the screen leaves the visit.</summary>
    public DangerGate Gate { get; private set; }

    /// <summary>What could not be saved, and why; null when all is well.</summary>
    public string? Trouble { get; private set; }

    /// <summary>Reads a visit's answers; null when this clinic has no such visit of that patient.</summary>
    public static async Task<DangerSheet?> LoadAsync(CaseDesk desk, Acting who, Guid patientId, Guid visitId)
    {
        ArgumentNullException.ThrowIfNull(desk);
        var record = await desk.Stores.Visits.GetAsync(who, visitId);
        return record is null || record.Patient.Id != patientId ? null : new DangerSheet(desk, who, record);
    }

    /// <summary>The answer to a question.</summary>
    public DangerAnswer AnswerTo(DangerSign sign) =>
        record.DangerAnswers.FirstOrDefault(a => a.SignId == sign.Id)?.Answer ?? DangerAnswer.NotAsked;

    /// <summary>The decision on a sign; null when there is none.</summary>
    public Records.DangerDecision? DecisionOn(DangerSign sign) =>
        record.DangerDecisions.FirstOrDefault(d => d.SignId == sign.Id);

    /// <summary>Names the region of the episode, so that its questions are asked.</summary>
    public async Task NameRegionAsync(BodyRegion region)
    {
        var details = EpisodeDetails.Of(record.Episode) with { Region = RegionWords.Name(region) };
        var outcome = await desk.Stores.Episodes.EditAsync(who, record.Episode.Id, details, record.Episode.RowVersion);
        await AfterAsync(outcome switch
        {
            SaveOutcome<Episode>.Conflict conflict => $"{conflict.Who} changed the episode at the same time. Choose the region again.",
            SaveOutcome<Episode>.Refused refused => refused.Sentence,
            _ => null,
        });
    }

    /// <summary>Reads the visit again, after a rule was answered.</summary>
    public Task ReloadAsync() => AfterAsync(Trouble);

    /// <summary>Saves one answer.</summary>
    public Task AnswerAsync(DangerSign sign, DangerAnswer answer) => AnswerAsync([sign], answer);

    /// <summary>Every question not asked yet was asked and answered no.</summary>
    public Task AllOthersNoAsync() =>
        AnswerAsync([.. Signs.Where(sign => AnswerTo(sign) == DangerAnswer.NotAsked)], DangerAnswer.No);

    /// <summary>Records a decision on a sign; the sign stays on record.</summary>
    public async Task DecideAsync(DangerSign sign, string reason)
    {
        ArgumentNullException.ThrowIfNull(sign);
        var outcome = await desk.Stores.Visits.DecideDangerAsync(who, record.Visit.Id, sign.Id, reason);
        await AfterAsync(outcome is SaveOutcome<Records.DangerDecision>.Refused refused ? refused.Sentence : null);
    }

    private async Task AnswerAsync(IReadOnlyList<DangerSign> signs, DangerAnswer answer)
    {
        var inputs = signs.Select(sign => new DangerAnswerInput(
            sign.Id, answer, record.DangerAnswers.FirstOrDefault(a => a.SignId == sign.Id)?.RowVersion)).ToArray();
        var outcome = await desk.Stores.Visits.AnswerDangerSignsAsync(who, record.Visit.Id, inputs);
        await AfterAsync(outcome switch
        {
            SaveOutcome<IReadOnlyList<DangerAnswerRow>>.Conflict conflict =>
                $"{conflict.Who} answered at the same time. Nothing was overwritten: the answers below are theirs now; you typed "
                + $"{answer.ToString().ToLowerInvariant()}. Answer again if it should be otherwise.",
            SaveOutcome<IReadOnlyList<DangerAnswerRow>>.Refused refused => refused.Sentence,
            _ => null,
        });
    }

    private async Task AfterAsync(string? trouble)
    {
        record = await desk.Stores.Visits.GetAsync(who, record.Visit.Id) ?? record;
        Gate = desk.GateOf(record);
        Trouble = trouble;
    }
}
