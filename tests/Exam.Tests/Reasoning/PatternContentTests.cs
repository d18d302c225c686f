using MomentArm.Content;

namespace MomentArm.Exam.Tests.Reasoning;

/// <summary>What the shipped patterns and tests promise: nothing unverified moves a probability, every ratio has a source and an interval.</summary>
public class PatternContentTests
{
    private static readonly Dictionary<string, Source> Sources =
        StrictJson.ReadFile<Dictionary<string, Source>>(Path.Combine(Shipped.ContentFolder, "sources.json"), "sources.json", new FaultList())!;

    private static ReasoningBasis Basis => Shipped.Exam.Reasoning;

    private static IEnumerable<(ClinicalTest Test, AccuracyFigure Figure, UsedRatio Ratio)> Counting =>
        from test in Basis.Tests
        from figure in test.Figures
        where TestReader.MayMove(figure, new ReasoningInput())
        from positive in new[] { true, false }
        let ratio = RatioRules.Of(figure, positive)
        where ratio is not null && figure.Use != TestUse.None && figure.Use != (positive ? TestUse.RuleOut : TestUse.RuleIn)
        select (test, figure, ratio);

    [Fact]
    public void All_22_groups_of_patterns_are_there() =>
        Assert.Equal(Enumerable.Range(1, 22), Basis.Patterns.Select(p => p.Group).Distinct().Order());

    [Fact]
    public void Every_ratio_that_may_move_a_probability_carries_a_source_and_an_interval() => Assert.All(Counting, c =>
    {
        Assert.True(Sources.ContainsKey(c.Figure.Source));
        Assert.False(string.IsNullOrWhiteSpace(c.Figure.Confirmation));
        var interval = c.Ratio.Used.Interval;
        Assert.NotNull(interval);
        Assert.InRange(c.Ratio.Used.Value, interval.Low, interval.High);
    });

    [Fact]
    public void An_interval_that_is_assumed_is_as_wide_as_from_no_shift_and_says_so() =>
        Assert.All(Counting.Where(c => c.Ratio.Origin == IntervalOrigin.Assumed), c =>
        {
            Assert.True(c.Ratio.Used.Interval!.Low == 1 || c.Ratio.Used.Interval.High == 1);
            Assert.Contains("no interval is known", c.Ratio.Note, StringComparison.Ordinal);
        });

    [Fact]
    public void No_figure_from_memory_moves_a_probability_by_itself() => Assert.All(Counting, c =>
    {
        Assert.NotEqual("from memory", Sources[c.Figure.Source].Confirmation);
        Assert.DoesNotContain("memory", c.Figure.Confirmation, StringComparison.Ordinal);
    });

    [Fact]
    public void No_starting_value_from_memory_is_used_by_itself() => Assert.All(
        Basis.Patterns.SelectMany(p => p.Priors).Where(p => p.Usable),
        p => Assert.NotEqual("from memory", Sources[p.Source].Confirmation));

    [Fact]
    public void Tests_without_accuracy_stand_there_and_say_so()
    {
        foreach (var id in new[] { "noble-compression", "hip-adduction-length", "single-leg-knee-bend-lateral", "varus-stress-30", "calf-pain-resisted" })
            Assert.All(Basis.Test(id)!.Figures, f => Assert.Equal((RatioOrigin.None, FigureStanding.NotUsable), (f.Origin, f.Standing)));
    }

    [Fact]
    public void Patterns_never_say_that_somebody_has_something()
    {
        foreach (var pattern in Basis.Patterns)
        {
            var text = string.Join(" ", [pattern.Summary, pattern.Course, pattern.Caution ?? "", .. pattern.ThinkOf]);
            Assert.DoesNotContain("diagnosed", text, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("you have", text, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public void Published_intervals_hold_their_ratio() => Assert.All(
        Basis.Tests.SelectMany(t => t.Figures).SelectMany(f => new[] { f.Positive, f.Negative }).OfType<Ratio>().Where(r => r.Interval is not null),
        r => Assert.InRange(r.Value, r.Interval!.Low, r.Interval.High));
}
