namespace MomentArm.Cli.Tests;

public sealed class MeasureCommandTests
{
    [Fact]
    public async Task The_list_is_in_the_order_of_an_exam_and_names_every_measure()
    {
        var run = await Momentarm.RunAsync("measures", "list", "--json");
        Assert.Equal(0, run.Code);
        var positions = run.Json.EnumerateArray().Select(m => m.GetProperty("position").GetString()).ToList();
        Assert.True(positions.Count > 60);
        string[] order = ["interview", "standing", "sitting", "supine", "sideLying", "prone"];
        Assert.Equal(positions.OrderBy(p => Array.IndexOf(order, p)), positions);
    }

    [Fact]
    public async Task A_measure_is_found_by_its_short_name_with_method_error_norms_and_sources()
    {
        var run = await Momentarm.RunAsync("measures", "show", "chair stand");
        Assert.Equal(0, run.Code);
        Assert.Contains("1. Chair of 43 cm", run.Out, StringComparison.Ordinal);
        Assert.Contains("detectable change 1 as printed at 95 %", run.Out, StringComparison.Ordinal);
        Assert.Contains("male 65-69: middle half from 12 to 18 limit 12 count", run.Out, StringComparison.Ordinal);
        Assert.Contains("[rikli-jones-1999, not verified; beside]", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("quickdash 3 3 3 3 3 3 2 2 2 2 2", 0, "38.6/100")]
    [InlineData("quickdash 3 3 3 3 3 3 3 2 2 2 -", 0, "42.5/100. From 10 of 11 items.")]
    [InlineData("quickdash 3 3 3 3 3 3 3 2 2 - -", 1, "at least 10 are needed")]
    [InlineData("quickdash 3 3 3", 1, "there are 11 items")]
    [InlineData("quickdash 9 3 3 3 3 3 3 2 2 2 2", 1, "Item 1 is answered with 9")]
    [InlineData("quickdash x 3 3 3 3 3 3 2 2 2 2", 1, "\"x\" is no answer")]
    [InlineData("visa-a 80", 1, "Only the total")]
    [InlineData("pain-now 3", 1, "has no items")]
    [InlineData("nothing 3", 1, "There is no measure")]
    public async Task Items_are_scored_or_it_is_said_what_to_do(string line, int code, string told)
    {
        var run = await Momentarm.RunAsync(["measures", "score", .. line.Split(' ')]);
        Assert.Equal(code, run.Code);
        Assert.Contains(told, run.Out + run.Error, StringComparison.Ordinal);
    }
}
