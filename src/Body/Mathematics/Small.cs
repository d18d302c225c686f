namespace MomentArm.Body;

/// <summary>Closed solutions of very small systems.</summary>
internal static class Small
{
    /// <summary>Solves a symmetric positive definite system of three equations by Cholesky.</summary>
    internal static (double X0, double X1, double X2) SolveSymmetric(
        double a00, double a01, double a02, double a11, double a12, double a22, double b0, double b1, double b2)
    {
        var l00 = Math.Sqrt(a00);
        var l10 = a01 / l00;
        var l20 = a02 / l00;
        var l11 = Math.Sqrt(Math.Max(1e-300, a11 - l10 * l10));
        var l21 = (a12 - l20 * l10) / l11;
        var l22 = Math.Sqrt(Math.Max(1e-300, a22 - l20 * l20 - l21 * l21));
        var y0 = b0 / l00;
        var y1 = (b1 - l10 * y0) / l11;
        var y2 = (b2 - l20 * y0 - l21 * y1) / l22;
        var x2 = y2 / l22;
        var x1 = (y1 - l21 * x2) / l11;
        return ((y0 - l10 * x1 - l20 * x2) / l00, x1, x2);
    }
}
