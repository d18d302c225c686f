namespace MomentArm.Records.Tests;

public sealed class DraftStoreTests
{
    [Fact]
    public async Task A_draft_is_kept_replaced_listed_and_removed()
    {
        await using var records = await TestRecords.CreateAsync();
        var drafts = records.Stores.Drafts;
        await drafts.SaveAsync(records.Ana, "visit/1/note", "first");
        records.Clock.Advance(TimeSpan.FromSeconds(2));
        await drafts.SaveAsync(records.Ana, "visit/1/note", "first and more");
        await drafts.SaveAsync(records.Ana, "patient/new", "x");
        var row = await drafts.GetAsync(records.Ana, "visit/1/note");
        Assert.Equal(("first and more", records.Clock.Now.UtcDateTime), (row!.Text, row.UpdatedAtUtc));
        Assert.Single(await drafts.ListAsync(records.Ana, "visit/1/"));
        Assert.Empty(await drafts.ListAsync(records.Ana, "visit_"));
        await drafts.RemoveAsync(records.Ana, "visit/1/note");
        await drafts.RemoveAsync(records.Ana, "visit/1/note");
        Assert.Null(await drafts.GetAsync(records.Ana, "visit/1/note"));
    }

    [Fact]
    public async Task Nobody_sees_the_draft_of_another_and_patients_have_none()
    {
        await using var records = await TestRecords.CreateAsync();
        await records.Stores.Drafts.SaveAsync(records.Ana, "k", "mine");
        Assert.Null(await records.Stores.Drafts.GetAsync(records.Ben, "k"));
        Assert.Null(await records.Stores.Drafts.GetAsync(records.Cleo, "k"));
        await Assert.ThrowsAsync<InvalidOperationException>(
            () => records.Stores.Drafts.SaveAsync(records.Ana with { ClinicianId = null }, "k", "x"));
    }
}
