using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>A published equation: what a person of this sex, age, stature and mass reaches on average, and the lower limit around it.</summary>
public sealed record Prediction
{
    /// <summary>The measure it belongs to.</summary>
    public required string MeasureId { get; init; }

    /// <summary>Sex of the people; null for both together.</summary>
    public Sex? Sex { get; init; }

    /// <summary>Youngest age, years.</summary>
    public required double AgeFrom { get; init; }

    /// <summary>Oldest age, years, that year included.</summary>
    public required double AgeTo { get; init; }

    /// <summary>Constant, stored unit of the measure.</summary>
    public required double Constant { get; init; }

    /// <summary>Stored unit per year of age.</summary>
    public double PerYear { get; init; }

    /// <summary>Stored unit per centimetre of stature.</summary>
    public double PerCentimetre { get; init; }

    /// <summary>Stored unit per kilogram of body mass.</summary>
    public double PerKilogram { get; init; }

    /// <summary>How far below the prediction the published lower limit lies, stored unit; null when none is published.</summary>
    public double? LimitBelow { get; init; }

    /// <summary>People it was made from; null when not known.</summary>
    public int? N { get; init; }

    /// <summary>Who they were.</summary>
    public required string Population { get; init; }

    /// <summary>How they were measured.</summary>
    public required string Method { get; init; }

    /// <summary>Key into content/sources.json.</summary>
    public required string Source { get; init; }

    /// <summary>Whether the equation was read in the source.</summary>
    public required bool Verified { get; init; }

    /// <summary>The equation worked out for a person, as a row that is shown beside and never grades.</summary>
    /// <param name="person">The person.</param>
    /// <returns>The row; null when the equation is not about this person or something it needs is not known.</returns>
    public Norm? For(Physique person)
    {
        ArgumentNullException.ThrowIfNull(person);
        if (person.AgeYears is not { } age || age < AgeFrom || age >= AgeTo + 1 || (Sex is not null && Sex != person.Sex))
            return null;
        if ((PerCentimetre != 0 && person.StatureM is null) || (PerKilogram != 0 && person.MassKg is null))
            return null;
        var mean = Constant + (PerYear * age) + (PerCentimetre * 100 * (person.StatureM ?? 0)) + (PerKilogram * (person.MassKg ?? 0));
        return new Norm
        {
            MeasureId = MeasureId,
            Sex = Sex,
            AgeFrom = AgeFrom,
            AgeTo = AgeTo,
            Mean = mean,
            Limit = mean - LimitBelow,
            N = N,
            Unit = NormUnit.Measure,
            Population = Population,
            Method = Method,
            Use = NormUse.Beside,
            Source = Source,
            Verified = Verified,
            Note = "predicted from age, stature and mass",
        };
    }
}
