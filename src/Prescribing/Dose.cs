namespace MomentArm.Prescribing;

/// <summary>
/// A dose, complete enough to follow alone at home. Work is counted either in repetitions or in a hold time, or both
/// (repetitions with a hold each).
/// </summary>
public sealed record Dose
{
    /// <summary>Sets on each side that works, 1 to 10.</summary>
    public required int Sets { get; init; }

    /// <summary>Repetitions per set, 1 to 200; 1 for a single hold.</summary>
    public required int Repetitions { get; init; }

    /// <summary>Highest repetitions of a range, when the dose is a range; null when it is one number.</summary>
    public int? RepetitionsTo { get; init; }

    /// <summary>Seconds from start to end pose, 0.5 to 30.</summary>
    public double OutSeconds { get; init; } = 2;

    /// <summary>Seconds held at the end pose, 0 to 600.</summary>
    public double HoldSeconds { get; init; }

    /// <summary>Seconds back to the start pose, 0.5 to 30.</summary>
    public double BackSeconds { get; init; } = 3;

    /// <summary>Rest between sets, seconds, 0 to 600.</summary>
    public int RestSeconds { get; init; } = 60;

    /// <summary>Times a day, 1 to 10.</summary>
    public int TimesPerDay { get; init; } = 1;

    /// <summary>Days a week, 1 to 7.</summary>
    public required int DaysPerWeek { get; init; }

    /// <summary>Effort aimed at after the last repetition, 0 to 10 (0 none, 10 cannot do more); null where effort is no guide.</summary>
    public int? Effort { get; init; }

    /// <summary>Added weight in kilograms, 0 to 240; null for none.</summary>
    public double? WeightKg { get; init; }

    /// <summary>Seconds of work in one set on one side.</summary>
    public double SetSeconds => Repetitions * (OutSeconds + HoldSeconds + BackSeconds);
}
