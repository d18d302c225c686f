using System.Text.Json.Serialization;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Content;

/// <summary>What the reasoning of a case file is told beyond the measurements.</summary>
public sealed record CaseReasoning
{
    /// <summary>The part of the body; every part when left out.</summary>
    public BodyRegion? Region { get; init; }

    /// <summary>Days since the injury.</summary>
    public int? DaysSinceInjury { get; init; }

    /// <summary>Clinical tests done.</summary>
    public IReadOnlyList<CaseTest> Tests { get; init; } = [];

    /// <summary>Answers to questions by id: yes, no or unknown.</summary>
    public IReadOnlyDictionary<string, ItemAnswer> Answers { get; init; } = new Dictionary<string, ItemAnswer>();

    /// <summary>Starting values of your own by pattern id.</summary>
    public IReadOnlyDictionary<string, CasePrior> Priors { get; init; } = new Dictionary<string, CasePrior>();

    /// <summary>Ids of figures marked checkFirst that you confirmed in the paper.</summary>
    public IReadOnlyList<string> ConfirmedFigures { get; init; } = [];

    /// <summary>Answers to the yellow flags by id: yes, no or unknown.</summary>
    public IReadOnlyDictionary<string, ItemAnswer> YellowFlags { get; init; } = new Dictionary<string, ItemAnswer>();

    /// <summary>What was asked about irritability.</summary>
    public CaseIrritability? Irritability { get; init; }
}

/// <summary>A clinical test of a case file.</summary>
public sealed record CaseTest
{
    /// <summary>Id of the test.</summary>
    public required string Test { get; init; }

    /// <summary>The side; the affected side when left out.</summary>
    public Side? Side { get; init; }

    /// <summary>positive, negative or unclear; left out for a counted test.</summary>
    [JsonPropertyName("result")]
    public TestOutcome? Outcome { get; init; }

    /// <summary>Signs present, for a counted test.</summary>
    public int? Count { get; init; }
}

/// <summary>A starting value of the clinician's own.</summary>
public sealed record CasePrior
{
    /// <summary>Probability, above 0 and below 1.</summary>
    public required double Value { get; init; }

    /// <summary>Lower end of its range.</summary>
    public double? Low { get; init; }

    /// <summary>Upper end of its range.</summary>
    public double? High { get; init; }
}

/// <summary>Irritability as asked in a case file; worst pain comes from the measurements.</summary>
public sealed record CaseIrritability
{
    /// <summary>Pain at rest or at night: none, comesAndGoes or constant.</summary>
    public RestPain? Rest { get; init; }

    /// <summary>Hours until symptoms settle after being provoked.</summary>
    public double? FlareHours { get; init; }

    /// <summary>Disability: low, moderate or high.</summary>
    public Irritability? Disability { get; init; }

    /// <summary>Where in the range pain comes: onlyWithPressure, atEnd or beforeEnd.</summary>
    public PainInRange? InRange { get; init; }

    /// <summary>Whether active range is clearly less than passive range.</summary>
    public bool? ActiveLessThanPassive { get; init; }
}
