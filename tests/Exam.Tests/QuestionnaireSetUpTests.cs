namespace MomentArm.Exam.Tests;

/// <summary>Scoring rules with the worked numbers of their owners' sheets and forms, as far as those were read.</summary>
public sealed class QuestionnaireSetUpTests
{
    private static readonly QuestionnaireSetUp Sections = Of(ScoreForm.PercentOfRange, 10, 9, 0, 5);
    private static readonly QuestionnaireSetUp Arm = Of(ScoreForm.PercentOfRange, 11, 10, 1, 5);
    private static readonly QuestionnaireSetUp Sport = Of(ScoreForm.PercentOfRangeReversed, 5, 3, 0, 4);
    private static readonly QuestionnaireSetUp Leg = Of(ScoreForm.Sum, 20, 20, 0, 4);

    [Fact]
    public void Ten_sections_give_the_percent_printed_with_the_form()
    {
        // Oswestry: 16 of 50 is 32 %, one section left out 16 of 45 is 35.56 % (read in a summary).
        Assert.Equal(32, Sections.Score([2, 2, 2, 2, 2, 2, 1, 1, 1, 1]).Value!.Value, 10);
        var partly = Sections.Score([2, 2, 2, 2, 2, 2, 2, 1, 1, null]);
        Assert.Equal(35.56, partly.Value!.Value, 2);
        Assert.Equal("From 9 of 10 items.", partly.Sentence);
    }

    [Fact]
    public void Eleven_items_from_one_to_five_are_scored_as_printed_and_nine_answers_are_too_few()
    {
        // QuickDASH: sum 28 over 11 is 38.64, sum 27 over 10 is 42.5 (formula read in a summary).
        Assert.Equal(38.64, Arm.Score([3, 3, 3, 3, 3, 3, 2, 2, 2, 2, 2]).Value!.Value, 2);
        Assert.Equal(42.5, Arm.Score([3, 3, 3, 3, 3, 3, 3, 2, 2, 2, null]).Value!.Value, 10);
        var few = Arm.Score([3, 3, 3, 3, 3, 3, 3, 2, 2, null, null]);
        Assert.Null(few.Value);
        Assert.Contains("9 of 11", few.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_subscale_of_five_follows_its_owners_scoring_sheet()
    {
        // KOOS sport and recreation, owner's 2012 scoring sheet (read): 70; with two missing 66.67; with three none. All 0: 100, all 4: 0.
        Assert.Equal(70, Sport.Score([1, 2, 1, 0, 2]).Value!.Value, 10);
        Assert.Equal(66.67, Sport.Score([1, 2, 1, null, null]).Value!.Value, 2);
        Assert.Null(Sport.Score([1, 2, null, null, null]).Value);
        Assert.Equal(100, Sport.Score([0, 0, 0, 0, 0]).Value);
        Assert.Equal(0, Sport.Score([4, 4, 4, 4, 4]).Value);
    }

    [Fact]
    public void A_sum_of_twenty_needs_all_of_them()
    {
        // LEFS: fourteen items at 3 and six at 2 are 54 (read in a summary).
        int?[] answers = [.. Enumerable.Repeat<int?>(3, 14), .. Enumerable.Repeat<int?>(2, 6)];
        Assert.Equal(54, Leg.Score(answers).Value);
        answers[7] = null;
        Assert.Null(Leg.Score(answers).Value);
    }

    [Fact]
    public void Answers_out_of_range_of_the_wrong_number_or_to_a_form_of_totals_are_told_with_what_to_do()
    {
        Assert.Contains("Item 2", Sport.Score([1, 5, 1, 0, 2]).Sentence, StringComparison.Ordinal);
        Assert.Contains("there are 5 items", Sport.Score([1, 2]).Sentence, StringComparison.Ordinal);
        Assert.Contains("type the total", Of(ScoreForm.TotalOnly, 0, 0, 0, 0).Score([1]).Sentence, StringComparison.Ordinal);
    }

    private static QuestionnaireSetUp Of(ScoreForm form, int items, int least, int low, int high) =>
        new() { Form = form, ItemCount = items, LeastAnswered = least, ItemLow = low, ItemHigh = high, Terms = "test" };
}
