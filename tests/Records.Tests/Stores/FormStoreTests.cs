using Microsoft.EntityFrameworkCore;

namespace MomentArm.Records.Tests;

public sealed class FormStoreTests
{
    [Fact]
    public async Task A_form_grows_by_versions_and_only_the_latest_is_offered()
    {
        await using var records = await TestRecords.CreateAsync();
        var forms = records.Stores.Forms;
        var first = (await forms.SaveAsync(records.Ana, Form("one"), null)).Require();
        var second = (await forms.SaveAsync(records.Ben, Form("two"), first.Id)).Require();
        Assert.Equal((1, 2), (first.Number, second.Number));
        Assert.Equal([second.Id], (await forms.ListAsync(records.Ana)).Select(f => f.Id));
        Assert.Equal(
            [ClinicFormState.InUse, ClinicFormState.Replaced],
            (await forms.HistoryAsync(records.Ana, "own-lean")).Select(f => f.State));
        Assert.Equal(second.Id, (await forms.SaveAsync(records.Ana, Form("two"), second.Id)).Require().Id);
    }

    [Fact]
    public async Task A_replaced_version_is_still_there_by_its_number_and_only_for_its_clinic()
    {
        await using var records = await TestRecords.CreateAsync();
        var forms = records.Stores.Forms;
        var first = (await forms.SaveAsync(records.Ana, Form("one"), null)).Require();
        Assert.Empty(await forms.ReplacedAsync(records.Ana));
        await forms.SaveAsync(records.Ben, Form("two"), first.Id);
        Assert.Equal([first.Id], (await forms.ReplacedAsync(records.Ana)).Select(f => f.Id));
        Assert.Equal("one", (await forms.VersionAsync(records.Ana, "own-lean", 1))!.Document);
        Assert.Null(await forms.VersionAsync(records.Ana, "own-lean", 3));
        Assert.Empty(await forms.ReplacedAsync(records.Cleo));
        Assert.Null(await forms.VersionAsync(records.Cleo, "own-lean", 1));
    }

    [Fact]
    public async Task Of_two_who_edit_one_form_the_second_is_shown_what_stands_and_overwrites_nothing()
    {
        await using var records = await TestRecords.CreateAsync();
        var forms = records.Stores.Forms;
        var first = (await forms.SaveAsync(records.Ana, Form("one"), null)).Require();
        await forms.SaveAsync(records.Ana, Form("hers"), first.Id);
        var conflict = Assert.IsType<SaveOutcome<ClinicForm>.Conflict>(await forms.SaveAsync(records.Ben, Form("his"), first.Id));
        Assert.Equal(("hers", records.Ana.Name), (conflict.Theirs!.Document, conflict.Who));
        Assert.Equal("hers", (await forms.LatestAsync(records.Ben, "own-lean"))!.Document);
        Assert.IsType<SaveOutcome<ClinicForm>.Conflict>(await forms.SaveAsync(records.Ben, Form("new of that id"), null));
    }

    [Fact]
    public async Task Another_clinic_sees_no_form_and_may_use_the_same_id()
    {
        await using var records = await TestRecords.CreateAsync();
        var forms = records.Stores.Forms;
        var ours = (await forms.SaveAsync(records.Ana, Form("one"), null)).Require();
        Assert.Empty(await forms.ListAsync(records.Cleo));
        Assert.Empty(await forms.MarksAsync(records.Cleo));
        Assert.Null(await forms.LatestAsync(records.Cleo, "own-lean"));
        Assert.IsType<SaveOutcome<ClinicForm>.Refused>(await forms.SetInUseAsync(records.Cleo, ours.Id, false));
        Assert.Equal(1, (await forms.SaveAsync(records.Cleo, Form("theirs"), null)).Require().Number);
        Assert.Equal("one", (await forms.LatestAsync(records.Ana, "own-lean"))!.Document);
    }

    [Fact]
    public async Task A_form_is_retired_and_taken_into_use_again_and_the_trail_says_who_did_it()
    {
        await using var records = await TestRecords.CreateAsync();
        var forms = records.Stores.Forms;
        var row = (await forms.SaveAsync(records.Ana, Form("one"), null)).Require();
        Assert.Equal(ClinicFormState.Retired, (await forms.SetInUseAsync(records.Ben, row.Id, false)).Require().State);
        Assert.Equal(ClinicFormState.InUse, (await forms.SetInUseAsync(records.Ana, row.Id, true)).Require().State);
        await using var db = records.Open(records.Ana);
        var lines = await db.AuditEntries.Where(e => e.SubjectType == "exercise form").OrderBy(e => e.Sequence).ToListAsync(TestContext.Current.CancellationToken);
        Assert.Equal(["added", "retired", "taken into use"], lines.Select(e => e.Action));
        Assert.Equal([records.Ana.Name, records.Ben.Name, records.Ana.Name], lines.Select(e => e.WhoName));
        Assert.All(lines, e => Assert.DoesNotContain("one", e.Changes, StringComparison.Ordinal));
    }

    [Fact]
    public async Task What_a_version_says_can_not_be_changed_or_removed()
    {
        await using var records = await TestRecords.CreateAsync();
        var row = (await records.Stores.Forms.SaveAsync(records.Ana, Form("one"), null)).Require();
        await using var db = records.Open(records.Ana);
        var mine = await db.ClinicForms.SingleAsync(f => f.Id == row.Id, TestContext.Current.CancellationToken);
        db.Entry(mine).Property(f => f.Document).CurrentValue = "other";
        await Assert.ThrowsAsync<RecordsRefusedException>(() => db.SaveChangesAsync(TestContext.Current.CancellationToken));
        db.Entry(mine).Property(f => f.Document).CurrentValue = "one";
        db.ClinicForms.Remove(mine);
        await Assert.ThrowsAsync<RecordsRefusedException>(() => db.SaveChangesAsync(TestContext.Current.CancellationToken));
    }

    private static FormInput Form(string says) => new("own-lean", "Lean (invented)", 1, says);
}
