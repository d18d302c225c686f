using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>In which units numbers are typed and shown. What is stored never depends on it.</summary>
public enum UnitChoice
{
    /// <summary>Newtons, centimetres, kilometres, kilograms.</summary>
    Metric,

    /// <summary>Pounds, inches, feet, miles.</summary>
    Us,
}

/// <summary>The units shown to those who work in pounds and inches.</summary>
public static class UsUnits
{
    private static readonly ImmutableDictionary<string, ShownUnit> Instead = new Dictionary<string, ShownUnit>
    {
        ["N"] = new("lb", MeasureUnit.Newtons, StrengthMath.FromPoundForce(1), " lb", 1),
        ["cm"] = new("in", MeasureUnit.Metres, StrengthMath.MetresPerInch, " in", 1),
        ["m"] = new("ft", MeasureUnit.Metres, 12 * StrengthMath.MetresPerInch, " ft", 1),
        ["km"] = new("miles", MeasureUnit.Metres, 1609.344, " miles", 1),
        ["kg"] = new("lb", MeasureUnit.Kilograms, 0.45359237, " lb", 1),
        ["m/s"] = new("mph", MeasureUnit.MetresPerSecond, 0.44704, " mph", 2),
    }.ToImmutableDictionary();

    /// <summary>The unit in which a measure is typed and shown.</summary>
    /// <param name="unit">The metric unit of the measure.</param>
    /// <param name="choice">What the user works in.</param>
    /// <returns>The unit itself, or the one used in its place.</returns>
    public static ShownUnit Shown(ShownUnit unit, UnitChoice choice)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return choice == UnitChoice.Us && Instead.TryGetValue(unit.Word, out var us) ? us : unit;
    }

    /// <summary>A lever arm or girth as it is shown: centimetres, or inches.</summary>
    /// <param name="metres">Length, metres.</param>
    /// <param name="choice">What the user works in.</param>
    /// <returns>Text with unit.</returns>
    public static string Lever(double metres, UnitChoice choice) =>
        choice == UnitChoice.Us ? Say.Number(metres / StrengthMath.MetresPerInch) + " in" : Say.Centimetres(metres);
}
