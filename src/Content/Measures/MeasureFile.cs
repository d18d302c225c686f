using System.Text.Json.Serialization;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Content;

/// <summary>One file of content/measures. Its numbers are in the unit it names.</summary>
public sealed record MeasureFile
{
    /// <summary>Where the schema is.</summary>
    [JsonPropertyName("$schema")]
    public required string Schema { get; init; }

    /// <summary>Equal to the file name.</summary>
    public required string Id { get; init; }

    /// <summary>Trade name.</summary>
    public required string Name { get; init; }

    /// <summary>Short names for the shorthand line, lower case.</summary>
    public required IReadOnlyList<string> Aliases { get; init; }

    /// <summary>Kind of measure.</summary>
    public required MeasureKind Kind { get; init; }

    /// <summary>Position of the patient.</summary>
    public required ExamPosition Position { get; init; }

    /// <summary>Order inside the position, 1 first.</summary>
    public required int Order { get; init; }

    /// <summary>Whether left and right are measured apart.</summary>
    public required bool Sided { get; init; }

    /// <summary>Which way is better.</summary>
    public required Direction Direction { get; init; }

    /// <summary>Who moves the joint.</summary>
    public MotionMode Mode { get; init; }

    /// <summary>What zero and sign mean.</summary>
    public string? Convention { get; init; }

    /// <summary>Joint action, for range, strength and endurance.</summary>
    public JointAction? Action { get; init; }

    /// <summary>Muscle group, for muscle length.</summary>
    public MuscleGroup? Group { get; init; }

    /// <summary>How it is taken.</summary>
    public required MethodFile Method { get; init; }

    /// <summary>Unit of the numbers of this file, as typed and shown.</summary>
    public required string Unit { get; init; }

    /// <summary>Parts of the body it is asked for; left out for measures of every visit.</summary>
    public IReadOnlyList<BodyRegion> Regions { get; init; } = [];

    /// <summary>What can be true, and what is usual.</summary>
    public required RangesFile Range { get; init; }

    /// <summary>How trials become one value.</summary>
    public required TrialRule TrialRule { get; init; }

    /// <summary>Published errors of measurement; the first is used, the others are shown.</summary>
    public IReadOnlyList<ErrorFile> Errors { get; init; } = [];

    /// <summary>Smallest change that matters to patients.</summary>
    public McidFile? Mcid { get; init; }

    /// <summary>Symmetry index under which the worse side is called low, as a fraction.</summary>
    public double? SymmetryLimit { get; init; }

    /// <summary>Set-up of a strength test.</summary>
    public StrengthFile? Strength { get; init; }

    /// <summary>Set-up of a muscle length test.</summary>
    public LengthFile? Length { get; init; }

    /// <summary>Items and scoring, for questionnaires.</summary>
    public QuestionnaireFile? Questionnaire { get; init; }

    /// <summary>The lack that a task or a load history shows by its own definition.</summary>
    public ShownLackFile? Shows { get; init; }

    /// <summary>Minutes of the patient's time as part of the short core set of its regions.</summary>
    public double? CoreMinutes { get; init; }

    /// <summary>Cautions for the examiner.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>Keys into sources.json.</summary>
    public required IReadOnlyList<string> Sources { get; init; }

    /// <summary>Whether every figure was read in its source.</summary>
    public required bool Verified { get; init; }
}

/// <summary>A lack that a measure shows by its own definition.</summary>
public sealed record ShownLackFile
{
    /// <summary>poorControl or lowLoadTolerance.</summary>
    public required ImpairmentKind Kind { get; init; }

    /// <summary>The joint action it is seen in.</summary>
    public JointAction? Action { get; init; }

    /// <summary>Value from which, toward worse, the source calls it a lack.</summary>
    public double? From { get; init; }

    /// <summary>What the source calls it, in our words.</summary>
    public required string Words { get; init; }
}

/// <summary>How a measure is taken.</summary>
public sealed record MethodFile
{
    /// <summary>Steps in order.</summary>
    public required IReadOnlyList<string> Steps { get; init; }

    /// <summary>What is held still.</summary>
    public string? Stabilization { get; init; }

    /// <summary>Where pad, axis or inclinometer goes.</summary>
    public string? Placement { get; init; }

    /// <summary>How effort or movement is built up, and how many trials.</summary>
    public string? Technique { get; init; }

    /// <summary>What can be done in its place without a device.</summary>
    public string? WithoutDevice { get; init; }
}

/// <summary>Hard range, outside of which nothing can be true, and soft range, outside of which a value is asked about.</summary>
public sealed record RangesFile(double HardLow, double SoftLow, double SoftHigh, double HardHigh);

/// <summary>One published error; exactly one of the numbers is given.</summary>
public sealed record ErrorFile
{
    /// <summary>Standard error of measurement.</summary>
    public double? Sem { get; init; }

    /// <summary>Standard error of measurement as a fraction of the value.</summary>
    public double? SemFraction { get; init; }

    /// <summary>Printed smallest detectable change.</summary>
    public double? Mdc { get; init; }

    /// <summary>Printed smallest detectable change as a fraction of the value.</summary>
    public double? MdcFraction { get; init; }

    /// <summary>Level of a printed change, 95 or 90; left out when the source does not say.</summary>
    public int? Level { get; init; }

    /// <summary>Whether one examiner took both readings.</summary>
    public required bool SameExaminer { get; init; }

    /// <summary>Who was measured, and how.</summary>
    public required string Population { get; init; }

    /// <summary>Key into sources.json.</summary>
    public required string Source { get; init; }
}

/// <summary>Smallest change that matters; exactly one form is given.</summary>
public sealed record McidFile
{
    /// <summary>Fixed change.</summary>
    public double? Fixed { get; init; }

    /// <summary>Fraction of the first value.</summary>
    public double? Fraction { get; init; }

    /// <summary>Bands by first value, rising.</summary>
    public IReadOnlyList<McidBandFile>? Bands { get; init; }

    /// <summary>Who it was found in.</summary>
    public required string Population { get; init; }

    /// <summary>Key into sources.json.</summary>
    public required string Source { get; init; }
}

/// <summary>One band of a rule by first value.</summary>
public sealed record McidBandFile(double From, double Change);

/// <summary>Set-up of a strength test.</summary>
public sealed record StrengthFile
{
    /// <summary>Usual lever arm, metres.</summary>
    public required double LeverArmHintM { get; init; }

    /// <summary>Longest believable lever arm, metres.</summary>
    public required double LeverArmMostM { get; init; }

    /// <summary>How to measure it.</summary>
    public required string LeverArmText { get; init; }

    /// <summary>The position in words.</summary>
    public required string PositionText { get; init; }

    /// <summary>How the body lies; the tested limb is the working one.</summary>
    public required Orientation Orientation { get; init; }

    /// <summary>Angles of the tested limb.</summary>
    public required LimbFile Tested { get; init; }

    /// <summary>Angles of the other limb.</summary>
    public required LimbFile Other { get; init; }
}

/// <summary>Set-up of a muscle length test.</summary>
public sealed record LengthFile
{
    /// <summary>The position in words.</summary>
    public required string PositionText { get; init; }

    /// <summary>How the body lies; the tested limb is the working one.</summary>
    public required Orientation Orientation { get; init; }

    /// <summary>Angles of the tested limb but for the one that is read.</summary>
    public required LimbFile Tested { get; init; }

    /// <summary>Angles of the other limb.</summary>
    public required LimbFile Other { get; init; }

    /// <summary>The joint action whose angle is the reading; positive readings go in its direction.</summary>
    public required JointAction Measured { get; init; }

    /// <summary>Whether a published mean may stand for someone who was not tested; left out means yes.</summary>
    public bool NormStandsIn { get; init; } = true;
}

/// <summary>Items and scoring of a questionnaire.</summary>
public sealed record QuestionnaireFile
{
    /// <summary>How it is scored.</summary>
    public required ScoreForm Form { get; init; }

    /// <summary>Items; left out when only the total is typed.</summary>
    public int ItemCount { get; init; }

    /// <summary>Fewest answers that still give a score.</summary>
    public int LeastAnswered { get; init; }

    /// <summary>Lowest answer.</summary>
    public int ItemLow { get; init; }

    /// <summary>Highest answer.</summary>
    public int ItemHigh { get; init; }

    /// <summary>The items in words, where they are ours or free to everyone.</summary>
    public IReadOnlyList<string> Items { get; init; } = [];

    /// <summary>On what terms it may be used.</summary>
    public required string Terms { get; init; }
}
