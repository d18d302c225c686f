namespace MomentArm.Exam.Tests;

public class ErrorMathTests
{
    // Published pairs of SEM and printed MDC; the level that reproduces the print. Sources per row:
    // J Knee Surg doi:10.1055/s-0036-1593877; Neto 2015 doi:10.1123/jsr.2014-0220; Jakobsen 2013; Arabic patient-specific scale;
    // Kennedy 2005 (from memory).
    [Theory]
    [InlineData(2.72, 6.3, 90, 0.05)]
    [InlineData(1.18, 2.72, 90, 0.05)]
    [InlineData(2.6, 7, 95, 0.3)]
    [InlineData(2.9, 8, 95, 0.3)]
    [InlineData(2.2, 6, 95, 0.3)]
    [InlineData(13.0, 36.1, 95, 0.1)]
    [InlineData(0.74, 1.73, 90, 0.02)]
    [InlineData(2.35, 5.5, 90, 0.05)]
    [InlineData(1.07, 2.49, 90, 0.01)]
    public void A_printed_detectable_change_follows_from_its_standard_error(double sem, double printed, int level, double tolerance)
    {
        var computed = level == 95 ? ErrorMath.Mdc95(sem) : ErrorMath.Mdc90(sem);
        Assert.InRange(computed, printed - tolerance, printed + tolerance);
    }

    [Fact]
    public void A_print_that_fits_neither_level_is_seen_as_such()
    {
        // TENDINS-A, medRxiv 2023.10.05.23296581: SEM 6.54, printed 12, which neither level gives.
        Assert.Equal(18.13, ErrorMath.Mdc95(6.54), 0.01);
        Assert.Equal(15.21, ErrorMath.Mdc90(6.54), 0.01);
    }

    [Fact]
    public void Reliable_change_of_the_founding_paper()
    {
        // Jacobson and Truax 1991, J Consult Clin Psychol 59:12-19: SD 7.5, r 0.80, 32.5 to 47.5 (from memory, recomputed).
        Assert.Equal(3.354, ErrorMath.Sem(7.5, 0.80), 0.001);
        Assert.Equal(3.162, ErrorMath.ReliableChangeIndex(32.5, 47.5, 7.5, 0.80), 0.001);
        Assert.Equal(9.297, ErrorMath.Mdc95(ErrorMath.Sem(7.5, 0.80)), 0.001);
    }

    [Fact]
    public void The_required_change_is_the_larger_of_error_and_importance()
    {
        // Foot and ankle sport scale: MDC 12.3, MCID 9, so 12.3 (read).
        Assert.Equal(12.3, ErrorMath.RequiredChange(12.3, 9));
        Assert.Equal(12.3, ErrorMath.RequiredChange(12.3, null));
    }

    [Theory]
    [InlineData(double.NaN, 0.5)]
    [InlineData(-1, 0.5)]
    [InlineData(1, 1.1)]
    [InlineData(1, double.NaN)]
    public void Impossible_spread_or_reliability_is_refused(double sd, double reliability) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ErrorMath.Sem(sd, reliability));

    [Fact]
    public void A_ninety_percent_print_is_scaled_up_to_ninety_five()
    {
        var error = new MeasurementError
        {
            Form = ErrorForm.PrintedMdc, Value = 6.3, Level = 90, SameExaminer = true, Population = "", Source = "",
        };
        // 6.3 x 1.96 / 1.645; the same paper's SEM 2.72 gives 7.54 at 95 % (J Knee Surg doi:10.1055/s-0036-1593877).
        Assert.Equal(7.54, error.Detectable(100, 110), 0.05);
    }

    [Fact]
    public void A_relative_error_is_taken_of_the_mean_of_both_readings()
    {
        var error = new MeasurementError
        {
            Form = ErrorForm.RelativePrintedMdc, Value = 0.336, Level = 95, SameExaminer = true, Population = "", Source = "",
        };
        Assert.Equal(0.336 * 150, error.Detectable(100, 200), 1e-9);
    }
}
