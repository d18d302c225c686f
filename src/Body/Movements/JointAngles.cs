namespace MomentArm.Body;

/// <summary>Joint angles of one leg and arm as clinicians name them. Radians; zero is upright standing, arms at the sides.</summary>
public sealed record LimbAngles
{
    /// <summary>Hip flexion positive, extension negative.</summary>
    public double HipFlexion { get; init; }

    /// <summary>Hip abduction positive, adduction negative.</summary>
    public double HipAbduction { get; init; }

    /// <summary>Hip internal rotation positive, external negative.</summary>
    public double HipInternalRotation { get; init; }

    /// <summary>Knee flexion positive, hyperextension negative.</summary>
    public double KneeFlexion { get; init; }

    /// <summary>Ankle dorsiflexion positive, plantarflexion negative.</summary>
    public double AnkleDorsiflexion { get; init; }

    /// <summary>Subtalar eversion positive, inversion negative.</summary>
    public double SubtalarEversion { get; init; }

    /// <summary>Toe extension positive, flexion negative.</summary>
    public double ToeExtension { get; init; }

    /// <summary>Shoulder flexion positive, extension negative.</summary>
    public double ShoulderFlexion { get; init; }

    /// <summary>Shoulder abduction positive, adduction negative.</summary>
    public double ShoulderAbduction { get; init; }

    /// <summary>Shoulder internal rotation positive, external negative.</summary>
    public double ShoulderInternalRotation { get; init; }

    /// <summary>Elbow flexion positive.</summary>
    public double ElbowFlexion { get; init; }

    /// <summary>Forearm pronation from full supination (palm forward), 0 to a half turn.</summary>
    public double ForearmPronation { get; init; } = Math.PI / 2;

    /// <summary>Wrist flexion positive, extension negative.</summary>
    public double WristFlexion { get; init; }

    /// <summary>A limb at rest in standing.</summary>
    public static LimbAngles Neutral { get; } = new();
}

/// <summary>Angles of the trunk on the pelvis and of the head on the trunk. Radians.</summary>
public sealed record AxialAngles
{
    /// <summary>Trunk flexion positive, extension negative.</summary>
    public double TrunkFlexion { get; init; }

    /// <summary>Trunk bent toward the working side positive.</summary>
    public double TrunkBendToWorking { get; init; }

    /// <summary>Trunk turned toward the working side positive.</summary>
    public double TrunkTurnToWorking { get; init; }

    /// <summary>Neck flexion positive, extension negative.</summary>
    public double NeckFlexion { get; init; }

    /// <summary>Head bent toward the working side positive.</summary>
    public double NeckBendToWorking { get; init; }

    /// <summary>Head turned toward the working side positive.</summary>
    public double NeckTurnToWorking { get; init; }

    /// <summary>Upright and straight ahead.</summary>
    public static AxialAngles Neutral { get; } = new();
}
