using Microsoft.EntityFrameworkCore;

namespace MomentArm.Records;

/// <summary>What is saved of a form that a clinic made itself.</summary>
/// <param name="FormId">The id programs name it by.</param>
/// <param name="Name">Its trade name.</param>
/// <param name="Format">The way in which the document is written.</param>
/// <param name="Document">The form as JSON.</param>
public sealed record FormInput(string FormId, string Name, int Format, string Document);

/// <summary>Which version of which form stands, without what it says.</summary>
/// <param name="Id">The version.</param>
/// <param name="FormId">The form.</param>
/// <param name="State">Whether it is offered.</param>
public sealed record FormMark(Guid Id, string FormId, ClinicFormState State);

/// <summary>The exercise forms a clinic made itself, each as a growing list of versions.</summary>
public sealed class FormStore(RecordsWork work)
{
    private const string NotHere = "This clinic has no such form.";

    /// <summary>The latest version of every form, in use or retired, by name.</summary>
    public Task<IReadOnlyList<ClinicForm>> ListAsync(Acting who, CancellationToken cancellationToken = default) =>
        work.ReadAsync<IReadOnlyList<ClinicForm>>(
            who,
            async db => await db.ClinicForms.Where(f => f.State != ClinicFormState.Replaced)
                .OrderBy(f => f.Name).ThenBy(f => f.FormId).ToListAsync(cancellationToken),
            cancellationToken);

    /// <summary>The versions that a later one took the place of: programs made with them show them still.</summary>
    public Task<IReadOnlyList<ClinicForm>> ReplacedAsync(Acting who, CancellationToken cancellationToken = default) =>
        work.ReadAsync<IReadOnlyList<ClinicForm>>(
            who,
            async db => await db.ClinicForms.Where(f => f.State == ClinicFormState.Replaced)
                .OrderBy(f => f.FormId).ThenBy(f => f.Number).ToListAsync(cancellationToken),
            cancellationToken);

    /// <summary>Which versions stand, cheaply, to see whether anything changed.</summary>
    public Task<IReadOnlyList<FormMark>> MarksAsync(Acting who, CancellationToken cancellationToken = default) =>
        work.ReadAsync<IReadOnlyList<FormMark>>(
            who,
            async db => await db.ClinicForms.Where(f => f.State != ClinicFormState.Replaced)
                .OrderBy(f => f.FormId).Select(f => new FormMark(f.Id, f.FormId, f.State)).ToListAsync(cancellationToken),
            cancellationToken);

    /// <summary>The latest version of a form; null when this clinic has none with that id.</summary>
    public Task<ClinicForm?> LatestAsync(Acting who, string formId, CancellationToken cancellationToken = default) =>
        work.ReadAsync(who, db => LatestAsync(db, formId, cancellationToken), cancellationToken);

    /// <summary>One version of a form; null when this clinic has none with that number.</summary>
    public Task<ClinicForm?> VersionAsync(Acting who, string formId, int number, CancellationToken cancellationToken = default) =>
        work.ReadAsync(who, db => db.ClinicForms.FirstOrDefaultAsync(f => f.FormId == formId && f.Number == number, cancellationToken), cancellationToken);

    /// <summary>All versions of a form, latest first.</summary>
    public Task<IReadOnlyList<ClinicForm>> HistoryAsync(Acting who, string formId, CancellationToken cancellationToken = default) =>
        work.ReadAsync<IReadOnlyList<ClinicForm>>(
            who,
            async db => await db.ClinicForms.Where(f => f.FormId == formId).OrderByDescending(f => f.Number).ToListAsync(cancellationToken),
            cancellationToken);

    /// <summary>Saves a new version, in use from now on. Saving the same again gives back the version there is.</summary>
    /// <param name="who">Who acts.</param>
    /// <param name="form">The form.</param>
    /// <param name="basedOn">Id of the latest version when editing began; null for a new form.</param>
    /// <param name="cancellationToken">Cancels before the commit.</param>
    public Task<SaveOutcome<ClinicForm>> SaveAsync(
        Acting who, FormInput form, Guid? basedOn, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                var latest = await LatestAsync(db, form.FormId, cancellationToken);
                if (latest is { State: ClinicFormState.InUse } && latest.Document == form.Document && latest.Format == form.Format)
                    return Outcome.Saved(latest);
                if (latest?.Id != basedOn)
                    return await RecordsWork.ConflictAsync(db, latest?.Id ?? Guid.Empty, latest, cancellationToken);
                if (latest is not null)
                    latest.State = ClinicFormState.Replaced;
                var row = new ClinicForm
                {
                    ClinicId = who.ClinicId,
                    Id = db.NewId(),
                    FormId = form.FormId,
                    Number = (latest?.Number ?? 0) + 1,
                    Name = form.Name,
                    Format = form.Format,
                    Document = form.Document,
                    CreatedById = who.Clinician,
                    CreatedByName = who.Name,
                    CreatedAtUtc = db.UtcNow,
                };
                db.ClinicForms.Add(row);
                return Outcome.Saved(row);
            },
            cancellationToken);

    /// <summary>Retires a form, or takes it into use again.</summary>
    /// <param name="who">Who acts.</param>
    /// <param name="versionId">The latest version as it was shown.</param>
    /// <param name="inUse">Whether it is offered from now on.</param>
    /// <param name="cancellationToken">Cancels before the commit.</param>
    public Task<SaveOutcome<ClinicForm>> SetInUseAsync(
        Acting who, Guid versionId, bool inUse, CancellationToken cancellationToken = default) =>
        work.WriteAsync(
            who,
            async db =>
            {
                var row = await db.ClinicForms.FirstOrDefaultAsync(f => f.Id == versionId, cancellationToken);
                if (row is null)
                    return Outcome.Refused<ClinicForm>(NotHere);
                if (row.State == ClinicFormState.Replaced)
                    return await RecordsWork.ConflictAsync(db, row.Id, await LatestAsync(db, row.FormId, cancellationToken), cancellationToken);
                row.State = inUse ? ClinicFormState.InUse : ClinicFormState.Retired;
                db.Doing(inUse ? "taken into use" : "retired", row);
                return Outcome.Saved(row);
            },
            cancellationToken);

    private static Task<ClinicForm?> LatestAsync(RecordsContext db, string formId, CancellationToken cancellationToken) =>
        db.ClinicForms.Where(f => f.FormId == formId).OrderByDescending(f => f.Number).FirstOrDefaultAsync(cancellationToken);
}
