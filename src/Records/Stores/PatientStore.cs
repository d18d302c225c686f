using System.Globalization;
using System.Text;
using Microsoft.EntityFrameworkCore;

namespace MomentArm.Records;

/// <summary>The clinic's patients.</summary>
public sealed class PatientStore(RecordsWork work)
{
    /// <summary>Most patients one list shows; search narrows it.</summary>
    public const int ListLimit = 200;

    /// <summary>Patients whose names hold every typed word, whatever the case and accents; all when nothing is typed.</summary>
    public Task<IReadOnlyList<Patient>> ListAsync(Acting who, string? search = null, CancellationToken cancellationToken = default) =>
        work.ReadAsync<IReadOnlyList<Patient>>(
            who,
            async db =>
            {
                IQueryable<Patient> patients = db.Patients;
                foreach (var word in Searchable(search ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries))
                    patients = patients.Where(p => p.SearchText.Contains(word));
                return await patients.OrderBy(p => p.SearchText).ThenBy(p => p.Id).Take(ListLimit).ToListAsync(cancellationToken);
            },
            cancellationToken);

    /// <summary>Patients with an open episode of care, in order of name.</summary>
    public Task<IReadOnlyList<Patient>> InCareAsync(Acting who, CancellationToken cancellationToken = default) =>
        work.ReadAsync<IReadOnlyList<Patient>>(
            who,
            async db => await db.Patients.Where(p => db.Episodes.Any(e => e.PatientId == p.Id && e.ClosedOn == null))
                .OrderBy(p => p.SearchText).ThenBy(p => p.Id).ToListAsync(cancellationToken),
            cancellationToken);

    /// <summary>The acting person's clinic.</summary>
    public Task<Clinic> ClinicAsync(Acting who, CancellationToken cancellationToken = default) =>
        work.ReadAsync(who, db => db.Clinics.AsNoTracking().FirstAsync(cancellationToken), cancellationToken);

    /// <summary>One patient; null when this clinic has none with that id.</summary>
    public Task<Patient?> GetAsync(Acting who, Guid patientId, CancellationToken cancellationToken = default) =>
        work.ReadAsync(who, db => db.Patients.FirstOrDefaultAsync(p => p.Id == patientId, cancellationToken), cancellationToken);

    /// <summary>Adds a patient.</summary>
    public Task<SaveOutcome<Patient>> AddAsync(Acting who, PatientDetails details, CancellationToken cancellationToken = default) =>
        AddAsync(who, null, details, cancellationToken);

    /// <summary>Adds a patient under an id the form was given when it was shown: the same form sent twice is one patient.</summary>
    public Task<SaveOutcome<Patient>> AddOnceAsync(
        Acting who, Guid formId, PatientDetails details, CancellationToken cancellationToken = default) =>
        AddAsync(who, formId, details, cancellationToken);

    private Task<SaveOutcome<Patient>> AddAsync(
        Acting who, Guid? formId, PatientDetails details, CancellationToken cancellationToken) =>
        work.WriteAsync(
            who,
            async db =>
            {
                if (details.Fault(DateOnly.FromDateTime(db.UtcNow)) is { } fault)
                    return Outcome.Refused<Patient>(fault);
                if (await db.Patients.FirstOrDefaultAsync(p => p.Id == formId, cancellationToken) is { } there)
                    return details.IsWrittenIn(there) ? Outcome.Saved(there) : Outcome.Refused<Patient>(AddedAlready);
                var row = new Patient { ClinicId = who.ClinicId, Id = formId ?? db.NewId(), DisplayName = details.DisplayName };
                details.WriteTo(row);
                db.Patients.Add(row);
                return Outcome.Saved(row);
            },
            cancellationToken,
            "patient/new",
            details);

    /// <summary>Changes a patient, if nobody did since the version that was read.</summary>
    public Task<SaveOutcome<Patient>> EditAsync(
        Acting who, Guid patientId, PatientDetails details, Guid expectedVersion, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                if (details.Fault(DateOnly.FromDateTime(db.UtcNow)) is { } fault)
                    return Outcome.Refused<Patient>(fault);
                var row = await db.Patients.FirstOrDefaultAsync(p => p.Id == patientId, cancellationToken);
                if (row is null)
                    return Outcome.Refused<Patient>(NotHere);
                if (row.RowVersion != expectedVersion && PatientDetails.Of(row) != details)
                    return await RecordsWork.ConflictAsync(db, row.Id, row, cancellationToken);
                details.WriteTo(row);
                return Outcome.Saved(row);
            },
            cancellationToken,
            $"patient/{patientId:D}",
            details);

    internal const string AddedAlready =
        "This form has added its patient already, with other values. Open that patient to change them; nothing was added twice.";

    internal const string NotHere = "This clinic has no such patient.";

    /// <summary>Capitals without accents, so that "ozil" finds "Özil".</summary>
    internal static string Searchable(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var letter in text.Normalize(NormalizationForm.FormD))
        {
            if (CharUnicodeInfo.GetUnicodeCategory(letter) != UnicodeCategory.NonSpacingMark)
                plain.Append(char.IsWhiteSpace(letter) ? ' ' : char.ToUpperInvariant(letter));
        }
        return plain.ToString().Trim();
    }
}
