using System.Collections.Concurrent;
using MomentArm.Content;
using MomentArm.Records;

namespace MomentArm.Web.Clinic;

/// <summary>Gives each clinic its library, read again only when one of its forms changed.</summary>
public sealed class ClinicLibraries(RecordsStores stores, ContentLibrary content)
{
    private readonly ConcurrentDictionary<Guid, (string Key, ClinicLibrary Library)> known = new();
    private readonly ClinicLibrary shipped = new(content, [], new Dictionary<string, Lazy<KeptForm>>());

    /// <summary>The library as it stands now.</summary>
    public async Task<ClinicLibrary> ForAsync(Acting who, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(who);
        var marks = await stores.Forms.MarksAsync(who, cancellationToken);
        if (marks.Count == 0)
            return shipped;
        var key = string.Join(' ', marks.Select(m => $"{m.Id:N}{m.State}"));
        if (known.TryGetValue(who.ClinicId, out var last) && last.Key == key)
            return last.Library;
        var before = last.Library?.Versions ?? new Dictionary<string, Lazy<KeptForm>>();
        var rows = await stores.Forms.ListAsync(who, cancellationToken);
        var replaced = await stores.Forms.ReplacedAsync(who, cancellationToken);
        var library = new ClinicLibrary(
            content,
            [
                .. rows.Select(row => before.TryGetValue(ClinicLibrary.IdOf(row.FormId, row.Number), out var same)
                    ? same.Value with { InUse = row.State == ClinicFormState.InUse }
                    : Read(row)),
            ],
            replaced.ToDictionary(
                row => ClinicLibrary.IdOf(row.FormId, row.Number),
                row => before.GetValueOrDefault(ClinicLibrary.IdOf(row.FormId, row.Number)) ?? new Lazy<KeptForm>(() => Read(row))));
        known[who.ClinicId] = (key, library);
        return library;
    }

    // A form was settled when it was saved; what a newer body or rule would say of it is told in the designer, and a program keeps it.
    private KeptForm Read(ClinicForm row)
    {
        var (file, damage) = row.Format > OwnForm.CurrentFormat
            ? (null, [new ContentFault(row.Name, null, "format", FormattableString.Invariant($"It is written in format {row.Format}; this program knows up to {OwnForm.CurrentFormat}."), "Use the newer program that wrote it.")])
            : OwnForm.Read(row.Document);
        var (form, faults) = file is null ? (null, damage) : OwnForm.Check(file, content, settle: false);
        var named = form is null ? null : form with { Exercise = form.Exercise with { Id = ClinicLibrary.IdOf(row.FormId, row.Number) } };
        return new KeptForm(row.Id, row.FormId, row.Number, row.Name, row.State == ClinicFormState.InUse, named, form is null ? faults[0] : null);
    }
}
