using MomentArm.Body;

namespace MomentArm.Records;

/// <summary>A patient. Only the name to show is needed; everything else may be missing.</summary>
public sealed class Patient : IAuditedRow, IVersionedRow
{
    public Guid ClinicId { get; init; }

    public Guid Id { get; init; }

    /// <summary>The name as typed and shown.</summary>
    [NameOnly]
    public required string DisplayName { get; set; }

    [NameOnly]
    public string? GivenName { get; set; }

    [NameOnly]
    public string? FamilyName { get; set; }

    /// <summary>Names in capitals without accents, for searching.</summary>
    [NameOnly]
    public string SearchText { get; set; } = "";

    public int? BirthYear { get; set; }

    [NameOnly]
    public DateOnly? BirthDate { get; set; }

    public Sex? Sex { get; set; }

    public double? StatureM { get; set; }

    public double? MassKg { get; set; }

    [NameOnly]
    public string? Occupation { get; set; }

    [NameOnly]
    public string? Note { get; set; }

    public Guid RowVersion { get; set; }

    /// <summary>Age in whole years on a day; from the birth year alone it may be one too many.</summary>
    public int? AgeOn(DateOnly day)
    {
        if (BirthDate is not { } born)
            return BirthYear is { } year ? Math.Max(0, day.Year - year) : null;
        var age = day.Year - born.Year;
        return Math.Max(0, born.AddYears(age) > day ? age - 1 : age);
    }

    /// <summary>What the computing rooms need to know of the person's build.</summary>
    public Physique PhysiqueOn(DateOnly day) => new(Sex, AgeOn(day), StatureM, MassKg);
}
