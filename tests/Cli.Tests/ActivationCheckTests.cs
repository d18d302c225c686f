using MomentArm.Content;

namespace MomentArm.Cli.Tests;

/// <summary>Effort beside measured muscle activity: which rows are there, and that the command prints them without judging by them.</summary>
public sealed class ActivationCheckTests
{
    private static CheckFile[] Group { get; } = [.. Momentarm.Library.BodyChecks.Checks.Where(c => c.Group == CheckGroup.Activation)];

    // Means as published; the sources stand beside each row in content/sources.json.
    public static TheoryData<string, double, string> Published { get; } = new()
    {
        { "act-side-lying-abduction", 81, "distefano-2009" }, { "act-single-leg-squat", 64, "distefano-2009" },
        { "act-clam-60", 38, "distefano-2009" }, { "act-single-leg-deadlift", 59, "distefano-2009" },
        { "act-pelvic-drop", 57, "bolgla-2005" }, { "act-side-plank", 74, "ekstrom-2007" },
        { "act-side-plank-oblique", 69, "ekstrom-2007" }, { "act-bridge", 25, "ekstrom-2007" },
        { "act-bird-dog", 56, "ekstrom-2007" }, { "act-lateral-step-up", 85, "ekstrom-2007" },
        { "act-front-plank", 43, "ekstrom-2007" }, { "act-side-step-stance", 52, "youdas-2013" },
        { "act-side-step-moving", 35, "youdas-2013" }, { "act-abduction-10rm", 100, "macaskill" },
        { "act-prone-extension-10rm", 101, "macaskill" }, { "act-ball-squeeze", 108, "serner-2014" },
        { "act-side-lying-adduction", 64, "serner-2014" }, { "act-nordic", 65, "boyer-2021" },
        { "act-single-heel-lift", 64, "chen-2015" },
    };

    [Theory]
    [MemberData(nameof(Published))]
    public async Task Each_published_figure_is_printed_beside_a_computed_effort(string id, double percent, string source)
    {
        var check = Assert.Single(Group, c => c.Id == id);
        Assert.Equal((percent, source, false), (check.Expected.Number, check.Source, check.Gate));
        var ran = await Momentarm.RunAsync("body", "check", "--group", "activation");
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        var row = Assert.Single(ran.Out.Split('\n'), l => l.StartsWith($"  {id} ", StringComparison.Ordinal));
        Assert.Contains($" {percent:0} %", row, StringComparison.Ordinal);
        Assert.Contains("reported", row, StringComparison.Ordinal);
        Assert.DoesNotContain("no value", row, StringComparison.Ordinal);
    }

    [Fact]
    public void No_row_gates_and_every_study_of_three_rows_has_a_rank_correlation()
    {
        Assert.All(Group, c => Assert.False(c.Gate));
        var rows = Group.Where(c => c.Expected.Number is not null && c.Marks != CheckMarks.Choice).ToArray();
        Assert.Equal(Published.Count, rows.Length);
        foreach (var study in rows.GroupBy(r => r.Source).Where(s => s.Count() >= 3))
            Assert.Contains(Group, c => c.Expected.Ranks is { } ranks && c.Source == study.Key && ranks.Order().SequenceEqual(study.Select(r => r.Id).Order()));
        Assert.Contains(Group, c => c.Expected.Ranks?.Count == rows.Length);
    }

    [Fact]
    public async Task The_printed_correlation_is_that_of_the_printed_rows()
    {
        var told = (await Momentarm.RunAsync("body", "check", "--group", "activation", "--json")).Json.GetProperty("checks").EnumerateArray()
            .ToDictionary(c => c.GetProperty("id").GetString()!);
        var compared = 0;
        foreach (var ranked in told.Values.Where(c => c.GetProperty("expected").TryGetProperty("ranks", out _)))
        {
            var ids = ranked.GetProperty("expected").GetProperty("ranks").EnumerateArray().Select(i => i.GetString()!).ToArray();
            double[] published = [.. ids.Select(i => told[i].GetProperty("expected").GetProperty("number").GetDouble())];
            double[] computed = [.. ids.Select(i => told[i].GetProperty("got").GetDouble())];
            Assert.Equal(Spearman.Of(published, computed), ranked.GetProperty("got").GetDouble(), 1e-12);
            compared++;
        }

        Assert.Equal(8, compared);
    }

    [Fact]
    public async Task A_chosen_load_asks_the_share_it_was_chosen_for()
    {
        var json = (await Momentarm.RunAsync("body", "check", "--group", "activation", "--json")).Json.GetProperty("checks").EnumerateArray();
        var chosen = json.Where(c => c.GetProperty("marks").GetString() == "choice").ToArray();
        Assert.Equal(3, chosen.Length);
        Assert.All(chosen, c => Assert.InRange(c.GetProperty("got").GetDouble() - c.GetProperty("expected").GetProperty("number").GetDouble(), -1, 1));
    }

    [Theory]
    [InlineData("\"act-clam-60\",", "\"act-clam-61\",", "There is no check \"act-clam-61\" with a number in the same unit.")]
    [InlineData("\"act-clam-60\",", "\"act-side-lying-abduction\",", "Ranks need three checks or more, each once.")]
    public async Task Ranks_of_what_is_not_there_are_told(string good, string bad, string fault)
    {
        using var folder = new TempFolder();
        folder.CopyIn(Momentarm.ContentFolder);
        var path = folder.File("body/checks.json");
        var text = File.ReadAllText(path);
        var ranks = text.IndexOf("\"rank-distefano\"", StringComparison.Ordinal);
        Assert.True(ranks > 0);
        var at = text.IndexOf(good, ranks, StringComparison.Ordinal);
        File.WriteAllText(path, text[..at] + bad + text[(at + good.Length)..]);
        var ran = await Momentarm.RunAsync("body", "check", "--content", folder.Root);
        Assert.Equal(1, ran.Code);
        Assert.Contains(fault, ran.Error, StringComparison.Ordinal);
    }
}
