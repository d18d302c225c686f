using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;
using Microsoft.Extensions.DependencyInjection;
using MomentArm.Body;
using MomentArm.Records;
using MomentArm.Web.Pages.Library;

namespace MomentArm.Web;

public sealed partial class ExercisePageTests
{
    [Fact]
    public async Task The_reference_person_s_load_stands_as_curves_in_words_and_as_a_table()
    {
        await using var app = new ClinicApp();
        await app.SetUpAsync();
        var page = await PageAsync(await app.SignedInBrowserAsync(), "single-leg-bridge?side=left");
        var load = Section(page, "load");
        Assert.Contains("<title>Single-leg bridge · MomentArm</title>", page, StringComparison.Ordinal);
        Assert.Contains("Reference person, left side working", load, StringComparison.Ordinal);
        Assert.DoesNotContain("window", load, StringComparison.Ordinal);

        // The picture, the same in words, and the table say one thing, and it is what the engine says.
        var content = app.Services.GetRequiredService<Content.ContentLibrary>();
        var share = new ReferenceLoads(content).Loads.Of(content.Exercise("single-leg-bridge")!, Side.Left, 0).Of(JointAction.HipExtension, Side.Left)!;
        var peak = (100 * share.Middle).ToString("0", CultureInfo.InvariantCulture);
        Assert.Contains("class=\"chart-line chart-1\"", load, StringComparison.Ordinal);
        Assert.Matches($@"Load share along the movement\. Hip extension, left: \d+ % at the start, {peak} % at the end, highest {peak} % at 100 % of the movement \(between \d+ and \d+\)", load);
        Assert.Contains("Line at 100 %: capacity.", load, StringComparison.Ordinal);
        Assert.Matches($@"Hip extension, left\s*<span class=""load-aim small"">what it is meant to load</span></th>\s*<td[^>]*><strong>{peak} %</strong>", load);
        Assert.Matches(@"Foot, left</th><td>floor</td><td class=""number"">\d+–\d+ kg", load);
        Assert.Matches(@"Hamstrings</th><td class=""number"">\d+ %</td>", load);
        Assert.Contains("<strong>under-estimates</strong> when people hurt or wobble", load, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_patient_s_own_capacities_limits_and_window_are_used_and_the_name_is_in_the_title()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        var browser = await app.SignedInBrowserAsync();
        var page = await PageAsync(browser, $"side-lying-leg-raise?patient={made.Patient.Id}");
        Assert.Contains("<title>Side-lying hip abduction · Pat Invented · MomentArm</title>", page, StringComparison.Ordinal);
        Assert.Contains($"<option value=\"{made.Patient.Id}\" selected", page, StringComparison.Ordinal);

        // The affected side works when none is named; both sections follow.
        foreach (var name in new[] { "load", "reach" })
            Assert.Contains("Pat Invented, left side working", Section(page, name), StringComparison.Ordinal);
        Assert.Contains("Load window 40–70 % of capacity: irritability is moderate.", page, StringComparison.Ordinal);
        Assert.Contains("Line at 40 %: window from 40 %.", page, StringComparison.Ordinal);
        Assert.Contains("Line at 70 %: window to 70 %.", page, StringComparison.Ordinal);

        // Her left hip was measured weaker than her right one: the same lift asks more of it, each against its own test.
        var (left, right) = (Peak(page, "left"), Peak(await PageAsync(browser, $"side-lying-leg-raise?patient={made.Patient.Id}&side=right"), "right"));
        Assert.InRange(left, right * 1.2, right * 2);
        var known = (await made.Desk.LoadAsync(made.Who, made.Patient.Id))!.Reading.Loads.Of(made.Content.Exercise("side-lying-leg-raise")!, Side.Left, 0);
        Assert.Equal(100 * known.Of(JointAction.HipAbduction, Side.Left)!.Middle, left, 0.5);
    }

    [Fact]
    public async Task A_patient_of_another_clinic_is_not_there_neither_by_address_nor_in_the_list()
    {
        await using var app = new ClinicApp();
        var mine = await ProgramCase.CreateAsync(app);
        var other = await ProgramCase.OtherClinicAsync(app);
        var theirs = (await mine.Stores.Patients.AddAsync(other, new PatientDetails("Somebody Elsewhere (invented)"))).Require();
        (await mine.Stores.Episodes.AddAsync(other, theirs.Id, new EpisodeDetails("knee", new DateOnly(2026, 3, 2)))).Require();
        var browser = await app.SignedInBrowserAsync();
        foreach (var foreign in new[] { theirs.Id.ToString(), Guid.NewGuid().ToString(), "somebody" })
            Assert.Equal(HttpStatusCode.NotFound, (await browser.GetAsync($"/exercises/clam?patient={foreign}")).StatusCode);
        var page = await PageAsync(browser, "clam");
        Assert.Contains("Pat Invented</option>", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Elsewhere", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Only_those_in_care_are_offered_and_one_without_an_episode_gets_the_reference_person_with_a_word()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        var noOne = (await made.Stores.Patients.AddAsync(made.Who, new PatientDetails("No Episode (invented)"))).Require();
        var browser = await app.SignedInBrowserAsync();
        Assert.DoesNotContain("No Episode", await PageAsync(browser, "clam"), StringComparison.Ordinal);
        var page = await PageAsync(browser, $"clam?patient={noOne.Id}");
        Assert.Contains("No Episode (invented) has no episode of care", page, StringComparison.Ordinal);
        Assert.Contains("Reference person, right side working", page, StringComparison.Ordinal);
        var row = (await made.Stores.Episodes.GetAsync(made.Who, made.Episode.Id))!;
        (await made.Stores.Episodes.CloseAsync(made.Who, row.Id, row.StartedOn, row.RowVersion)).Require();
        Assert.DoesNotContain("Pat Invented", await PageAsync(browser, "clam"), StringComparison.Ordinal);
        Assert.Contains("<title>Clam · Pat Invented · MomentArm</title>", await PageAsync(browser, $"clam?patient={made.Patient.Id}"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_unknown_side_counts_as_none_named()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        var browser = await app.SignedInBrowserAsync();
        foreach (var side in new[] { "up", "", "LEFT ", "%3Cb%3E" })
        {
            Assert.Contains("Reference person, right side working", await PageAsync(browser, $"clam?side={side}"), StringComparison.Ordinal);
            Assert.Contains("Pat Invented, left side working", await PageAsync(browser, $"clam?patient={made.Patient.Id}&side={side}"), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task No_screen_speaks_in_names_of_the_files()
    {
        await using var app = new ClinicApp();
        await app.SetUpAsync();
        var browser = await app.SignedInBrowserAsync();
        var content = app.Services.GetRequiredService<Content.ContentLibrary>();
        foreach (var exercise in content.Exercises)
        {
            var page = await PageAsync(browser, exercise.Id);
            var words = Tags().Replace(page[page.IndexOf("id=\"load\"", StringComparison.Ordinal)..page.IndexOf("</main>", StringComparison.Ordinal)], " ");
            Assert.DoesNotMatch(@"\b[a-z]+[A-Z][a-z]+", words);
            Assert.DoesNotMatch(@"frictionless|NaN|∞", words);
        }

        // Every place that content names has its trade word, but for the three whose name is one.
        var plain = content.Body.Points.Points.Keys.Where(name => name.Any(char.IsUpper) && BodyWords.Place(name) == Split(name));
        Assert.Equal(["lowerBack", "sitBone", "upperBack"], plain.Order(StringComparer.Ordinal));
        Assert.Equal("Back of the pelvis of the working limb cannot reach the floor.", ExerciseText.Plain("pelvisBack of the working limb cannot reach the floor."));
    }

    [Theory]
    [InlineData(3, 10, null, 2, 1, 3, "3 sets × 10 repetitions × (2 s out + 1 s held + 3 s back) = 180 s for each side that works, rests left out.")]
    [InlineData(2, 8, 12, 2, 0, 2, "2 sets × 8–12 repetitions × (2 s out + 2 s back) = 64–96 s for each side that works, rests left out.")]
    [InlineData(1, 1, null, 2, 30, 2, "1 set × 1 repetition × (2 s out + 30 s held + 2 s back) = 34 s for each side that works, rests left out.")]
    public async Task Time_under_tension_is_told_with_its_factors(int sets, int from, int? to, double outward, double hold, double back, string said)
    {
        await using var app = new ClinicApp();
        var exercise = app.Services.GetRequiredService<Content.ContentLibrary>().Exercise("clam")!;
        var dosed = exercise with
        {
            Dose = exercise.Dose with { Sets = sets, Repetitions = from, RepetitionsTo = to, OutSeconds = outward, HoldSeconds = hold, BackSeconds = back },
        };
        Assert.Equal("Time under tension at the usual dose: " + said, DoseTime.Words(dosed));
    }

    [Fact]
    public async Task Sides_that_read_alike_stand_in_one_line_and_the_aim_always_has_a_curve()
    {
        await using var app = new ClinicApp();
        var content = app.Services.GetRequiredService<Content.ContentLibrary>();
        var exercise = content.Exercise("sit-to-stand")!;
        var load = new ReferenceLoads(content).Loads.Of(exercise, Side.Right, 0);
        var lines = LoadLine.Of(exercise, load, Side.Right);
        Assert.Contains(lines, l => l is { Name: "Knee extension, both sides", IsAim: true });
        Assert.Equal(load.Shares.Length, lines.Sum(l => l.BothSides ? 2 : 1));
        Assert.Equal(lines.OrderByDescending(l => Math.Round(l.Share.Middle, 6)).Select(l => l.Name), lines.Select(l => l.Name));
        Assert.Equal(["Trunk extension", "Knee extension, both sides"], LoadLine.Drawn(lines, 2).Select(l => l.Name));

        // A weaker left side tells the two apart.
        var weaker = load with { Curves = [.. load.Curves.Select(c => c.Side == Side.Left ? c with { Points = [.. c.Points.Select(p => p with { Middle = 1.1 * p.Middle })] } : c)] };
        var apart = LoadLine.Of(exercise, weaker, Side.Right);
        Assert.Contains(apart, l => l.Name == "Knee extension, left");
        Assert.Contains(apart, l => l.Name == "Knee extension, right");

        // The aim takes the last place when larger shares fill the chart.
        var strained = exercise with { Loads = [JointAction.AnklePlantarflexion] };
        Assert.Contains(LoadLine.Drawn(LoadLine.Of(strained, load, Side.Right), 4), l => l is { IsAim: true, Share.Action: JointAction.AnklePlantarflexion });
    }

    [Fact]
    public async Task Muscle_groups_that_lengthen_alike_on_both_sides_stand_in_one_line()
    {
        await using var app = new ClinicApp();
        var content = app.Services.GetRequiredService<Content.ContentLibrary>();
        var reach = new ReferenceLoads(content).Reach;
        var both = reach.Of(content.Exercise("sit-to-stand")!, Side.Right).Lengthened.ToArray();
        var lines = ReachLine.Of(both);
        Assert.All(lines, l => Assert.True(l.BothSides, l.Name));
        Assert.Equal(both.Length, 2 * lines.Length);
        Assert.Contains(lines, l => l.Name == "Hamstrings, both sides");
        var one = reach.Of(content.Exercise("hamstring-strap-stretch")!, Side.Right).Lengthened;
        Assert.Contains(ReachLine.Of(one), l => l.Name == "Hamstrings, right");
    }

    private static async Task<string> PageAsync(HttpClient browser, string path) =>
        WebUtility.HtmlDecode(await browser.GetStringAsync("/exercises/" + path));

    private static string Section(string page, string name) =>
        Regex.Match(page, $"<section class=\"section\" aria-labelledby=\"{name}\">.*?<h3>What the", RegexOptions.Singleline).Value is { Length: > 0 } found
            ? found
            : throw new InvalidOperationException($"The page has no section {name}.");

    /// <summary>The largest share of hip abduction on a side, %.</summary>
    private static double Peak(string page, string side) => double.Parse(
        Regex.Match(page, $@"Hip abduction, {side}: .*? highest (\d+) %").Groups[1].Value, CultureInfo.InvariantCulture);

    private static string Split(string name) => Regex.Replace(name, "[A-Z]", m => " " + m.Value.ToLowerInvariant());

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tags();
}
