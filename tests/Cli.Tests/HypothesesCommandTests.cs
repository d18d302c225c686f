namespace MomentArm.Cli.Tests;

public sealed class HypothesesCommandTests
{
    private static readonly string Runner = Path.Combine(Momentarm.ContentFolder, "demo", "outer-knee-runner.json");

    [Fact]
    public async Task The_demo_runner_is_told_in_words_what_may_fit_and_why_no_test_moves_it()
    {
        var ran = await Momentarm.RunAsync("hypotheses", Runner);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Contains("1. Iliotibial band syndrome: may fit; 60 %, probable", ran.Out, StringComparison.Ordinal);
        Assert.Contains("No accuracy data", ran.Out, StringComparison.Ordinal);
        Assert.Contains("weaker hip abductors", ran.Out, StringComparison.Ordinal);
        Assert.Contains("What to test next", ran.Out, StringComparison.Ordinal);
        Assert.Contains("Irritability, proposed: moderate", ran.Out, StringComparison.Ordinal);
        Assert.Contains(CaseText.Caution, ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Json_holds_the_chain_with_ratio_interval_and_source()
    {
        using var folder = new TempFolder();
        var file = folder.Write("case.json", """
            {
              "complaint": { "side": "right" },
              "reasoning": {
                "region": "knee",
                "tests": [{ "test": "lachman", "result": "positive" }],
                "priors": { "acl-tear": { "value": 0.3, "low": 0.2, "high": 0.4 } }
              }
            }
            """);
        var ran = await Momentarm.RunAsync("hypotheses", file, "--json");
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        var acl = ran.Json.GetProperty("hypotheses").EnumerateArray().Single(h => h.GetProperty("id").GetString() == "acl-tear");
        // 0.3 / 0.7 x 5.65 = 2.421; 2.421 / 3.421 = 70.8 %. Ratio of Huang 2022.
        Assert.Equal(0.708, acl.GetProperty("probability").GetProperty("value").GetDouble(), 0.001);
        var step = Assert.Single(acl.GetProperty("steps").EnumerateArray());
        Assert.Equal(5.65, step.GetProperty("ratio").GetProperty("value").GetDouble());
        Assert.Equal(4.05, step.GetProperty("ratio").GetProperty("interval").GetProperty("low").GetDouble());
        Assert.Contains("Huang", step.GetProperty("source").GetString(), StringComparison.Ordinal);
        Assert.Contains(ran.Json.GetProperty("next").EnumerateArray(), n => n.TryGetProperty("bits", out var bits) && bits.GetDouble() > 0);
    }

    [Theory]
    [InlineData("""{ "tests": [{ "test": "nope", "result": "positive" }] }""", "reasoning.tests[0].test", "There is no test \"nope\".")]
    [InlineData("""{ "tests": [{ "test": "lachman" }] }""", "reasoning.tests[0]", "is positive, negative or unclear.")]
    [InlineData("""{ "tests": [{ "test": "lachman", "count": 2 }] }""", "reasoning.tests[0]", "is positive, negative or unclear.")]
    [InlineData("""{ "tests": [{ "test": "sij-provocation", "result": "positive" }] }""", "reasoning.tests[0]", "Give count from 0 to 6")]
    [InlineData("""{ "tests": [{ "test": "sij-provocation", "count": 7 }] }""", "reasoning.tests[0]", "Give count from 0 to 6")]
    [InlineData("""{ "answers": { "hiccups": "yes" } }""", "reasoning.answers.hiccups", "There is no question \"hiccups\".")]
    [InlineData("""{ "answers": { "runner": "maybe" } }""", "reasoning.answers.runner", "not of the kind")]
    [InlineData("""{ "priors": { "acl-tear": { "value": 30 } } }""", "reasoning.priors.acl-tear", "Give shares above 0 and below 1")]
    [InlineData("""{ "priors": { "acl-tear": { "value": 0.3, "low": 0.4 } } }""", "reasoning.priors.acl-tear", "in order")]
    [InlineData("""{ "confirmedFigures": ["t030"] }""", "reasoning.confirmedFigures.t030", "There is no figure to confirm")]
    [InlineData("""{ "daysSinceInjury": -1 }""", "reasoning.daysSinceInjury", "-1 days is not usable.")]
    [InlineData("""{ "region": "tail" }""", "reasoning.region", "not of the kind")]
    [InlineData("""{ "yellowFlags": { "nope": "yes" } }""", "reasoning.yellowFlags.nope", "There is no yellow flag")]
    [InlineData("""{ "irritability": { "flareHours": -2 } }""", "reasoning.irritability.flareHours", "Give 0 or more")]
    public async Task A_wrong_reasoning_part_is_refused_with_place_and_mend(string reasoning, string place, string sentence)
    {
        using var folder = new TempFolder();
        var file = folder.Write("case.json", "{ \"reasoning\": " + reasoning + " }");
        var ran = await Momentarm.RunAsync("hypotheses", file);
        Assert.Equal((1, ""), (ran.Code, ran.Out));
        Assert.Contains(place, ran.Error, StringComparison.Ordinal);
        Assert.Contains(sentence, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_case_without_reasoning_still_ranks_and_says_that_nothing_speaks_for_any()
    {
        using var folder = new TempFolder();
        var ran = await Momentarm.RunAsync("hypotheses", folder.Write("case.json", """{ "wishes": ["run"] }"""));
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Contains("Nothing that was told speaks for any of them yet.", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_is_not_there_is_told() =>
        Assert.Equal(1, (await Momentarm.RunAsync("hypotheses", "/nowhere/case.json")).Code);
}
