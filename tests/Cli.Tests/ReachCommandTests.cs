namespace MomentArm.Cli.Tests;

public sealed class ReachCommandTests
{
    [Fact]
    public async Task Reach_of_a_case_rests_on_its_test_and_says_what_cannot_be_held()
    {
        // The demo case: straight-leg raise of 72 degrees on the left; the stretch goes to 75.
        var ran = await Momentarm.RunAsync("exercise", "reach", "hamstring-strap-stretch", "--side", "left", "--case", Momentarm.DemoCase);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Contains("left  hamstrings", ran.Out, StringComparison.Ordinal);
        Assert.Contains("tested: Straight-leg raise", ran.Out, StringComparison.Ordinal);
        Assert.Contains("reduce the angle", ran.Out, StringComparison.Ordinal);
        Assert.Contains("more hip flexion", ran.Out, StringComparison.Ordinal);

        var json = (await Momentarm.RunAsync("exercise", "reach", "hamstring-strap-stretch", "--side", "left", "--case", Momentarm.DemoCase, "--json")).Json;
        var first = json.GetProperty("groups")[0];
        Assert.Equal(("hamstrings", "left", "tested"), (first.GetProperty("group").GetString(), first.GetProperty("side").GetString(), first.GetProperty("basis").GetString()));
        Assert.InRange(first.GetProperty("peak").GetProperty("middle").GetDouble(), 1, 1.1);
        Assert.Equal(21, first.GetProperty("curve").GetArrayLength());
    }

    [Fact]
    public async Task Rank_puts_the_stretch_before_the_bridge_for_a_group_and_a_muscle()
    {
        foreach (var name in new[] { "hamstrings", "semimembranosus" })
        {
            var ran = await Momentarm.RunAsync("exercise", "reach", "--rank", name, "--sex", "female", "--stature", "168", "--mass", "64");
            Assert.Equal((0, ""), (ran.Code, ran.Error));
            Assert.True(
                ran.Out.IndexOf("hamstring-strap-stretch", StringComparison.Ordinal) < ran.Out.IndexOf("bridge", StringComparison.Ordinal), ran.Out);
        }

        var json = (await Momentarm.RunAsync("exercise", "reach", "--rank", "lateral-hip", "--json")).Json;
        Assert.Equal(Momentarm.Library.Exercises.Count, json.GetProperty("ranked").GetArrayLength());
    }

    [Theory]
    [InlineData("There is no muscle group or muscle", "--rank", "elbow")]
    [InlineData("Give the id of an exercise, or --rank")]
    [InlineData("Give the id of an exercise, or --rank", "clam", "--rank", "hamstrings")]
    [InlineData("There is no exercise \"nothing\"", "nothing")]
    [InlineData("leave out --sex", "clam", "--case", "no-such-file.json", "--sex", "female")]
    [InlineData("no-such-file.json", "clam", "--case", "no-such-file.json")]
    [InlineData("Type it in centimeters", "clam", "--stature", "1.68")]
    public async Task What_cannot_be_answered_is_said_in_a_sentence(string told, params string[] args)
    {
        var ran = await Momentarm.RunAsync(["exercise", "reach", .. args]);
        Assert.Equal(1, ran.Code);
        Assert.Contains(told, ran.Error, StringComparison.Ordinal);
        Assert.Empty(ran.Out);
    }
}
