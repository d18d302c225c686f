namespace MomentArm.Body;

/// <summary>
/// Where a body is: joint angles in the model's sign (radians) and the pelvis in the room (x to the picture's right,
/// y up, z toward the person's right in upright standing; metres). Mutable so that loops need not allocate.
/// </summary>
public sealed class BodyPose
{
    /// <summary>The neutral pose: all angles zero, pelvis upright at the room's origin.</summary>
    /// <param name="model">The body it is for.</param>
    public BodyPose(BodyModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        Angles = new double[model.Coordinates.Length];
    }

    private BodyPose(double[] angles) => Angles = angles;

    /// <summary>Joint angles in the order of the model's coordinates, radians.</summary>
    public double[] Angles { get; }

    /// <summary>The pelvis frame in the room: columns are its forward, up and rightward axes.</summary>
    public Mat3 PelvisRotation { get; set; } = Mat3.Identity;

    /// <summary>Origin of the pelvis in the room, metres.</summary>
    public Vec3 PelvisPosition { get; set; }

    /// <summary>A copy that can be changed alone.</summary>
    /// <returns>The copy.</returns>
    public BodyPose Copy() => new([.. Angles]) { PelvisRotation = PelvisRotation, PelvisPosition = PelvisPosition };

    /// <summary>The pose seen in a mirror: left and right trade places.</summary>
    /// <param name="model">The body it is for.</param>
    /// <returns>The mirrored pose.</returns>
    public BodyPose Mirrored(BodyModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        var mirrored = new BodyPose(model)
        {
            PelvisRotation = PelvisRotation.Mirrored,
            PelvisPosition = PelvisPosition.Mirrored,
        };
        for (var k = 0; k < Angles.Length; k++)
        {
            var coordinate = model.Coordinates[k];
            if (coordinate.Side is { } side)
                mirrored.Angles[model.IndexOf(coordinate.Motion, side.Other())] = Angles[k];
            else
                mirrored.Angles[k] = SignedBySide(coordinate.Motion) ? -Angles[k] : Angles[k];
        }

        return mirrored;
    }

    internal static bool SignedBySide(Motion motion) =>
        motion is Motion.TrunkBending or Motion.TrunkRotation or Motion.NeckBending or Motion.NeckRotation;
}
