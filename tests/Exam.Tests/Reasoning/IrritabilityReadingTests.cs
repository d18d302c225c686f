namespace MomentArm.Exam.Tests.Reasoning;

/// <summary>Written cases after Kelley 2013 (read in a summary); the flare rule and the step of disability are our design.</summary>
public class IrritabilityReadingTests
{
    [Theory]
    [InlineData(8.0, RestPain.Constant, null, PainInRange.BeforeEnd, Irritability.High)]
    [InlineData(5.0, RestPain.ComesAndGoes, null, PainInRange.AtEnd, Irritability.Moderate)]
    [InlineData(2.0, RestPain.None, 30.0, PainInRange.OnlyWithPressure, Irritability.High)]
    [InlineData(2.0, RestPain.None, 1.0, PainInRange.BeforeEnd, Irritability.Low)]
    public void The_worst_of_three_decides_and_the_range_is_only_told(
        double pain, RestPain rest, double? flare, PainInRange range, Irritability expected)
    {
        var reading = IrritabilityReading.Of(new IrritabilityAnswers(pain, rest, flare, InRange: range));
        Assert.Equal(expected, reading.Grade.Grade);
        Assert.Contains(reading.Grade.Reasons, r => r.EndsWith("told and not deciding", StringComparison.Ordinal));
    }

    [Fact]
    public void Disability_raises_by_one_step_at_most_and_only_offers_to_lower()
    {
        var raised = IrritabilityReading.Of(new IrritabilityAnswers(2, RestPain.None, 1, Irritability.High));
        Assert.Equal(Irritability.Moderate, raised.Grade.Grade);
        Assert.Equal(IrritabilityRule.WindowFor(Irritability.Moderate), raised.Grade.Window);
        var offered = IrritabilityReading.Of(new IrritabilityAnswers(8, RestPain.Constant, null, Irritability.Low));
        Assert.Equal(Irritability.High, offered.Grade.Grade);
        Assert.Equal(Irritability.Moderate, offered.MayLowerTo);
    }

    [Fact]
    public void Nothing_asked_permits_what_high_irritability_permits()
    {
        var reading = IrritabilityReading.Of(new IrritabilityAnswers());
        Assert.Null(reading.Grade.Grade);
        Assert.Contains(reading.Permits, p => p.Contains("up to 40 %", StringComparison.Ordinal));
    }
}
