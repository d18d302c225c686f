using System.Globalization;
using MomentArm.Body;

namespace MomentArm.Cli.Tests;

public sealed class SolveLoadCommandTests
{
    private static readonly string[] Person = ["--sex", "female", "--age", "41", "--stature", "167", "--mass", "66"];

    [Fact]
    public async Task The_weight_found_is_loaded_to_the_share_told()
    {
        var solved = (await RunAsync("--id", "seated-knee-extension", "--group", "knee-extensors", "--share", "65", "--side", "left", "--json")).Json;
        Assert.Equal("found", solved.GetProperty("result").GetString());
        var kilograms = solved.GetProperty("value").GetDouble();
        var share = solved.GetProperty("share").GetProperty("middle").GetDouble();
        Assert.Equal(0.65, share, 0.01);

        var loaded = (await Momentarm.RunAsync([
            "exercise", "load", "seated-knee-extension", "--side", "left", "--weight", kilograms.ToString(CultureInfo.InvariantCulture), "--json", .. Person])).Json;
        var extension = loaded.GetProperty("shares").EnumerateArray().Single(s => s.GetProperty("action").GetString() == "kneeExtension" && s.GetProperty("side").GetString() == "left");
        Assert.Equal(share, extension.GetProperty("middle").GetDouble(), 1e-9);
    }

    [Fact]
    public async Task Text_and_JSON_tell_the_same_answer()
    {
        string[] question = ["--id", "lateral-step-down", "--group", "kneeExtension", "--share", "40", "--knob", "depth"];
        var text = await RunAsync(question);
        Assert.Equal((0, ""), (text.Code, text.Error));
        var words = (await RunAsync([.. question, "--json"])).Json.GetProperty("words").GetString()!;
        Assert.Matches("^[0-9]+ % of the way gives (39|40|41) % \\(interval [0-9]+-[0-9]+ %\\)\\.$", words);
        Assert.Contains("  " + words, text.Out, StringComparison.Ordinal);
        Assert.Contains("Lateral step-down, 40 % of right knee extension wished", text.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("band-side-step", "hip-abductors", "30", "band", "A band of ")]
    [InlineData("band-side-step", "hip-abductors", "35", "rest", "A rest length of ")]
    [InlineData("band-side-step", "hip-abductors", "35", "stretch", "A stretch of ")]
    [InlineData("seated-knee-extension", "knee-extensors", "30", "lever", "The weight ")]
    public async Task Other_knobs_are_turned_too(string id, string group, string share, string knob, string told)
    {
        var ran = await RunAsync(["--id", id, "--group", group, "--share", share, "--knob", knob, .. knob == "lever" ? new[] { "--between", "kneeFront,ankle", "--weight", "3" } : []]);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Contains("  " + told, ran.Out, StringComparison.Ordinal);
        Assert.Contains(" gives ", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_not_reachable_is_an_answer_not_a_fault()
    {
        var ran = await RunAsync("--id", "bridge", "--group", "hip-extensors", "--share", "90");
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Matches("Not reachable: at most [0-9]+ % at [0-9]+ % of the way", ran.Out);
        var json = (await RunAsync("--id", "seated-knee-extension", "--group", "knee-extensors", "--share", "200", "--high", "5", "--json")).Json;
        Assert.Equal("notReachable", json.GetProperty("result").GetString());
        Assert.Equal(5, json.GetProperty("search").GetProperty("largestAt").GetDouble());
    }

    [Theory]
    [InlineData("no exercise \"trombone\"", "--id", "trombone", "--group", "knee-extensors", "--share", "65")]
    [InlineData("is no group: give one of hip-flexors, hip-extensors", "--id", "bridge", "--group", "buttocks", "--share", "65")]
    [InlineData("takes no added weight", "--id", "bridge", "--group", "hip-extensors", "--share", "65", "--knob", "weight")]
    [InlineData("has no band", "--id", "bridge", "--group", "hip-extensors", "--share", "65", "--knob", "band")]
    [InlineData("--share 0 is not usable", "--id", "bridge", "--group", "hip-extensors", "--share", "0")]
    [InlineData("--low 80 to --high 20 is no range", "--id", "bridge", "--group", "hip-extensors", "--share", "30", "--low", "80", "--high", "20")]
    [InlineData("--weight 3", "--id", "seated-knee-extension", "--group", "knee-extensors", "--share", "30", "--knob", "lever")]
    [InlineData("--between kneeFront,ankle", "--id", "seated-knee-extension", "--group", "knee-extensors", "--share", "30", "--knob", "lever", "--weight", "3")]
    [InlineData("not two body points of one segment", "--id", "seated-knee-extension", "--group", "knee-extensors", "--share", "30", "--knob", "lever", "--weight", "3", "--between", "kneeOuter,ankle")]
    public async Task A_question_that_is_none_is_a_fault_that_says_how_to_mend_it(string told, params string[] args)
    {
        var ran = await RunAsync(args);
        Assert.Equal(1, ran.Code);
        Assert.Contains(told, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_knob_that_does_not_exist_is_not_understood() =>
        Assert.Equal(2, (await RunAsync("--id", "bridge", "--group", "hip-extensors", "--share", "30", "--knob", "speed")).Code);

    [Fact]
    public void Every_group_can_be_typed_as_muscles_or_as_action()
    {
        foreach (var action in Enum.GetValues<JointAction>())
        {
            Assert.Equal(action, SolveLoadCommand.Action(SolveLoadCommand.Group(action)));
            Assert.Equal(action, SolveLoadCommand.Action(action.ToString()));
        }

        Assert.Equal(JointAction.HipAbduction, SolveLoadCommand.Action("hip-abduction"));
    }

    private static Task<Ran> RunAsync(params string[] question) => Momentarm.RunAsync(["exercise", "solve-load", .. question, .. Person]);
}
