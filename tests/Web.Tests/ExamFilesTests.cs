using System.Net;
using System.Net.Http.Headers;
using System.Text.RegularExpressions;
using MomentArm.Records;

namespace MomentArm.Web;

/// <summary>Photos and files of a visit.</summary>
public sealed partial class ExamFilesTests
{
    private static readonly byte[] Png = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 1, 2, 3];

    [Fact]
    public async Task A_photo_is_added_listed_read_and_removed()
    {
        await using var made = await ExamCase.CreateAsync();
        var browser = await made.App.SignedInBrowserAsync();
        var path = $"/patients/{made.Patient.Id}/exam?visit={made.Visit.Id}";
        var added = await SendAsync(browser, path, "Photo", "knee front.png", Png);
        Assert.Contains("knee front.png", added, StringComparison.Ordinal);
        Assert.Contains("from the front", added, StringComparison.Ordinal);
        var file = Assert.Single(await made.Desk.Stores.Attachments.ListAsync(made.Ada, made.Episode.Id));

        var answer = await browser.GetAsync($"/files/{file.Id}");
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal(Png, await answer.Content.ReadAsByteArrayAsync());
        Assert.Equal("image/png", answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal("inline", answer.Content.Headers.ContentDisposition!.DispositionType);
        Assert.Contains("knee front.png", answer.Content.Headers.ContentDisposition.ToString(), StringComparison.Ordinal);
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
        Assert.True(answer.Headers.CacheControl!.NoStore);

        await ClinicApp.SubmitAsync(browser, path, $"remove-{file.Id}", []);
        Assert.Empty(await made.Desk.Stores.Attachments.ListAsync(made.Ada, made.Episode.Id));
    }

    [Fact]
    public async Task A_document_is_saved_and_not_shown_in_the_page()
    {
        await using var made = await ExamCase.CreateAsync();
        var browser = await made.App.SignedInBrowserAsync();
        var row = (await made.Desk.Stores.Attachments.AddAsync(made.Ada, made.Visit.Id, "letter.pdf", "%PDF-1.7 x"u8.ToArray(), null)).Require();
        Assert.Equal("attachment", (await browser.GetAsync($"/files/{row.Id}")).Content.Headers.ContentDisposition!.DispositionType);
    }

    [Fact]
    public async Task What_is_no_photo_and_no_document_is_refused_with_what_to_do()
    {
        await using var made = await ExamCase.CreateAsync();
        var browser = await made.App.SignedInBrowserAsync();
        var answer = await SendAsync(browser, $"/patients/{made.Patient.Id}/exam?visit={made.Visit.Id}", "Upload", "page.png", "<html>"u8.ToArray());
        Assert.Contains("save it as one of these first", answer, StringComparison.Ordinal);
        Assert.Empty(await made.Desk.Stores.Attachments.ListAsync(made.Ada, made.Episode.Id));
    }

    [Fact]
    public async Task Nobody_else_reads_it()
    {
        await using var made = await ExamCase.CreateAsync();
        var (_, _, visit) = await made.AddVisitAsync(made.Stranger);
        var theirs = (await made.Desk.Stores.Attachments.AddAsync(made.Stranger, visit.Id, "a.png", Png, null)).Require();
        var browser = await made.App.SignedInBrowserAsync();
        Assert.Equal(HttpStatusCode.NotFound, (await browser.GetAsync($"/files/{theirs.Id}")).StatusCode);
        Assert.NotEqual(HttpStatusCode.OK, (await made.App.Browser().GetAsync($"/files/{theirs.Id}")).StatusCode);
    }

    private static async Task<string> SendAsync(HttpClient browser, string path, string field, string name, byte[] content)
    {
        using var form = new MultipartFormDataContent
        {
            { new StringContent(ClinicApp.TokenIn(await browser.GetStringAsync(path))), "__RequestVerificationToken" },
            { new StringContent("add-file"), "_handler" },
            { new StringContent("from the front"), "Caption" },
        };
        var file = new ByteArrayContent(content);
        file.Headers.ContentType = new MediaTypeHeaderValue("image/png");
        form.Add(file, field, name);
        var answer = await browser.PostAsync(path, form);
        return Encoded().Replace(await answer.Content.ReadAsStringAsync(), " ");
    }

    [GeneratedRegex("&#x?[0-9A-Fa-f]+;")]
    private static partial Regex Encoded();
}
