namespace MomentArm.Cli;

/// <summary>Rank correlation of two lists (Spearman 1904): the product-moment correlation of their ranks, ties sharing the mean rank.</summary>
internal static class Spearman
{
    /// <summary>The correlation.</summary>
    /// <param name="x">Two values or more.</param>
    /// <param name="y">As many.</param>
    /// <returns>-1 to 1; NaN when one of the lists has no order at all.</returns>
    internal static double Of(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        var (a, b) = (Ranks(x), Ranks(y));
        var mean = (x.Count + 1) / 2.0;
        double both = 0, ofX = 0, ofY = 0;
        for (var i = 0; i < a.Length; i++)
        {
            both += (a[i] - mean) * (b[i] - mean);
            ofX += (a[i] - mean) * (a[i] - mean);
            ofY += (b[i] - mean) * (b[i] - mean);
        }

        return both / Math.Sqrt(ofX * ofY);
    }

    private static double[] Ranks(IReadOnlyList<double> values) =>
        [.. values.Select(v => 1 + values.Count(other => other < v) + (values.Count(other => other == v) - 1) / 2.0)];
}
