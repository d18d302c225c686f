namespace MomentArm.Body;

/// <summary>Least squares with unknowns that may not be negative (Lawson and Hanson 1974), for a handful of equations.</summary>
internal static class NonNegative
{
    /// <summary>The least |sum x_i a_i - b| over x_i of at least 0.</summary>
    internal static double Residual(double[][] columns, double[] b)
    {
        var x = new double[columns.Length];
        var free = new bool[columns.Length];
        var rest = (double[])b.Clone();
        for (var pass = 0; pass < 3 * columns.Length + 10; pass++)
        {
            var best = -1;
            var steepest = 1e-10;
            for (var i = 0; i < columns.Length; i++)
            {
                var slope = Dot(columns[i], rest);
                if (!free[i] && slope > steepest)
                    (steepest, best) = (slope, i);
            }

            if (best < 0)
                break;
            free[best] = true;
            Improve(columns, b, x, free);
            b.CopyTo(rest, 0);
            for (var i = 0; i < columns.Length; i++)
            {
                for (var row = 0; row < b.Length; row++)
                    rest[row] -= x[i] * columns[i][row];
            }
        }

        return Math.Sqrt(Dot(rest, rest));
    }

    /// <summary>Goes to the optimum of the free unknowns, dropping those that would turn negative on the way.</summary>
    private static void Improve(double[][] columns, double[] b, double[] x, bool[] free)
    {
        while (true)
        {
            int[] set = [.. Enumerable.Range(0, x.Length).Where(i => free[i])];
            if (set.Length == 0)
                return;
            var wanted = Solve(columns, b, set);
            var share = 1.0;
            for (var s = 0; s < set.Length; s++)
            {
                if (wanted[s] <= 0)
                    share = Math.Min(share, x[set[s]] / Math.Max(1e-300, x[set[s]] - wanted[s]));
            }

            for (var s = 0; s < set.Length; s++)
                x[set[s]] += share * (wanted[s] - x[set[s]]);
            if (share >= 1)
                return;
            foreach (var i in set)
            {
                if (x[i] <= 1e-12)
                    (x[i], free[i]) = (0, false);
            }
        }
    }

    private static double[] Solve(double[][] columns, double[] b, int[] set)
    {
        var normal = new double[set.Length * set.Length];
        var right = new double[set.Length];
        for (var i = 0; i < set.Length; i++)
        {
            right[i] = Dot(columns[set[i]], b);
            for (var j = 0; j <= i; j++)
                normal[i * set.Length + j] = Dot(columns[set[i]], columns[set[j]]);

            // A touch of ridge keeps contacts in a row solvable.
            normal[i * set.Length + i] += 1e-10;
        }

        DenseCholesky.SolveInPlace(normal, right, set.Length);
        return right;
    }

    private static double Dot(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var i = 0; i < a.Length; i++)
            sum += a[i] * b[i];
        return sum;
    }
}
