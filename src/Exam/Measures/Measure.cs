using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>
/// What a measure is, how it is taken, what values can be true, and how far it can be trusted. One file of
/// content/measures each; values of this record are in the stored unit (radians, newtons, points).
/// </summary>
public sealed record Measure
{
    /// <summary>Stable id, equal to the file name.</summary>
    public required string Id { get; init; }

    /// <summary>Trade name.</summary>
    public required string Name { get; init; }

    /// <summary>Short names that the shorthand line understands, lower case, each of one measure only.</summary>
    public required ImmutableArray<string> Aliases { get; init; }

    /// <summary>What kind of thing it measures.</summary>
    public required MeasureKind Kind { get; init; }

    /// <summary>Position of the patient.</summary>
    public required ExamPosition Position { get; init; }

    /// <summary>Order inside the position, 1 first.</summary>
    public required int Order { get; init; }

    /// <summary>Parts of the body it is asked for; empty for measures of every visit, such as pain.</summary>
    public ImmutableArray<BodyRegion> Regions { get; init; } = [];

    /// <summary>Unit in which it is typed and shown.</summary>
    public required ShownUnit Shown { get; init; }

    /// <summary>Stored unit.</summary>
    public MeasureUnit Unit => Shown.Stored;

    /// <summary>Whether left and right are measured apart.</summary>
    public required bool Sided { get; init; }

    /// <summary>Which way is better.</summary>
    public required Direction Direction { get; init; }

    /// <summary>Who moves the joint.</summary>
    public MotionMode Mode { get; init; }

    /// <summary>What the number means where its sign or zero is not plain; null where it is.</summary>
    public string? Convention { get; init; }

    /// <summary>The joint action concerned, for range, strength and endurance.</summary>
    public JointAction? Action { get; init; }

    /// <summary>The muscle group concerned, for muscle length.</summary>
    public MuscleGroup? Group { get; init; }

    /// <summary>How it is taken.</summary>
    public required MeasureMethod Method { get; init; }

    /// <summary>Values outside cannot be true and are refused.</summary>
    public required ValueRange HardRange { get; init; }

    /// <summary>Values outside are unusual: asked about, never blocked.</summary>
    public required ValueRange SoftRange { get; init; }

    /// <summary>How trials become one value.</summary>
    public required TrialRule TrialRule { get; init; }

    /// <summary>The error that values are held against; null when none is published.</summary>
    public MeasurementError? Error { get; init; }

    /// <summary>Other published errors, shown beside and not used.</summary>
    public ImmutableArray<MeasurementError> OtherErrors { get; init; } = [];

    /// <summary>The smallest change that matters to patients; null when none is published.</summary>
    public McidRule? Mcid { get; init; }

    /// <summary>Limb symmetry index under which the worse side is called low, as a fraction; null when none is in use.</summary>
    public double? SymmetryLimit { get; init; }

    /// <summary>Set-up of a strength test; present for strength only.</summary>
    public StrengthSetUp? Strength { get; init; }

    /// <summary>Set-up of a muscle length test; present for muscle length only.</summary>
    public LengthSetUp? Length { get; init; }

    /// <summary>Items and scoring; present for questionnaires only.</summary>
    public QuestionnaireSetUp? Questionnaire { get; init; }

    /// <summary>The lack that the measure itself shows, for tasks and load; null where it shows none.</summary>
    public ShownLack? Shows { get; init; }

    /// <summary>Minutes of the patient's time as part of the short core set of its regions; null when not in it.</summary>
    public double? CoreMinutes { get; init; }

    /// <summary>Cautions for the examiner.</summary>
    public ImmutableArray<string> Cautions { get; init; } = [];

    /// <summary>Keys into content/sources.json that the definition rests on.</summary>
    public required ImmutableArray<string> Sources { get; init; }

    /// <summary>Whether every figure of the definition was read in its source. False is shown as "not verified".</summary>
    public required bool Verified { get; init; }

    /// <summary>Combines trials by the rule of the measure.</summary>
    /// <param name="trials">At least one finite value in the stored unit.</param>
    /// <returns>One value in the stored unit.</returns>
    /// <exception cref="ArgumentException">There is no trial, or one is not a finite number.</exception>
    public double Combine(ImmutableArray<double> trials)
    {
        if (trials.IsDefaultOrEmpty || !trials.All(double.IsFinite))
            throw new ArgumentException($"{Name}: give at least one trial, each a finite number.", nameof(trials));
        if (TrialRule == TrialRule.Mean)
            return trials.Average();
        return Direction == Direction.LowerBetter ? trials.Min() : trials.Max();
    }

    /// <summary>How much better the second value is than the first, in the stored unit; negative when worse.</summary>
    /// <param name="from">Earlier or reference value.</param>
    /// <param name="to">Later or judged value.</param>
    /// <returns>The gain; the plain difference where neither direction is better.</returns>
    public double Gain(double from, double to) => Direction == Direction.LowerBetter ? from - to : to - from;
}
