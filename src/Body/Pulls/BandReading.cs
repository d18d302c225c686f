namespace MomentArm.Body;

/// <summary>One reading of a band: how far it was stretched and how hard a single strand then pulled.</summary>
/// <param name="Elongation">Stretch beyond the rest length over the rest length; 1 = 100 % = twice as long. Above 0, at most 2.5.</param>
/// <param name="ForceN">Pull of one strand, newtons, above 0.</param>
public readonly record struct BandReading(double Elongation, double ForceN)
{
    /// <summary>Standard fall of a hung mass, m/s2: a scale shows kilograms by it.</summary>
    public const double StandardGravity = 9.80665;

    /// <summary>A reading given as stretch: length over rest length.</summary>
    /// <param name="stretch">Length over rest length; 2 = twice as long. Above 1.</param>
    /// <param name="forceN">Pull of one strand, newtons.</param>
    /// <returns>The reading.</returns>
    public static BandReading FromStretch(double stretch, double forceN) => new(stretch - 1, forceN);

    /// <summary>A reading made by hanging a known mass from one strand.</summary>
    /// <param name="massKg">The mass, kilograms.</param>
    /// <param name="restLengthM">Length between the marks without load, metres.</param>
    /// <param name="lengthM">Length between the marks with the mass hanging still, metres.</param>
    /// <returns>The reading.</returns>
    public static BandReading FromHungMass(double massKg, double restLengthM, double lengthM) =>
        new(lengthM / Quantity.Within(restLengthM, ElasticBand.LeastRestLengthM, ElasticBand.MostRestLengthM, "m") - 1, massKg * StandardGravity);
}
