using MomentArm.Prescribing;
using MomentArm.Records;
using MomentArm.Web.Clinic;

namespace MomentArm.Web.Pages.People;

/// <summary>What was recorded in the visits of one episode, and the case as it stood at any of them.</summary>
public sealed record EpisodeRecords(
    Patient Patient,
    Episode Episode,
    IReadOnlyList<Visit> Visits,
    IReadOnlyList<DatedMeasurement> Measured,
    IReadOnlyList<DatedObservation> Seen)
{
    public static async Task<EpisodeRecords> LoadAsync(CaseDesk desk, Acting who, Patient patient, Episode episode)
    {
        ArgumentNullException.ThrowIfNull(desk);
        ArgumentNullException.ThrowIfNull(episode);
        var visits = desk.Stores.Visits;
        return new EpisodeRecords(
            patient,
            episode,
            await visits.ListAsync(who, episode.Id),
            await visits.MeasurementsOfEpisodeAsync(who, episode.Id),
            await visits.ObservationsOfEpisodeAsync(who, episode.Id));
    }

    /// <summary>Whether anything was measured or seen in a visit.</summary>
    public bool IsBlank(Visit visit) => Measured.All(m => m.VisitId != visit.Id) && Seen.All(o => o.VisitId != visit.Id);

    /// <summary>The case as it stood at a visit.</summary>
    public CaseReading ReadingAt(CaseBasis basis, int visitNumber)
    {
        var until = Visits.Where(v => v.Number <= visitNumber).OrderBy(v => v.Number).ToArray();
        return CaseReading.Of(basis, new CaseFacts(
            Patient.PhysiqueOn(until[^1].Day),
            Episode.AffectedSide,
            [.. until.Select(v => new CaseVisit(
                v.Number, v.Day,
                [.. Measured.Where(m => m.VisitId == v.Id).Select(m => m.Row.ToMeasurement())],
                [.. Seen.Where(o => o.VisitId == v.Id).Select(o => o.Row.ToObservation())]))],
            Episode.Irritability));
    }
}
