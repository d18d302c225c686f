using MomentArm.Body;

namespace MomentArm.Records;

/// <summary>What can be typed about a patient. Only the name to show is needed.</summary>
public sealed record PatientDetails(
    string DisplayName,
    string? GivenName = null,
    string? FamilyName = null,
    int? BirthYear = null,
    DateOnly? BirthDate = null,
    Sex? Sex = null,
    double? StatureM = null,
    double? MassKg = null,
    string? Occupation = null,
    string? Note = null)
{
    /// <summary>What a row says, ready for editing.</summary>
    public static PatientDetails Of(Patient row) => new(
        row.DisplayName, row.GivenName, row.FamilyName, row.BirthYear, row.BirthDate, row.Sex, row.StatureM, row.MassKg,
        row.Occupation, row.Note);

    /// <summary>The sentence that says what can't be right; null when nothing is wrong.</summary>
    internal string? Fault(DateOnly today)
    {
        if (string.IsNullOrWhiteSpace(DisplayName))
            return "Give the patient a name to show; everything else may stay empty.";
        if (DisplayName.Length > 200)
            return "The name is longer than 200 characters; shorten it.";
        var year = BirthDate?.Year ?? BirthYear;
        if (year is { } born && (born < today.Year - 120 || born > today.Year) || BirthDate > today)
            return FormattableString.Invariant($"The birth year must be from {today.Year - 120} to {today.Year}.");
        if (StatureM is { } stature && !(stature >= 0.8 && stature <= 2.4))
            return "The stature must be from 0.8 to 2.4 m.";
        if (MassKg is { } mass && !(mass >= 15 && mass <= 350))
            return "The mass must be from 15 to 350 kg.";
        return null;
    }

    /// <summary>Whether a row says what writing these details would make it say.</summary>
    internal bool IsWrittenIn(Patient row)
    {
        var written = new Patient { DisplayName = DisplayName };
        WriteTo(written);
        return Of(written) == Of(row);
    }

    internal void WriteTo(Patient row)
    {
        row.DisplayName = DisplayName.Trim();
        row.GivenName = GivenName;
        row.FamilyName = FamilyName;
        row.SearchText = PatientStore.Searchable($"{DisplayName} {GivenName} {FamilyName}");
        row.BirthYear = BirthDate?.Year ?? BirthYear;
        row.BirthDate = BirthDate;
        row.Sex = Sex;
        row.StatureM = StatureM;
        row.MassKg = MassKg;
        row.Occupation = Occupation;
        row.Note = Note;
    }
}
