using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>
/// The set-up of a strength test: where the pad sits and how the body lies, so that the limb's own weight can be
/// computed and added to what the muscles do.
/// </summary>
public sealed record StrengthSetUp
{
    /// <summary>Usual distance from joint centre to pad, metres. A hint for the entry field; never used as a value.</summary>
    public required double LeverArmHintM { get; init; }

    /// <summary>Longest believable lever arm, metres; beyond it the entry asks whether centimetres were meant.</summary>
    public required double LeverArmMostM { get; init; }

    /// <summary>How to measure the lever arm.</summary>
    public required string LeverArmText { get; init; }

    /// <summary>The position in words.</summary>
    public required string PositionText { get; init; }

    /// <summary>How the body lies; the tested limb is the working one.</summary>
    public required Orientation Orientation { get; init; }

    /// <summary>Clinical joint angles of the tested limb during the test, radians.</summary>
    public required LimbAngles Tested { get; init; }

    /// <summary>Clinical joint angles of the other limb, radians.</summary>
    public required LimbAngles Other { get; init; }

    /// <summary>The test as a held pose, tested limb = working limb, without contacts: the table carries the body.</summary>
    public PosedFrame Pose => new()
    {
        Name = "test",
        Orientation = Orientation,
        Working = Tested,
        Other = Other,
        Axial = AxialAngles.Neutral,
        Contacts = [],
    };
}
