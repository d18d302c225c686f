using Microsoft.Data.Sqlite;

namespace MomentArm.Records.Tests;

public sealed class AuditStoreTests
{
    [Fact]
    public async Task Each_change_has_a_line_with_who_what_and_before_and_after()
    {
        await using var records = await TestRecords.CreateAsync();
        var (patient, _, visit) = await records.AddVisitAsync(records.Ana);
        var visits = records.Stores.Visits;
        var cell = (await visits.SaveMeasurementAsync(records.Ana, visit.Id, Samples.Strength(100), null)).Require();
        (await visits.SaveMeasurementAsync(records.Ben, visit.Id, Samples.Strength(100) with { PainDuring = 7 }, cell.RowVersion)).Require();
        var lines = await records.Stores.Audit.ListByPatientAsync(records.Ana, patient.Id);
        Assert.Equal(
            ["changed measurement", "added measurement", "added visit", "added episode", "added patient"],
            lines.Select(l => $"{l.Action} {l.SubjectType}"));
        Assert.Equal(records.Ben.Name, lines[0].WhoName);
        Assert.Equal(records.Ben.ClinicianId, lines[0].WhoId);
        Assert.Equal("""{"painDuring":{"before":3,"after":7}}""", lines[0].Changes);
        Assert.Equal(DateTimeKind.Utc, lines[0].AtUtc.Kind);
    }

    [Fact]
    public async Task Names_and_free_text_are_noted_by_field_name_only()
    {
        await using var records = await TestRecords.CreateAsync();
        var (patient, _, visit) = await records.AddVisitAsync(records.Ana, "Zebulon Secretname");
        (await records.Stores.Visits.SaveNoteAsync(records.Ana, visit.Id, new VisitNote("said in confidence"), visit.RowVersion)).Require();
        (await records.Stores.Patients.EditAsync(
            records.Ana, patient.Id, new PatientDetails("Zebulon Secretname", MassKg: 71.5, Note: "lives alone"), patient.RowVersion)).Require();
        var lines = await records.Stores.Audit.ListByPatientAsync(records.Ana, patient.Id);
        Assert.Equal("""{"massKg":{"before":null,"after":71.5},"note":{"changed":true}}""", lines[0].Changes);
        foreach (var line in lines)
        {
            foreach (var secret in (string[])["Secretname", "SECRETNAME", "confidence", "alone"])
                Assert.DoesNotContain(secret, line.Changes, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task The_database_refuses_to_change_or_delete_a_line()
    {
        await using var records = await TestRecords.CreateAsync();
        await records.AddVisitAsync(records.Ana);
        foreach (var statement in (string[])
            ["UPDATE AuditEntries SET WhoName = 'nobody'", "DELETE FROM AuditEntries", "REPLACE INTO AuditEntries SELECT * FROM AuditEntries"])
            Assert.Throws<SqliteException>(() => records.Raw("PRAGMA recursive_triggers=ON; " + statement));
        Assert.True((await records.Stores.Audit.VerifyAsync(records.Ana)).IsWhole);
    }

    [Theory]
    [InlineData("UPDATE AuditEntries SET WhoName = 'nobody' WHERE Sequence = 3", 3)]
    [InlineData("UPDATE AuditEntries SET Changes = '{}' WHERE Sequence = 2", 2)]
    [InlineData("UPDATE AuditEntries SET AtUtc = '2020-01-01 00:00:00' WHERE Sequence = 4", 4)]
    [InlineData("DELETE FROM AuditEntries WHERE Sequence = 1", 1)]
    [InlineData("DELETE FROM AuditEntries WHERE Sequence = 3", 3)]
    [InlineData("UPDATE AuditEntries SET Sequence = CASE Sequence WHEN 2 THEN -3 ELSE -2 END WHERE Sequence IN (2, 3); UPDATE AuditEntries SET Sequence = -Sequence WHERE Sequence < 0", 2)]
    [InlineData("UPDATE AuditEntries SET Hash = zeroblob(32) WHERE Sequence = 4", 4)]
    public async Task Tampering_past_the_triggers_is_found_at_the_first_bad_line(string statement, long line)
    {
        await using var records = await TestRecords.CreateAsync();
        await records.AddVisitAsync(records.Ana);
        var whole = await records.Stores.Audit.VerifyAsync(records.Ana);
        Assert.True(whole.IsWhole, whole.Sentence);
        Assert.Equal(4, whole.Lines);
        records.Raw("DROP TRIGGER AuditEntries_refuse_update; DROP TRIGGER AuditEntries_refuse_delete;");
        var clinic = records.Ana.ClinicId.ToString("D").ToUpperInvariant();
        records.Raw(statement.Replace("WHERE", $"WHERE ClinicId = '{clinic}' AND", StringComparison.Ordinal));
        var check = await records.Stores.Audit.VerifyAsync(records.Ana);
        Assert.Equal(line, check.FirstBadLine);
        Assert.True((await records.Stores.Audit.VerifyAsync(records.Cleo)).IsWhole);
    }

    [Fact]
    public async Task A_cut_off_end_is_found_against_a_head_written_down_before()
    {
        await using var records = await TestRecords.CreateAsync();
        await records.AddVisitAsync(records.Ana);
        var head = await records.Stores.Audit.HeadAsync(records.Ana);
        Assert.True((await records.Stores.Audit.VerifyAsync(records.Ana, head)).IsWhole);
        records.Raw("DROP TRIGGER AuditEntries_refuse_delete; DELETE FROM AuditEntries WHERE Sequence = 4");
        Assert.True((await records.Stores.Audit.VerifyAsync(records.Ana)).IsWhole);
        Assert.Equal(4, (await records.Stores.Audit.VerifyAsync(records.Ana, head)).FirstBadLine);
    }

    [Fact]
    public async Task Parallel_writers_leave_a_trail_without_gaps()
    {
        await using var records = await TestRecords.CreateAsync();
        await Task.WhenAll(Enumerable.Range(0, 30).Select(n => Task.Run(() =>
            records.Stores.Audit.NoteAsync(n % 2 == 0 ? records.Ana : records.Ben, "opened", "page", "x"))));
        var check = await records.Stores.Audit.VerifyAsync(records.Ana);
        Assert.True(check.IsWhole, check.Sentence);
        Assert.Equal(31, check.Lines);
    }
}
