namespace MomentArm.Exam.Tests;

public class IrritabilityRuleTests
{
    [Theory]
    // Kelley 2013, JOSPT 43(5):A1-31 (read in a summary): first two rows; the flare rule is our design.
    [InlineData(8.0, RestPain.Constant, null, Irritability.High)]
    [InlineData(5.0, RestPain.ComesAndGoes, null, Irritability.Moderate)]
    [InlineData(2.0, RestPain.None, 30.0, Irritability.High)]
    [InlineData(3.0, RestPain.None, 1.0, Irritability.Low)]
    [InlineData(6.5, RestPain.None, 1.0, Irritability.Moderate)]
    [InlineData(2.0, RestPain.None, 24.0, Irritability.Moderate)]
    public void The_worst_of_pain_rest_pain_and_flare(double pain, RestPain rest, double? flare, Irritability expected) =>
        Assert.Equal(expected, IrritabilityRule.Grade(pain, rest, flare).Grade);

    [Fact]
    public void Nothing_asked_gives_no_grade_and_the_careful_window()
    {
        var grade = IrritabilityRule.Grade(null, null, null);
        Assert.Null(grade.Grade);
        Assert.Equal(0.40, grade.Window.High);
    }

    [Fact]
    public void What_was_not_asked_is_said() =>
        Assert.Equal(["worst pain 2/10: low", "not asked: rest pain, flare"], IrritabilityRule.Grade(2, null, null).Reasons);

    [Fact]
    public void Windows_meet_without_gap()
    {
        Assert.Equal(IrritabilityRule.WindowFor(Irritability.High).High, IrritabilityRule.WindowFor(Irritability.Moderate).Low);
        Assert.Equal(IrritabilityRule.WindowFor(Irritability.Moderate).High, IrritabilityRule.WindowFor(Irritability.Low).Low);
    }

    [Theory]
    [InlineData(11.0, null)]
    [InlineData(double.NaN, null)]
    [InlineData(null, -1.0)]
    public void Impossible_answers_are_refused(double? pain, double? flare) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => IrritabilityRule.Grade(pain, null, flare));
}
