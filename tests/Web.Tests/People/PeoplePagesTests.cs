using System.Net;
using MomentArm.Records;

namespace MomentArm.Web.People;

public sealed class PeoplePagesTests
{
    [Fact]
    public async Task A_new_clinic_is_told_what_to_do_first()
    {
        await using var clinic = await PeopleClinic.OpenAsync();
        Assert.Contains("Add your first patient", await clinic.PageAsync("/"), StringComparison.Ordinal);
        Assert.Contains("Add your first patient", await clinic.PageAsync("/patients"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Today_puts_the_urgent_first_and_says_why()
    {
        await using var clinic = await PeopleClinic.OpenAsync();
        var people = await clinic.FillAsync();
        var page = await clinic.PageAsync("/");
        string[] inOrder =
        [
            "Do not wait for the next visit", people.Mara.DisplayName, "Red pain response 2 times in 7 days, last: pain 6 of 10 while exercising.",
            "One exercise was stopped because it hurt.", "Due", people.Ines.DisplayName, "A program waits to be taught and handed over.",
            "Quiet", people.Teo.DisplayName, "No session reported for 12 days.", "As planned", people.Jun.DisplayName,
        ];
        var at = 0;
        foreach (var words in inOrder)
        {
            var next = page.IndexOf(words, at, StringComparison.Ordinal);
            Assert.True(next >= at, $"\"{words}\" is missing or out of order.");
            at = next;
        }

        Assert.DoesNotContain(people.Oskar.DisplayName, page, StringComparison.Ordinal);
        var html = await clinic.Browser.GetStringAsync("/");
        Assert.Contains($"/patients/{people.Mara.Id}/progress", html, StringComparison.Ordinal);
        Assert.Contains($"/patients/{people.Ines.Id}/program", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_list_finds_names_whatever_their_accents()
    {
        await using var clinic = await PeopleClinic.OpenAsync();
        var people = await clinic.FillAsync();
        var found = await clinic.PageAsync("/patients?q=ines");
        Assert.Contains(people.Ines.DisplayName, found, StringComparison.Ordinal);
        Assert.DoesNotContain(people.Teo.DisplayName, found, StringComparison.Ordinal);
        Assert.Contains("Nobody's name holds", await clinic.PageAsync("/patients?q=zzz"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_timeline_tells_visits_programs_and_sessions()
    {
        await using var clinic = await PeopleClinic.OpenAsync();
        var people = await clinic.FillAsync();
        var page = await clinic.PageAsync($"/patients/{people.Mara.Id}");
        Assert.Contains("Climb the gangway forty times a day", page, StringComparison.Ordinal);
        Assert.Contains("Visit 3 Open", page, StringComparison.Ordinal);
        Assert.Contains("Visit 1 Signed", page, StringComparison.Ordinal);
        Assert.Contains("left 92 N", page, StringComparison.Ordinal);
        Assert.Contains("Program, version 2 With the patient", page, StringComparison.Ordinal);
        Assert.Contains("why: Clams were too easy", page, StringComparison.Ordinal);
        Assert.Contains("worst pain 6 of 10", page, StringComparison.Ordinal);
        var bare = await clinic.PageAsync($"/patients/{people.Oskar.Id}");
        Assert.Contains("No episode of care yet", bare, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Progress_shows_adherence_with_its_interval_and_the_reasons()
    {
        await using var clinic = await PeopleClinic.OpenAsync();
        var people = await clinic.FillAsync();
        var page = await clinic.PageAsync($"/patients/{people.Mara.Id}/progress");
        // Version 2, from 10 to 24 March: 15 days at 5 a week are 11 (10.7) planned, 7 done. Wilson's interval of 7 of 11,
        // by hand: center (7 + 1.9207) / (11 + 3.8415) = 0.6011, half width 0.2471.
        Assert.Contains("7 of 11 days, 64 % (35–85 %)", page, StringComparison.Ordinal);
        Assert.Contains("overstate what was done by about a quarter", page, StringComparison.Ordinal);
        Assert.Contains("Red pain response", page, StringComparison.Ordinal);
        Assert.Contains("pain up to 3 of 10 agreed", page, StringComparison.Ordinal);
        Assert.Contains("“Sharp on the stairs, had to stop the step-down.”", page, StringComparison.Ordinal);
        Assert.Contains("pain 6 of 10 while exercising", page, StringComparison.Ordinal);
        Assert.Contains("climb the gangway", page, StringComparison.Ordinal);
        Assert.Contains("measured once", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_trail_is_shown_with_its_check()
    {
        await using var clinic = await PeopleClinic.OpenAsync();
        var people = await clinic.FillAsync();
        var check = await clinic.Stores.Audit.VerifyAsync(clinic.Ada);
        var page = await clinic.PageAsync("/audit");
        Assert.Contains(FormattableString.Invariant($"{check.Lines} lines, chain intact"), page, StringComparison.Ordinal);
        Assert.Contains("Ada Owner", page, StringComparison.Ordinal);
        var mine = await clinic.PageAsync($"/patients/{people.Oskar.Id}/audit");
        Assert.Contains("added patient", mine, StringComparison.Ordinal);
        Assert.DoesNotContain(people.Teo.DisplayName, mine, StringComparison.Ordinal);
        // 17:00 in UTC is noon in Chicago; what was entered at 16:05 UTC on 15 Feb (standard time) is 10:05 there.
        Assert.Contains("15 Feb 2026, 10:05", mine, StringComparison.Ordinal);
        var older = await clinic.PageAsync("/audit?before=3");
        Assert.Contains("added clinic", older, StringComparison.Ordinal);
        Assert.DoesNotContain("chain intact", older, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("/edit")]
    [InlineData("/progress")]
    [InlineData("/audit")]
    [InlineData("/episodes/new")]
    public async Task Another_clinics_patient_is_not_there(string page)
    {
        await using var clinic = await PeopleClinic.OpenAsync();
        var stranger = await clinic.StrangerAsync();
        var answer = await clinic.Browser.GetAsync($"/patients/{stranger.Id}{page}");
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        var text = await PeopleClinic.ReadAsync(answer);
        Assert.Contains("There is no such page", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Sol Reidar", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Starting_todays_visit_twice_opens_one_visit()
    {
        await using var clinic = await PeopleClinic.OpenAsync();
        var people = await clinic.FillAsync();
        var path = $"/patients/{people.Jun.Id}";
        var episode = Assert.Single(await clinic.Stores.Episodes.ListAsync(clinic.Ada, people.Jun.Id));
        for (var i = 0; i < 2; i++)
        {
            var answer = await ClinicApp.SubmitAsync(
                clinic.Browser, path, "start-visit", new() { ["VisitEpisode"] = episode.Id.ToString("D") });
            Assert.Equal(HttpStatusCode.Found, answer.StatusCode);
            Assert.EndsWith($"{path}/exam", answer.Headers.Location!.ToString(), StringComparison.Ordinal);
        }

        var visits = await clinic.Stores.Visits.ListAsync(clinic.Ada, episode.Id);
        Assert.Single(visits, v => v.Day == PeopleClinic.Today);
    }

    [Fact]
    public async Task Closing_an_episode_asks_for_the_reason_and_shows_it()
    {
        await using var clinic = await PeopleClinic.OpenAsync();
        var people = await clinic.FillAsync();
        var path = $"/patients/{people.Jun.Id}";
        var episode = Assert.Single(await clinic.Stores.Episodes.ListAsync(clinic.Ada, people.Jun.Id));
        Dictionary<string, string> Fields(string reason) => new()
        {
            ["ClosedEpisode"] = episode.Id.ToString("D"), ["ClosedVersion"] = episode.RowVersion.ToString("D"),
            ["On"] = "2026-03-25", ["Reason"] = reason,
        };
        var without = await ClinicApp.SubmitAsync(clinic.Browser, path, "close-episode", Fields(" "));
        Assert.Contains("Say in a few words why the episode ends.", await PeopleClinic.ReadAsync(without), StringComparison.Ordinal);
        var done = await ClinicApp.SubmitAsync(clinic.Browser, path, "close-episode", Fields("Goal reached"));
        Assert.Equal(HttpStatusCode.Found, done.StatusCode);
        Assert.Contains("25 Mar 2026: Goal reached", await clinic.PageAsync(path), StringComparison.Ordinal);
        Assert.DoesNotContain(people.Jun.DisplayName, await clinic.PageAsync("/"), StringComparison.Ordinal);
    }
}
