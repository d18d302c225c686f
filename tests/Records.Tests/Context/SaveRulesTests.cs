using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using MomentArm.Exam;

namespace MomentArm.Records.Tests;

public sealed class SaveRulesTests
{
    [Fact]
    public async Task A_signed_visit_refuses_every_kind_of_edit_with_a_sentence_and_keeps_what_was_typed()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, _, visit) = await records.AddVisitAsync(records.Ana);
        var visits = records.Stores.Visits;
        var cell = (await visits.SaveMeasurementAsync(records.Ana, visit.Id, Samples.Strength(100), null)).Require();
        var signed = (await visits.SignAsync(records.Ana, visit.Id, visit.RowVersion)).Require();
        Assert.Equal(VisitState.Signed, signed.State);
        Assert.Equal(records.Ana.ClinicianId, signed.SignedById);
        Assert.Equal(records.Clock.Now.UtcDateTime, signed.SignedAtUtc);

        var edit = await visits.SaveMeasurementAsync(records.Ana, visit.Id, Samples.Strength(120), cell.RowVersion);
        Assert.Contains("signed", Samples.Refused(edit), StringComparison.Ordinal);
        var draft = await records.Stores.Drafts.GetAsync(records.Ana, ((SaveOutcome<MeasurementRow>.Refused)edit).DraftKey!);
        Assert.Contains("120", draft!.Text, StringComparison.Ordinal);
        Samples.Refused(await visits.RemoveMeasurementAsync(records.Ana, visit.Id, cell.Id, cell.RowVersion));
        Samples.Refused(await visits.SaveNoteAsync(records.Ana, visit.Id, new VisitNote("more"), signed.RowVersion));
        Samples.Refused(await visits.AnswerDangerSignsAsync(records.Ana, visit.Id, [new("night-pain", DangerAnswer.No)]));
        Samples.Refused(await visits.DecideFindingAsync(records.Ana, visit.Id, "f", true));
        Samples.Refused(await visits.SignAsync(records.Ana, visit.Id, signed.RowVersion));
        Assert.Equal(100, Assert.Single((await visits.GetAsync(records.Ana, visit.Id))!.Measurements).Trials[0]);
    }

    [Fact]
    public async Task A_signed_visit_refuses_handwritten_statements_too()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, _, visit) = await records.AddVisitAsync(records.Ana);
        (await records.Stores.Visits.SaveMeasurementAsync(records.Ana, visit.Id, Samples.Strength(100), null)).Require();
        (await records.Stores.Visits.SignAsync(records.Ana, visit.Id, visit.RowVersion)).Require();
        foreach (var statement in (string[])
            ["UPDATE Visits SET Plan = 'x'", "DELETE FROM Measurements", "UPDATE Measurements SET PainDuring = 0", "UPDATE Visits SET State = 'Open'"])
        {
            var fault = Assert.Throws<SqliteException>(() => records.Raw(statement));
            Assert.Contains("signed", fault.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task What_was_delivered_can_not_be_changed_through_the_context()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, episode, _) = await records.AddVisitAsync(records.Ana);
        var program = (await records.Stores.Programs.SaveAsync(records.Ana, episode.Id, Samples.Program(), null, null)).Require();
        await records.Stores.Logs.AddSessionAsync(
            records.Ana, episode.Id, program.Id, Samples.Session(Guid.CreateVersion7(), new DateOnly(2026, 3, 3)));
        await RefusedAsync(records, async db => db.Remove(await db.ProgramVersions.SingleAsync()));
        await RefusedAsync(records, async db => db.Remove(await db.SessionLogs.SingleAsync()));
        await RefusedAsync(records, async db => db.Remove(await db.AuditEntries.FirstAsync()));
        await RefusedAsync(
            records, async db => db.Entry(await db.ProgramVersions.SingleAsync()).Property(p => p.Document).CurrentValue = "{}");
    }

    [Fact]
    public async Task A_save_without_a_transaction_or_in_the_old_way_is_a_programming_error()
    {
        await using var records = await TestRecords.CreateAsync();
        await using var db = records.Open(records.Ana);
        db.Patients.Add(new Patient { ClinicId = records.Ana.ClinicId, Id = Guid.CreateVersion7(), DisplayName = "X" });
        await Assert.ThrowsAsync<InvalidOperationException>(() => db.SaveChangesAsync());
        Assert.Throws<InvalidOperationException>(() => db.SaveChanges());
    }

    [Fact]
    public async Task Two_contexts_that_change_the_same_row_end_in_a_concurrency_fault_not_in_a_lost_change()
    {
        await using var records = await TestRecords.CreateAsync();
        var (patient, _, _) = await records.AddVisitAsync(records.Ana);
        await using var late = records.Open(records.Ben);
        var stale = await late.Patients.SingleAsync();
        (await records.Stores.Patients.EditAsync(records.Ana, patient.Id, new PatientDetails("First"), patient.RowVersion)).Require();
        stale.DisplayName = "Second";
        await using var transaction = await late.Database.BeginTransactionAsync();
        await Assert.ThrowsAsync<DbUpdateConcurrencyException>(() => late.SaveChangesAsync());
    }

    private static async Task RefusedAsync(TestRecords records, Func<RecordsContext, Task> change)
    {
        await using var db = records.Open(records.Ana);
        await change(db);
        await Assert.ThrowsAsync<RecordsRefusedException>(() => db.SaveChangesAsync());
    }
}
