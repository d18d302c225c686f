namespace MomentArm.Body;

/// <summary>
/// What each joint coordinate of a person can hold, in both directions, at any angle: the capacities of
/// <see cref="PatientCapacity"/> laid out by coordinate.
/// </summary>
public sealed class JointStrength
{
    /// <summary>Torque over body mass assumed where nothing is published, N m/kg (our choice; reported as assumed).</summary>
    public const double AssumedNmPerKg = 0.5;

    private readonly PatientCapacity capacity;
    private readonly (JointAction Action, Side Side)?[] raising;
    private readonly (JointAction Action, Side Side)?[] lowering;
    private readonly double assumed;

    /// <summary>Lays out the capacities of a person.</summary>
    /// <param name="model">The person's body.</param>
    /// <param name="capacity">The person's capacities.</param>
    public JointStrength(BodyModel model, PatientCapacity capacity)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(capacity);
        this.capacity = capacity;
        assumed = AssumedNmPerKg * model.MassKg;
        raising = new (JointAction, Side)?[model.Coordinates.Length];
        lowering = new (JointAction, Side)?[model.Coordinates.Length];
        foreach (var action in Enum.GetValues<JointAction>())
        {
            foreach (var side in new[] { Side.Right, Side.Left })
            {
                var (index, sign) = action.On(model, side);
                (sign > 0 ? raising : lowering)[index] ??= (action, side);
            }
        }
    }

    /// <summary>The action that turns a coordinate one way.</summary>
    /// <param name="coordinate">Index of the coordinate.</param>
    /// <param name="sign">+1 for raising the coordinate, -1 for lowering it.</param>
    /// <returns>Action and side; null when the coordinate has no named action that way.</returns>
    public (JointAction Action, Side Side)? Action(int coordinate, int sign) => (sign > 0 ? raising : lowering)[coordinate];

    /// <summary>What can be held in one direction.</summary>
    /// <param name="coordinate">Index of the coordinate.</param>
    /// <param name="sign">+1 for raising the coordinate, -1 for lowering it.</param>
    /// <param name="angle">The coordinate's angle in the model's sign, radians.</param>
    /// <returns>The capacity; null when nothing is published.</returns>
    public Capacity? At(int coordinate, int sign, double angle) =>
        Action(coordinate, sign) is var (action, side) ? capacity.At(action, side, action.ClinicalAngle(angle)) : null;

    /// <summary>The best estimate of what can be held, or what is assumed where nothing is published.</summary>
    /// <param name="coordinate">Index of the coordinate.</param>
    /// <param name="sign">+1 for raising the coordinate, -1 for lowering it.</param>
    /// <param name="angle">The coordinate's angle in the model's sign, radians.</param>
    /// <returns>Torque, N m, above 0.</returns>
    public double TorqueAt(int coordinate, int sign, double angle) => At(coordinate, sign, angle)?.Middle ?? assumed;
}
