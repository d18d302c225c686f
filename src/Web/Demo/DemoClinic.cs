using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Exam;
using MomentArm.FollowUp;
using MomentArm.Prescribing;
using MomentArm.Records;
using MomentArm.Web.Clinic;

namespace MomentArm.Web.Demo;

/// <summary>Fills an empty database with the demo clinic, through the same stores as any clinic's own work.</summary>
public sealed class DemoClinic(ClinicSetup setup, RecordsStores stores, ContentLibrary content, CaseDesk desk, TimeProvider clock)
{
    private const string Zone = "America/Chicago";

    /// <summary>Fills the database unless a clinic is there already.</summary>
    public async Task FillAsync(CancellationToken cancellationToken)
    {
        if (await setup.IsSetUpAsync(cancellationToken))
            return;
        var outcome = await setup.CreateFirstAsync(
            new ClinicDetails("Demo clinic (invented)", Zone, "555-0142", IsDemo: true),
            new ClinicianDetails("Demo therapist", "demo@clinic.invalid", $"{Guid.NewGuid():N}{Guid.NewGuid():N}"),
            cancellationToken);
        var who = Acting.As(outcome.Clinician ?? throw new InvalidOperationException(string.Join(" ", outcome.Faults)));
        var clinic = await stores.Patients.ClinicAsync(who, cancellationToken);
        var today = desk.Today(clinic);
        foreach (var person in DemoPeople.All)
            await AddAsync(who, person, today);
    }

    private async Task AddAsync(Acting who, DemoPatient person, DateOnly today)
    {
        var first = person.Visits.Max(v => v.DaysAgo);
        var then = stores.At(Morning(today, first));
        var patient = (await then.Patients.AddAsync(who, new PatientDetails(
            person.Name, BirthYear: today.Year - person.Age, Sex: person.Sex, StatureM: person.StatureM, MassKg: person.MassKg,
            Occupation: person.Occupation, Note: "Invented for the demo."))).Require();
        var episode = (await then.Episodes.AddAsync(who, patient.Id, new EpisodeDetails(
            person.Title, today.AddDays(-first), person.Region, person.Side, person.Goal, person.Irritability))).Require();
        var mine = person.Visits.Select(v => (v.DaysAgo, Act: (Func<Task>)(() => VisitAsync(who, episode, v, today))))
            .Concat(person.Programs.Select(p => (p.DaysAgo, Act: (Func<Task>)(() => ProgramAsync(who, patient.Id, episode, p, today)))))
            .Concat(person.Sessions.Select(s => (s.DaysAgo, Act: (Func<Task>)(() => SessionAsync(who, episode, s, today)))));

        // As it happened: the trail of the demo then reads like a real one.
        foreach (var (_, act) in mine.OrderByDescending(e => e.DaysAgo))
            await act();
    }

    private async Task VisitAsync(Acting who, Episode episode, DemoVisit visit, DateOnly today)
    {
        var then = stores.At(Morning(today, visit.DaysAgo));
        var row = (await then.Visits.OpenAsync(who, episode.Id, today.AddDays(-visit.DaysAgo))).Require();
        if (visit.SignsAsked)
        {
            (await then.Visits.AnswerDangerSignsAsync(
                who, row.Id, [.. content.Exam.DangerSigns.Select(s => new DangerAnswerInput(s.Id, DangerAnswer.No))])).Require();
        }

        foreach (var entry in visit.Entries)
        {
            var result = TypedEntry.Parse(entry, content.Exam.Measures);
            if (!result.Faults.IsEmpty)
                throw new InvalidOperationException($"The demo says what cannot be read: {result.Faults[0].Sentence}");
            foreach (var measurement in result.Measurements)
                (await then.Visits.SaveMeasurementAsync(who, row.Id, measurement, null)).Require();
        }

        row = (await then.Visits.GetAsync(who, row.Id))!.Visit;
        row = (await then.Visits.SaveNoteAsync(who, row.Id, new VisitNote(visit.Subjective, null, null, visit.Plan), row.RowVersion)).Require();
        if (visit.Signed)
            (await then.Visits.SignAsync(who, row.Id, row.RowVersion)).Require();
    }

    private async Task ProgramAsync(Acting who, Guid patientId, Episode episode, DemoProgram program, DateOnly today)
    {
        var then = stores.At(Morning(today, program.DaysAgo).AddMinutes(40));
        var read = await desk.LoadAsync(who, patientId, episodeId: episode.Id)
            ?? throw new InvalidOperationException("The demo patient is gone.");
        var candidates = desk.CandidatesFor(read, new AgreedLimits(), program.DaysPerWeek).ToDictionary(c => c.Exercise.Id);
        var home = new HomeProgram
        {
            Items = [.. program.Exercises.Select(id => Item(candidates[id]))],
            DaysPerWeek = program.DaysPerWeek,
            Agreed = new AgreedLimits { Minutes = 20 },
            EngineVersion = CaseDesk.EngineVersion,
            ContentVersion = content.Version,
        };
        var before = await then.Programs.LatestAsync(who, episode.Id);
        var saved = (await then.Programs.SaveAsync(who, episode.Id, home, program.Reason, before?.Id)).Require();
        if (!program.HandedOver)
            return;
        (await then.Programs.HandOverAsync(
            who, saved.Id, [.. home.Items.Select(i => new TeachBackInput(i.ExerciseId, i.WorkingSide, true, true))])).Require();
    }

    private static ProgramItem Item(Candidate candidate)
    {
        var item = DraftProgram.Item(candidate, candidate.Findings.FirstOrDefault());
        return candidate.Exercise.Movement.Loads.IsEmpty ? item : item with { Dose = item.Dose with { WeightKg = 2 } };
    }

    private async Task SessionAsync(Acting who, Episode episode, DemoSession session, DateOnly today)
    {
        var evening = stores.At(Morning(today, session.DaysAgo).AddHours(9));
        var current = await evening.Programs.CurrentAsync(who, episode.Id)
            ?? throw new InvalidOperationException("A demo session lies before its program.");
        var patient = new Acting(who.ClinicId, null, "Patient link");
        var day = today.AddDays(-session.DaysAgo);
        var items = current.ToProgram().Items;
        await evening.Logs.AddSessionAsync(patient, episode.Id, current.Id, new SessionLog
        {
            Id = Guid.CreateVersion7(clock.GetUtcNow()),
            Day = day,
            Exercises = [.. items.Select((item, i) => Log(item, i == 0 ? session.First : ExerciseReport.Done))],
            Effort = session.Effort,
            PainDuring = session.Pain,
            PainAfter = Math.Max(0, session.Pain - 1),
            Note = session.Note,
        });
        if (session.Morning is { } pain)
        {
            var next = stores.At(Morning(today, session.DaysAgo - 1));
            await next.Logs.AddMorningAsync(
                patient, episode.Id, new MorningLog(Guid.CreateVersion7(clock.GetUtcNow()), day.AddDays(1), pain, MorningChange.Same));
        }
    }

    private static ExerciseLog Log(ProgramItem item, ExerciseReport report)
    {
        var sets = report == ExerciseReport.Hurt ? 1 : item.Dose.Sets;
        return new ExerciseLog(item.ExerciseId, item.WorkingSide, sets, sets * item.Dose.Repetitions, report);
    }

    /// <summary>Nine in the morning of the clinic's day, in UTC; never later than now.</summary>
    private DateTime Morning(DateOnly today, int daysAgo)
    {
        var local = today.AddDays(-daysAgo).ToDateTime(new TimeOnly(9, 0));
        var zone = TimeZoneInfo.TryFindSystemTimeZoneById(Zone, out var found) ? found : TimeZoneInfo.Utc;
        var utc = TimeZoneInfo.ConvertTimeToUtc(local, zone);
        var now = clock.GetUtcNow().UtcDateTime;
        return utc < now ? utc : now;
    }
}
