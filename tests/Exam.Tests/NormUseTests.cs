using MomentArm.Body;

namespace MomentArm.Exam.Tests;

/// <summary>Bands, limits and equations instead of means. The measure is the tests' own; the figures are of their sources.</summary>
public sealed class NormUseTests
{
    private static readonly Measure Stands = Shipped.Measure("pain-now") with
    {
        Id = "stands", Name = "Stands", Kind = MeasureKind.Performance, Shown = ShownUnit.Of("count")!,
        Direction = Direction.HigherBetter, HardRange = new ValueRange(0, 60), SoftRange = new ValueRange(1, 40), Error = null, Mcid = null,
    };

    // Rikli RE, Jones CJ 1999 J Aging Phys Act 7:162-181, middle half; the lower end is the limit of the public-domain CDC STEADI form.
    private static Norm Band(Sex sex, double low, double high) => new()
    {
        MeasureId = "stands", Sex = sex, AgeFrom = 65, AgeTo = 69, Quarter = low, ThreeQuarters = high, Limit = low,
        Unit = NormUnit.Measure, Population = "community-dwelling people", Method = "43 cm chair, arms crossed", Use = NormUse.Grade,
        Source = "test", Verified = true,
    };

    [Theory]
    [InlineData(Sex.Male, 12, 18, 11, true)]
    [InlineData(Sex.Male, 12, 18, 12, false)]
    [InlineData(Sex.Female, 11, 16, 11, false)]
    public void A_count_under_the_published_limit_is_flagged_and_the_limit_itself_is_not(Sex sex, double low, double high, double stands, bool flagged)
    {
        var found = Count(stands, new Physique(sex, 66), [Band(sex, low, high)]);
        Assert.Equal(flagged, Assert.Single(found.Norms).Low);
        Assert.Null(found.Norms[0].ZScore);
        var text = found.Statements.First(s => s.Topic == StatementTopic.Norm).Text;
        Assert.Contains($"a middle half of {low} to {high}", text, StringComparison.Ordinal);
        Assert.Contains(flagged ? "On the worse side" : "Not on the worse side", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unverified_limit_is_shown_without_grading_and_goes_when_switched_off()
    {
        var row = Band(Sex.Male, 12, 18) with { Verified = false };
        Assert.Null(Assert.Single(Count(5, new Physique(Sex.Male, 66), [row]).Norms).Low);
        Assert.Empty(Count(5, new Physique(Sex.Male, 66), [row], showUnverified: false).Norms);
    }

    [Fact]
    public void At_97_without_a_row_for_that_age_it_is_said_that_no_norm_fits()
    {
        var found = Count(5, new Physique(Sex.Male, 97), [Band(Sex.Male, 12, 18)]);
        Assert.Empty(found.Norms);
        Assert.Contains("No published norm fits", found.Statements.First(s => s.Topic == StatementTopic.Norm).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Sex.Male, 178, 80, 646.7, 493.7)]
    [InlineData(Sex.Female, 165, 65, 577.3, 438.3)]
    public void Six_minutes_of_walking_are_predicted_as_worked_by_hand(Sex sex, double cm, double kg, double predicted, double limit)
    {
        // Enright PL, Sherrill DL 1998 Am J Respir Crit Care Med 158:1384-1387, from memory: so it never grades.
        var equation = sex == Sex.Male
            ? Walk(sex, -309, 7.57, -5.02, -1.76, 153)
            : Walk(sex, 667, 2.11, -5.78, -2.29, 139);
        var row = equation.For(new Physique(sex, 50, cm / 100, kg))!;
        Assert.Equal(predicted, row.Mean!.Value, 0.05);
        Assert.Equal(limit, row.Limit!.Value, 0.05);
        Assert.Equal(NormUse.Beside, row.Use);
        Assert.Null(equation.For(new Physique(sex, 50, null, kg)));
        Assert.Null(equation.For(new Physique(sex, 97, cm / 100, kg)));
        Assert.Null(equation.For(new Physique(sex == Sex.Male ? Sex.Female : Sex.Male, 50, cm / 100, kg)));
    }

    private static Prediction Walk(Sex sex, double constant, double perCm, double perYear, double perKg, double below) => new()
    {
        MeasureId = "stands", Sex = sex, AgeFrom = 40, AgeTo = 80, Constant = constant, PerCentimetre = perCm, PerYear = perYear,
        PerKilogram = perKg, LimitBelow = below, Population = "healthy", Method = "30 m corridor", Source = "test", Verified = false,
    };

    private static Interpretation Count(double value, Physique person, System.Collections.Immutable.ImmutableArray<Norm> norms, bool showUnverified = true) =>
        Interpreter.Interpret(new InterpretationInput
        {
            Measure = Stands,
            Now = [new Measurement { MeasureId = "stands", Trials = [value] }],
            Person = person,
            Norms = norms,
            ShowUnverified = showUnverified,
        });
}
