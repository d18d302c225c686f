using CsCheck;

namespace MomentArm.Exam.Tests;

public class StrengthMathTests
{
    [Fact]
    public void Torque_of_the_worked_example()
    {
        // Elementary mechanics: 70 kg, 1.70 m, 180 N with the pad 0.40 m from the hip.
        var torque = StrengthMath.Torque(180, 0.40);
        Assert.Equal(72.0, torque, 1e-9);
        Assert.Equal(1.0286, torque / 70, 0.0001);
        Assert.Equal(6.170, StrengthMath.PercentWeightHeight(torque, 70, 1.70), 0.001);
        Assert.Equal(26.22, 100 * 180 / (70 * StrengthMath.Gravity), 0.01);
    }

    [Fact]
    public void Other_units_of_force()
    {
        Assert.Equal(259.88, StrengthMath.FromKilogramForce(26.5), 0.01);
        Assert.Equal(98.16, StrengthMath.FromPoundForce(216.4) / StrengthMath.Gravity, 0.01);
    }

    [Fact]
    public void Half_the_force_at_twice_the_lever_is_the_same_torque() =>
        Assert.Equal(StrengthMath.Torque(180, 0.40), StrengthMath.Torque(90, 0.80), 1e-9);

    [Theory]
    // Fredericson 2000, Clin J Sport Med 10:169-175: women 7.82 against 9.82, men 6.86 against 8.62 % of weight x height.
    [InlineData(7.82, 9.82, 79.6, 20.4)]
    [InlineData(6.86, 8.62, 79.6, 20.4)]
    // The same against healthy runners: 10.19 (women) and 9.73 (men).
    [InlineData(7.82, 10.19, 76.7, 23.3)]
    [InlineData(6.86, 9.73, 70.5, 29.5)]
    public void Side_difference_of_runners_with_outer_knee_pain(double affected, double other, double index, double deficit)
    {
        var computed = StrengthMath.SymmetryIndex(affected, other, Direction.HigherBetter)!.Value;
        Assert.Equal(index, computed, 0.1);
        Assert.Equal(deficit, StrengthMath.Asymmetry(computed), 0.1);
    }

    [Theory]
    // Fredericson 2000: gains of 34.9 % (women) and 51.4 % (men) end above the other leg and the healthy mean.
    [InlineData(7.82, 0.349, 10.55, 9.82, 10.19)]
    [InlineData(6.86, 0.514, 10.39, 8.62, 9.73)]
    public void Gain_after_six_weeks(double before, double gain, double after, double otherLeg, double healthy)
    {
        var end = before * (1 + gain);
        Assert.Equal(after, end, 0.01);
        Assert.True(end > otherLeg && end > healthy);
        Assert.True(StrengthMath.SymmetryIndex(end, otherLeg, Direction.HigherBetter) > 100);
    }

    [Fact]
    public void From_percent_of_weight_and_height_back_to_torque()
    {
        // Unit conversion: 7.82 % of weight x height at 60 kg and 1.65 m is 75.9 N m, 1.27 N m/kg.
        var torque = StrengthMath.FromPercentWeightHeight(7.82, 60, 1.65);
        Assert.Equal(75.9, torque, 0.1);
        Assert.Equal(1.27, torque / 60, 0.005);
    }

    [Fact]
    public void Symmetry_of_distance_and_of_time()
    {
        // Higher better: 92 of 110 cm. Lower better: 2.40 s involved, 2.10 s other.
        Assert.Equal(83.6, StrengthMath.SymmetryIndex(92, 110, Direction.HigherBetter)!.Value, 0.1);
        Assert.Equal(87.5, StrengthMath.SymmetryIndex(2.40, 2.10, Direction.LowerBetter)!.Value, 1e-9);
        Assert.Equal(StrengthMath.Asymmetry(104), StrengthMath.Asymmetry(96));
    }

    [Theory]
    [InlineData(0, 100)]
    [InlineData(100, 0)]
    [InlineData(-5, 100)]
    [InlineData(double.NaN, 100)]
    public void No_index_without_two_values_above_zero(double affected, double other) =>
        Assert.Null(StrengthMath.SymmetryIndex(affected, other, Direction.HigherBetter));

    [Fact]
    public void Swapping_sides_inverts_the_index() =>
        Gen.Double[0.1, 2000].Select(Gen.Double[0.1, 2000], Gen.Bool).Sample((a, b, lower) =>
        {
            var direction = lower ? Direction.LowerBetter : Direction.HigherBetter;
            var there = StrengthMath.SymmetryIndex(a, b, direction)!.Value;
            var back = StrengthMath.SymmetryIndex(b, a, direction)!.Value;
            Assert.Equal(1, there * back / 10_000, 1e-9);
        });
}
