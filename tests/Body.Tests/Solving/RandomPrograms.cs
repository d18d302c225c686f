using CsCheck;

namespace MomentArm.Body.Tests;

/// <summary>A program in plain arrays, so that other ways of solving can read it.</summary>
internal sealed record PlainProgram(
    double[,] A, double[] B, double[] Softness, double[] Curvature, double[] Slope, double[] Cubic, double[] Lower, double[] Upper)
{
    internal int Equations => B.Length;

    internal int Unknowns => Curvature.Length;

    internal SeparableProgram ToProgram()
    {
        var program = new SeparableProgram(Equations, Unknowns, Equations * Unknowns);
        program.Clear(Equations, 1);
        B.CopyTo(program.RightSide);
        Softness.CopyTo(program.Softness);
        for (var j = 0; j < Unknowns; j++)
        {
            program.AddUnknown(Curvature[j], Slope[j], Lower[j], Upper[j], Cubic[j]);
            for (var i = 0; i < Equations; i++)
                program.AddEntry(i, A[i, j]);
        }

        return program;
    }

    internal double Cost(ReadOnlySpan<double> x)
    {
        double cost = 0;
        for (var j = 0; j < Unknowns; j++)
            cost += x[j] * (Slope[j] + x[j] * (Curvature[j] / 2 + x[j] * Cubic[j] / 3));
        for (var i = 0; i < Equations; i++)
        {
            var miss = B[i];
            for (var j = 0; j < Unknowns; j++)
                miss -= A[i, j] * x[j];
            cost += miss * miss / (2 * Softness[i]);
        }

        return cost;
    }

    public override string ToString() => $"{Equations} equations, {Unknowns} unknowns, s [{string.Join(' ', Softness)}], d [{string.Join(' ', Curvature)}], c [{string.Join(' ', Slope)}], t [{string.Join(' ', Cubic)}], l [{string.Join(' ', Lower)}], u [{string.Join(' ', Upper)}], b [{string.Join(' ', B)}], A [{string.Join(' ', A.Cast<double>())}]";
}

/// <summary>Random programs, well and badly behaved: many scales, equal rows and columns, empty ones, fixed unknowns, open bounds.</summary>
internal static class RandomPrograms
{
    internal static Gen<PlainProgram> Of(int mostEquations, int mostUnknowns, bool cubic, double hardest = 1e-8) => Gen.Select(
        Gen.Int[1, mostEquations], Gen.Int[1, mostUnknowns], Gen.Int[0, int.MaxValue],
        (m, n, seed) => Make(m, n, new Random(seed), cubic, hardest));

    private static PlainProgram Make(int m, int n, Random random, bool cubic, double hardest)
    {
        double Within(double least, double most) => least + (most - least) * random.NextDouble();
        double Power(double least, double most) => Math.Pow(10, Within(least, most));
        var a = new double[m, n];
        var filled = Within(0.1, 1);
        for (var j = 0; j < n; j++)
        {
            var size = Power(-2, 2);
            for (var i = 0; i < m; i++)
                a[i, j] = random.NextDouble() < filled ? size * Within(-1, 1) : 0;
            if (j > 0 && random.Next(6) == 0)
            {
                for (var i = 0; i < m; i++)
                    a[i, j] = a[i, j - 1];
            }
        }

        if (m > 1 && random.Next(4) == 0)
        {
            for (var j = 0; j < n; j++)
                a[m - 1, j] = a[0, j];
        }

        // Hard equations only where they can be met; a multiplier is the miss over the softness, and 1e10 leaves no digits for the unknowns.
        var hard = random.Next(3);
        double[] All(Func<double> one, int count) => [.. Enumerable.Range(0, count).Select(_ => one())];
        var lower = All(() => cubic || random.Next(4) > 0 ? 0 : random.Next(2) == 0 ? double.NegativeInfinity : Within(-2, 0), n);
        var upper = lower.Select(l => random.Next(3) == 0 ? double.PositiveInfinity : random.Next(8) == 0 && double.IsFinite(l) ? l : Math.Max(l, 0) + Within(0, 2)).ToArray();
        var b = new double[m];
        var reachable = random.Next(3) > 0;
        for (var i = 0; i < m; i++)
            b[i] = reachable ? 0 : Power(-2, 1) * Within(-1, 1);
        for (var j = 0; reachable && j < n; j++)
        {
            var x = Math.Clamp(random.Next(3) == 0 ? 0 : Within(-1, 1), lower[j], upper[j]);
            for (var i = 0; i < m; i++)
                b[i] += a[i, j] * x;
        }

        return new PlainProgram(
            a, b, All(() => hard == 0 && reachable ? hardest : Power(-4, 1), m), All(() => Power(-3, 3), n), All(() => random.Next(2) * Within(-3, 3), n),
            All(() => cubic ? random.Next(2) * Power(-1, 2) : 0, n), lower, upper);
    }
}
