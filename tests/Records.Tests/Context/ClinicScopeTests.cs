using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace MomentArm.Records.Tests;

public sealed class ClinicScopeTests
{
    [Fact]
    public async Task A_context_without_a_clinic_shows_nothing_and_takes_nothing()
    {
        await using var records = await TestRecords.CreateAsync();
        await records.AddVisitAsync(records.Ana);
        await using var db = records.Contexts.CreateDbContext();
        Assert.Empty(await db.Patients.ToListAsync());
        Assert.Empty(await db.Clinics.ToListAsync());
        db.Patients.Add(new Patient { ClinicId = records.Ana.ClinicId, Id = Guid.CreateVersion7(), DisplayName = "X" });
        await Assert.ThrowsAsync<RecordsRefusedException>(() => db.SaveChangesAsync());
    }

    [Fact]
    public async Task Another_clinic_sees_none_of_the_patients_episodes_visits_or_trail()
    {
        await using var records = await TestRecords.CreateAsync();
        var (patient, episode, visit) = await records.AddVisitAsync(records.Ana);
        await records.Stores.Visits.SaveMeasurementAsync(records.Ana, visit.Id, Samples.Strength(100), null);
        Assert.Single(await records.Stores.Patients.ListAsync(records.Ana));
        Assert.Empty(await records.Stores.Patients.ListAsync(records.Cleo));
        Assert.Null(await records.Stores.Patients.GetAsync(records.Cleo, patient.Id));
        Assert.Null(await records.Stores.Episodes.GetAsync(records.Cleo, episode.Id));
        Assert.Null(await records.Stores.Visits.GetAsync(records.Cleo, visit.Id));
        Assert.Empty(await records.Stores.Visits.MeasurementsOfEpisodeAsync(records.Cleo, episode.Id));
        Assert.Empty(await records.Stores.Today.ListAsync(records.Cleo));
        Assert.Empty(await records.Stores.Audit.ListByPatientAsync(records.Cleo, patient.Id));
        Assert.DoesNotContain(await records.Stores.Audit.ListByClinicAsync(records.Cleo), e => e.ClinicId != records.Cleo.ClinicId);
    }

    [Fact]
    public async Task Another_clinic_can_change_nothing_through_any_store()
    {
        await using var records = await TestRecords.CreateAsync();
        var (patient, episode, visit) = await records.AddVisitAsync(records.Ana);
        var stores = records.Stores;
        var version = (await stores.Programs.SaveAsync(records.Ana, episode.Id, Samples.Program(), null, null)).Require();
        var link = (await stores.Links.CreateAsync(records.Ana, episode.Id, TimeSpan.FromDays(1))).Require();
        var before = records.RawValue("SELECT count(*) FROM AuditEntries");
        Samples.Refused(await stores.Patients.EditAsync(records.Cleo, patient.Id, new PatientDetails("Y"), patient.RowVersion));
        Samples.Refused(await stores.Episodes.CloseAsync(records.Cleo, episode.Id, new DateOnly(2026, 4, 1), episode.RowVersion));
        Samples.Refused(await stores.Episodes.AddAsync(records.Cleo, patient.Id, new EpisodeDetails("x", new DateOnly(2026, 4, 1))));
        Samples.Refused(await stores.Visits.OpenAsync(records.Cleo, episode.Id, new DateOnly(2026, 4, 1)));
        Samples.Refused(await stores.Visits.SaveMeasurementAsync(records.Cleo, visit.Id, Samples.Strength(1), null));
        Samples.Refused(await stores.Visits.SignAsync(records.Cleo, visit.Id, visit.RowVersion));
        Samples.Refused(await stores.Visits.DecideDangerAsync(records.Cleo, visit.Id, "night-pain", "reason"));
        Samples.Refused(await stores.Programs.SaveAsync(records.Cleo, episode.Id, Samples.Program(), null, version.Id));
        Samples.Refused(await stores.Programs.HandOverAsync(records.Cleo, version.Id, []));
        Samples.Refused(await stores.Links.RevokeAsync(records.Cleo, link.LinkId));
        Samples.Refused(await stores.Links.CreateAsync(records.Cleo, episode.Id, TimeSpan.FromDays(1)));
        Assert.Equal(
            LogOutcome.Refused,
            await stores.Logs.AddSessionAsync(
                records.Cleo, episode.Id, null, Samples.Session(Guid.CreateVersion7(), new DateOnly(2026, 3, 3))));
        Assert.Equal(before, records.RawValue("SELECT count(*) FROM AuditEntries"));
        Assert.NotNull(await stores.Links.FindAsync(link.Token));
    }

    [Fact]
    public async Task A_row_of_another_clinic_is_refused_even_when_read_without_the_filter()
    {
        await using var records = await TestRecords.CreateAsync();
        var (patient, _, _) = await records.AddVisitAsync(records.Ana);
        await using var db = records.Open(records.Cleo);
        var foreign = await db.Patients.IgnoreQueryFilters([RecordsContext.ClinicFilter]).SingleAsync(p => p.Id == patient.Id);
        foreign.DisplayName = "taken";
        await Assert.ThrowsAsync<RecordsRefusedException>(() => db.SaveChangesAsync());
    }

    [Fact]
    public async Task A_reference_into_another_clinic_is_refused_by_the_database_itself()
    {
        await using var records = await TestRecords.CreateAsync();
        var (patient, _, _) = await records.AddVisitAsync(records.Ana);
        await using var db = records.Open(records.Cleo);
        await using var transaction = await db.Database.BeginTransactionAsync();
        db.About(patient.Id);
        db.Episodes.Add(new Episode
        {
            ClinicId = records.Cleo.ClinicId,
            Id = Guid.CreateVersion7(),
            PatientId = patient.Id,
            Title = "x",
        });
        var fault = await Assert.ThrowsAsync<DbUpdateException>(() => db.SaveChangesAsync());
        Assert.Contains("FOREIGN KEY", fault.InnerException!.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_handwritten_row_that_points_into_another_clinic_is_refused()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, episode, _) = await records.AddVisitAsync(records.Ana);
        string Insert(Guid clinic) =>
            "INSERT INTO Visits (ClinicId, Id, EpisodeId, Day, Number, State, RowVersion) VALUES "
            + $"('{clinic:D}', '{Guid.CreateVersion7():D}', '{episode.Id:D}', '2026-04-01', 9, 'Open', '{Guid.CreateVersion7():D}')"
                .ToUpperInvariant().Replace("'OPEN'", "'Open'", StringComparison.Ordinal);
        var fault = Assert.Throws<SqliteException>(() => records.Raw(Insert(records.Cleo.ClinicId)));
        Assert.Contains("FOREIGN KEY", fault.Message, StringComparison.Ordinal);
        Assert.Equal(1, records.Raw(Insert(records.Ana.ClinicId)));
    }

    [Fact]
    public async Task A_context_serves_one_clinic_only()
    {
        await using var records = await TestRecords.CreateAsync();
        await using var db = records.Open(records.Ana);
        Assert.Throws<InvalidOperationException>(() => db.ActAs(records.Cleo));
    }
}
