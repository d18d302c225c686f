using System.Collections.Immutable;

namespace MomentArm.Drawing;

/// <summary>A value axis with round steps (1, 2, 2.5 or 5 times a power of ten) that holds all values and 0.</summary>
/// <param name="Bottom">Lowest value on the axis.</param>
/// <param name="Top">Highest value on the axis.</param>
/// <param name="Step">From tick to tick.</param>
internal readonly record struct ValueScale(double Bottom, double Top, double Step)
{
    private const int WantedSteps = 5;

    /// <summary>The ticks from the bottom up.</summary>
    internal ImmutableArray<double> Ticks
    {
        get
        {
            var (bottom, step) = (Bottom, Step);
            return [.. Enumerable.Range(0, (int)Math.Round((Top - Bottom) / Step) + 1).Select(i => Math.Round(bottom + i * step, 12))];
        }
    }

    /// <summary>The scale for values between two bounds.</summary>
    internal static ValueScale For(double least, double most)
    {
        least = Math.Min(0, least);
        most = Math.Max(0, most);
        if (most - least < 1e-9)
            most = least + 1;
        var raw = (most - least) / WantedSteps;
        var power = Math.Pow(10, Math.Floor(Math.Log10(raw)));
        var step = power * (raw / power) switch
        {
            <= 1 => 1,
            <= 2 => 2,
            <= 2.5 => 2.5,
            <= 5 => 5,
            _ => 10,
        };
        return new ValueScale(Math.Floor(least / step + 1e-9) * step, Math.Ceiling(most / step - 1e-9) * step, step);
    }
}
