using MomentArm.Body;

namespace MomentArm.Content;

/// <summary>Kinds of quantity a check can ask for.</summary>
public enum QuantityKind
{
    /// <summary>Length of a muscle's path, mm.</summary>
    PathLength,

    /// <summary>Path length less that of the neutral pose, mm.</summary>
    PathChange,

    /// <summary>Shortest path over the usual joint angles, mm.</summary>
    ShortestPath,

    /// <summary>Longest path over the usual joint angles, mm.</summary>
    LongestPath,

    /// <summary>Arm of a muscle about a motion, in the model's sign, mm.</summary>
    MomentArm,

    /// <summary>Arm of several muscles, weighted with their forces, mm.</summary>
    GroupArm,

    /// <summary>Where a joint center lies in the frame of another segment, mm.</summary>
    JointPlace,

    /// <summary>Moment that the muscles of an action must give, Nm/kg; negative when the opposite action is asked.</summary>
    Moment,

    /// <summary>Moment of an action divided by an arm: a tendon's force, body weights.</summary>
    TendonForce,

    /// <summary>Share of body weight on named contacts, percent.</summary>
    SupportShare,

    /// <summary>Force between the bones of a joint, percent of body weight.</summary>
    JointForce,

    /// <summary>Effort of a muscle group or of named lines: their mean activation weighted by strength, percent.</summary>
    Effort,

    /// <summary>Moment of an action over the published torque at that angle, percent; 0 when the opposite action is asked.</summary>
    ActionShare,

    /// <summary>Torque that people of this sex, age and size hold, Nm/kg.</summary>
    Capacity,

    /// <summary>Forward lean of a segment's long axis from the vertical, degrees.</summary>
    Lean,

    /// <summary>Joint angle in clinical sign after settling, degrees.</summary>
    Angle,

    /// <summary>Weight of everything but the working leg times its distance inward of the working hip, by hand, Nm/kg.</summary>
    FreeBody,

    /// <summary>A plane lever in balance: the size of its unknown force, or of the force at its pivot, N.</summary>
    Lever,

    /// <summary>Sum of the operands.</summary>
    Sum,

    /// <summary>First operand less the second.</summary>
    Difference,

    /// <summary>First operand divided by the second.</summary>
    Ratio,

    /// <summary>The last operand where the first two are equal, along poses.</summary>
    Crossing,

    /// <summary>The last operand where the first is largest, along poses.</summary>
    Largest,
}

/// <summary>A joint whose force is calculated.</summary>
public enum LoadedJoint
{
    /// <summary>Hip.</summary>
    Hip,

    /// <summary>Knee, between thigh and shin bone.</summary>
    Knee,

    /// <summary>Ankle.</summary>
    Ankle,
}

/// <summary>A quantity: what is calculated, and of what.</summary>
public sealed record QuantityFile
{
    /// <summary>Kind.</summary>
    public required QuantityKind Kind { get; init; }

    /// <summary>Person, when other than the check's.</summary>
    public string? Person { get; init; }

    /// <summary>Pose, when other than the check's.</summary>
    public string? Pose { get; init; }

    /// <summary>Poses passed through one after the other, inside a crossing or a largest value.</summary>
    public IReadOnlyList<string>? Along { get; init; }

    /// <summary>Joint action.</summary>
    public JointAction? Action { get; init; }

    /// <summary>Whose joint; working when not given.</summary>
    public Limb Limb { get; init; } = Limb.Working;

    /// <summary>Motion of an arm or angle.</summary>
    public Motion? Motion { get; init; }

    /// <summary>Muscle by id.</summary>
    public string? Muscle { get; init; }

    /// <summary>Muscles by id.</summary>
    public IReadOnlyList<string>? Muscles { get; init; }

    /// <summary>What a muscle group mainly does.</summary>
    public MuscleFunction? Function { get; init; }

    /// <summary>Names of contacts as the pose gives them, both limbs.</summary>
    public IReadOnlyList<string>? Contacts { get; init; }

    /// <summary>Segment.</summary>
    public SegmentKind? Segment { get; init; }

    /// <summary>Segment in whose frame a place is told; the pelvis when not given.</summary>
    public SegmentKind Within { get; init; } = SegmentKind.Pelvis;

    /// <summary>Axis of a place: x forward, y up, z right.</summary>
    public string? Axis { get; init; }

    /// <summary>Joint whose force is asked.</summary>
    public LoadedJoint? Joint { get; init; }

    /// <summary>Joint angle of a capacity, clinical sign.</summary>
    public double? AngleDeg { get; init; }

    /// <summary>A fixed arm of a tendon; the muscle's own arm in the pose when not given.</summary>
    public double? ArmMm { get; init; }

    /// <summary>A lever.</summary>
    public LeverFile? Lever { get; init; }

    /// <summary>Operands.</summary>
    public IReadOnlyList<QuantityFile> Of { get; init; } = [];
}

/// <summary>A rigid body in a plane, turning about the origin.</summary>
/// <param name="Known">Forces of known size.</param>
/// <param name="Unknown">Where and in which direction the unknown force acts; its size is not read.</param>
/// <param name="AtPivot">Whether the force at the pivot is asked instead of the unknown one.</param>
public sealed record LeverFile(IReadOnlyList<LeverForceFile> Known, LeverForceFile Unknown, bool AtPivot = false);

/// <summary>A force of a lever.</summary>
/// <param name="DirectionDeg">Direction, counterclockwise from the horizontal.</param>
/// <param name="AtM">Where it acts, meters: [across, up].</param>
/// <param name="SizeN">Its size, newtons.</param>
public sealed record LeverForceFile(double DirectionDeg, double[] AtM, double SizeN = 0);
