using System.Globalization;

namespace MomentArm.Body.Tests;

/// <summary>
/// How close numbers must come. All are our choice but those of printed figures, which are half of the last printed digit.
/// MOMENTARM_TOLERANCE_SCALE in the environment widens or tightens them together; 0 lets every check print its true residual.
/// </summary>
internal static class Tolerances
{
    /// <summary>Two routes to the same moment, N m: rounding only.</summary>
    internal static double TwoRoutes => 1e-9 * Scale;

    /// <summary>A moment against a central difference of energy, N m.</summary>
    internal static double Gradient => 1e-6 * Scale;

    /// <summary>Lengths and positions that should be equal but for rounding, metres.</summary>
    internal static double Position => 1e-12 * Scale;

    /// <summary>Balance of forces (N) and of their moments (N m).</summary>
    internal static double Balance => 1e-6 * Scale;

    /// <summary>The rounding of a figure printed with two decimals.</summary>
    internal static double TwoDecimals => 0.005 * Scale;

    /// <summary>A contact of a settled body, metres: the weak pull toward the author's orientation is felt below this.</summary>
    internal static double Contact => 2e-4 * Scale;

    /// <summary>Rounding of one product or quotient, relative.</summary>
    internal static double Relative => 1e-12 * Scale;

    /// <summary>Lengths (m), axes, and torques over body weight times one meter, against a general physics engine: rounding of two programs.</summary>
    internal static double OutsideEngine => 1e-9 * Scale;

    /// <summary>Knee arms against lengths of the same engine differenced between two poses, metres.</summary>
    internal static double OutsideEngineKnee => 1e-6 * Scale;

    private static double Scale { get; } =
        double.TryParse(Environment.GetEnvironmentVariable("MOMENTARM_TOLERANCE_SCALE"), NumberStyles.Float, CultureInfo.InvariantCulture, out var scale)
        && scale >= 0
            ? scale
            : 1;
}
