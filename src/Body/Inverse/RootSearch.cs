namespace MomentArm.Body;

/// <summary>
/// Finds where a function takes a value, for functions that cost much, rise and fall, leap, or cannot be computed everywhere. The
/// range is cut into steps; edges of what can be computed are narrowed by halving, turning points near the target by golden
/// section, and each change of sign by <see cref="BracketedRoot"/>. It always ends: every step adds a point and points are counted.
/// </summary>
public static class RootSearch
{
    /// <summary>Searches for f(x) = target.</summary>
    /// <param name="f">The function; NaN or infinite where it cannot be computed.</param>
    /// <param name="low">Lower end of the range.</param>
    /// <param name="high">Upper end of the range, not below the lower.</param>
    /// <param name="target">The wished value.</param>
    /// <param name="options">How finely; the usual when left out.</param>
    /// <returns>Found, not reachable with the best there is, or not computed.</returns>
    /// <exception cref="ArgumentException">The range, the target or an option is not usable.</exception>
    public static RootAnswer Find(Func<double, double> f, double low, double high, double target, RootOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(f);
        var chosen = options ?? RootOptions.Usual;
        if (!double.IsFinite(low) || !double.IsFinite(high) || low > high)
            throw new ArgumentException(FormattableString.Invariant($"A range from {low} to {high} is not usable: give two numbers in rising order."), nameof(low));
        if (!double.IsFinite(target))
            throw new ArgumentException("The target is not a number.", nameof(target));
        Quantity.Within(chosen.Steps, 1, 10000, "steps", nameof(options));
        Quantity.Within(chosen.ToleranceX, 1e-12, 0.1, "of the range", nameof(options));
        Quantity.Within(chosen.ToleranceF, double.Epsilon, double.MaxValue, "tolerance", nameof(options));
        if (chosen.Near is { } near && !double.IsFinite(near))
            throw new ArgumentException("The preferred value is not a number.", nameof(options));
        return new Search(f, low, high, target, chosen).Run();
    }

    private sealed class Search
    {
        private readonly Func<double, double> f;
        private readonly double low;
        private readonly double high;
        private readonly double target;
        private readonly double toleranceX;
        private readonly double leapX;
        private readonly RootOptions options;

        /// <summary>Every point computed so far: f minus target over x, NaN where it could not be.</summary>
        private readonly SortedList<double, double> points = [];
        private RootJump? jump;

        internal Search(Func<double, double> f, double low, double high, double target, RootOptions options)
        {
            (this.f, this.low, this.high, this.target, this.options) = (f, low, high, target, options);

            // Not finer than numbers are near the ends of the range. What still leaps over so small a step is no steep slope.
            var finest = 4 * Math.Max(Math.BitIncrement(Math.Abs(low)) - Math.Abs(low), Math.BitIncrement(Math.Abs(high)) - Math.Abs(high));
            toleranceX = Math.Max(options.ToleranceX * (high - low), finest);
            leapX = Math.Max(1e-9 * toleranceX, finest);
        }

        internal RootAnswer Run()
        {
            for (var i = 0; i <= options.Steps; i++)
                At(low + (high - low) * ((double)i / options.Steps));
            if (options.Near is { } near)
                At(Math.Clamp(near, low, high));
            RefineEdges();
            RefineTurns();
            NarrowAll();
            if (Chosen() is null)
            {
                // A closer look may still meet the target, or show another change of sign.
                RefineExtreme();
                NarrowAll();
            }

            if (Chosen() is { } root)
                return new RootFound(root, points[root] + target);
            var finite = points.Where(p => double.IsFinite(p.Value)).ToArray();
            if (finite.Length == 0)
                return new RootNotComputed(FormattableString.Invariant($"It could not be computed anywhere from {low} to {high}."));
            var (largest, smallest) = (finite.MaxBy(p => p.Value), finite.MinBy(p => p.Value));
            return new RootNotReachable(largest.Value + target, largest.Key, smallest.Value + target, smallest.Key, jump);
        }

        private double At(double x)
        {
            if (points.TryGetValue(x, out var known))
                return known;
            var value = f(x) - target;
            return points[x] = double.IsFinite(value) ? value : double.NaN;
        }

        private bool IsRoot(double value) => Math.Abs(value) <= options.ToleranceF;

        private bool Spent => points.Count >= options.MostCalls;

        /// <summary>Halves between a point that could be computed and a neighbor that could not, so that nothing hides at the edge.</summary>
        private void RefineEdges()
        {
            for (var i = 0; i + 1 < points.Count; i++)
            {
                var (a, b) = (points.Keys[i], points.Keys[i + 1]);
                if (double.IsNaN(points.Values[i]) == double.IsNaN(points.Values[i + 1]))
                    continue;
                var rightIsFinite = double.IsNaN(points.Values[i]);
                while (b - a > toleranceX && !Spent)
                {
                    var middle = a + (b - a) / 2;
                    if (double.IsNaN(At(middle)) == rightIsFinite)
                        a = middle;
                    else
                        b = middle;
                }

                i = points.IndexOfKey(b) - 1;
            }
        }

        /// <summary>Where the points turn back short of the target but might touch it between them, looks closer.</summary>
        private void RefineTurns()
        {
            var x = points.Keys.ToArray();
            var g = points.Values.ToArray();
            for (var i = 0; i < x.Length; i++)
            {
                if (double.IsNaN(g[i]) || IsRoot(g[i]))
                    continue;
                var left = i > 0 && !double.IsNaN(g[i - 1]) ? i - 1 : i;
                var right = i + 1 < x.Length && !double.IsNaN(g[i + 1]) ? i + 1 : i;
                var sameSide = g[left] * g[i] > 0 && g[right] * g[i] > 0;
                var turns = Math.Abs(g[left]) >= Math.Abs(g[i]) && Math.Abs(g[right]) >= Math.Abs(g[i]);

                // A turn reaches no farther beyond the points than they differ among themselves.
                var reach = Math.Max(Math.Abs(g[left] - g[i]), Math.Abs(g[right] - g[i]));
                if (sameSide && turns && Math.Abs(g[i]) <= reach)
                    Golden(x[left], x[right], Math.Sign(g[i]));
            }
        }

        /// <summary>The least of sign * g between two points by golden section; ends early at a root or beyond it.</summary>
        private void Golden(double a, double b, int sign)
        {
            var ratio = (Math.Sqrt(5) - 1) / 2;
            var (c, d) = (b - ratio * (b - a), a + ratio * (b - a));
            while (b - a > toleranceX && !Spent)
            {
                var (fc, fd) = (sign * At(c), sign * At(d));
                if (fc <= options.ToleranceF || fd <= options.ToleranceF)
                    return;
                if (double.IsNaN(fc) || double.IsNaN(fd))
                    return;
                if (fc <= fd)
                    (b, d, c) = (d, c, d - ratio * (d - a));
                else
                    (a, c, d) = (c, d, c + ratio * (b - c));
            }
        }

        private void NarrowAll()
        {
            while (!Spent && Narrow())
            {
            }
        }

        /// <summary>Narrows the first place from the left that is still open; false when none is.</summary>
        private bool Narrow()
        {
            for (var i = 0; i + 1 < points.Count; i++)
            {
                var (a, b) = ((X: points.Keys[i], F: points.Values[i]), (X: points.Keys[i + 1], F: points.Values[i + 1]));
                if (IsRoot(a.F) && options.Near is null)
                    return false;
                if (b.X - a.X > toleranceX && double.IsNaN(a.F) != double.IsNaN(b.F))
                {
                    RefineEdges();
                    return true;
                }

                if (double.IsNaN(a.F) || double.IsNaN(b.F) || IsRoot(a.F) || IsRoot(b.F) || a.F > 0 == b.F > 0)
                    continue;
                if (b.X - a.X > leapX)
                {
                    BracketedRoot.Find(At, a, b, leapX, options.ToleranceF, options.MostCalls - points.Count);
                    return true;
                }

                jump ??= new RootJump(a.X, a.F + target, b.F + target);
            }

            return false;
        }

        /// <summary>The root to tell: the smallest, or the one nearest the preferred value.</summary>
        private double? Chosen()
        {
            var roots = points.Where(p => IsRoot(p.Value)).Select(p => p.Key).ToArray();
            if (roots.Length == 0)
                return null;
            if (options.Near is not { } near)
                return Slid(roots[0], -1);
            var nearest = roots.MinBy(r => Math.Abs(r - near));
            return nearest == near ? near : Slid(nearest, Math.Sign(near - nearest));
        }

        /// <summary>Where f stays at the target over a stretch, the end of the stretch that lies in a direction.</summary>
        private double Slid(double root, int direction)
        {
            var good = Math.Max(Math.Abs(points[root]), options.ToleranceF / 1000);
            var next = points.IndexOfKey(root) + direction;
            if (next < 0 || next >= points.Count || IsRoot(points.Values[next]))
                return root;
            var (inside, outside) = (root, points.Keys[next]);
            var probe = inside + direction * 2 * toleranceX;
            if ((outside - probe) * direction <= 0 || !(Math.Abs(At(probe)) <= good))
                return root;
            inside = probe;
            while (Math.Abs(outside - inside) > toleranceX && !Spent)
            {
                var middle = inside + (outside - inside) / 2;
                if (Math.Abs(At(middle)) <= good)
                    inside = middle;
                else
                    outside = middle;
            }

            return inside;
        }

        /// <summary>Before saying that the target is out of reach, looks closer at the point that came nearest.</summary>
        private void RefineExtreme()
        {
            var best = points.Where(p => !double.IsNaN(p.Value)).OrderBy(p => Math.Abs(p.Value)).Select(p => (double?)p.Key).FirstOrDefault();
            if (best is not { } x || jump is not null)
                return;
            var i = points.IndexOfKey(x);
            if (i == 0 || i == points.Count - 1 || double.IsNaN(points.Values[i - 1]) || double.IsNaN(points.Values[i + 1]))
                return;
            Golden(points.Keys[i - 1], points.Keys[i + 1], Math.Sign(points.Values[i]));
        }
    }
}
