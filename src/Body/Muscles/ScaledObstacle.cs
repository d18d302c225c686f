namespace MomentArm.Body;

/// <summary>
/// A cylinder along the sideways axis of a segment, scaled to the person. A line runs from above round its back and underside
/// to a point beyond the joint: tangent, arc, tangent, and evenly sideways all the way.
/// </summary>
/// <param name="Segment">Index of the segment that carries it.</param>
/// <param name="X">Forward place of its axis in the segment's frame, metres.</param>
/// <param name="Y">Upward place of its axis.</param>
/// <param name="Radius">Its radius, metres.</param>
internal readonly record struct ScaledObstacle(int Segment, double X, double Y, double Radius)
{
    /// <summary>
    /// The way round. While it is followed its last tangent point stays still on the segment to first order, so the arms are those of the
    /// piece from there to the outer point.
    /// </summary>
    /// <param name="inner">Point on the obstacle's segment, in its frame, metres.</param>
    /// <param name="outer">Point beyond the joint, in the same frame.</param>
    /// <param name="length">Length of the way, metres.</param>
    /// <param name="unit">Direction in which it arrives at the outer point.</param>
    /// <returns>False when the straight line passes clear, or a point lies inside; then nothing is given.</returns>
    internal bool Round(Vec3 inner, Vec3 outer, out double length, out Vec3 unit)
    {
        (length, unit) = (0, Vec3.Zero);
        var (px, py) = (inner.X - X, inner.Y - Y);
        var (fx, fy) = (outer.X - X, outer.Y - Y);
        var (toInner, toOuter) = (px * px + py * py - Radius * Radius, fx * fx + fy * fy - Radius * Radius);
        if (toInner <= 0 || toOuter <= 0)
            return false;
        var (first, last) = (Math.Sqrt(toInner), Math.Sqrt(toOuter));
        var touch = Math.Atan2(py, px) + Math.Atan2(first, Radius);
        var leave = Math.Atan2(fy, fx) - Math.Atan2(last, Radius);
        var turn = leave - touch;
        turn -= 2 * Math.PI * Math.Floor(turn / (2 * Math.PI));
        if (turn >= Math.PI)
            return false;
        var level = first + Radius * turn + last;
        var sideways = outer.Z - inner.Z;
        length = Math.Sqrt(level * level + sideways * sideways);
        var (sin, cos) = Math.SinCos(leave);
        unit = (1 / length) * new Vec3(-sin * level, cos * level, sideways);
        return true;
    }
}
