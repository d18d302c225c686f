using System.Text.Json.Serialization;
using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Prescribing;

namespace MomentArm.Content;

/// <summary>
/// A case in one JSON file, for work without the web. Unknown keys are refused; missing facts are welcome: one
/// measurement or one wish is enough.
/// </summary>
public sealed record CaseFile
{
    /// <summary>Where the schema is.</summary>
    [JsonPropertyName("$schema")]
    public string? Schema { get; init; }

    /// <summary>The person; every part may be missing.</summary>
    public CasePatient Patient { get; init; } = new();

    /// <summary>What it is about.</summary>
    public CaseComplaint Complaint { get; init; } = new();

    /// <summary>Answers to danger signs by id: yes, no or notAsked.</summary>
    public IReadOnlyDictionary<string, DangerAnswer> DangerSigns { get; init; } = new Dictionary<string, DangerAnswer>();

    /// <summary>What was measured, as typed, when there was one visit: "hip abd L 118 N at 36 cm pain 3, R 149".</summary>
    public IReadOnlyList<string> Entries { get; init; } = [];

    /// <summary>Several visits, first to last, in place of entries.</summary>
    public IReadOnlyList<CaseVisitFile> Visits { get; init; } = [];

    /// <summary>Clinical tests, answers and starting values for working hypotheses.</summary>
    public CaseReasoning? Reasoning { get; init; }

    /// <summary>What the person wants, in their words.</summary>
    public IReadOnlyList<string> Wishes { get; init; } = [];

    /// <summary>Time, things and positions.</summary>
    public CaseLimits Limits { get; init; } = new();

    /// <summary>A program chosen by hand; empty for a draft from the findings.</summary>
    public IReadOnlyList<CaseExercise> Exercises { get; init; } = [];
}

/// <summary>The person of a case file.</summary>
public sealed record CasePatient
{
    /// <summary>female or male.</summary>
    public Sex? Sex { get; init; }

    /// <summary>Age in years.</summary>
    public double? AgeYears { get; init; }

    /// <summary>Stature in centimeters.</summary>
    public double? StatureCm { get; init; }

    /// <summary>Body mass in kilograms.</summary>
    public double? MassKg { get; init; }
}

/// <summary>The complaint of a case file.</summary>
public sealed record CaseComplaint
{
    /// <summary>Short, such as "left hip, outer side".</summary>
    public string? Title { get; init; }

    /// <summary>The region; when left out the words of the title tell it. It decides which danger signs are asked.</summary>
    public BodyRegion? Region { get; init; }

    /// <summary>The affected side.</summary>
    public Side? Side { get; init; }

    /// <summary>The clinician's grade of irritability.</summary>
    public Irritability? Irritability { get; init; }
}

/// <summary>One visit of a case file.</summary>
public sealed record CaseVisitFile
{
    /// <summary>Day of the visit.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>What was measured, as typed.</summary>
    public required IReadOnlyList<string> Entries { get; init; }
}

/// <summary>What limits the choice in a case file.</summary>
public sealed record CaseLimits
{
    /// <summary>Minutes a session.</summary>
    public int? Minutes { get; init; }

    /// <summary>Days a week.</summary>
    public int? DaysPerWeek { get; init; }

    /// <summary>What the person has; leave out when not asked.</summary>
    public IReadOnlyList<Equipment>? Equipment { get; init; }

    /// <summary>Positions to avoid.</summary>
    public IReadOnlyList<BodyPosition> Avoid { get; init; } = [];
}

/// <summary>One exercise chosen by hand; what is left out comes from its usual dose.</summary>
public sealed record CaseExercise
{
    /// <summary>Id of the exercise.</summary>
    public required string Id { get; init; }

    /// <summary>The working side; the affected side when left out.</summary>
    public Side? Side { get; init; }

    /// <summary>Whether the other side follows.</summary>
    public bool BothSides { get; init; }

    /// <summary>Sets.</summary>
    public int? Sets { get; init; }

    /// <summary>Repetitions.</summary>
    public int? Repetitions { get; init; }

    /// <summary>Seconds held.</summary>
    public double? HoldSeconds { get; init; }

    /// <summary>Added weight in kilograms.</summary>
    public double? WeightKg { get; init; }
}
