using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Xml.Linq;
using MomentArm.FollowUp;
using MomentArm.Records;

namespace MomentArm.Web;

public sealed class PatientLinkTests
{
    [Fact]
    public async Task An_open_link_answers_what_the_page_needs_and_nothing_personal()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        var version = await made.HandOverAsync();
        var link = await made.LinkAsync();
        var (status, body, answer) = await PatientLinkCalls.OpenAsync(app.Browser(), link.Token);
        Assert.Equal(200, status);
        Assert.Equal("no-store", answer.Headers.CacheControl?.ToString());
        Assert.False(answer.Headers.Contains("Set-Cookie"));
        Assert.DoesNotContain("Invented", body, StringComparison.Ordinal);
        Assert.DoesNotContain(made.Patient.Id.ToString(), body, StringComparison.OrdinalIgnoreCase);
        var program = JsonDocument.Parse(body).RootElement;
        Assert.Equal(version.Number, program.GetProperty("programVersion").GetInt32());
        Assert.Equal("en", program.GetProperty("language").GetString());
        Assert.Equal(4, program.GetProperty("daysPerWeek").GetInt32());
        Assert.Equal(JsonValueKind.Null, program.GetProperty("askMorning").ValueKind);
        var items = program.GetProperty("items").EnumerateArray().ToList();
        Assert.Equal(
            [("clam", "left"), ("hamstring-strap-stretch", "left"), ("hamstring-strap-stretch", "right"), ("sit-to-stand", null)],
            items.Select(i => (i.GetProperty("exerciseId").GetString()!, i.GetProperty("side").GetString())));
        Assert.All(items, AssertItem);
        Assert.All(program.GetProperty("stopSigns").EnumerateArray(), sign => Assert.DoesNotContain("{", sign.GetString()!, StringComparison.Ordinal));
    }

    private static void AssertItem(JsonElement item)
    {
        Assert.NotEmpty(item.GetProperty("dose").GetProperty("text").GetString()!);
        foreach (var text in item.GetProperty("steps").EnumerateArray().Concat(item.GetProperty("setUp").EnumerateArray()))
            Assert.DoesNotContain("{", text.GetString()!, StringComparison.Ordinal);
        var frames = item.GetProperty("picture").GetProperty("frames").EnumerateArray().Select(f => f.GetString()!).ToList();
        Assert.NotEmpty(frames);
        foreach (var frame in frames)
        {
            var drawn = XElement.Parse($"<svg>{frame}</svg>");
            Assert.DoesNotContain(drawn.DescendantsAndSelf().Attributes(), a => a.Name == "style" || a.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        }
    }

    [Fact]
    public async Task Unknown_altered_expired_and_closed_links_get_the_same_answer()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        await made.HandOverAsync();
        var good = await made.LinkAsync();
        var closed = await made.LinkAsync();
        (await made.Stores.Links.RevokeAsync(made.Who, closed.LinkId)).Require();
        var expired = (await made.Stores.At(DateTime.UtcNow.AddDays(-3)).Links.CreateAsync(made.Who, made.Episode.Id, TimeSpan.FromDays(1))).Require();
        var altered = (good.Token[0] == 'A' ? "B" : "A") + good.Token[1..];
        var browser = app.Browser();
        var answers = new List<(int, string)>();
        foreach (var token in new[] { "no such token", "", new string('A', 43), altered, expired.Token, closed.Token, good.Token + "A" })
        {
            foreach (var (what, body) in new (string, JsonObject)[]
            {
                ("open", new JsonObject { ["token"] = token }),
                ("session", PatientLinkCalls.Session(token, Today(made))),
                ("morning", PatientLinkCalls.Morning(token, Today(made))),
            })
            {
                var (status, text, answer) = await PatientLinkCalls.SendAsync(browser, what, body);
                Assert.Equal("no-store", answer.Headers.CacheControl?.ToString());
                answers.Add((status, text));
            }
        }

        Assert.Equal(404, Assert.Single(answers.Distinct()).Item1);
        Assert.Empty(await made.Stores.Logs.SessionsAsync(made.Who, made.Episode.Id));
        Assert.Equal(200, (await PatientLinkCalls.OpenAsync(browser, good.Token)).Status);
    }

    [Fact]
    public async Task A_report_sent_twice_is_one_and_other_words_under_its_id_change_nothing()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        var version = await made.HandOverAsync();
        var token = (await made.LinkAsync()).Token;
        var browser = app.Browser();
        var session = PatientLinkCalls.Session(token, Today(made));
        var (first, saved, _) = await PatientLinkCalls.SendAsync(browser, "session", session);
        Assert.Equal((200, "saved"), (first, PatientLinkCalls.Word(saved, "status")));
        var (second, already, _) = await PatientLinkCalls.SendAsync(browser, "session", session);
        Assert.Equal((200, "already"), (second, PatientLinkCalls.Word(already, "status")));
        session["session"]!["painDuring"] = 9;
        var (third, words, _) = await PatientLinkCalls.SendAsync(browser, "session", session);
        Assert.Equal(409, third);
        Assert.NotEmpty(PatientLinkCalls.Word(words, "detail"));
        var row = Assert.Single(await made.Stores.Logs.SessionsAsync(made.Who, made.Episode.Id));
        Assert.Equal(version.Id, row.ProgramVersionId);
        var log = row.ToLog();
        Assert.Equal((2, (int?)null, 5), (log.PainDuring, log.PainAfter, log.Effort));
        Assert.Equal(ExerciseReport.TooEasy, Assert.Single(log.Exercises).Difficulty);

        var morning = PatientLinkCalls.Morning(token, Today(made));
        Assert.Equal("saved", PatientLinkCalls.Word((await PatientLinkCalls.SendAsync(browser, "morning", morning)).Body, "status"));
        Assert.Equal("already", PatientLinkCalls.Word((await PatientLinkCalls.SendAsync(browser, "morning", morning)).Body, "status"));
        morning["morning"]!["pain"] = 7;
        Assert.Equal(409, (await PatientLinkCalls.SendAsync(browser, "morning", morning)).Status);
        Assert.Equal(1, Assert.Single(await made.Stores.Logs.MorningsAsync(made.Who, made.Episode.Id)).ToLog().Pain);
    }

    [Fact]
    public async Task The_morning_is_asked_after_a_session_until_it_is_answered()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        await made.HandOverAsync();
        var token = (await made.LinkAsync()).Token;
        var browser = app.Browser();
        Assert.Equal(200, (await PatientLinkCalls.SendAsync(browser, "session", PatientLinkCalls.Session(token, Today(made).AddDays(-1)))).Status);
        var asked = JsonNode.Parse((await PatientLinkCalls.OpenAsync(browser, token)).Body)!;
        Assert.Equal(asked["today"]!.GetValue<string>(), asked["askMorning"]!["day"]!.GetValue<string>());
        Assert.Equal(200, (await PatientLinkCalls.SendAsync(browser, "morning", PatientLinkCalls.Morning(token, Today(made)))).Status);
        Assert.Null(JsonNode.Parse((await PatientLinkCalls.OpenAsync(browser, token)).Body)!["askMorning"]);
    }

    [Fact]
    public async Task A_session_of_an_older_program_is_kept_with_that_version()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        var older = await made.HandOverAsync();
        await made.HandOverAsync(made.Program() with { Items = [made.Program().Items[2]] });
        var token = (await made.LinkAsync()).Token;
        Assert.Equal(200, (await PatientLinkCalls.SendAsync(app.Browser(), "session", PatientLinkCalls.Session(token, Today(made)))).Status);
        Assert.Equal(older.Id, Assert.Single(await made.Stores.Logs.SessionsAsync(made.Who, made.Episode.Id)).ProgramVersionId);
    }

    [Fact]
    public async Task Without_the_pages_own_headers_nothing_is_taken()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        await made.HandOverAsync();
        var token = (await made.LinkAsync()).Token;
        var browser = app.Browser();
        var body = Encoding.UTF8.GetBytes(PatientLinkCalls.Session(token, Today(made)).ToJsonString());
        Assert.Equal(400, (await PatientLinkCalls.SendAsync(browser, "session", body, header: false)).Status);
        Assert.Equal(400, (await PatientLinkCalls.SendAsync(browser, "session", body, type: "text/plain")).Status);
        Assert.Equal(400, (await PatientLinkCalls.SendAsync(browser, "session", [.. body, .. new byte[70_000]])).Status);
        Assert.Empty(await made.Stores.Logs.SessionsAsync(made.Who, made.Episode.Id));
    }

    [Theory]
    [InlineData("painDuring", "11")]
    [InlineData("painDuring", "-1")]
    [InlineData("effort", "\"5\"")]
    [InlineData("effort", "5.5")]
    [InlineData("id", "\"00000000-0000-0000-0000-000000000000\"")]
    [InlineData("id", "\"one\"")]
    [InlineData("day", "\"2026-02-30\"")]
    [InlineData("day", "\"1999-01-01\"")]
    [InlineData("exercises", "[]")]
    [InlineData("exercises", "[null]")]
    [InlineData("exercises", "null")]
    [InlineData("exercises", "[{\"exerciseId\":\"clam\",\"side\":\"up\",\"setsDone\":1,\"repetitionsDone\":1,\"report\":\"done\"}]")]
    [InlineData("exercises", "[{\"exerciseId\":\"clam\",\"side\":null,\"setsDone\":-1,\"repetitionsDone\":1,\"report\":\"done\"}]")]
    [InlineData("exercises", "[{\"exerciseId\":\"clam\",\"side\":null,\"setsDone\":1,\"repetitionsDone\":1,\"report\":\"1\"}]")]
    [InlineData("surplus", "1")]
    public async Task A_field_that_cannot_be_right_is_refused_in_words(string field, string value)
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        await made.HandOverAsync();
        var session = PatientLinkCalls.Session((await made.LinkAsync()).Token, Today(made));
        session["session"]![field] = JsonNode.Parse(value);
        await AssertRefusedAsync(app, made, session);
    }

    [Fact]
    public async Task A_note_or_a_day_out_of_bounds_is_refused_in_words()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        await made.HandOverAsync();
        var token = (await made.LinkAsync()).Token;
        foreach (var days in new[] { -31, 2 })
            await AssertRefusedAsync(app, made, PatientLinkCalls.Session(token, Today(made).AddDays(days)));
        var talkative = PatientLinkCalls.Session(token, Today(made));
        talkative["session"]!["note"] = new string('x', 1001);
        await AssertRefusedAsync(app, made, talkative);
        foreach (var days in new[] { -30, 1 })
            Assert.Equal(200, (await PatientLinkCalls.SendAsync(app.Browser(), "session", PatientLinkCalls.Session(token, Today(made).AddDays(days)))).Status);
    }

    [Fact]
    public async Task Opening_too_often_is_slowed_for_one_link_and_not_for_another()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        await made.HandOverAsync();
        var (one, two) = ((await made.LinkAsync()).Token, (await made.LinkAsync()).Token);
        var browser = app.Browser();
        for (var i = 0; i < 40; i++)
            Assert.Equal(200, (await PatientLinkCalls.OpenAsync(browser, one)).Status);
        var (status, body, answer) = await PatientLinkCalls.OpenAsync(browser, one);
        Assert.Equal(429, status);
        Assert.NotEmpty(PatientLinkCalls.Word(body, "detail"));
        Assert.True(answer.Headers.Contains("Retry-After"));
        Assert.Equal(200, (await PatientLinkCalls.OpenAsync(browser, two)).Status);
    }

    [Fact]
    public async Task The_page_is_there_for_anyone_and_asks_again_before_it_is_used_again()
    {
        await using var app = new ClinicApp();
        await app.SetUpAsync();
        var browser = app.Browser();
        var sent = await browser.GetAsync("/p");
        Assert.Equal("/p/", sent.Headers.Location!.ToString());
        var page = await browser.GetAsync("/p/");
        Assert.Equal(200, (int)page.StatusCode);
        Assert.Equal("text/html", page.Content.Headers.ContentType!.MediaType);
        Assert.Equal("no-cache", page.Headers.CacheControl!.ToString());
        using var again = new HttpRequestMessage(HttpMethod.Get, "/p/");
        again.Headers.IfNoneMatch.Add(page.Headers.ETag!);
        Assert.Equal(304, (int)(await browser.SendAsync(again)).StatusCode);
    }

    private static async Task AssertRefusedAsync(ClinicApp app, ProgramCase made, JsonObject session)
    {
        var before = (await made.Stores.Logs.SessionsAsync(made.Who, made.Episode.Id)).Count;
        var (status, body, _) = await PatientLinkCalls.SendAsync(app.Browser(), "session", session);
        Assert.Equal(400, status);
        Assert.NotEmpty(PatientLinkCalls.Word(body, "title"));
        Assert.NotEmpty(PatientLinkCalls.Word(body, "detail"));
        Assert.Equal(before, (await made.Stores.Logs.SessionsAsync(made.Who, made.Episode.Id)).Count);
    }

    private static DateOnly Today(ProgramCase made) =>
        made.Desk.Today(made.Stores.Patients.ClinicAsync(made.Who).GetAwaiter().GetResult());
}
