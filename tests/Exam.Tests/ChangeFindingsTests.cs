using MomentArm.Body;

namespace MomentArm.Exam.Tests;

public sealed class ChangeFindingsTests
{
    [Fact]
    public void Worse_beyond_error_is_a_finding_with_weight_and_better_is_told_below_it()
    {
        // Neto 2015: SEM 2.6 degrees, so 7.2 are detectable: 75 to 62 is worse, 62 to 75 better.
        var worse = Assert.Single(Changes("slr L 62", "slr L 75"));
        Assert.Equal(("straight-leg-raise:left:told:worse", false, true), (worse.Id, worse.Better!.Value, worse.BeyondError!.Value));
        Assert.Null(worse.Impairment);
        Assert.Contains("worse than on 2026-01-05, 75° to 62°", worse.Headline, StringComparison.Ordinal);
        Assert.Contains("7.2°", worse.Detail, StringComparison.Ordinal);
        var better = Assert.Single(Changes("slr L 75", "slr L 62"));
        Assert.Equal(true, better.Better);
        Assert.True(worse.Weight > better.Weight);
        Assert.Equal(FindingRules.BetterWeight, better.Weight);
    }

    [Fact]
    public void What_stayed_within_error_is_told_in_one_finding_with_its_errors()
    {
        var same = Assert.Single(Changes("slr L 72, R 74; knee flex L 131", "slr L 70, R 75; knee flex L 130"));
        Assert.Equal(("no-change", false), (same.Id, same.BeyondError!.Value));
        Assert.Contains("3 values", same.Headline, StringComparison.Ordinal);
        Assert.Contains("Straight-leg raise, left 70° to 72° (error 7.2°)", same.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void Small_steps_down_add_up_to_a_finding_since_the_first_visit()
    {
        // 75, 70, 66: each step is within 7.2 degrees, the whole way is not.
        var worse = Assert.Single(Changes("slr L 66", "slr L 75", "slr L 70"));
        Assert.False(worse.Better);
        Assert.Contains("2026-01-05", worse.Headline, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_published_error_the_default_limit_decides_and_is_named()
    {
        Assert.Empty(Changes("hip flex L 118", "hip flex L 125"));
        var worse = Assert.Single(Changes("hip flex L 105", "hip flex L 125"));
        Assert.Null(worse.BeyondError);
        Assert.Contains("default limit is 10°", worse.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void A_jump_in_load_is_told_as_more_and_not_judged()
    {
        var jump = Assert.Single(Changes("run week 35 km", "run week 20 km"));
        Assert.Null(jump.Better);
        Assert.Null(jump.Impairment);
        Assert.Contains("more than on 2026-01-05, 20 km to 35 km", jump.Headline, StringComparison.Ordinal);
    }

    [Fact]
    public void Readings_not_taken_alike_make_no_finding_of_change() =>
        Assert.Empty(Changes("hip abd L 80 at 36 cm", "hip abd L 149"));

    private static IEnumerable<Finding> Changes(string now, params string[] earlier) =>
        FindingsMaker.From(FindingsMakerTests.Interpretations(Side.Left, now, earlier), Side.Left)
            .Where(f => f.Better is not null || f.Id == "no-change" || f.Id.EndsWith(":changed", StringComparison.Ordinal));
}
