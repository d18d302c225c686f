namespace MomentArm.Body.Tests;

/// <summary>The least cost of a small program by trying every set of active bounds: slow, and nothing in common with the solver.</summary>
internal static class ActiveSets
{
    internal static double Least(PlainProgram plain)
    {
        var n = plain.Unknowns;
        var best = double.PositiveInfinity;
        var place = new int[n];
        var sets = (int)Math.Pow(3, n);
        for (var set = 0; set < sets; set++)
        {
            var rest = set;
            for (var j = 0; j < n; j++, rest /= 3)
                place[j] = rest % 3;
            if (Cost(plain, place) is { } cost && cost < best)
                best = cost;
        }

        return best;
    }

    /// <summary>Least cost with some unknowns at their bounds and the others free; null when that leaves the bounds.</summary>
    private static double? Cost(PlainProgram plain, int[] place)
    {
        var n = plain.Unknowns;
        var x = new double[n];
        var free = new List<int>();
        for (var j = 0; j < n; j++)
        {
            if (place[j] == 0)
                free.Add(j);
            else
                x[j] = place[j] == 1 ? plain.Lower[j] : plain.Upper[j];
            if (!double.IsFinite(x[j]))
                return null;
        }

        // Normal equations of the cost in the free unknowns: (D + A' S^-1 A) x = A' S^-1 (b - A fixed) - c.
        var h = new double[free.Count, free.Count];
        var g = new double[free.Count];
        for (var p = 0; p < free.Count; p++)
        {
            g[p] = -plain.Slope[free[p]];
            h[p, p] = plain.Curvature[free[p]];
            for (var i = 0; i < plain.Equations; i++)
            {
                var left = plain.B[i];
                for (var j = 0; j < n; j++)
                    left -= plain.A[i, j] * x[j];
                g[p] += plain.A[i, free[p]] * left / plain.Softness[i];
                for (var q = 0; q < free.Count; q++)
                    h[p, q] += plain.A[i, free[p]] * plain.A[i, free[q]] / plain.Softness[i];
            }
        }

        Eliminate(h, g);
        for (var p = 0; p < free.Count; p++)
        {
            x[free[p]] = g[p];
            var slack = 1e-7 * (1 + Math.Abs(g[p]));
            if (!(g[p] >= plain.Lower[free[p]] - slack && g[p] <= plain.Upper[free[p]] + slack))
                return null;
            x[free[p]] = Math.Clamp(g[p], plain.Lower[free[p]], plain.Upper[free[p]]);
        }

        return plain.Cost(x);
    }

    /// <summary>Gauss with the largest pivot.</summary>
    private static void Eliminate(double[,] h, double[] g)
    {
        var n = g.Length;
        for (var k = 0; k < n; k++)
        {
            var pivot = Enumerable.Range(k, n - k).MaxBy(i => Math.Abs(h[i, k]));
            for (var j = 0; j < n; j++)
                (h[k, j], h[pivot, j]) = (h[pivot, j], h[k, j]);
            (g[k], g[pivot]) = (g[pivot], g[k]);
            for (var i = k + 1; i < n; i++)
            {
                var factor = h[i, k] / h[k, k];
                for (var j = k; j < n; j++)
                    h[i, j] -= factor * h[k, j];
                g[i] -= factor * g[k];
            }
        }

        for (var k = n - 1; k >= 0; k--)
        {
            for (var j = k + 1; j < n; j++)
                g[k] -= h[k, j] * g[j];
            g[k] /= h[k, k];
        }
    }
}
