using System.Text.Json.Serialization;
using MomentArm.Body;

namespace MomentArm.Content;

/// <summary>content/norms/predictions.json: published equations.</summary>
public sealed record PredictionsFile
{
    /// <summary>Where the schema is.</summary>
    [JsonPropertyName("$schema")]
    public required string Schema { get; init; }

    /// <summary>The equations.</summary>
    public required IReadOnlyList<PredictionFile> Predictions { get; init; }
}

/// <summary>One equation. Numbers in the unit of the measure's file.</summary>
public sealed record PredictionFile
{
    /// <summary>The measure.</summary>
    public required string MeasureId { get; init; }

    /// <summary>Sex; left out for both together.</summary>
    public Sex? Sex { get; init; }

    /// <summary>Youngest age, years.</summary>
    public required double AgeFrom { get; init; }

    /// <summary>Oldest age, years.</summary>
    public required double AgeTo { get; init; }

    /// <summary>Constant.</summary>
    public required double Constant { get; init; }

    /// <summary>Per year of age.</summary>
    public double PerYear { get; init; }

    /// <summary>Per centimetre of stature.</summary>
    public double PerCm { get; init; }

    /// <summary>Per kilogram of body mass.</summary>
    public double PerKg { get; init; }

    /// <summary>How far below the prediction the lower limit lies.</summary>
    public double? LimitBelow { get; init; }

    /// <summary>People it was made from.</summary>
    public int? N { get; init; }

    /// <summary>Who they were.</summary>
    public required string Population { get; init; }

    /// <summary>How they were measured.</summary>
    public required string Method { get; init; }

    /// <summary>Key into sources.json.</summary>
    public required string Source { get; init; }

    /// <summary>Whether the equation was read in its source.</summary>
    public required bool Verified { get; init; }
}
