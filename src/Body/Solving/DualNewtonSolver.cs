namespace MomentArm.Body;

/// <summary>What became of a program.</summary>
public enum SolutionStatus
{
    /// <summary>The optimum, to rounding.</summary>
    Optimal,

    /// <summary>Refused before anything was computed; <see cref="SeparableProgram.Fault"/> says why. The unknowns are NaN.</summary>
    Refused,

    /// <summary>Rounding kept the equations from closing; the unknowns returned are the nearest and prove nothing.</summary>
    NotConverged,
}

/// <summary>The outcome of one solution, in the program's own units.</summary>
/// <param name="Status">What became of the program.</param>
/// <param name="Steps">Newton steps taken.</param>
/// <param name="Objective">The cost at the unknowns returned, misses included; NaN when refused.</param>
/// <param name="Residual">Largest |A x + e - b| over the size of the terms of its equation.</param>
public readonly record struct Solution(SolutionStatus Status, int Steps, double Objective, double Residual);

/// <summary>
/// Solves a <see cref="SeparableProgram"/> by Newton's method on its dual. For multipliers y the cheapest unknowns are known in closed
/// form, x_j(y) = the root of d x + t x^2 = a_j'y - c_j held inside its bounds, and e = s y. The dual is concave and its slope is what
/// the equations still lack, b - s y - A x(y). Each step solves the normal equations (A W A' + diag(s)) dy = b - s y - A x(y), W
/// the slopes dx/d(a'y), 0 at a bound, and goes along dy until the dual no longer rises. The dual is made of finitely many quadratic
/// pieces, so the steps end at the exact optimum on its active bounds. Work space is made once; solving allocates nothing,
/// and the same program gives the same bits. See docs/models/body.md, section 7, and docs/decisions/0010-dual-newton.md.
/// </summary>
public sealed class DualNewtonSolver
{
    /// <summary>Steps after which the solver gives up; a posed body takes a dozen.</summary>
    public const int MostSteps = 300;

    // Equations closed this well, over the size of their terms, are closed to rounding.
    private const double Closed = 1e-13;
    private const double Acceptable = 1e-8;
    private const double Rounding = 64 * 2.2e-16;

    private readonly double[] x;
    private readonly double[] y;
    private readonly double[] weight;
    private readonly double[] pull;
    private readonly double[] pullChange;
    private readonly bool[] woken;
    private readonly double[] lack;
    private readonly double[] change;
    private readonly double[] size;
    private readonly NormalMatrix normal;
    private SeparableProgram program;
    private int n;
    private int m;

    /// <summary>Makes the work space.</summary>
    /// <param name="largest">A program with room for the largest one to be solved.</param>
    public DualNewtonSolver(SeparableProgram largest)
    {
        ArgumentNullException.ThrowIfNull(largest);
        var (unknowns, equations) = (largest.MostUnknowns, largest.MostEquations);
        (x, weight, pull, pullChange) = (new double[unknowns], new double[unknowns], new double[unknowns], new double[unknowns]);
        (y, lack, change, size) =
            (new double[equations], new double[equations], new double[equations], new double[equations]);
        woken = new bool[unknowns];
        normal = new NormalMatrix(equations);
        program = largest;
    }

    /// <summary>The unknowns of the last solution.</summary>
    public ReadOnlySpan<double> X => x.AsSpan(0, n);

    /// <summary>The multipliers y: how fast the least cost rises with each right side.</summary>
    public ReadOnlySpan<double> Multipliers => y.AsSpan(0, m);

    /// <summary>By how much an equation is missed: e = s y.</summary>
    /// <param name="equation">Index of the equation.</param>
    /// <returns>The miss, in the equation's unit.</returns>
    public double Miss(int equation) => program.Softness[equation] * y[equation];

    /// <summary>Solves a program.</summary>
    /// <param name="toSolve">The program; only read.</param>
    /// <param name="warmStart">Begin from the multipliers of the solution before: quicker when little changed. The optimum is the same to rounding.</param>
    /// <returns>The outcome; the solution is in <see cref="X"/>, <see cref="Multipliers"/> and <see cref="Miss"/>.</returns>
    /// <exception cref="ArgumentException">The program is larger than the work space.</exception>
    public Solution Solve(SeparableProgram toSolve, bool warmStart = false)
    {
        ArgumentNullException.ThrowIfNull(toSolve);
        if (toSolve.Unknowns > x.Length || toSolve.Equations > y.Length)
            throw new ArgumentException("The program is larger than the work space.", nameof(toSolve));
        warmStart &= toSolve.Equations == m;
        (program, n, m) = (toSolve, toSolve.Unknowns, toSolve.Equations);
        if (toSolve.Fault() is not null)
        {
            x.AsSpan(0, n).Fill(double.NaN);
            y.AsSpan(0, m).Fill(double.NaN);
            (m, n) = (0, 0);
            return new Solution(SolutionStatus.Refused, 0, double.NaN, double.NaN);
        }

        if (!warmStart || !double.IsFinite(y[0]))
            y.AsSpan(0, m).Clear();
        woken.AsSpan().Clear();
        var steps = 0;
        var best = double.PositiveInfinity;
        var noBetter = 0;
        while (true)
        {
            var residual = Respond();

            // Near the end rounding decides: a few more steps are tried, then the best reachable is taken.
            noBetter = residual < 0.5 * best ? 0 : noBetter + 1;
            best = Math.Min(best, residual);
            if (residual <= Closed || (noBetter > 2 && (residual <= Acceptable || IsRounding())) || steps == MostSteps)
                return new Solution(residual <= Acceptable || IsRounding() ? SolutionStatus.Optimal : SolutionStatus.NotConverged, steps, Objective(), residual);
            Step();
            steps++;
        }
    }

    /// <summary>The cheapest unknowns at the present multipliers, and what the equations still lack. Returns the largest lack over its terms.</summary>
    private double Respond()
    {
        unchecked
        {
            var start = program.Start;
            var rowOf = program.RowOf;
            var value = program.Value;
            var d = program.Curvature;
            var t = program.Cubic;
            var lower = program.Lower;
            var upper = program.Upper;
            var c = program.Slope;
            var b = program.RightSide;
            var s = program.Softness;

            // Anew from y each time: carried along, pulls would keep the rounding of every long step before.
            TransposeTimes(y, pull);
            for (var i = 0; i < m; i++)
            {
                lack[i] = b[i] - s[i] * y[i];
                size[i] = Math.Abs(b[i]) + Math.Abs(s[i] * y[i]);
            }

            for (var j = 0; j < n; j++)
            {
                pull[j] -= c[j];
                var at = Cheapest(pull[j], d[j], t[j]);
                x[j] = at <= lower[j] ? lower[j] : at >= upper[j] ? upper[j] : at;
                weight[j] = x[j] == at || woken[j] ? 1 / (d[j] + 2 * t[j] * x[j]) : 0;
                if (x[j] == 0)
                    continue;
                for (var e = start[j]; e < start[j + 1]; e++)
                {
                    var part = value[e] * x[j];
                    lack[rowOf[e]] -= part;
                    size[rowOf[e]] += Math.Abs(part);
                }
            }

            // Equations are judged beside each other: one whose terms all vanish is measured by the others.
            double worst = 0, largest = 0;
            for (var i = 0; i < m; i++)
                largest = Math.Max(largest, size[i]);
            for (var i = 0; i < m; i++)
                worst = Math.Max(worst, Math.Abs(lack[i]) / Math.Max(size[i], 1e-3 * largest + double.Epsilon));
            return worst;
        }
    }

    /// <summary>
    /// Whether what the equations lack is no more than the rounding of the pulls makes of it: where large multipliers cancel to a
    /// small pull, the unknown has lost these digits and no step brings them back.
    /// </summary>
    private bool IsRounding()
    {
        var start = program.Start;
        var rowOf = program.RowOf;
        var value = program.Value;
        var b = program.RightSide;
        var s = program.Softness;
        for (var i = 0; i < m; i++)
            change[i] = Math.Abs(b[i]) + Math.Abs(s[i] * y[i]);
        for (var j = 0; j < n; j++)
        {
            var terms = Math.Abs(program.Slope[j]);
            for (var e = start[j]; e < start[j + 1]; e++)
                terms += Math.Abs(value[e] * y[rowOf[e]]);
            var reach = weight[j] * terms + Math.Abs(x[j]);
            for (var e = start[j]; e < start[j + 1]; e++)
                change[rowOf[e]] += Math.Abs(value[e]) * reach;
        }

        for (var i = 0; i < m; i++)
        {
            if (!(Math.Abs(lack[i]) <= Rounding * change[i]))
                return false;
        }

        return true;
    }

    /// <summary>One Newton step of the multipliers, cut so that the dual rises.</summary>
    private void Step()
    {
        normal.Form(program, weight.AsSpan(0, n));
        normal.Factor();
        lack.AsSpan(0, m).CopyTo(change);
        normal.Solve(change.AsSpan(0, m));
        TransposeTimes(change, pullChange);
        var along = Along();
        for (var i = 0; i < m; i++)
            y[i] += along * change[i];
        Wake(along);
    }

    /// <summary>
    /// A step that was cut short ended where an unknown comes free that it believed fixed. To rounding that unknown is still at its bound; it
    /// must count as free now, or the next step would end at the same place.
    /// </summary>
    private void Wake(double along)
    {
        var isShort = along < 0.1;
        for (var j = 0; j < n; j++)
        {
            woken[j] = false;
            if (!isShort || weight[j] > 0)
                continue;
            var soon = pull[j] + 1.01 * along * pullChange[j];
            var at = Cheapest(soon, program.Curvature[j], program.Cubic[j]);
            woken[j] = at > program.Lower[j] && at < program.Upper[j];
        }
    }

    /// <summary>
    /// How far along the step the dual rises. Its slope there falls steadily; the place where it has fallen to a tenth
    /// is found between brackets by Newton's rule, halving where that leaves them. Never beyond the top: a step too far may lose all it gained.
    /// </summary>
    private double Along()
    {
        double constant = 0, soft = 0;
        var b = program.RightSide;
        var s = program.Softness;
        for (var i = 0; i < m; i++)
        {
            constant += change[i] * (b[i] - s[i] * y[i]);
            soft += s[i] * change[i] * change[i];
        }

        var (first, _) = SlopeAt(0, constant, soft);
        double low = 0, high = double.PositiveInfinity, at = 1;
        for (var tries = 0; tries < 60; tries++)
        {
            var (slope, fall) = SlopeAt(at, constant, soft);
            if ((slope <= 0.1 * first && slope >= -1e-4 * first) || !(first > 0))
                break;
            if (slope > 0)
                low = at;
            else
                high = at;
            var next = at + slope / fall;
            if (double.IsPositiveInfinity(high))
                at = next > 4 * at || !(next > low) ? 4 * at : next;
            else
                at = next > low + 0.02 * (high - low) && next < high - 0.02 * (high - low) ? next : Middle(low, high);
        }

        return at;
    }

    /// <summary>Between two brackets; far apart, their geometric mean finds a very short step sooner.</summary>
    private static double Middle(double low, double high) =>
        low == 0 ? 0.1 * high : high > 4 * low ? Math.Sqrt(low * high) : (low + high) / 2;

    /// <summary>Slope of the dual at a place along the step, and how fast it falls there.</summary>
    private (double Slope, double Fall) SlopeAt(double along, double constant, double soft)
    {
        unchecked
        {
            var d = program.Curvature;
            var t = program.Cubic;
            var lower = program.Lower;
            var upper = program.Upper;
            double slope = constant - along * soft, fall = soft;
            for (var j = 0; j < n; j++)
            {
                var turn = pullChange[j];
                var at = Cheapest(pull[j] + along * turn, d[j], t[j]);
                if (at <= lower[j])
                    at = lower[j];
                else if (at >= upper[j])
                    at = upper[j];
                else
                    fall += turn * turn / (d[j] + 2 * t[j] * at);
                slope -= turn * at;
            }

            return (slope, fall);
        }
    }

    /// <summary>The root of d x + t x^2 = pull; negative pulls meet a lower bound of 0 or more whenever t is above 0.</summary>
    private static double Cheapest(double pull, double d, double t) =>
        t == 0 || pull <= 0 ? pull / d : 2 * pull / (d + Math.Sqrt(d * d + 4 * t * pull));

    private void TransposeTimes(double[] rows, double[] columns)
    {
        unchecked
        {
            var start = program.Start;
            var rowOf = program.RowOf;
            var value = program.Value;
            for (var j = 0; j < n; j++)
            {
                double sum = 0;
                for (var e = start[j]; e < start[j + 1]; e++)
                    sum += rows[rowOf[e]] * value[e];
                columns[j] = sum;
            }
        }
    }

    private double Objective()
    {
        double cost = 0;
        for (var j = 0; j < n; j++)
            cost += x[j] * (program.Slope[j] + x[j] * (program.Curvature[j] / 2 + x[j] * program.Cubic[j] / 3));
        for (var i = 0; i < m; i++)
            cost += 0.5 * program.Softness[i] * y[i] * y[i];
        return cost;
    }
}
