using MomentArm.Web.Pages.People;

namespace MomentArm.Web.People;

public sealed class BodySizeTextTests
{
    // Expected values: 1 inch = 0.0254 m exactly (NIST Special Publication 811, appendix B.8), worked by hand.
    [Theory]
    [InlineData("168", 1.68)]
    [InlineData("168 cm", 1.68)]
    [InlineData("167,5 cm", 1.675)]
    [InlineData("1.68", 1.68)]
    [InlineData("1.68 m", 1.68)]
    [InlineData("1,68 M", 1.68)]
    [InlineData("5 ft 6", 1.6764)]
    [InlineData("5 ft 6 in", 1.6764)]
    [InlineData("5ft6", 1.6764)]
    [InlineData("5'6\"", 1.6764)]
    [InlineData("5’6”", 1.6764)]
    [InlineData("5 feet 6.5 inches", 1.6891)]
    [InlineData("6 ft", 1.8288)]
    [InlineData("66 in", 1.6764)]
    [InlineData(" 66\" ", 1.6764)]
    public void Stature_is_read_as_people_say_it(string typed, double metres)
    {
        var read = BodySizeText.Stature(typed);
        Assert.Null(read.Fault);
        Assert.Equal(metres, read.Value!.Value, 1e-9);
    }

    // 1 pound = 0.45359237 kg exactly (NIST Special Publication 811, appendix B.8); 14 pounds are a stone.
    [Theory]
    [InlineData("64", 64)]
    [InlineData("64.5 kg", 64.5)]
    [InlineData("64,5kg", 64.5)]
    [InlineData("140 lb", 63.5029318)]
    [InlineData("140 lbs.", 63.5029318)]
    [InlineData("140 Pounds", 63.5029318)]
    [InlineData("10 st", 63.5029318)]
    [InlineData("10 st 4", 65.31730128)]
    public void Mass_is_read_as_people_say_it(string typed, double kilograms)
    {
        var read = BodySizeText.Mass(typed);
        Assert.Null(read.Fault);
        Assert.Equal(kilograms, read.Value!.Value, 1e-9);
    }

    [Theory]
    [InlineData("tall")]
    [InlineData("5.6")]
    [InlineData("66")]
    [InlineData("5 ft 13")]
    [InlineData("300 cm")]
    [InlineData("168 kg")]
    [InlineData("0.5 m")]
    [InlineData("-168")]
    [InlineData("9 ft")]
    public void A_stature_that_is_none_is_refused_with_the_way_to_write_it(string typed)
    {
        var read = BodySizeText.Stature(typed);
        Assert.Null(read.Value);
        Assert.Contains("5 ft 6", read.Fault, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("heavy")]
    [InlineData("10 kg")]
    [InlineData("1000 lb")]
    [InlineData("64 m")]
    [InlineData("10 st 15")]
    [InlineData("1e3")]
    public void A_mass_that_is_none_is_refused_with_the_way_to_write_it(string typed)
    {
        var read = BodySizeText.Mass(typed);
        Assert.Null(read.Value);
        Assert.Contains("140 lb", read.Fault, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("  ")]
    public void Nothing_typed_is_nothing_given(string? typed)
    {
        Assert.Equal(default, BodySizeText.Stature(typed));
        Assert.Equal(default, BodySizeText.Mass(typed));
    }

    [Fact]
    public void Sizes_are_shown_in_both_systems()
    {
        Assert.Equal("1.68 m (5 ft 6 in)", BodySizeText.Stature(1.6764));
        Assert.Equal("1.83 m (6 ft 0 in)", BodySizeText.Stature(1.829));
        Assert.Equal("63.5 kg (140 lb)", BodySizeText.Mass(63.5029318));
    }

    [Theory]
    [InlineData("1984", 1984, null)]
    [InlineData("1984-03-25", 1984, "1984-03-25")]
    [InlineData("3/25/1984", 1984, "1984-03-25")]
    [InlineData("25 Mar 1984", 1984, "1984-03-25")]
    [InlineData("March 25, 1984", 1984, "1984-03-25")]
    public void Birth_is_a_year_or_a_day(string typed, int year, string? day)
    {
        var read = BirthText.Read(typed, PeopleClinic.Today);
        Assert.Null(read.Fault);
        Assert.Equal(year, read.Year);
        Assert.Equal(day is null ? null : DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture), read.Date);
    }

    [Theory]
    [InlineData("42")]
    [InlineData("1850")]
    [InlineData("2030")]
    [InlineData("2026-12-01")]
    [InlineData("25/3/1984")]
    [InlineData("spring 1984")]
    public void A_birth_that_cannot_be_is_refused(string typed) =>
        Assert.NotNull(BirthText.Read(typed, PeopleClinic.Today).Fault);
}
