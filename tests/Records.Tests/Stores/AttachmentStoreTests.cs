namespace MomentArm.Records.Tests;

public sealed class AttachmentStoreTests
{
    private static readonly byte[] Picture = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 1, 2, 3];

    [Fact]
    public async Task A_picture_comes_back_byte_for_byte_once_and_only_to_its_clinic()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, episode, visit) = await records.AddVisitAsync(records.Ana);
        var files = records.Stores.Attachments;
        var row = (await files.AddAsync(records.Ana, visit.Id, "C:\\photos\\knee.png", Picture, "swelling, invented")).Require();
        (await files.AddAsync(records.Ana, visit.Id, "again.png", Picture, null)).Require();
        var mark = Assert.Single(await files.ListAsync(records.Ana, episode.Id));
        Assert.Equal(("knee.png", "image/png", 11L), (mark.Name, mark.MediaType, mark.Length));
        Assert.Equal(Picture, (await files.GetAsync(records.Ana, row.Id))!.Content);
        Assert.Null(await files.GetAsync(records.Cleo, row.Id));
        (await files.RemoveAsync(records.Ana, row.Id, row.RowVersion)).Require();
        Assert.Empty(await files.ListAsync(records.Ana, episode.Id));
    }

    [Fact]
    public async Task Other_kinds_of_files_too_large_ones_and_signed_visits_are_refused_in_words()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, _, visit) = await records.AddVisitAsync(records.Ana);
        var files = records.Stores.Attachments;
        Assert.Contains("JPEG", Samples.Refused(await files.AddAsync(records.Ana, visit.Id, "x.png", "<svg/>"u8.ToArray(), null)), StringComparison.Ordinal);
        Assert.Contains("10 MB", Samples.Refused(await files.AddAsync(records.Ana, visit.Id, "x.png", new byte[AttachmentStore.MostBytes + 1], null)), StringComparison.Ordinal);
        Samples.Refused(await files.AddAsync(records.Cleo, visit.Id, "x.png", Picture, null));
        var row = (await files.AddAsync(records.Ana, visit.Id, "x.png", Picture, null)).Require();
        (await records.Stores.Visits.SignAsync(records.Ana, visit.Id, visit.RowVersion)).Require();
        Samples.Refused(await files.RemoveAsync(records.Ana, row.Id, row.RowVersion));
        Samples.Refused(await files.AddAsync(records.Ana, visit.Id, "y.png", [.. Picture, 4], null));
    }
}
