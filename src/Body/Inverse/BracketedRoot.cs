namespace MomentArm.Body;

/// <summary>
/// Zero of a function between two arguments where it has opposite signs, without derivatives: inverse interpolation through the
/// last points where that is safe, halving where it is not (method of Brent 1973, chapter 4; written from its description). The
/// two ends always enclose a change of sign, so it cannot run away; a leap over zero is closed in on as well.
/// </summary>
internal static class BracketedRoot
{
    /// <summary>Narrows the bracket until a value is within the tolerance of zero or the ends are that near each other.</summary>
    /// <param name="f">The function; may give NaN, which ends the search.</param>
    /// <param name="a">One end and its value, not zero.</param>
    /// <param name="b">The other end and its value, of the opposite sign.</param>
    /// <param name="toleranceX">Ends this near each other end the search; above 0.</param>
    /// <param name="toleranceF">A value this near zero ends the search; 0 or more.</param>
    /// <param name="mostCalls">Calls after which it ends.</param>
    /// <returns>The end with the smaller value, and the other.</returns>
    internal static ((double X, double F) Best, (double X, double F) Opposite) Find(
        Func<double, double> f, (double X, double F) a, (double X, double F) b, double toleranceX, double toleranceF, int mostCalls)
    {
        var (best, opposite) = Math.Abs(a.F) < Math.Abs(b.F) ? (a, b) : (b, a);
        var previous = opposite;
        var (step, stepBefore) = (best.X - opposite.X, best.X - opposite.X);
        for (var call = 0; call < mostCalls; call++)
        {
            var gap = opposite.X - best.X;
            if (Math.Abs(best.F) <= toleranceF || Math.Abs(gap) <= toleranceX)
                break;
            var least = Math.Min(toleranceX / 2, Math.Abs(gap) / 2);
            var wished = Interpolated(best, previous, opposite) - best.X;

            // Safe: toward the opposite end, not beyond three quarters, and steps that shrink to half every second time.
            var safe = wished * gap > 0 && Math.Abs(wished) < 0.75 * Math.Abs(gap) && Math.Abs(wished) < 0.5 * Math.Abs(stepBefore);
            (stepBefore, step) = safe ? (step, wished) : (gap / 2, gap / 2);
            if (Math.Abs(step) < least)
                step = Math.CopySign(least, gap);
            var next = (X: best.X + step, F: f(best.X + step));
            if (double.IsNaN(next.F))
                break;
            previous = best;
            if (next.F > 0 == best.F > 0)
                best = next;
            else
                (best, opposite) = (next, best);
            if (Math.Abs(opposite.F) < Math.Abs(best.F))
                (best, opposite, previous) = (opposite, best, best);
        }

        return (best, opposite);
    }

    /// <summary>Where the inverse of the parabola (or line) through the points takes the value 0.</summary>
    private static double Interpolated((double X, double F) b, (double X, double F) a, (double X, double F) c)
    {
        if (a.F == b.F)
            return double.NaN;
        if (a.X == c.X || a.F == c.F || b.F == c.F)
            return b.X - b.F * (b.X - a.X) / (b.F - a.F);
        return a.X * b.F * c.F / ((a.F - b.F) * (a.F - c.F))
            + b.X * a.F * c.F / ((b.F - a.F) * (b.F - c.F))
            + c.X * a.F * b.F / ((c.F - a.F) * (c.F - b.F));
    }
}
