using System.Xml.Linq;
using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Cli.Tests;

public sealed class ExerciseCommandsTests
{
    public static TheoryData<string> Ids { get; } = [.. Momentarm.Library.Exercises.Select(e => e.Id)];

    [Fact]
    public async Task List_names_every_exercise_once()
    {
        var json = (await Momentarm.RunAsync("exercise", "list", "--json")).Json;
        Assert.Equal(
            Momentarm.Library.Exercises.Select(e => e.Id).Order(StringComparer.Ordinal),
            json.EnumerateArray().Select(e => e.GetProperty("id").GetString()!).Order(StringComparer.Ordinal));
        var text = (await Momentarm.RunAsync("exercise", "list")).Out;
        Assert.All(Momentarm.Library.Exercises, e => Assert.Contains(e.Name, text, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public async Task Draw_writes_well_formed_SVG_for_both_sides_that_differ(string id)
    {
        using var folder = new TempFolder();
        foreach (var side in new[] { "left", "right" })
        {
            var ran = await Momentarm.RunAsync("exercise", "draw", id, "--side", side, "--out", folder.File(side + ".svg"));
            Assert.Equal((0, ""), (ran.Code, ran.Error));
        }

        var (left, right) = (XDocument.Load(folder.File("left.svg")).Root!, XDocument.Load(folder.File("right.svg")).Root!);
        XNamespace svg = "http://www.w3.org/2000/svg";
        Assert.Equal(svg + "svg", left.Name);
        Assert.True(left.Descendants(svg + "path").Count() > 10);
        Assert.Equal(left.Attribute("viewBox")!.Value, right.Attribute("viewBox")!.Value);
        Assert.NotEqual(left.Descendants(svg + "path").Select(p => p.Attribute("d")!.Value), right.Descendants(svg + "path").Select(p => p.Attribute("d")!.Value));
        var words = left.Element(svg + "desc")!.Value;
        Assert.NotEmpty(words);
        Assert.DoesNotContain("{", words, StringComparison.Ordinal);
        if (!Momentarm.Library.Exercise(id)!.Movement.Bilateral && words.Contains("left", StringComparison.Ordinal))
            Assert.NotEqual(words, right.Element(svg + "desc")!.Value);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public async Task Load_prints_the_numbers_of_the_Body_room(string id)
    {
        var library = Momentarm.Library;
        var person = new Physique(Sex.Female, 41, 1.67, 66);
        foreach (var side in new[] { Side.Left, Side.Right })
        {
            var expected = Loading.Of(
                library.Body.PersonOf(person), library.Exercise(id)!.Movement, side, 2.5);
            var ran = await Momentarm.RunAsync(
                "exercise", "load", id, "--side", side.ToString().ToLowerInvariant(), "--sex", "female", "--age", "41",
                "--stature", "167", "--mass", "66", "--weight", "2.5", "--json");
            Assert.Equal((0, ""), (ran.Code, ran.Error));
            Assert.Equal(expected.Computed, ran.Json.GetProperty("computed").GetBoolean());
            var shares = ran.Json.GetProperty("shares").EnumerateArray().ToArray();
            Assert.Equal(expected.Shares.Length, shares.Length);
            foreach (var (want, got) in expected.Shares.Zip(shares))
            {
                Assert.Equal(want.Action.ToString(), got.GetProperty("action").GetString(), ignoreCase: true);
                Assert.Equal(want.Side.ToString(), got.GetProperty("side").GetString(), ignoreCase: true);
                Assert.Equal(want.Middle, got.GetProperty("middle").GetDouble());
                Assert.Equal(want.Demand, got.GetProperty("demand").GetDouble());
            }
        }
    }

    [Fact]
    public async Task Load_without_a_person_says_what_was_taken_instead()
    {
        var ran = await Momentarm.RunAsync("exercise", "load", "bridge");
        Assert.Equal(0, ran.Code);
        Assert.Contains("Sex not given", ran.Out, StringComparison.Ordinal);
        Assert.Contains("Stature not given", ran.Out, StringComparison.Ordinal);
        Assert.Contains("Body mass not given", ran.Out, StringComparison.Ordinal);
        Assert.Contains("hip extension", ran.Out, StringComparison.Ordinal);
    }
}
