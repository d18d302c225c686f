using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>How a body rests on its contacts.</summary>
/// <param name="Stands">Whether upward forces at the contacts can hold the body up.</param>
/// <param name="Forces">Upward forces in newtons, one for each weight-bearing contact point given; empty when it cannot stand.</param>
/// <param name="Reason">Why it cannot stand, in words; null when it does.</param>
public sealed record Support(bool Stands, ImmutableArray<double> Forces, string? Reason);

/// <summary>
/// Upward contact forces that balance the body's weight: the smallest sum of squares with no contact pulling.
/// Frictionless and vertical only: sideways pushing between feet and walls belongs to the full contact problem.
/// Where more than three points bear, the split is an assumption and is said to be one.
/// </summary>
public static class VerticalSupport
{
    /// <summary>A mass centre this far outside the support (metres) is still taken as standing: poses are typed to the degree.</summary>
    public const double Slack = 0.02;

    /// <summary>Finds the forces.</summary>
    /// <param name="points">Weight-bearing contact points in the room, metres.</param>
    /// <param name="massCenter">Mass centre of body and added loads, metres.</param>
    /// <param name="weight">Total weight, newtons, above 0.</param>
    /// <param name="forward">The direction the person faces, for the words of a refusal.</param>
    /// <returns>Forces, or why it cannot stand.</returns>
    public static Support Solve(ReadOnlySpan<Vec3> points, Vec3 massCenter, double weight, Vec3 forward)
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
        return new Support(true, LeastSquares(points, target, weight), null);
    }

    /// <summary>
    /// f_i = max(0, l0 + l1 x_i + l2 z_i) with multipliers found by damped Newton: the optimum of sum f_i^2 under
    /// balance of height and the two tipping moments.
    /// </summary>
    private static ImmutableArray<double> LeastSquares(ReadOnlySpan<Vec3> points, Vec3 target, double weight)
    {
        var middle = Mean(points);
        var forces = new double[points.Length];
        double l0 = weight / points.Length, l1 = 0, l2 = 0;
        for (var step = 0; step < 200; step++)
        {
            double a00 = 0, a01 = 0, a02 = 0, a11 = 0, a12 = 0, a22 = 0;
            var r0 = weight;
            var r1 = weight * (target.X - middle.X);
            var r2 = weight * (target.Z - middle.Z);
            foreach (var p in points)
            {
                var x = p.X - middle.X;
                var z = p.Z - middle.Z;
                var f = l0 + l1 * x + l2 * z;
                if (f <= 0)
                    continue;
                r0 -= f;
                r1 -= f * x;
                r2 -= f * z;
                a00 += 1;
                a01 += x;
                a02 += z;
                a11 += x * x;
                a12 += x * z;
                a22 += z * z;
            }

            if (Math.Abs(r0) + Math.Abs(r1) + Math.Abs(r2) < 1e-9 * weight)
                break;

            // A touch of ridge keeps contacts in a row solvable.
            var ridge = 1e-9 * (1 + a00);
            var (d0, d1, d2) = Small.SolveSymmetric(a00 + ridge, a01, a02, a11 + ridge, a12, a22 + ridge, r0, r1, r2);
            l0 += d0;
            l1 += d1;
            l2 += d2;
        }

        for (var i = 0; i < points.Length; i++)
            forces[i] = Math.Max(0, l0 + l1 * (points[i].X - middle.X) + l2 * (points[i].Z - middle.Z));
        return [.. forces];
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
        var ahead = miss.X * forward.X + miss.Z * forward.Z;
        var aside = Math.Sqrt(Math.Max(0, miss.Length * miss.Length - ahead * ahead));
        var direction = Math.Abs(ahead) >= aside ? (ahead > 0 ? "forward" : "backward") : "sideways";
        return FormattableString.Invariant(
            $"Falls {direction}: the mass center is {miss.Length * 100:0} cm outside the contacts. It needs a hand, another contact, or a change of pose.");
    }
}
