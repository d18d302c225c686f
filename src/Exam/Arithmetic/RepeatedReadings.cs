using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>Who measures again, and therefore which intraclass correlation answers the question.</summary>
public enum IccForm
{
    /// <summary>Each person by other examiners: one-way.</summary>
    OneWay,

    /// <summary>Everyone by the same examiners, who stand for all examiners: two-way, absolute agreement.</summary>
    Agreement,

    /// <summary>Everyone by the same examiners, who alone matter: two-way, consistency.</summary>
    Consistency,
}

/// <summary>An estimate with its 95 % interval.</summary>
/// <param name="Value">The estimate.</param>
/// <param name="Low">Lower end.</param>
/// <param name="High">Upper end.</param>
public sealed record Estimate(double Value, double Low, double High);

/// <summary>
/// Readings of n people, k readings each, in any unit: mean squares, intraclass correlations with intervals, and the
/// standard error of measurement. Shrout and Fleiss 1979; intervals after McGraw and Wong 1996.
/// </summary>
public sealed class RepeatedReadings
{
    private readonly int people;
    private readonly int times;

    private RepeatedReadings(int people, int times)
    {
        this.people = people;
        this.times = times;
    }

    /// <summary>People.</summary>
    public int People => people;

    /// <summary>Readings of each.</summary>
    public int Times => times;

    /// <summary>Mean of all readings.</summary>
    public double Mean { get; private init; }

    /// <summary>Mean square between people.</summary>
    public double BetweenPeople { get; private init; }

    /// <summary>Mean square within people.</summary>
    public double WithinPeople { get; private init; }

    /// <summary>Mean square between examiners or occasions.</summary>
    public double BetweenTimes { get; private init; }

    /// <summary>Mean square of what is left.</summary>
    public double Residual { get; private init; }

    /// <summary>Standard error of measurement when only the same examiner matters: root of the residual mean square.</summary>
    public double SemConsistency => Math.Sqrt(Residual);

    /// <summary>Standard error of measurement when another examiner or day may follow: the offset between them counts too.</summary>
    public double SemAgreement => Math.Sqrt(Math.Max(0, (BetweenTimes - Residual) / people) + Residual);

    /// <summary>Standard deviation within a person.</summary>
    public double WithinSd => Math.Sqrt(WithinPeople);

    /// <summary>The 95 % interval of <see cref="WithinSd"/>, by chi-square.</summary>
    public Estimate WithinSdInterval
    {
        get
        {
            double df = people * (times - 1);
            return new Estimate(
                WithinSd,
                Math.Sqrt(WithinPeople * df / Distributions.ChiSquareQuantile(0.975, df)),
                Math.Sqrt(WithinPeople * df / Distributions.ChiSquareQuantile(0.025, df)));
        }
    }

    /// <summary>Takes a table of readings.</summary>
    /// <param name="table">One row a person, all of the same length; at least 2 people with at least 2 readings.</param>
    /// <returns>What the table says.</returns>
    /// <exception cref="ArgumentException">Too few people or readings, rows of unlike length, or a value that is no number.</exception>
    public static RepeatedReadings Of(ImmutableArray<ImmutableArray<double>> table)
    {
        if (table.IsDefault || table.Length < 2 || table[0].Length < 2)
            throw new ArgumentException("Give at least two people with at least two readings each.", nameof(table));
        var k = table[0].Length;
        if (table.Any(row => row.Length != k || !row.All(double.IsFinite)))
            throw new ArgumentException("Give every person the same number of readings, each a finite number.", nameof(table));
        var n = table.Length;
        var mean = table.Average(row => row.Average());
        var total = table.Sum(row => row.Sum(v => Squared(v - mean)));
        var between = k * table.Sum(row => Squared(row.Average() - mean));
        var columns = n * Enumerable.Range(0, k).Sum(j => Squared(table.Average(row => row[j]) - mean));
        return new RepeatedReadings(n, k)
        {
            Mean = mean,
            BetweenPeople = between / (n - 1),
            WithinPeople = (total - between) / (n * (k - 1)),
            BetweenTimes = columns / (k - 1),
            Residual = Math.Max(0, total - between - columns) / ((n - 1) * (k - 1)),
        };
    }

    /// <summary>Intraclass correlation with its 95 % interval.</summary>
    /// <param name="form">Who measures again.</param>
    /// <param name="mean">True for the mean of all readings of a person, false for one reading.</param>
    /// <returns>The estimate; 1 with no interval width when all readings of each person agree, null when people do not differ at all.</returns>
    public Estimate? Icc(IccForm form, bool mean = false)
    {
        if (!(BetweenPeople > 0))
            return null;
        var single = form switch
        {
            IccForm.OneWay => ByRatio(BetweenPeople / WithinPeople, people * (times - 1)),
            IccForm.Consistency => ByRatio(BetweenPeople / Residual, (people - 1) * (times - 1)),
            IccForm.Agreement => Agreement(),
        };
        return mean ? new Estimate(Stepped(single.Value), Stepped(single.Low), Stepped(single.High)) : single;
    }

    private static double Squared(double value) => value * value;

    // Reliability of the mean of k from that of one reading (Spearman and Brown).
    private double Stepped(double single) => times * single / (1 + ((times - 1) * single));

    private Estimate ByRatio(double ratio, double below)
    {
        if (double.IsInfinity(ratio))
            return new Estimate(1, 1, 1);
        double above = people - 1;
        return new Estimate(
            FromRatio(ratio),
            FromRatio(ratio / Distributions.FisherQuantile(0.975, above, below)),
            FromRatio(ratio * Distributions.FisherQuantile(0.975, below, above)));
    }

    private double FromRatio(double ratio) => (ratio - 1) / (ratio + times - 1);

    // The degrees of freedom of the agreement form are those of a sum of mean squares (Satterthwaite), as McGraw and Wong give them.
    private Estimate Agreement()
    {
        double n = people, k = times;
        var value = (BetweenPeople - Residual)
            / (BetweenPeople + ((k - 1) * Residual) + (k * (BetweenTimes - Residual) / n));
        if (!(Residual > 0 || BetweenTimes > 0))
            return new Estimate(1, 1, 1);
        var a = k * value / (n * (1 - value));
        var b = 1 + (k * value * (n - 1) / (n * (1 - value)));
        var v = Squared((a * BetweenTimes) + (b * Residual))
            / ((Squared(a * BetweenTimes) / (k - 1)) + (Squared(b * Residual) / ((n - 1) * (k - 1))));
        var lower = Distributions.FisherQuantile(0.975, n - 1, v);
        var upper = Distributions.FisherQuantile(0.975, v, n - 1);
        var rest = (k * BetweenTimes) + (((k * n) - k - n) * Residual);
        return new Estimate(
            value,
            n * (BetweenPeople - (lower * Residual)) / ((lower * rest) + (n * BetweenPeople)),
            n * ((upper * BetweenPeople) - Residual) / (rest + (n * upper * BetweenPeople)));
    }
}
