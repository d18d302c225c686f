using System.Numerics;
using System.Runtime.InteropServices;

namespace MomentArm.Body;

/// <summary>
/// The symmetric positive definite matrix H = A W A' + diag(s) of the normal equations and its factors. Only the upper
/// triangle is kept, row after row; zeros left by the shape of the body (a leg knows nothing of the other leg) are passed over.
/// </summary>
internal sealed class NormalMatrix(int most)
{
    private readonly double[] upper = new double[most * most];
    private readonly double[] inversePivot = new double[most];
    private int m;

    /// <summary>Forms H from the columns of A.</summary>
    internal void Form(SeparableProgram program, ReadOnlySpan<double> weight)
    {
        unchecked
        {
            m = program.Equations;
            var matrix = upper.AsSpan(0, m * m);
            matrix.Clear();
            var softness = program.Softness;
            for (var i = 0; i < m; i++)
                matrix[i * m + i] = softness[i];
            var start = program.Start;
            var rowOf = program.RowOf;
            var value = program.Value;
            for (var j = 0; j < weight.Length; j++)
            {
                if (weight[j] == 0)
                    continue;
                var rows = rowOf[start[j]..start[j + 1]];
                var values = value.Slice(start[j], rows.Length);
                for (var p = 0; p < rows.Length; p++)
                {
                    var line = matrix.Slice(rows[p] * m, m);
                    var f = weight[j] * values[p];
                    for (var q = p; q < rows.Length; q++)
                        line[rows[q]] += f * values[q];
                }
            }
        }
    }

    /// <summary>Eliminates in place. A pivot lost to rounding is held at a trifle of its diagonal: the step then only loses length.</summary>
    internal void Factor()
    {
        unchecked
        {
            for (var i = 0; i < m; i++)
                inversePivot[i] = upper[i * m + i];
            for (var k = 0; k < m; k++)
            {
                var row = upper.AsSpan(k * m, m);
                var inverse = 1 / Math.Max(row[k], 1e-15 * inversePivot[k]);
                inversePivot[k] = inverse;
                for (var i = k + 1; i < m; i++)
                {
                    if (row[i] != 0)
                        AddTimes(-row[i] * inverse, row[i..], upper.AsSpan(i * m + i, m - i));
                }
            }
        }
    }

    /// <summary>Solves H y = r in place.</summary>
    internal void Solve(Span<double> r)
    {
        unchecked
        {
            for (var k = 0; k < m; k++)
            {
                r[k] *= inversePivot[k];
                if (r[k] != 0)
                    AddTimes(-r[k], upper.AsSpan(k * m + k + 1, m - k - 1), r.Slice(k + 1, m - k - 1));
            }

            for (var k = m - 1; k >= 0; k--)
                r[k] -= inversePivot[k] * Dot(upper.AsSpan(k * m + k + 1, m - k - 1), r.Slice(k + 1, m - k - 1));
        }
    }

    private static void AddTimes(double f, ReadOnlySpan<double> x, Span<double> y)
    {
        unchecked
        {
            var wide = MemoryMarshal.Cast<double, Vector<double>>(x[..y.Length]);
            var into = MemoryMarshal.Cast<double, Vector<double>>(y);
            var times = new Vector<double>(f);
            for (var i = 0; i < into.Length; i++)
                into[i] += times * wide[i];
            for (var i = into.Length * Vector<double>.Count; i < y.Length; i++)
                y[i] += f * x[i];
        }
    }

    private static double Dot(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        unchecked
        {
            var a = MemoryMarshal.Cast<double, Vector<double>>(x);
            var b = MemoryMarshal.Cast<double, Vector<double>>(y);
            var sums = Vector<double>.Zero;
            for (var i = 0; i < a.Length; i++)
                sums += a[i] * b[i];
            var sum = Vector.Sum(sums);
            for (var i = a.Length * Vector<double>.Count; i < x.Length; i++)
                sum += x[i] * y[i];
            return sum;
        }
    }
}
