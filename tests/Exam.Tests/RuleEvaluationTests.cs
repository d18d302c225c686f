using CsCheck;
using MomentArm.Body;
using static MomentArm.Exam.Tests.RuleCases;

namespace MomentArm.Exam.Tests;

public class RuleEvaluationTests
{
    [Fact]
    public void Unknown_is_never_no()
    {
        var result = Apply("ottawa-knee", "age=30 days=1 unfit=no patella=no fibula=no other-bone=no flexion=110");
        Assert.Equal(RuleState.NotYet, result.State);
        Assert.Null(result.Advice);
        Assert.Equal("weight", Assert.Single(result.Needs).Id);
        Assert.Contains("Cannot be told yet: needs Cannot take four steps", RuleText.Headline(result), StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_change_the_advice_is_not_asked_for()
    {
        var result = Apply("ottawa-knee", "age=60 days=1 unfit=no");
        Assert.Equal("image", result.Advice!.Id);
        Assert.Empty(result.Needs);
        Assert.Equal((1, 4), (result.Scores[0].Low, result.Scores[0].High));
    }

    [Fact]
    public void Both_bounds_of_a_score_are_told()
    {
        var result = Apply("wells-dvt", "suspected=yes age=40 tender=yes");
        Assert.Equal((1, 9), (result.Scores[0].Low, result.Scores[0].High));
        Assert.Equal((-1, 9), (result.Scores[1].Low, result.Scores[1].High));
        Assert.Equal("between -1 and 9 points", RuleText.Points(result.Scores[1]));
        Assert.Equal(["likely", "unlikely"], result.Outcomes[0].Possible.Select(b => b.Id));
    }

    [Fact]
    public void Two_paths_that_share_an_unknown_are_told_when_either_leads_there()
    {
        // Rotation below 15 degrees fits by the first path, from 15 on by the second: it need not be known.
        var result = Apply("hip-arthritis-criteria", "pain=yes flexion=110 rotation-hurts=yes stiffness=40 age=55");
        Assert.Equal("fits", result.Advice!.Id);
        Assert.All(result.Criteria, c => Assert.Null(c.Met));
    }

    [Fact]
    public void An_open_exclusion_leaves_the_rule_open_and_says_what_would_follow()
    {
        var result = Apply("ottawa-knee", "age=60 days=1");
        Assert.Equal(RuleState.NotYet, result.State);
        Assert.Equal("unfit", Assert.Single(result.Needs).Id);
        Assert.Single(result.ExclusionsOpen);
        Assert.Contains("If the rule is for this person: Positive", RuleText.Headline(result), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("age=17", "under 18")]
    [InlineData("age=30 days=8", "older than 7 days")]
    [InlineData("age=30 unfit=yes", "pregnancy")]
    public void Someone_a_rule_is_not_for_is_told_so(string known, string why)
    {
        var result = Apply("ottawa-knee", known);
        Assert.Equal(RuleState.NotForThisPerson, result.State);
        Assert.Contains(why, RuleText.Headline(result), StringComparison.Ordinal);
        Assert.Null(result.Advice);
    }

    [Fact]
    public void The_record_answers_age_and_sex_and_an_answer_stands_over_it()
    {
        var rule = Rule("back-fracture-signs");
        var facts = RuleEvaluation.WithFacts(rule, new Dictionary<string, RuleValue>(), Person(80, Sex.Male));
        Assert.Equal((RuleValue.Of(80), RuleValue.No), (facts["age"], facts["female"]));
        Assert.Equal(RuleValue.Of(60), RuleEvaluation.WithFacts(rule, new Dictionary<string, RuleValue> { ["age"] = RuleValue.Of(60) }, Person(80))["age"]);
        Assert.Empty(RuleEvaluation.WithFacts(rule, new Dictionary<string, RuleValue>(), Person(null)));
        Assert.DoesNotContain("age", RuleEvaluation.WithFacts(rule, new Dictionary<string, RuleValue>(), Person(400)).Keys);
    }

    [Theory]
    [InlineData("age", "abc", "not a number")]
    [InlineData("age", "121", "0 to 120 years")]
    [InlineData("age", "NaN", "not a number")]
    [InlineData("age", "1e3", "not a number")]
    [InlineData("weight", "perhaps", "yes, no or unknown")]
    public void What_cannot_be_read_says_what_to_type(string item, string typed, string part)
    {
        var reading = RuleReading.Of(Rule("ottawa-knee").Item(item)!, typed);
        Assert.Null(reading.Value);
        Assert.Contains(part, reading.Fault, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("ottawa-knee", "weight", "Y", "yes")]
    [InlineData("ottawa-knee", "weight", "n", "no")]
    [InlineData("ottawa-knee", "flexion", "95°", "95")]
    [InlineData("ottawa-knee", "flexion", "95 degrees", "95")]
    [InlineData("before-exercise", "intensity", "Light", "light")]
    public void Short_answers_and_units_are_read(string rule, string item, string typed, string value) =>
        Assert.Equal(value, RuleReading.Of(Rule(rule).Item(item)!, typed).Value!.ToString());

    [Theory]
    [InlineData(null)]
    [InlineData(" ")]
    [InlineData("?")]
    [InlineData("Unknown")]
    public void Blank_and_unknown_are_unknown(string? typed) =>
        Assert.Equal(new RuleReading(null, null), RuleReading.Of(Rule("ottawa-knee").Item("weight")!, typed));

    [Fact]
    public void An_answer_that_does_not_belong_is_refused()
    {
        var rule = Rule("ottawa-knee");
        Assert.Throws<ArgumentException>(() => RuleEvaluation.Of(rule, new Dictionary<string, RuleValue> { ["nothing"] = RuleValue.Yes }));
        Assert.Throws<ArgumentException>(() => RuleEvaluation.Of(rule, new Dictionary<string, RuleValue> { ["age"] = RuleValue.Yes }));
        Assert.Throws<ArgumentException>(() => RuleEvaluation.Of(rule, new Dictionary<string, RuleValue> { ["age"] = RuleValue.Of(130) }));
        Assert.Throws<ArgumentOutOfRangeException>(() => RuleValue.Of(double.NaN));
    }

    [Fact]
    public void What_is_told_with_gaps_stays_so_however_the_gaps_are_filled() =>
        (from rule in Gen.Int[0, Shipped.Exam.Rules.Length - 1].Select(i => Shipped.Exam.Rules[i])
         from seed in Gen.Int[0, int.MaxValue].Array[rule.Items.Length]
         from gaps in Gen.Bool.Array[rule.Items.Length]
         select (rule, seed, gaps)).Sample(
            c =>
            {
                var whole = c.rule.Items.Select((item, i) => (item.Id, Value: Filled(item, c.seed[i]))).ToDictionary(a => a.Id, a => a.Value);
                var part = c.rule.Items.Where((_, i) => !c.gaps[i]).ToDictionary(item => item.Id, item => whole[item.Id]);
                var (known, partly) = (RuleEvaluation.Of(c.rule, whole), RuleEvaluation.Of(c.rule, part));
                Assert.NotEqual(RuleState.NotYet, known.State);
                if (partly.State != RuleState.NotYet)
                    Assert.Equal((partly.State, partly.Advice), (known.State, known.Advice));
                else
                    Assert.NotEmpty(partly.Needs);
                if (known.Advice is { } band)
                    Assert.Contains(band, partly.Outcomes[0].Possible);
                for (var i = 0; i < known.Scores.Length; i++)
                    Assert.InRange(known.Scores[i].Low, partly.Scores[i].Low, partly.Scores[i].High);
            },
            iter: 400);

    private static RuleValue Filled(RuleItem item, int seed) => item.Kind switch
    {
        RuleItemKind.YesNo => RuleValue.Of(seed % 2 == 0),
        RuleItemKind.Choice => RuleValue.Choice(item.Choices[seed % item.Choices.Length].Id),
        RuleItemKind.Number => RuleValue.Of(Math.Round(item.Low + (item.High - item.Low) * (seed % 1000) / 1000)),
    };
}
