using System.Text.Json;
using System.Text.Json.Nodes;
using MomentArm.Body;

namespace MomentArm.Cli.Tests;

/// <summary>One pose of one's own: the shipped example, and files that cannot be.</summary>
public sealed class PoseCommandTests
{
    private static readonly string[] Person = ["--sex", "female", "--age", "40", "--stature", "165", "--mass", "65"];

    private static string Example => Momentarm.DemoPose;

    [Fact]
    public async Task The_example_gives_the_moments_of_the_Body_room_with_units_in_the_keys()
    {
        var ran = await RunAsync(Example, "--json");
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        var json = ran.Json;
        Assert.Equal((1.65, 65), (json.GetProperty("statureM").GetDouble(), json.GetProperty("massKg").GetDouble()));

        // One foot bears the whole weight, so the moments follow from the settled pose and one vertical force alone.
        var contact = Assert.Single(json.GetProperty("contacts").EnumerateArray().ToArray());
        Assert.Equal(65 * BodyModel.Gravity, contact.GetProperty("forceN").GetDouble(), 0.05);
        Assert.Equal(100, contact.GetProperty("percentOfBodyWeight").GetDouble(), 0.05);

        // The knee by hand: the ground's force acts under the mass center, the shank and foot hang on the knee.
        var knee = Moment(json, "kneeExtension", "right");
        Assert.Equal(HandWorkedKnee(), knee.GetProperty("momentNm").GetDouble(), 1.0);
        Assert.Equal(knee.GetProperty("momentNm").GetDouble() / 65, knee.GetProperty("momentNmPerKg").GetDouble(), 0.001);
        Assert.Equal(68, knee.GetProperty("clinicalAngleDeg").GetDouble(), 0.6);
        Assert.Equal(2 * 48, json.GetProperty("muscles").GetArrayLength());
        Assert.All(json.GetProperty("muscles").EnumerateArray(), m => Assert.InRange(m.GetProperty("lengthMm").GetDouble(), 20, 700));
    }

    [Fact]
    public async Task Text_says_moments_contacts_settling_lengths_and_that_it_is_an_estimate()
    {
        var ran = await RunAsync(Example);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        foreach (var words in new[] { "single-leg squat, right side working, 1.65 m, 65.0 kg", "right knee extension", "Nm/kg", "foot", "% of body weight", "Settling", "Rectus femoris", "An estimate for a clinician" })
            Assert.Contains(words, ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_left_is_the_right_in_a_mirror()
    {
        var (right, left) = ((await RunAsync(Example, "--json")).Json, (await RunAsync(Example, "--json", "--side", "left")).Json);
        Assert.Equal("left", left.GetProperty("workingSide").GetString());
        foreach (var action in new[] { "kneeExtension", "hipExtension", "hipAbduction", "anklePlantarflexion" })
        {
            Assert.Equal(
                Moment(right, action, "right").GetProperty("momentNm").GetDouble(), Moment(left, action, "left").GetProperty("momentNm").GetDouble(), 0.011);
        }
    }

    [Fact]
    public async Task A_pose_that_must_give_way_says_which_joint_from_where_to_where()
    {
        using var folder = new TempFolder();
        var path = Changed(folder, (pose, _) => pose["contacts"]!.AsArray().Add(
            new JsonObject { ["point"] = "heel", ["limb"] = "other", ["surface"] = "floor", ["heightM"] = 0 }));
        var ran = await RunAsync(path, "--json");
        Assert.Equal(0, ran.Code);
        var change = ran.Json.GetProperty("settled").EnumerateArray().First();
        Assert.True(Math.Abs(change.GetProperty("fromDeg").GetDouble() - change.GetProperty("toDeg").GetDouble()) >= 0.5);
        Assert.Contains("gave way", (await RunAsync(path)).Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Everything_out_of_range_is_told_at_once_with_its_line()
    {
        using var folder = new TempFolder();
        var path = Changed(folder, (pose, whole) =>
        {
            pose["working"]!["kneeFlexionDeg"] = 200;
            pose["other"]!["hipAbductionDeg"] = -90;
            pose["contacts"]![0]!["point"] = "foott";
            whole["addedLoads"] = new JsonArray(new JsonObject { ["kind"] = "weight", ["at"] = "ankle", ["limb"] = "working", ["massKg"] = 0 });
        });
        var lines = await File.ReadAllLinesAsync(path, TestContext.Current.CancellationToken);
        var ran = await RunAsync(path);
        Assert.Equal((1, ""), (ran.Code, ran.Out));
        foreach (var (place, key, what) in new[]
        {
            ("pose.working.kneeFlexionDeg", "\"kneeFlexionDeg\": 200", "200 degrees lies outside -10 to 155"),
            ("pose.other.hipAbductionDeg", "\"hipAbductionDeg\": -90", "-90 degrees lies outside -45 to 70"),
            ("pose.contacts[0].point", "foott", "no point \"foott\""),
            ("addedLoads[0].massKg", "\"massKg\"", "0 kg lies outside 0 to 240"),
        })
        {
            var line = 1 + Array.FindIndex(lines, l => l.Contains(key, StringComparison.Ordinal));
            Assert.Contains(
                ran.Error.Split('\n'),
                l => l.StartsWith($"changed.json:{line}: {place}: ", StringComparison.Ordinal) && l.Contains(what, StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("68", "NaN")]
    [InlineData("68", "\"NaN\"")]
    [InlineData("68", "1e999")]
    [InlineData("68", "null")]
    [InlineData("68", "true")]
    [InlineData("\"working\":", "\"wroking\":")]
    [InlineData("\"foot\"", "12")]
    [InlineData("\"kneeFlexionDeg\": 68", "\"kneeFlexionDeg\": 68, \"kneeFlexionDeg\": 12")]
    public async Task What_is_no_number_or_no_key_is_told_with_its_line(string text, string changed)
    {
        using var folder = new TempFolder();
        var whole = await File.ReadAllTextAsync(Example, TestContext.Current.CancellationToken);
        var at = whole.IndexOf(text, StringComparison.Ordinal);
        var path = folder.Write("bad.json", whole[..at] + changed + whole[(at + text.Length)..]);
        var line = 1 + whole[..at].Count(c => c == '\n');
        var ran = await RunAsync(path);
        Assert.Equal((1, ""), (ran.Code, ran.Out));
        Assert.StartsWith($"bad.json:{line}:", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("System.", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_pose_that_falls_is_refused_with_the_direction()
    {
        using var folder = new TempFolder();
        var path = Changed(folder, (pose, _) => pose["working"]!["hipFlexionDeg"] = 20);
        var ran = await RunAsync(path);
        Assert.Equal(1, ran.Code);
        Assert.Contains("Falls backward", ran.Error, StringComparison.Ordinal);
        Assert.Contains("mass center", ran.Out, StringComparison.Ordinal);

        var json = await RunAsync(path, "--json");
        Assert.Equal((1, ""), (json.Code, json.Error));
        Assert.Contains("Falls backward", Assert.Single(json.Json.GetProperty("faults").EnumerateArray()).GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_contact_out_of_reach_is_refused_with_the_distance()
    {
        using var folder = new TempFolder();
        var path = Changed(folder, (pose, _) => pose["contacts"]!.AsArray().Add(
            new JsonObject { ["point"] = "palm", ["limb"] = "other", ["surface"] = "seat", ["heightM"] = 0.02 }));
        var ran = await RunAsync(path);
        Assert.Equal(1, ran.Code);
        Assert.Contains("cannot reach the step: it stays", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nowhere.json", "65", "The file cannot be read")]
    [InlineData(null, "5000", "5000 kg is not usable")]
    public async Task A_missing_file_or_an_impossible_person_ends_with_1(string? file, string mass, string told)
    {
        var ran = await Momentarm.RunAsync("body", "pose", file ?? Example, "--mass", mass);
        Assert.Equal((1, ""), (ran.Code, ran.Out));
        Assert.Contains(told, ran.Error, StringComparison.Ordinal);
    }

    private static Task<Ran> RunAsync(string path, params string[] more) => Momentarm.RunAsync(["body", "pose", path, .. Person, .. more]);

    private static JsonElement Moment(JsonElement json, string action, string side) => json.GetProperty("moments").EnumerateArray()
        .Single(m => m.GetProperty("action").GetString() == action && m.GetProperty("side").GetString() == side);

    /// <summary>Ground force times its distance behind the knee's axis, less the weights of shank and foot: worked in the plane of the knee.</summary>
    private static double HandWorkedKnee()
    {
        var library = Momentarm.Library;
        var model = library.Body.Build(new Physique(Sex.Female, 40, 1.65, 65));
        var (input, _) = Content.PoseInput.Read(Example, library.Body.Points);
        var placed = Settling.Settle(model, library.Body.Points, input!.Frame, Side.Right);
        var state = new BodyState(model);
        state.Update(placed.Pose);
        var axis = state.Axes[model.IndexOf(Motion.KneeExtension, Side.Right)];
        var knee = state.Origins[model.IndexOf(SegmentKind.Shank, Side.Right)];
        var center = state.MassCenter();
        var ground = new Vec3(center.X, 0, center.Z);
        var moment = axis.Dot((ground - knee).Cross(new Vec3(0, 65 * BodyModel.Gravity, 0)));
        foreach (var kind in new[] { SegmentKind.Shank, SegmentKind.Talus, SegmentKind.Foot, SegmentKind.Toes })
        {
            var index = model.IndexOf(kind, Side.Right);
            var weight = new Vec3(0, -model.Segments[index].MassKg * BodyModel.Gravity, 0);
            moment += axis.Dot((state.Point(index, model.Segments[index].MassCenter) - knee).Cross(weight));
        }

        // The sliding center adds the vertical force times how far it rises per radian.
        var slide = state.Slides[model.IndexOf(Motion.KneeExtension, Side.Right)];
        var below = new[] { SegmentKind.Shank, SegmentKind.Talus, SegmentKind.Foot, SegmentKind.Toes }
            .Sum(kind => model.Segments[model.IndexOf(kind, Side.Right)].MassKg);
        return -(moment + slide.Y * (65 - below) * BodyModel.Gravity);
    }

    private static string Changed(TempFolder folder, Action<JsonNode, JsonNode> change)
    {
        var whole = JsonNode.Parse(File.ReadAllText(Example))!;
        change(whole["pose"]!, whole);
        return folder.Write("changed.json", whole.ToJsonString(new JsonSerializerOptions { WriteIndented = true }));
    }
}
