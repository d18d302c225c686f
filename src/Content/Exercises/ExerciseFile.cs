using System.Text.Json.Serialization;
using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Content;

/// <summary>One file of content/exercises: an exercise as body poses with dose and cautions. Angles in degrees, clinical signs.</summary>
public sealed record ExerciseFile
{
    /// <summary>Where the schema is.</summary>
    [JsonPropertyName("$schema")]
    public required string Schema { get; init; }

    /// <summary>Equal to the file name.</summary>
    public required string Id { get; init; }

    /// <summary>Short trade name.</summary>
    public required string Name { get; init; }

    /// <summary>What it is for.</summary>
    public required Purpose Purpose { get; init; }

    /// <summary>The part of the body it is kept under.</summary>
    public required BodyRegion Region { get; init; }

    /// <summary>Position it is done in.</summary>
    public required BodyPosition Position { get; init; }

    /// <summary>Best view.</summary>
    public required ViewKind View { get; init; }

    /// <summary>Point of the working limb that pictures are drawn close round, for small movements of hand or foot.</summary>
    public string? CloseUp { get; init; }

    /// <summary>Whether both sides work at once.</summary>
    public bool Bilateral { get; init; }

    /// <summary>Joint actions it is meant to load, most important first.</summary>
    public required IReadOnlyList<JointAction> Loads { get; init; }

    /// <summary>Muscle groups it is meant to lengthen or press.</summary>
    public required IReadOnlyList<MuscleGroup> Groups { get; init; }

    /// <summary>What it acts on that the body model does not carry, in trade words.</summary>
    public IReadOnlyList<string> BeyondModel { get; init; } = [];

    /// <summary>Where loads or groups disagree with what is computed, and why that is accepted.</summary>
    public IReadOnlyList<AcceptedFile> Accepted { get; init; } = [];

    /// <summary>What it needs.</summary>
    public required IReadOnlyList<Equipment> Equipment { get; init; }

    /// <summary>Family of forms.</summary>
    public required string Ladder { get; init; }

    /// <summary>Place in the family, 1 = easiest.</summary>
    public required int Rung { get; init; }

    /// <summary>What makes it harder than the rung below; left out on rung 1.</summary>
    public RungChange? Change { get; init; }

    /// <summary>Why it keeps its rung although the computed load says otherwise.</summary>
    public string? OrderNote { get; init; }

    /// <summary>The usual dose.</summary>
    public required DoseFile Dose { get; init; }

    /// <summary>Seconds to get ready.</summary>
    public int SetUpSeconds { get; init; } = 20;

    /// <summary>Cautions for the clinician.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>Who must not do it.</summary>
    public IReadOnlyList<string> Avoid { get; init; } = [];

    /// <summary>Usual faults and cues.</summary>
    public required IReadOnlyList<FaultFile> Faults { get; init; }

    /// <summary>The poses, start first.</summary>
    public required IReadOnlyList<PoseFile> Poses { get; init; }

    /// <summary>Props in the picture.</summary>
    public IReadOnlyList<PropFile> Props { get; init; } = [];

    /// <summary>Added loads.</summary>
    public IReadOnlyList<AddedLoadFile> AddedLoads { get; init; } = [];

    /// <summary>Bands, ropes and helping hands that pull.</summary>
    public IReadOnlyList<PullFile> Pulls { get; init; } = [];

    /// <summary>Source of the angles and the form.</summary>
    public required string Source { get; init; }
}

/// <summary>A dose in a file.</summary>
public sealed record DoseFile
{
    /// <summary>Sets.</summary>
    public required int Sets { get; init; }

    /// <summary>Repetitions in a set.</summary>
    public required int Repetitions { get; init; }

    /// <summary>Upper end when the repetitions are a range.</summary>
    public int? RepetitionsTo { get; init; }

    /// <summary>Seconds out.</summary>
    public double OutSeconds { get; init; } = 2;

    /// <summary>Seconds held.</summary>
    public double HoldSeconds { get; init; }

    /// <summary>Seconds back.</summary>
    public double BackSeconds { get; init; } = 3;

    /// <summary>Rest between sets.</summary>
    public int RestSeconds { get; init; } = 60;

    /// <summary>Times a day.</summary>
    public int TimesPerDay { get; init; } = 1;

    /// <summary>Days a week.</summary>
    public required int DaysPerWeek { get; init; }

    /// <summary>Effort aimed at, 0 to 10.</summary>
    public int? Effort { get; init; }

    /// <summary>Added weight to start with, kilograms, where the exercise takes one.</summary>
    public double? WeightKg { get; init; }

    /// <summary>Key into sources.json, or "common-practice".</summary>
    public required string Source { get; init; }
}

/// <summary>A fault and its cue.</summary>
public sealed record FaultFile(string Seen, string Cue);

/// <summary>An accepted disagreement: a joint action or muscle group, and the reason.</summary>
public sealed record AcceptedFile(string About, string Reason);

/// <summary>A prop in a file.</summary>
public sealed record PropFile(PropKind Kind, string? At = null, Limb? Limb = null, double HeightM = 0);

/// <summary>An added load in a file; with "toward" it sits at that fraction of the way to a second point of the same segment.</summary>
public sealed record AddedLoadFile(LoadKind Kind, string At, Limb Limb, double MassKg = 0, string? Toward = null, double Fraction = 0);

/// <summary>A pose in a file; an angle not named is 0.</summary>
public sealed record PoseFile
{
    /// <summary>start, end, or a name between.</summary>
    public required string Name { get; init; }

    /// <summary>How the body lies before settling.</summary>
    public required Orientation Orientation { get; init; }

    /// <summary>Forward pitch before settling, degrees.</summary>
    public double PitchHintDeg { get; init; }

    /// <summary>Angles of the working limb.</summary>
    public LimbFile Working { get; init; } = new();

    /// <summary>Angles of the other limb.</summary>
    public LimbFile Other { get; init; } = new();

    /// <summary>Trunk and neck.</summary>
    public AxialFile Axial { get; init; } = new();

    /// <summary>What touches what.</summary>
    public required IReadOnlyList<ContactFile> Contacts { get; init; }

    /// <summary>Straps and what a hand holds.</summary>
    public IReadOnlyList<TieFile> Ties { get; init; } = [];
}

/// <summary>A contact in a file.</summary>
/// <param name="Point">Name of the body point or group.</param>
/// <param name="Surface">What it touches.</param>
/// <param name="Limb">Whose point it is; left out in the midline.</param>
/// <param name="HeightM">Height over the floor, 0 to 1.5; of a board under its first contact point.</param>
/// <param name="BearsWeight">Whether it may carry weight.</param>
/// <param name="TiltDeg">Tilt of a board, -45 to 45, toes down +.</param>
/// <param name="Wall">Where the wall stands; left out to derive it from what touches.</param>
/// <param name="ShareOfWeightPercent">Part of the whole weight that rests on it, where statics leaves the split open; left out to leave it to least effort.</param>
public sealed record ContactFile(
    string Point, SurfaceKind Surface, Limb? Limb = null, double HeightM = 0, bool BearsWeight = true, double TiltDeg = 0, WallPlace? Wall = null,
    double? ShareOfWeightPercent = null);

/// <summary>A strap or a hold in a file.</summary>
/// <param name="Kind">Strap or hold.</param>
/// <param name="From">The first point, usually palm.</param>
/// <param name="To">The second point.</param>
/// <param name="FromLimb">Whose the first point is; left out in the midline.</param>
/// <param name="ToLimb">Whose the second point is; left out in the midline.</param>
/// <param name="LengthM">Straight length of a strap, 0.02 to 3; left out when it is let out to what the pose needs.</param>
public sealed record TieFile(TieKind Kind, string From, string To, Limb? FromLimb = null, Limb? ToLimb = null, double? LengthM = null);

/// <summary>Angles of one leg and arm in degrees, clinical signs.</summary>
public sealed record LimbFile
{
    /// <summary>Flexion +.</summary>
    public double HipFlexionDeg { get; init; }

    /// <summary>Abduction +.</summary>
    public double HipAbductionDeg { get; init; }

    /// <summary>Internal +.</summary>
    public double HipInternalRotationDeg { get; init; }

    /// <summary>Flexion +.</summary>
    public double KneeFlexionDeg { get; init; }

    /// <summary>Dorsiflexion +.</summary>
    public double AnkleDorsiflexionDeg { get; init; }

    /// <summary>Eversion +.</summary>
    public double SubtalarEversionDeg { get; init; }

    /// <summary>Extension +.</summary>
    public double ToeExtensionDeg { get; init; }

    /// <summary>Flexion +.</summary>
    public double ShoulderFlexionDeg { get; init; }

    /// <summary>Abduction +.</summary>
    public double ShoulderAbductionDeg { get; init; }

    /// <summary>Internal +.</summary>
    public double ShoulderInternalRotationDeg { get; init; }

    /// <summary>Flexion +.</summary>
    public double ElbowFlexionDeg { get; init; }

    /// <summary>From full supination.</summary>
    public double ForearmPronationDeg { get; init; } = 90;

    /// <summary>Flexion +.</summary>
    public double WristFlexionDeg { get; init; }
}

/// <summary>Trunk and neck angles in degrees.</summary>
public sealed record AxialFile
{
    /// <summary>Flexion +.</summary>
    public double TrunkFlexionDeg { get; init; }

    /// <summary>Toward the working side +.</summary>
    public double TrunkBendToWorkingDeg { get; init; }

    /// <summary>Toward the working side +.</summary>
    public double TrunkTurnToWorkingDeg { get; init; }

    /// <summary>Flexion +.</summary>
    public double NeckFlexionDeg { get; init; }

    /// <summary>Toward the working side +.</summary>
    public double NeckBendToWorkingDeg { get; init; }

    /// <summary>Toward the working side +.</summary>
    public double NeckTurnToWorkingDeg { get; init; }
}
