using MomentArm.Body;

namespace MomentArm.Exam.Tests;

public sealed class FindingReviewTests
{
    private static readonly Impairment Control = new(ImpairmentKind.PoorControl, Side.Left, JointAction.HipAbduction, null, 0.3);

    [Fact]
    public void Untouched_findings_stand_by_weight_and_all_count()
    {
        var reviewed = FindingReview.Apply([Found("a", 0.9), Found("b", 0.4)], []);
        Assert.Equal(["a", "b"], reviewed.Select(r => r.Finding.Id));
        Assert.All(reviewed, r => Assert.True(r.Counts));
    }

    [Fact]
    public void The_clinicians_place_words_and_own_findings_stand_over_the_computed_ones()
    {
        var reviewed = FindingReview.Apply(
            [Found("a", 0.9), Found("b", 0.4)],
            [
                new FindingJudgment("b", true) { Rank = 1, Headline = "In my words" },
                new FindingJudgment("own/1", true) { Headline = "Knee falls inward", Impairment = Control },
                new FindingJudgment("a", false) { Reason = "old injury" },
            ]);
        Assert.Equal(["b", "a", "own/1"], reviewed.Select(r => r.Finding.Id));
        Assert.Equal("In my words", reviewed[0].Finding.Headline);
        Assert.Equal(["b", "own/1"], reviewed.Where(r => r.Counts).Select(r => r.Finding.Id));
        Assert.Equal(Control, reviewed[2].Finding.Impairment);
        Assert.Null(reviewed[2].Finding.BeyondError);
    }

    [Fact]
    public void A_judgment_about_a_finding_that_is_no_longer_there_shows_nothing()
    {
        Assert.Empty(FindingReview.Apply([], [new FindingJudgment("gone", true) { Headline = "was here" }]));
    }

    private static Finding Found(string id, double weight) => new(id, "Computed", "Numbers.", weight, true, null, []);
}
