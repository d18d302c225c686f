namespace MomentArm.Body;

/// <summary>
/// Rows of a least-squares problem whose pulls are diagonal: minimize |J x + r|^2 + x . D x + 2 g . x. With few rows and many
/// unknowns it is solved by its dual, (1 + J D^-1 J^T) l = r - J D^-1 g and x = -D^-1 (g + J^T l), a system as large as the rows.
/// </summary>
internal sealed class SettlingRows(int columns)
{
    private double[] jacobian = new double[32 * columns];
    private double[] residuals = new double[32];
    private double[] dual = new double[32 * 32];
    private double[] multipliers = new double[32];
    private readonly double[] scaled = new double[columns];

    internal int Count { get; private set; }

    internal int Columns => columns;

    internal void Clear() => Count = 0;

    /// <summary>Adds a row of zeros with a residual; fill its columns.</summary>
    internal Span<double> Add(double residual)
    {
        if (Count == residuals.Length)
        {
            Array.Resize(ref residuals, 2 * Count);
            Array.Resize(ref jacobian, 2 * Count * columns);
            dual = new double[4 * Count * Count];
            multipliers = new double[2 * Count];
        }

        residuals[Count] = residual;
        var row = jacobian.AsSpan(Count * columns, columns);
        row.Clear();
        Count++;
        return row;
    }

    /// <summary>Adds J^T r to a gradient.</summary>
    internal void AddGradient(Span<double> gradient)
    {
        for (var i = 0; i < Count; i++)
        {
            var row = jacobian.AsSpan(i * columns, columns);
            for (var k = 0; k < columns; k++)
                gradient[k] += row[k] * residuals[i];
        }
    }

    /// <summary>Solves for the step x.</summary>
    /// <param name="inverse">D^-1; 0 for a column that may not move.</param>
    /// <param name="pulls">g.</param>
    /// <param name="step">The step x.</param>
    internal void Solve(ReadOnlySpan<double> inverse, ReadOnlySpan<double> pulls, Span<double> step)
    {
        for (var i = 0; i < Count; i++)
        {
            var row = jacobian.AsSpan(i * columns, columns);
            var right = residuals[i];
            for (var k = 0; k < columns; k++)
            {
                scaled[k] = row[k] * inverse[k];
                right -= scaled[k] * pulls[k];
            }

            multipliers[i] = right;
            for (var j = 0; j <= i; j++)
                dual[i * Count + j] = Dot(scaled, jacobian.AsSpan(j * columns, columns));
            dual[i * Count + i] += 1;
        }

        DenseCholesky.SolveInPlace(dual, multipliers, Count);
        for (var k = 0; k < columns; k++)
            step[k] = pulls[k];
        for (var i = 0; i < Count; i++)
        {
            var row = jacobian.AsSpan(i * columns, columns);
            for (var k = 0; k < columns; k++)
                step[k] += row[k] * multipliers[i];
        }

        for (var k = 0; k < columns; k++)
            step[k] *= -inverse[k];
    }

    /// <summary>Four sums side by side; the order of adding is fixed, so the same bits come out each time.</summary>
    private static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        double s0 = 0, s1 = 0, s2 = 0, s3 = 0;
        var k = 0;
        for (; k + 3 < a.Length; k += 4)
        {
            s0 += a[k] * b[k];
            s1 += a[k + 1] * b[k + 1];
            s2 += a[k + 2] * b[k + 2];
            s3 += a[k + 3] * b[k + 3];
        }

        for (; k < a.Length; k++)
            s0 += a[k] * b[k];
        return s0 + s1 + (s2 + s3);
    }
}
