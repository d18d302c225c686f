using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>The set-up of a muscle length test: how the body lies and which joint is read, so that the test can be replayed.</summary>
public sealed record LengthSetUp
{
    /// <summary>The position in words.</summary>
    public required string PositionText { get; init; }

    /// <summary>How the body lies; the tested limb is the working one.</summary>
    public required Orientation Orientation { get; init; }

    /// <summary>Clinical joint angles of the tested limb during the test but for the one that is read, radians.</summary>
    public required LimbAngles Tested { get; init; }

    /// <summary>Clinical joint angles of the other limb, radians.</summary>
    public required LimbAngles Other { get; init; }

    /// <summary>The joint action whose angle is the reading; positive readings go in its direction.</summary>
    public required JointAction Measured { get; init; }

    /// <summary>
    /// Whether a published mean may stand for someone who was not tested. False where the reading is not the muscle's end in the
    /// joint angles of the body model: the tilt of the pelvis is not in it, or the limb only hangs.
    /// </summary>
    public bool NormStandsIn { get; init; } = true;

    /// <summary>The test as a held pose, tested limb = working limb, without contacts; the joint that is read stands at 0.</summary>
    public PosedFrame Pose => new()
    {
        Name = "test",
        Orientation = Orientation,
        Working = Tested,
        Other = Other,
        Axial = AxialAngles.Neutral,
        Contacts = [],
    };

    /// <summary>The test as the Body room replays it.</summary>
    /// <param name="measure">The measure it belongs to, of kind muscle length.</param>
    /// <param name="side">The side tested.</param>
    /// <param name="reading">The reading, radians.</param>
    /// <param name="error">Standard error of the reading, or standard deviation between people for a norm, radians.</param>
    /// <param name="basis">Tested, tested with pain, or norm.</param>
    /// <returns>The test.</returns>
    /// <exception cref="ArgumentException">The measure has no muscle group.</exception>
    public LengthTest Replay(Measure measure, Side side, double reading, double error, LimitBasis basis)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return new LengthTest
        {
            Name = measure.Name,
            Group = measure.Group ?? throw new ArgumentException($"{measure.Name} measures no muscle group.", nameof(measure)),
            Side = side,
            Pose = Pose,
            Measured = Measured,
            Reading = reading,
            Least = measure.HardRange.Low,
            Most = measure.HardRange.High,
            Error = error,
            Basis = basis,
        };
    }
}
