namespace MomentArm.Body;

/// <summary>Cholesky for symmetric positive definite systems of a few dozen equations, lower triangle by rows.</summary>
internal static class DenseCholesky
{
    /// <summary>Solves H x = g; H is overwritten by its factor, g by the solution.</summary>
    /// <exception cref="ArithmeticException">The matrix is not positive definite.</exception>
    internal static void SolveInPlace(double[] h, double[] g, int size)
    {
        for (var j = 0; j < size; j++)
        {
            var diagonal = h[j * size + j];
            for (var k = 0; k < j; k++)
                diagonal -= h[j * size + k] * h[j * size + k];
            if (!(diagonal > 0))
                throw new ArithmeticException("The matrix is not positive definite.");
            diagonal = Math.Sqrt(diagonal);
            h[j * size + j] = diagonal;
            for (var i = j + 1; i < size; i++)
            {
                var sum = h[i * size + j];
                for (var k = 0; k < j; k++)
                    sum -= h[i * size + k] * h[j * size + k];
                h[i * size + j] = sum / diagonal;
            }
        }

        for (var i = 0; i < size; i++)
        {
            for (var k = 0; k < i; k++)
                g[i] -= h[i * size + k] * g[k];
            g[i] /= h[i * size + i];
        }

        for (var i = size - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < size; k++)
                g[i] -= h[k * size + i] * g[k];
            g[i] /= h[i * size + i];
        }
    }
}
