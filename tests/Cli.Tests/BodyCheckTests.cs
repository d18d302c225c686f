using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using MomentArm.Body;
using MomentArm.Content;

namespace MomentArm.Cli.Tests;

/// <summary>The body model against the figures in content/body/checks.json, and what happens when one does not agree.</summary>
public sealed partial class BodyCheckTests
{
    public static TheoryData<string> Groups { get; } = [.. Enum.GetNames<CheckGroup>().Select(n => n.ToLowerInvariant())];

    [Fact]
    public async Task Every_gated_check_agrees_and_each_is_told_with_its_source()
    {
        var ran = await Momentarm.RunAsync("body", "check");
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.DoesNotContain("MISS", ran.Out, StringComparison.Ordinal);
        var lines = ran.Out.Split('\n').Select(l => l.TrimEnd()).ToArray();
        foreach (var check in Momentarm.Library.BodyChecks.Checks)
        {
            var row = Assert.Single(lines, l => l.StartsWith($"  {check.Id} ", StringComparison.Ordinal));
            Assert.Contains(check.Source[..Math.Min(19, check.Source.Length)], row, StringComparison.Ordinal);
        }

        Assert.All(lines, l => Assert.InRange(l.Length, 0, 100));
    }

    [Fact]
    public async Task The_last_line_counts_what_the_rows_say()
    {
        var lines = (await Momentarm.RunAsync("body", "check")).Out.TrimEnd().Split('\n');
        var counts = Counts().Match(lines[^1]).Groups.Values.Skip(1).Select(g => int.Parse(g.Value, CultureInfo.InvariantCulture)).ToArray();
        Assert.Equal(
            [
                Momentarm.Library.BodyChecks.Checks.Length, Rows("pass"), Rows("MISS"), Rows("reported") + Rows("reported*"), Rows("reported*"), Rows("no value"),
            ],
            counts);

        int Rows(string verdict) => lines.Count(l => l.Length > 91 && l.StartsWith("  ", StringComparison.Ordinal) && l[91..].Trim() == verdict);
    }

    [Fact]
    public async Task Json_holds_every_check_with_expected_got_unit_source_and_verdict()
    {
        var ran = await Momentarm.RunAsync("body", "check", "--json");
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        var told = ran.Json.GetProperty("checks").EnumerateArray().ToArray();
        Assert.Equal(Momentarm.Library.BodyChecks.Checks.Select(c => c.Id), told.Select(c => c.GetProperty("id").GetString()));
        foreach (var check in told)
        {
            foreach (var key in new[] { "group", "what", "source", "marks", "unit", "expected", "verdict" })
                Assert.True(check.TryGetProperty(key, out _), $"{check.GetProperty("id")} {key}");
            var verdict = check.GetProperty("verdict").GetString();
            Assert.Equal(verdict == "notComputed", !check.TryGetProperty("agrees", out _));
            Assert.True(
                verdict == "notComputed" || check.TryGetProperty("got", out _) || check.TryGetProperty("values", out _), check.ToString());
        }

        var counts = ran.Json.GetProperty("counts");
        Assert.Equal(told.Length, counts.GetProperty("checks").GetInt32());
        Assert.Equal(told.Count(c => c.GetProperty("verdict").GetString() == "pass"), counts.GetProperty("pass").GetInt32());
        Assert.Equal(0, counts.GetProperty("miss").GetInt32());
    }

    [Theory]
    [MemberData(nameof(Groups))]
    public async Task One_group_alone_is_what_that_group_says_in_the_whole(string group)
    {
        var ran = await Momentarm.RunAsync("body", "check", "--group", group, "--json");
        Assert.Equal(0, ran.Code);
        var whole = (await Momentarm.RunAsync("body", "check", "--json")).Json.GetProperty("checks").EnumerateArray()
            .Where(c => c.GetProperty("group").GetString() == group).Select(c => c.ToString()).ToArray();
        Assert.NotEmpty(whole);
        Assert.Equal(whole, ran.Json.GetProperty("checks").EnumerateArray().Select(c => c.ToString()));
    }

    [Theory]
    [InlineData("\"number\": 1.53, \"relative\": 0.1", "\"number\": 1.93, \"relative\": 0.1", "rise-hip-plus-knee-man")] // a number
    [InlineData("\"low\": -60, \"high\": -35", "\"low\": -46, \"high\": -35", "abductor-arm-medius-front")] // a band
    [InlineData("\"piriformis\": 136.346", "\"piriformis\": 136.366", "lengths-neutral")] // one figure of a table
    [InlineData("[\"leaning\"], [\"upright\"]", "[\"upright\"], [\"leaning\"]", "lunge-trunk-lean")] // an order
    public async Task A_figure_that_does_not_agree_is_a_miss_and_ends_with_1(string figure, string other, string id)
    {
        using var folder = Tampered(figure, other);
        var text = await Momentarm.RunAsync("body", "check", "--content", folder.Root);
        Assert.Equal((1, ""), (text.Code, text.Error));
        Assert.Contains(text.Out.Split('\n'), l => l.StartsWith($"  {id} ", StringComparison.Ordinal) && l.TrimEnd().EndsWith("MISS", StringComparison.Ordinal));

        var json = await Momentarm.RunAsync("body", "check", "--json", "--content", folder.Root);
        Assert.Equal((1, ""), (json.Code, json.Error));
        Assert.True(json.Json.GetProperty("counts").GetProperty("miss").GetInt32() > 0);
        var missed = json.Json.GetProperty("checks").EnumerateArray().Single(c => c.GetProperty("id").GetString() == id);
        Assert.Equal(("miss", false), (missed.GetProperty("verdict").GetString(), missed.GetProperty("agrees").GetBoolean()));
    }

    [Fact]
    public async Task A_gated_pose_that_falls_is_a_miss_and_says_why()
    {
        // The knee of the squat that carries the bar bends backward out of balance.
        using var folder = Tampered(
            "\"hipFlexionDeg\": 8.7, \"hipAbductionDeg\": -6, \"kneeFlexionDeg\": 8.7", "\"hipFlexionDeg\": -38, \"hipAbductionDeg\": -6, \"kneeFlexionDeg\": 8.7");
        var ran = await Momentarm.RunAsync("body", "check", "--group", "moments", "--content", folder.Root);
        Assert.Equal(1, ran.Code);
        Assert.Contains("Falls backward", Regex.Replace(ran.Out, @"\s+", " "), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Faults_of_the_file_are_told_at_once_with_line_and_place()
    {
        using var folder = Tampered("\"source\": \"yoshioka-2007\"", "\"source\": \"yoshioka-1907\"");
        var path = folder.File("body/checks.json");
        File.WriteAllText(path, File.ReadAllText(path)
            .Replace("\"unit\": \"degrees\"", "\"unit\": \"ratio\"", StringComparison.Ordinal)
            .Replace("\"pose\": \"heel-drop-level\"", "\"pose\": \"heel-drop-lovel\"", StringComparison.Ordinal)
            .Replace("\"muscle\": \"gemelli\"", "\"muscle\": \"gemini\"", StringComparison.Ordinal)
            .Replace("\"marks\": \"memory\", \"gate\": false", "\"marks\": \"memory\", \"gate\": true", StringComparison.Ordinal)
            .Replace("\"marks\": \"memory\",\n      \"gate\": false", "\"marks\": \"memory\",\n      \"gate\": true", StringComparison.Ordinal));
        var ran = await Momentarm.RunAsync("body", "check", "--content", folder.Root);
        Assert.Equal((1, ""), (ran.Code, ran.Out));
        foreach (var told in new[] { "yoshioka-1907", "the check says Ratio", "heel-drop-lovel", "gemini", "A figure from memory may not gate." })
        {
            Assert.Contains(
                ran.Error.Split('\n'),
                l => l.Contains(told, StringComparison.Ordinal) && Regex.IsMatch(l, @"^body/checks\.json:\d+: checks\[\d+\]"));
        }
    }

    [Fact]
    public void Without_joint_forces_and_effort_their_checks_alone_are_left_open()
    {
        var runner = new CheckRunner(Momentarm.Library, (person, input, working, shift) =>
            BalancedHold.Hold(person, input, working, shift) with { JointForces = null, Efforts = null });
        foreach (var check in Momentarm.Library.BodyChecks.Checks)
        {
            var text = JsonSerializer.Serialize(check, StrictJson.Options);
            var asked = text.Contains("\"jointForce\"", StringComparison.Ordinal) || text.Contains("\"effort\"", StringComparison.Ordinal)
                || check.Expected.Ranks is not null;
            Assert.Equal(asked, runner.Run(check).Verdict == Verdict.NotComputed);
        }
    }

    [Fact]
    public void A_pressure_farther_forward_moves_the_ankle_moment_by_weight_times_way()
    {
        var library = Momentarm.Library;
        var physique = library.BodyChecks.Persons["man"]!;
        var model = library.Body.Build(physique);
        var person = new PersonBody(
            model, library.Body.Points, library.Body.MusclesOf(model), new PatientCapacity(library.Body.Capacities, physique, model, []));
        var stance = library.BodyChecks.Poses["single-leg-stance"];
        var (index, sign) = JointAction.AnklePlantarflexion.On(model, Side.Right);
        double Plantarflexion(double shift) => sign * BalancedHold.Hold(person, stance, Side.Right, shift).Moments[index];

        // The ankle's axis is not square to the way forward, so a little less than weight times 2 cm arrives.
        var expected = 0.02 * model.MassKg * BodyModel.Gravity;
        Assert.InRange(Plantarflexion(0.02) - Plantarflexion(0), 0.9 * expected, 1.05 * expected);
        Assert.InRange(Plantarflexion(0) - Plantarflexion(-0.02), 0.9 * expected, 1.05 * expected);
    }

    [GeneratedRegex(@"^(\d+) checks: (\d+) pass, (\d+) miss, (\d+) reported only \(\*(\d+) of them outside\), (\d+) not computed$")]
    private static partial Regex Counts();

    private static TempFolder Tampered(string figure, string other)
    {
        var folder = new TempFolder();
        folder.CopyIn(Momentarm.ContentFolder);
        var path = folder.File("body/checks.json");
        var text = File.ReadAllText(path);
        Assert.Contains(figure, text, StringComparison.Ordinal);
        File.WriteAllText(path, text.Replace(figure, other, StringComparison.Ordinal));
        return folder;
    }
}
