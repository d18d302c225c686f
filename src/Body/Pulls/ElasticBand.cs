using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>
/// An elastic band, strip or tube: how hard it pulls at a length. Named by F100, the pull of one strand at 100 % elongation
/// (twice its rest length), and its rest length. The pull depends on the elongation and the cross-section, not on the length:
/// half the length is stiffer in newtons per metre but pulls the same at the same elongation. See docs/models/body.md.
/// </summary>
public sealed class ElasticBand
{
    /// <summary>Elongation above which the band is warned about.</summary>
    public const double WarnElongation = 2.0;

    /// <summary>Elongation above which the band is refused (usual limit of handbooks, read second-hand).</summary>
    public const double MostElongation = 2.5;

    /// <summary>Least usable rest length, metres.</summary>
    public const double LeastRestLengthM = 0.02;

    /// <summary>Largest usable rest length, metres.</summary>
    public const double MostRestLengthM = 10;

    /// <summary>Largest number of strands side by side.</summary>
    public const int MostStrands = 8;

    /// <summary>What wear does, in words for the screen: loss of force over 1000 to 3000 cycles to 100 % (read in an abstract).</summary>
    public const string WearNote =
        "A band that was stretched a thousand times or more pulls about 10 to 15 % less than when new; measure it again after 6 to 8 weeks and replace it when cracked.";

    /// <summary>Share of its force that a worn band keeps, lower end.</summary>
    public const double WornLow = 0.85;

    /// <summary>Share of its force that a worn band keeps, upper end.</summary>
    public const double WornHigh = 0.90;

    // Shape of one curve for all grades, fitted to seven tables of 25 to 250 %; the pair is scaled to give F100 at 100 % exactly.
    private const double ShapeA = 0.5015;
    private const double ShapeB = 0.1387;
    private const double ShapeAt100 = 1.75 * ShapeA + 0.875 * ShapeB;

    // A measured table carries its own end; rounding of a length just at an end is no reason to refuse.
    private const double EndSlack = 1e-9;

    private readonly BandLaw law;

    private ElasticBand(BandLaw law, double restLengthM, int strands)
    {
        RestLengthM = Quantity.Within(restLengthM, LeastRestLengthM, MostRestLengthM, "m");
        if (strands is < 1 or > MostStrands)
            throw new ArgumentOutOfRangeException(nameof(strands), FormattableString.Invariant($"{strands} strands are not usable: give a number from 1 to {MostStrands}."));
        Strands = strands;
        this.law = law;
    }

    /// <summary>Length without pull, metres; for a loop its whole way round.</summary>
    public double RestLengthM { get; }

    /// <summary>Strands side by side; each pulls the same.</summary>
    public int Strands { get; }

    /// <summary>The largest elongation for which there is a force: 2.5, or the end of the person's own table.</summary>
    public double LargestElongation => law.Most;

    /// <summary>A band of which only F100 is known: two-parameter rubber with the shape common to all grades.</summary>
    /// <param name="f100N">Pull of one strand at 100 % elongation, 0.1 to 2000 N.</param>
    /// <param name="restLengthM">Rest length, 0.02 to 10 m.</param>
    /// <param name="strands">Strands side by side, 1 to 8.</param>
    /// <returns>The band; single grades differ from the common shape by up to about 8 %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is NaN, zero, negative or out of range.</exception>
    public static ElasticBand FromF100(double f100N, double restLengthM, int strands = 1)
    {
        var scale = Pull(f100N, nameof(f100N)) / ShapeAt100;
        return new ElasticBand(new RubberLaw(scale * ShapeA, scale * ShapeB), restLengthM, strands);
    }

    /// <summary>A band of which the pulls at 100 % and 200 % are known.</summary>
    /// <param name="f100N">Pull of one strand at 100 % elongation, newtons.</param>
    /// <param name="f200N">Pull of one strand at 200 % elongation, newtons; larger.</param>
    /// <param name="restLengthM">Rest length, 0.02 to 10 m.</param>
    /// <param name="strands">Strands side by side, 1 to 8.</param>
    /// <returns>The band.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is NaN, zero, negative or out of range.</exception>
    /// <exception cref="ArgumentException">The two pulls are not those of a band that pulls harder the longer it is.</exception>
    public static ElasticBand FromF100AndF200(double f100N, double f200N, double restLengthM, int strands = 1) =>
        FromTwoReadings(new BandReading(1, f100N), new BandReading(2, f200N), restLengthM, strands);

    /// <summary>A band measured at two elongations, best near 50 % and 150 %, for example with two hung masses.</summary>
    /// <param name="first">The reading at the smaller elongation.</param>
    /// <param name="second">The reading at the larger one.</param>
    /// <param name="restLengthM">Rest length, 0.02 to 10 m.</param>
    /// <param name="strands">Strands side by side, 1 to 8.</param>
    /// <returns>The band: two-parameter rubber through both readings.</returns>
    /// <exception cref="ArgumentException">The readings do not rise, or no rubber rises through both up to 250 %.</exception>
    public static ElasticBand FromTwoReadings(BandReading first, BandReading second, double restLengthM, int strands = 1)
    {
        CheckRising([first, second]);
        var law = RubberLaw.Through(first, second) ?? throw new ArgumentException(
            FormattableString.Invariant(
                $"No band pulls {first.ForceN:0.0} N at {first.Elongation * 100:0} % and {second.ForceN:0.0} N at {second.Elongation * 100:0} % and harder the longer it is: measure both again."),
            nameof(second));
        return new ElasticBand(law, restLengthM, strands);
    }

    /// <summary>A band with a table of its own readings, joined by a curve that rises with them from no pull at rest.</summary>
    /// <param name="readings">Two or more readings, rising in elongation and in pull.</param>
    /// <param name="restLengthM">Rest length, 0.02 to 10 m.</param>
    /// <param name="strands">Strands side by side, 1 to 8.</param>
    /// <returns>The band; beyond its last reading it is refused.</returns>
    /// <exception cref="ArgumentException">Fewer than two readings, or they do not rise.</exception>
    public static ElasticBand FromReadings(ImmutableArray<BandReading> readings, double restLengthM, int strands = 1)
    {
        if (readings.IsDefault || readings.Length < 2)
            throw new ArgumentException("A measured band needs at least two readings, best one near 50 % and one near 150 %.", nameof(readings));
        CheckRising(readings.AsSpan());
        return new ElasticBand(new MeasuredLaw(readings), restLengthM, strands);
    }

    /// <summary>What the band does at a length.</summary>
    /// <param name="lengthM">Length from end to end (for a loop: its whole way round), metres, 0 or more.</param>
    /// <returns>Elongation, force, energy; no force when it is stretched too far.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is NaN or negative.</exception>
    public BandTension At(double lengthM) => AtElongation(Quantity.Within(lengthM, 0, 1000, "m") / RestLengthM - 1);

    /// <summary>What the band does at an elongation.</summary>
    /// <param name="elongation">Stretch beyond the rest length over the rest length; 1 = 100 %. Negative = slack.</param>
    /// <returns>Elongation, force, energy; no force when it is stretched too far.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The elongation is NaN.</exception>
    public BandTension AtElongation(double elongation)
    {
        if (double.IsNaN(elongation))
            throw new ArgumentOutOfRangeException(nameof(elongation), "The elongation is not a number: give stretch over rest length, 1 for 100 %.");
        if (elongation <= 0)
            return new BandTension(elongation, 0, 0, BandStretch.Slack);
        if (elongation > law.Most + EndSlack)
            return new BandTension(elongation, double.NaN, double.NaN, BandStretch.TooLong);
        var inside = Math.Min(elongation, law.Most);
        return new BandTension(
            elongation, Strands * law.Force(inside), Strands * RestLengthM * law.EnergyPerMetre(inside),
            elongation > WarnElongation + EndSlack ? BandStretch.Long : BandStretch.Usual);
    }

    /// <summary>The elongation at which all strands together pull a force.</summary>
    /// <param name="forceN">The force, newtons, 0 or more.</param>
    /// <returns>The elongation; null when the band does not pull so hard at its largest elongation.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The force is NaN or negative.</exception>
    public double? ElongationFor(double forceN)
    {
        Quantity.Within(forceN, 0, 20000, "N");
        if (Strands * law.Force(law.Most) < forceN)
            return null;
        var (low, high) = (0.0, law.Most);
        for (var step = 0; step < 60; step++)
        {
            var middle = (low + high) / 2;
            if (Strands * law.Force(middle) < forceN)
                low = middle;
            else
                high = middle;
        }

        return high;
    }

    /// <summary>The rest length to cut or grip so that a band of this kind pulls a force at a length.</summary>
    /// <param name="forceN">The wished force of all strands together, newtons.</param>
    /// <param name="lengthM">The length at which it is wished, metres.</param>
    /// <returns>The rest length in metres; null when the band does not pull so hard at its largest elongation.</returns>
    public double? RestLengthFor(double forceN, double lengthM) =>
        ElongationFor(forceN) is { } elongation ? Quantity.Within(lengthM, LeastRestLengthM, MostRestLengthM, "m") / (1 + elongation) : null;

    private static double Pull(double value, string name) => Quantity.Within(value, 0.1, 2000, "N", name);

    private static void CheckRising(ReadOnlySpan<BandReading> readings)
    {
        var before = default(BandReading);
        foreach (var reading in readings)
        {
            Pull(reading.ForceN, nameof(readings));
            if (!(reading.Elongation > 0 && reading.Elongation <= MostElongation))
            {
                throw new ArgumentOutOfRangeException(
                    nameof(readings), FormattableString.Invariant($"A reading at {reading.Elongation * 100:0} % is not usable: stretch the band by more than 0 and at most 250 %."));
            }

            if (!(reading.Elongation > before.Elongation && reading.ForceN > before.ForceN))
            {
                throw new ArgumentException(
                    FormattableString.Invariant(
                        $"The reading {reading.ForceN:0.0} N at {reading.Elongation * 100:0} % does not rise above {before.ForceN:0.0} N at {before.Elongation * 100:0} %: give readings in rising order, each with more pull."),
                    nameof(readings));
            }

            before = reading;
        }
    }
}
