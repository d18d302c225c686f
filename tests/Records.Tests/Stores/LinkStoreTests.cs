namespace MomentArm.Records.Tests;

public sealed class LinkStoreTests
{
    [Fact]
    public async Task A_link_opens_its_episode_until_it_expires()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, episode, _) = await records.AddVisitAsync(records.Ana);
        var links = records.Stores.Links;
        var link = (await links.CreateAsync(records.Ana, episode.Id, TimeSpan.FromDays(30))).Require();
        var access = await links.OpenAsync(link.Token);
        Assert.Equal(new LinkAccess(records.Ana.ClinicId, episode.Id, link.LinkId), access);
        Assert.Equal(records.Clock.Now.UtcDateTime, Assert.Single(await links.ListAsync(records.Ana, episode.Id)).LastOpenedAtUtc);
        records.Clock.Advance(TimeSpan.FromDays(30) - TimeSpan.FromTicks(1));
        Assert.NotNull(await links.FindAsync(link.Token));
        records.Clock.Advance(TimeSpan.FromTicks(1));
        Assert.Null(await links.FindAsync(link.Token));
        Assert.Null(await links.OpenAsync(link.Token));
        Assert.Equal(LinkState.Expired, (await links.LookUpAsync(link.Token, default)).State);
    }

    [Fact]
    public async Task A_revoked_link_opens_nothing_and_the_try_is_in_the_trail()
    {
        await using var records = await TestRecords.CreateAsync();
        var (patient, episode, _) = await records.AddVisitAsync(records.Ana);
        var links = records.Stores.Links;
        var link = (await links.CreateAsync(records.Ana, episode.Id, TimeSpan.FromDays(30))).Require();
        (await links.RevokeAsync(records.Ana, link.LinkId)).Require();
        Assert.Null(await links.FindAsync(link.Token));
        Assert.Null(await links.OpenAsync(link.Token));
        Assert.Equal(LinkState.Revoked, (await links.LookUpAsync(link.Token, default)).State);
        Assert.Equal(
            ["refused: revoked", "revoked", "added"],
            (await records.Stores.Audit.ListByPatientAsync(records.Ana, patient.Id))
                .Where(l => l.SubjectType == "patient link").Select(l => l.Action));
    }

    [Fact]
    public async Task Unknown_and_altered_tokens_open_nothing()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, episode, _) = await records.AddVisitAsync(records.Ana);
        var links = records.Stores.Links;
        var link = (await links.CreateAsync(records.Ana, episode.Id, TimeSpan.FromDays(30))).Require();
        for (var place = 0; place < link.Token.Length; place++)
        {
            var altered = link.Token.ToCharArray();
            altered[place] = altered[place] == 'A' ? 'B' : 'A';
            Assert.Null(await links.FindAsync(new string(altered)));
        }
        foreach (var other in (string?[])[null, "", link.Token + "A", link.Token[1..], link.Token.ToUpperInvariant(), new string('x', 100_000)])
            Assert.Equal(LinkState.Unknown, (await links.LookUpAsync(other, default)).State);
        Assert.NotNull(await links.FindAsync(link.Token));
    }

    [Fact]
    public async Task The_token_is_256_random_bits_and_stands_nowhere_in_the_database()
    {
        await using var records = await TestRecords.CreateAsync();
        var (_, episode, _) = await records.AddVisitAsync(records.Ana);
        var link = (await records.Stores.Links.CreateAsync(records.Ana, episode.Id, TimeSpan.FromDays(30))).Require();
        var other = (await records.Stores.Links.CreateAsync(records.Ana, episode.Id, TimeSpan.FromDays(30))).Require();
        Assert.NotEqual(link.Token, other.Token);
        Assert.Equal(32, System.Buffers.Text.Base64Url.DecodeFromChars(link.Token).Length);
        foreach (var file in (string[])[records.Path, records.Path + "-wal"])
        {
            await using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            var bytes = new byte[stream.Length];
            await stream.ReadExactlyAsync(bytes);
            Assert.Equal(-1, bytes.AsSpan().IndexOf(System.Text.Encoding.ASCII.GetBytes(link.Token)));
        }
    }
}
