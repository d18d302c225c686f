using MomentArm.Body;
using MomentArm.Records;

namespace MomentArm.Web.Pages.People;

/// <summary>What the page about a patient asks, as typed.</summary>
public sealed class PatientForm : ITypedForm
{
    public string? DisplayName { get; set; }

    public string? Birth { get; set; }

    public string? Sex { get; set; }

    public string? Stature { get; set; }

    public string? Mass { get; set; }

    public string? Occupation { get; set; }

    public string? Note { get; set; }

    /// <summary>Made when the empty form is shown: the same form sent twice adds one patient.</summary>
    public Guid FormId { get; set; }

    /// <summary>The questions already shown, so that the same ones are not asked twice.</summary>
    public string? Asked { get; set; }

    public string? Version { get; set; }

    public string? AsRead { get; set; }

    public IReadOnlyList<TypedField> Fields() =>
    [
        new(nameof(DisplayName), "Name", () => DisplayName, v => DisplayName = v),
        new(nameof(Birth), "Birth year or date", () => Birth, v => Birth = v),
        new(nameof(Sex), "Sex", () => Sex, v => Sex = v),
        new(nameof(Stature), "Stature", () => Stature, v => Stature = v),
        new(nameof(Mass), "Body mass", () => Mass, v => Mass = v),
        new(nameof(Occupation), "Occupation", () => Occupation, v => Occupation = v),
        new(nameof(Note), "Note", () => Note, v => Note = v),
    ];

    /// <summary>The form of a stored patient.</summary>
    public static PatientForm Of(Patient row)
    {
        ArgumentNullException.ThrowIfNull(row);
        var form = new PatientForm
        {
            DisplayName = row.DisplayName,
            Birth = row.BirthDate is { } day
                ? FormattableString.Invariant($"{day:yyyy-MM-dd}")
                : row.BirthYear is { } year ? FormattableString.Invariant($"{year}") : null,
            Sex = row.Sex?.ToString(),
            Stature = BodySizeText.StatureField(row.StatureM),
            Mass = BodySizeText.MassField(row.MassKg),
            Occupation = row.Occupation,
            Note = row.Note,
        };
        form.MarkRead(row.RowVersion);
        return form;
    }

    /// <summary>Reads the fields.</summary>
    /// <param name="stored">The stored patient, whose exact sizes stand while their fields are not touched; null for a new one.</param>
    /// <param name="today">Today in the clinic.</param>
    public PatientReading Read(Patient? stored, DateOnly today)
    {
        var faults = new Dictionary<string, string>();
        void Note(string field, string? fault)
        {
            if (fault is not null)
                faults[field] = fault;
        }

        if (string.IsNullOrWhiteSpace(DisplayName))
            Note(nameof(DisplayName), "Give the patient a name to show; everything else may stay empty.");
        var birth = BirthText.Read(Birth, today);
        Note(nameof(Birth), birth.Fault);
        var stature = BodySizeText.Stature(Stature);
        Note(nameof(Stature), stature.Fault);
        var mass = BodySizeText.Mass(Mass);
        Note(nameof(Mass), mass.Fault);
        if (faults.Count > 0)
            return new PatientReading(null, faults, []);
        var statureM = Stature?.Trim() == BodySizeText.StatureField(stored?.StatureM) ? stored?.StatureM : stature.Value;
        var massKg = Mass?.Trim() == BodySizeText.MassField(stored?.MassKg) ? stored?.MassKg : mass.Value;
        var details = new PatientDetails(
            DisplayName!.Trim(), stored?.GivenName, stored?.FamilyName, birth.Year, birth.Date,
            Enum.TryParse<Sex>(Sex, out var sex) ? sex : null, statureM, massKg, Kept(Occupation), Kept(this.Note));
        return new PatientReading(details, faults, Plausibility.Questions(details, today));
    }

    private static string? Kept(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}

/// <summary>A patient form as read.</summary>
/// <param name="Details">What can be saved; null when a field could not be read.</param>
/// <param name="Faults">What is wrong, by field.</param>
/// <param name="Questions">What is possible but unusual.</param>
public sealed record PatientReading(
    PatientDetails? Details, IReadOnlyDictionary<string, string> Faults, IReadOnlyList<string> Questions);
