using System.Runtime.CompilerServices;

namespace MomentArm.Body;

/// <summary>The check that every quantity makes when it is built.</summary>
internal static class Quantity
{
    /// <summary>Returns the value if it is a finite number between the limits, both included.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is NaN, infinite or outside; the message names value, limits and unit.</exception>
    internal static double Within(
        double value, double least, double most, string unit, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (double.IsFinite(value) && value >= least && value <= most)
            return value;
        throw new ArgumentOutOfRangeException(
            name, FormattableString.Invariant($"{value} {unit} is not usable: give a number from {least} to {most} {unit}."));
    }
}
