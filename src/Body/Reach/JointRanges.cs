namespace MomentArm.Body;

/// <summary>How far each joint of a person goes: the usual ranges, or what was measured. Constant once made.</summary>
public sealed class JointRanges
{
    private readonly double[] least;
    private readonly double[] most;

    private JointRanges(BodyModel model, double[] least, double[] most) => (Model, this.least, this.most) = (model, least, most);

    /// <summary>The body the ranges are of.</summary>
    public BodyModel Model { get; }

    /// <summary>The usual ranges.</summary>
    /// <param name="model">The body.</param>
    /// <returns>The ranges.</returns>
    public static JointRanges Usual(BodyModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        return new JointRanges(
            model, [.. model.Coordinates.Select(c => c.NormalLeast)], [.. model.Coordinates.Select(c => c.NormalMost)]);
    }

    /// <summary>The same with one end as measured.</summary>
    /// <param name="action">The action whose end was measured.</param>
    /// <param name="side">The side.</param>
    /// <param name="angle">Angle at the end, in the direction of the action, radians.</param>
    /// <returns>New ranges; the other end gives way where it would lie beyond.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No finite angle within half a turn.</exception>
    public JointRanges With(JointAction action, Side side, double angle)
    {
        Quantity.Within(angle, -Math.PI, Math.PI, "rad");
        var (index, sign) = action.On(Model, side);
        double[] low = [.. least];
        double[] high = [.. most];
        if (sign > 0)
            (high[index], low[index]) = (angle, Math.Min(low[index], angle));
        else
            (low[index], high[index]) = (-angle, Math.Max(high[index], -angle));
        return new JointRanges(Model, low, high);
    }

    /// <summary>How far a coordinate can still go.</summary>
    /// <param name="coordinate">Index of the coordinate.</param>
    /// <param name="angle">Where it is, radians.</param>
    /// <param name="sign">+1 toward larger values, -1 toward smaller.</param>
    /// <returns>Radians; 0 at the end of the range and beyond it.</returns>
    public double Room(int coordinate, double angle, int sign) =>
        Math.Max(0, sign > 0 ? most[coordinate] - angle : angle - least[coordinate]);
}
