using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>How a body rests on its contacts.</summary>
/// <param name="Stands">Whether upward forces at the contacts can hold the body up.</param>
/// <param name="Forces">Upward forces in newtons, one for each weight-bearing contact point given; empty when it cannot stand.</param>
/// <param name="Reason">Why it cannot stand, in words; null when it does.</param>
public sealed record Support(bool Stands, ImmutableArray<double> Forces, string? Reason);

/// <summary>
/// Upward contact forces that balance the body's weight, nearest (in the sum of squares) to what each contact would carry of
/// the parts that rest on it, with no contact pulling. Frictionless and vertical only: sideways pushing between feet and
/// walls belongs to the full contact problem. Where more than three points bear, the split is an assumption and is said to be one.
/// </summary>
public static class VerticalSupport
{
    /// <summary>A mass centre this far outside the support (metres) is still taken as standing: poses are typed to the degree.</summary>
    public const double Slack = 0.02;

    /// <summary>Finds the forces.</summary>
    /// <param name="points">Weight-bearing contact points in the room, metres.</param>
    /// <param name="resting">What each point would carry of the parts that rest on it, newtons; empty for none in particular.</param>
    /// <param name="massCenter">Mass centre of body and added loads, metres.</param>
    /// <param name="weight">Total weight, newtons, above 0.</param>
    /// <param name="forward">The direction the person faces, for the words of a refusal.</param>
    /// <returns>Forces, or why it cannot stand.</returns>
    public static Support Solve(
        ReadOnlySpan<Vec3> points, ReadOnlySpan<double> resting, Vec3 massCenter, double weight, Vec3 forward)
    {
        if (points.Length == 0)
            return new Support(false, [], "Nothing bears the weight: name a contact that does.");
        var nearest = NearestInHull(points, massCenter);
        var miss = new Vec3(massCenter.X - nearest.X, 0, massCenter.Z - nearest.Z);
        if (miss.Length > Slack)
            return new Support(false, [], Falls(miss, forward));

        // Pull the target a hair inside when it lies on the rim or in the slack.
        var middle = Mean(points);
        var target = miss.Length > 0 ? nearest : massCenter;
        target = target.Toward(middle, 1e-6);
        return new Support(true, LeastSquares(points, resting, target, weight), null);
    }

    /// <summary>
    /// f_i = max(0, p_i + l . a_i) with a_i = (1, x_i, z_i): the optimum of sum (f_i - p_i)^2 under balance of height and the
    /// two tipping moments. The multipliers l minimize the convex piecewise quadratic phi(l) = sum max(0, p_i + l . a_i)^2 / 2 - l . b;
    /// Newton's steps are cut by an exact search along each, without which they can jump to and fro for ever.
    /// </summary>
    private static ImmutableArray<double> LeastSquares(
        ReadOnlySpan<Vec3> points, ReadOnlySpan<double> resting, Vec3 target, double weight)
    {
        var middle = Mean(points);
        var arms = new Vec3[points.Length];
        for (var i = 0; i < arms.Length; i++)
            arms[i] = new Vec3(1, points[i].X - middle.X, points[i].Z - middle.Z);
        var b = weight * new Vec3(1, target.X - middle.X, target.Z - middle.Z);
        var p = resting.IsEmpty ? new double[points.Length] : resting.ToArray();
        var l = new Vec3((weight - p.Sum()) / points.Length, 0, 0);
        for (var step = 0; step < 200; step++)
        {
            var residual = b;
            double a00 = 0, a01 = 0, a02 = 0, a11 = 0, a12 = 0, a22 = 0;
            for (var i = 0; i < arms.Length; i++)
            {
                var arm = arms[i];
                var f = p[i] + l.Dot(arm);
                if (f <= 0)
                    continue;
                residual -= f * arm;
                a00 += 1;
                a01 += arm.Y;
                a02 += arm.Z;
                a11 += arm.Y * arm.Y;
                a12 += arm.Y * arm.Z;
                a22 += arm.Z * arm.Z;
            }

            if (Math.Abs(residual.X) + Math.Abs(residual.Y) + Math.Abs(residual.Z) < 1e-10 * weight)
                break;

            // A touch of ridge keeps contacts in a row solvable.
            var ridge = 1e-9 * (1 + a00);
            var (d0, d1, d2) = Small.SolveSymmetric(
                a00 + ridge, a01, a02, a11 + ridge, a12, a22 + ridge, residual.X, residual.Y, residual.Z);
            var direction = new Vec3(d0, d1, d2);
            l += LowestAlong(arms, p, l, direction, b) * direction;
        }

        return [.. arms.Select((arm, i) => Math.Max(0, p[i] + l.Dot(arm)))];
    }

    /// <summary>The step along a direction at which phi is lowest: where its rising, piecewise straight slope is zero.</summary>
    private static double LowestAlong(Vec3[] arms, double[] p, Vec3 l, Vec3 direction, Vec3 b)
    {
        double SlopeAt(double t)
        {
            var slope = -direction.Dot(b);
            for (var i = 0; i < arms.Length; i++)
            {
                var change = direction.Dot(arms[i]);
                slope += Math.Max(0, p[i] + l.Dot(arms[i]) + t * change) * change;
            }

            return slope;
        }

        var high = 1.0;
        while (SlopeAt(high) < 0 && high < 1e15)
            high *= 2;
        var low = high > 1 ? high / 2 : 0;
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (SlopeAt(middle) < 0)
                low = middle;
            else
                high = middle;
        }

        return high;
    }

    private static Vec3 Mean(ReadOnlySpan<Vec3> points)
    {
        var sum = Vec3.Zero;
        foreach (var p in points)
            sum += p;
        return (1.0 / points.Length) * sum;
    }

    /// <summary>The point of the contacts' convex hull (seen from above) nearest to a point: projection by conditional gradient over triangles and edges.</summary>
    private static Vec3 NearestInHull(ReadOnlySpan<Vec3> points, Vec3 target)
    {
        var best = points[0];
        var bestDistance = double.MaxValue;
        void Try(Vec3 candidate)
        {
            var dx = candidate.X - target.X;
            var dz = candidate.Z - target.Z;
            if (dx * dx + dz * dz < bestDistance)
            {
                bestDistance = dx * dx + dz * dz;
                best = candidate;
            }
        }

        for (var i = 0; i < points.Length; i++)
        {
            Try(points[i]);
            for (var j = i + 1; j < points.Length; j++)
            {
                Try(NearestOnEdge(points[i], points[j], target));
                for (var k = j + 1; k < points.Length; k++)
                {
                    if (Inside(points[i], points[j], points[k], target))
                        return target;
                }
            }
        }

        return best;
    }

    private static Vec3 NearestOnEdge(Vec3 a, Vec3 b, Vec3 p)
    {
        var dx = b.X - a.X;
        var dz = b.Z - a.Z;
        var length = dx * dx + dz * dz;
        return length > 0 ? a.Toward(b, Math.Clamp(((p.X - a.X) * dx + (p.Z - a.Z) * dz) / length, 0, 1)) : a;
    }

    private static bool Inside(Vec3 a, Vec3 b, Vec3 c, Vec3 p)
    {
        static double Turn(Vec3 a, Vec3 b, Vec3 p) => (b.X - a.X) * (p.Z - a.Z) - (b.Z - a.Z) * (p.X - a.X);
        var (t1, t2, t3) = (Turn(a, b, p), Turn(b, c, p), Turn(c, a, p));
        var area = Turn(a, b, c);
        return Math.Abs(area) > 1e-12 && ((t1 >= 0 && t2 >= 0 && t3 >= 0) || (t1 <= 0 && t2 <= 0 && t3 <= 0));
    }

    private static string Falls(Vec3 miss, Vec3 forward)
    {
        // Only the level part of the facing direction counts; a lying person faces up or down and has none.
        var level = new Vec3(forward.X, 0, forward.Z);
        var verb = "Tips over";
        if (level.Length > 0.2)
        {
            var ahead = miss.Dot(level.Normalized());
            var aside = Math.Sqrt(Math.Max(0, miss.Length * miss.Length - ahead * ahead));
            verb = "Falls " + (Math.Abs(ahead) >= aside ? (ahead > 0 ? "forward" : "backward") : "sideways");
        }

        return FormattableString.Invariant(
            $"{verb}: the mass center is {miss.Length * 100:0} cm outside the contacts. It needs a hand, another contact, or a change of pose.");
    }
}
