using System.Globalization;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>How numbers of the exam are written: invariant digits, shown units, no more decimals than the reading deserves.</summary>
public static class Say
{
    /// <summary>A number with at most the given decimals, no trailing zeros, never "-0".</summary>
    /// <param name="value">The number.</param>
    /// <param name="decimals">Most decimals, 0 to 4.</param>
    /// <returns>Text.</returns>
    public static string Number(double value, int decimals = 1)
    {
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0.####", CultureInfo.InvariantCulture);
    }

    /// <summary>A stored value in the shown unit of its measure: "72°", "118 N", "4/10".</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="stored">Value in the stored unit.</param>
    /// <returns>Text with unit.</returns>
    public static string Shown(Measure measure, double stored) => measure.Unit == MeasureUnit.Points
        ? OfScale(Number(stored), measure.HardRange)
        : InShownUnit(measure, stored) + measure.Shown.Suffix;

    /// <summary>A difference between stored values in the shown unit: "12°", "31 N", "2 points".</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="difference">Difference in the stored unit.</param>
    /// <returns>Text with unit.</returns>
    public static string Difference(Measure measure, double difference) => measure.Unit == MeasureUnit.Points
        ? Number(difference, 2) + (Math.Abs(Math.Round(difference, 2)) == 1 ? " point" : " points")
        : InShownUnit(measure, difference) + measure.Shown.Suffix;

    // A scale that does not start at 0 says where it starts: 34 of a scale from 17 is no half.
    private static string OfScale(string number, ValueRange scale) => scale.Low == 0
        ? $"{number}/{Number(scale.High)}"
        : $"{number} ({Number(scale.Low)} to {Number(scale.High)})";

    /// <summary>A stored value as a number of shown units, without the unit; small angles with a decimal.</summary>
    /// <param name="measure">The measure.</param>
    /// <param name="stored">Value in the stored unit.</param>
    /// <returns>Digits.</returns>
    public static string InShownUnit(Measure measure, double stored)
    {
        var shown = stored / measure.Shown.StoredPerShown;
        return Number(shown, measure.Unit == MeasureUnit.Radians && Math.Abs(shown) < 10 ? 1 : measure.Shown.Decimals);
    }

    /// <summary>A length in centimetres.</summary>
    /// <param name="metres">Length, metres.</param>
    /// <returns>Text with unit.</returns>
    public static string Centimetres(double metres) => Number(metres * 100) + " cm";

    /// <summary>A torque.</summary>
    /// <param name="newtonMetres">Torque, N m.</param>
    /// <returns>Text with unit.</returns>
    public static string Torque(double newtonMetres) => Number(newtonMetres, Math.Abs(newtonMetres) < 20 ? 1 : 0) + " N m";

    /// <summary>A fraction as a whole percentage.</summary>
    /// <param name="fraction">1 = 100 %.</param>
    /// <returns>Text with the percent sign.</returns>
    public static string Percent(double fraction) => Number(fraction * 100, 0) + " %";

    /// <summary>The word for a side; empty for none.</summary>
    /// <param name="side">A side.</param>
    /// <returns>"left", "right" or empty text.</returns>
    public static string Side(Side? side) => side switch
    {
        Body.Side.Left => "left",
        Body.Side.Right => "right",
        null => "",
    };

    /// <summary>Degrees from radians, for showing only.</summary>
    /// <param name="radians">Radians.</param>
    /// <returns>Degrees.</returns>
    public static double Degrees(double radians) => radians * (180 / Math.PI);
}
