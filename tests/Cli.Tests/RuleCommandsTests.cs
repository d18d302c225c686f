namespace MomentArm.Cli.Tests;

public class RuleCommandsTests
{
    [Fact]
    public async Task Lists_every_rule_with_what_it_decides()
    {
        var ran = await Momentarm.RunAsync("rules", "list");
        Assert.Equal(0, ran.Code);
        Assert.All(Momentarm.Library.Exam.Rules, rule => Assert.Contains(rule.Id + " ", ran.Out, StringComparison.Ordinal));
        Assert.Equal(Momentarm.Library.Exam.Rules.Length, (await Momentarm.RunAsync("rules", "list", "--json")).Json.GetArrayLength());
    }

    [Fact]
    public async Task Applies_a_rule_with_points_advice_accuracy_and_source()
    {
        var ran = await Momentarm.RunAsync("rules", "apply", "ottawa-knee", "age=55", "days=1", "unfit=no");
        Assert.Equal(0, ran.Code);
        foreach (var part in new[] { "+1", "not known: 0 or +1", "between 1 and 4 points", "Positive: radiograph", "93.2 % to 100 %", "JAMA 275:611" })
            Assert.Contains(part, ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Unknown_items_are_told_as_unknown_and_asked_for()
    {
        var told = (await Momentarm.RunAsync("rules", "apply", "wells-dvt", "suspected=yes", "age=40", "tender=yes", "bed=?", "--json")).Json;
        Assert.Equal("notYet", told.GetProperty("state").GetString());
        Assert.Contains(told.GetProperty("needs").EnumerateArray(), n => n.GetString() == "bed");
        Assert.Equal(2, told.GetProperty("outcomes")[0].GetProperty("possible").GetArrayLength());
        Assert.Equal("unknown", told.GetProperty("items").EnumerateArray().Single(i => i.GetProperty("id").GetString() == "bed").GetProperty("value").GetString());
    }

    [Fact]
    public async Task Every_wrong_word_is_told_at_once_with_what_to_type()
    {
        var ran = await Momentarm.RunAsync("rules", "apply", "ottawa-knee", "nothing=1", "age=300", "weight=maybe", "days", "unfit=no", "unfit=yes");
        Assert.Equal(1, ran.Code);
        foreach (var part in new[] { "asks nothing called \"nothing\"", "0 to 120 years", "yes, no or unknown", "not item=value", "given twice" })
            Assert.Contains(part, ran.Error, StringComparison.Ordinal);
        Assert.Contains("momentarm rules list", (await Momentarm.RunAsync("rules", "apply", "no-such-rule")).Error, StringComparison.Ordinal);
        Assert.Equal(2, (await Momentarm.RunAsync("rules", "apply")).Code);
    }
}
