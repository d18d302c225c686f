using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>
/// Which band and how it is put on: F100 and either its rest length or how far it is stretched already at the start, from which
/// the rest length follows. Never inferred from a name or a color.
/// </summary>
public sealed record BandDose
{
    /// <summary>Pull of one strand at 100 % elongation, newtons. Not used when there are readings.</summary>
    public required double F100N { get; init; }

    /// <summary>Pull of one strand at 200 % elongation, newtons; null when not known.</summary>
    public double? F200N { get; init; }

    /// <summary>The person's own readings; empty for none.</summary>
    public ImmutableArray<BandReading> Readings { get; init; } = [];

    /// <summary>Rest length, metres (of a loop: its whole way round); null when the stretch at the start sets it.</summary>
    public double? RestLengthM { get; init; }

    /// <summary>Elongation at the start of the movement, 0.3 = 30 %; used when there is no rest length. Negative leaves slack.</summary>
    public double PreStretch { get; init; }

    /// <summary>Strands side by side, 1 to 8.</summary>
    public int Strands { get; init; } = 1;

    /// <summary>The band, once its length at the start is known.</summary>
    /// <param name="startLengthM">Its length (of a loop: its way round) in the start pose, metres.</param>
    /// <returns>The band.</returns>
    /// <exception cref="ArgumentException">The figures are not those of a band; the message says which and how to mend it.</exception>
    public ElasticBand Made(double startLengthM)
    {
        var rest = RestLengthM ?? startLengthM / (1 + Quantity.Within(PreStretch, -0.9, ElasticBand.MostElongation, "of its length before the start", nameof(PreStretch)));
        if (!Readings.IsEmpty)
            return ElasticBand.FromReadings(Readings, rest, Strands);
        return F200N is { } f200
            ? ElasticBand.FromF100AndF200(F100N, f200, rest, Strands)
            : ElasticBand.FromF100(F100N, rest, Strands);
    }
}
