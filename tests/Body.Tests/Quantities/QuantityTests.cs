namespace MomentArm.Body.Tests.Quantities;

/// <summary>Quantities refuse what cannot be, and convert as defined.</summary>
public class QuantityTests
{
    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    [InlineData(1e9)]
    [InlineData(-1e9)]
    public void No_quantity_takes_a_number_that_cannot_be(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Angle.FromRadians(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => Angle.FromDegrees(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => Force.FromNewtons(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => Force.FromKilogramsForce(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => Force.FromPoundsForce(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => Length.FromMetres(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => Mass.FromKilograms(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => Torque.FromNewtonMetres(value));
    }

    [Fact]
    public void The_refusal_names_value_limits_and_unit()
    {
        void Says(string message, Func<object> make) =>
            Assert.Contains(message, Assert.Throws<ArgumentOutOfRangeException>(make).Message, StringComparison.Ordinal);
        Says("-1 kg is not usable: give a number from 0 to 1000 kg.", () => Mass.FromKilograms(-1));
        Says("20000.5 N is not usable: give a number from -20000 to 20000 N.", () => Force.FromNewtons(20000.5));
        Says("NaN N m is not usable: give a number from -5000 to 5000 N m.", () => Torque.FromNewtonMetres(double.NaN));
        Says("11 rad is not usable: give a number from -10 to 10 rad.", () => Angle.FromRadians(11));
        Says("101 m is not usable: give a number from -100 to 100 m.", () => Length.FromMetres(101));
    }

    [Fact]
    public void Limits_themselves_are_taken()
    {
        Assert.Equal(1000, Mass.FromKilograms(1000).Kilograms);
        Assert.Equal(0, Mass.FromKilograms(0).Kilograms);
        Assert.Equal(-20000, Force.FromNewtons(-20000).Newtons);
    }

    [Fact]
    public void Forces_convert_by_the_definitions_of_their_units()
    {
        // 1 kgf = 9.80665 N exactly; 1 lbf = 0.45359237 kg x 9.80665 m/s2 exactly. Worked example: 26.5 kgf = 259.88 N.
        Assert.Equal(259.88, Force.FromKilogramsForce(26.5).Newtons, Tolerances.TwoDecimals);
        Assert.Equal(0.45359237 * 9.80665 * 40, Force.FromPoundsForce(40).Newtons, 1e-10);
    }

    [Fact]
    public void Degrees_and_radians_agree()
    {
        Assert.Equal(Math.PI / 2, Angle.FromDegrees(90).Radians, Tolerances.Position);
        Assert.Equal(-37, Angle.FromRadians(Angle.FromDegrees(-37).Radians).Degrees, Tolerances.Position * 100);
    }

    [Fact]
    public void Quantities_order_by_size()
    {
        var (small, large) = (Force.FromNewtons(-3), Force.FromNewtons(2));
        Assert.True(small < large && large > small && small <= large && large >= small && small.CompareTo(large) < 0);
        Assert.False(small >= large);
    }

    [Theory]
    [InlineData(0.5, 70, "stature")]
    [InlineData(2.6, 70, "stature")]
    [InlineData(1.7, 5, "body mass")]
    [InlineData(1.7, 400, "body mass")]
    public void A_body_no_person_has_is_refused_by_name(double stature, double mass, string name)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => TestBody.Content.Build(new Physique(Sex.Female, 40, stature, mass)));
        Assert.Equal(name, error.ParamName);
    }
}
