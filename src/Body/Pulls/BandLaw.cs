namespace MomentArm.Body;

/// <summary>Pull of one strand over its elongation, whatever its length at rest.</summary>
internal abstract class BandLaw
{
    /// <summary>The largest elongation for which there is a force.</summary>
    internal abstract double Most { get; }

    /// <summary>Newtons at an elongation from 0 to <see cref="Most"/>.</summary>
    internal abstract double Force(double elongation);

    /// <summary>Joules for each metre at rest, at an elongation from 0 to <see cref="Most"/>.</summary>
    internal abstract double EnergyPerMetre(double elongation);
}

/// <summary>F = A (s - 1/s^2) + B (1 - 1/s^3) with stretch s = 1 + elongation (Mooney 1940, Rivlin 1948); B = 0 is the one-parameter rubber.</summary>
internal sealed class RubberLaw(double a, double b) : BandLaw
{
    internal override double Most => ElasticBand.MostElongation;

    internal override double Force(double elongation)
    {
        var s = 1 + elongation;
        return a * (s - 1 / (s * s)) + b * (1 - 1 / (s * s * s));
    }

    internal override double EnergyPerMetre(double elongation)
    {
        var s = 1 + elongation;
        return a * (s * s / 2 + 1 / s - 1.5) + b * (s + 1 / (2 * s * s) - 1.5);
    }

    /// <summary>The law through two readings; null when it would not rise all the way to the largest elongation.</summary>
    internal static RubberLaw? Through(BandReading first, BandReading second)
    {
        var (a1, b1) = Parts(first.Elongation);
        var (a2, b2) = Parts(second.Elongation);
        var determinant = a1 * b2 - a2 * b1;
        var a = (first.ForceN * b2 - second.ForceN * b1) / determinant;
        var b = (a1 * second.ForceN - a2 * first.ForceN) / determinant;

        // The slope times s^4 is A (s^4 + 2 s) + 3 B, which only rises or only falls with s: its ends decide.
        var s = 1 + ElasticBand.MostElongation;
        return a + b > 0 && a * (s * s * s * s + 2 * s) + 3 * b > 0 ? new RubberLaw(a, b) : null;
    }

    private static (double A, double B) Parts(double elongation)
    {
        var s = 1 + elongation;
        return (s - 1 / (s * s), 1 - 1 / (s * s * s));
    }
}

/// <summary>The person's own readings, joined by a curve that rises with them from no pull at rest.</summary>
internal sealed class MeasuredLaw : BandLaw
{
    private readonly MonotoneCubic curve;

    internal MeasuredLaw(IReadOnlyList<BandReading> readings)
    {
        curve = new MonotoneCubic([0, .. readings.Select(r => r.Elongation)], [0, .. readings.Select(r => r.ForceN)]);
        Most = readings[^1].Elongation;
    }

    internal override double Most { get; }

    internal override double Force(double elongation) => curve.At(elongation);

    internal override double EnergyPerMetre(double elongation) => curve.AreaTo(elongation);
}
