using System.Text.Json;
using MomentArm.Content;
using MomentArm.Records;
using MomentArm.Web.Clinic;
using MomentArm.Web.Hosting;

namespace MomentArm.Web.Pages.Designer;

/// <summary>What a person has made and not yet saved.</summary>
public sealed record DesignDraft
{
    /// <summary>The version it changes; null for a new form.</summary>
    public Guid? BasedOn { get; init; }

    /// <summary>As typed.</summary>
    public required OwnFormFile Form { get; init; }
}

/// <summary>Saving, starting and reading a clinic's own forms, with the rules that no page may go around.</summary>
public sealed class FormDesk(RecordsStores stores, ContentLibrary content, HouseSettings settings)
{
    /// <summary>What the keys of all drafts of forms begin with.</summary>
    public const string DraftStart = "form/";

    public const string FaultsSentence = "The form still has faults, so it stays your draft. They are listed with the figures.";

    /// <summary>Key of the draft of a form, or of a new one.</summary>
    public static string DraftKey(string name) => DraftStart + name;

    /// <summary>Saves a new version, only when nothing is wrong with it.</summary>
    public async Task<SaveOutcome<ClinicForm>> SaveAsync(Acting who, OwnFormFile form, Guid? basedOn)
    {
        ArgumentNullException.ThrowIfNull(form);
        var named = form;
        if (basedOn is null)
        {
            var taken = (await stores.Forms.MarksAsync(who)).Select(m => m.FormId).ToHashSet();
            named = form with { Exercise = form.Exercise with { Id = NewForm.IdFor(form.Exercise.Name, taken) } };
        }

        return OwnForm.Check(named, content).Form is null
            ? new SaveOutcome<ClinicForm>.Refused(FaultsSentence)
            : await stores.Forms.SaveAsync(
                who, new FormInput(named.Exercise.Id, named.Exercise.Name.Trim(), OwnForm.CurrentFormat, OwnForm.Write(named)), basedOn);
    }

    /// <summary>What a new form starts from: a shipped or own form, or a neutral stance; null when there is no such form.</summary>
    public async Task<OwnFormFile?> StartAsync(Acting who, string? from)
    {
        if (string.IsNullOrEmpty(from))
            return NewForm.Neutral();
        var source = from.StartsWith(OwnForm.IdStart, StringComparison.Ordinal)
            ? await stores.Forms.LatestAsync(who, from) is { } row ? Read(row) : null
            : ShippedForms.Read(content, settings.ContentPath, from);
        return source is null ? null : NewForm.CopyOf(source, $"{source.Exercise.Name}, our way");
    }

    /// <summary>A stored version as a form; null when this program can't read it.</summary>
    public static OwnFormFile? Read(ClinicForm row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return row.Format > OwnForm.CurrentFormat ? null : OwnForm.Read(row.Document).Form;
    }

    /// <summary>Takes in a file as a draft; gives its name, or every fault. What is only unfinished is told in the designer.</summary>
    public async Task<(string? DraftName, IReadOnlyList<ContentFault> Faults)> ImportAsync(Acting who, IFormFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        if (file.Length > 4 * OwnForm.LongestFile)
            return (null, [new ContentFault(file.FileName, null, "", "The file is too large for an exercise form.", "Choose the file of a single form.")]);
        using var reader = new StreamReader(file.OpenReadStream());
        var (form, faults) = OwnForm.Read(await reader.ReadToEndAsync());
        if (form is null)
            return (null, faults);
        if (form.Exercise.Poses.Count is 0 or > 9)
            return (null, [new ContentFault(file.FileName, null, "exercise.poses", "A form has 1 to 9 poses.", "Choose another file.")]);
        var name = "new-import-" + Guid.NewGuid().ToString("N")[..8];
        await KeepAsync(who, name, new DesignDraft { Form = form with { Exercise = form.Exercise with { Id = OwnForm.IdStart + "new" } } });
        return (name, []);
    }

    /// <summary>Keeps a draft.</summary>
    public Task KeepAsync(Acting who, string name, DesignDraft draft) =>
        stores.Drafts.SaveAsync(who, DraftKey(name), JsonSerializer.Serialize(draft, StrictJson.Options));

    /// <summary>A kept draft and when it was kept; null when there is none or it can't be read.</summary>
    public async Task<(DesignDraft Draft, DateTime AtUtc)?> DraftAsync(Acting who, string name) =>
        await stores.Drafts.GetAsync(who, DraftKey(name)) is { } row && ReadDraft(row) is { } draft ? (draft, row.UpdatedAtUtc) : null;

    /// <summary>Drops a draft.</summary>
    public Task DropAsync(Acting who, string name) => stores.Drafts.RemoveAsync(who, DraftKey(name));

    /// <summary>A draft row; null when it can't be read.</summary>
    public static DesignDraft? ReadDraft(DraftRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        try
        {
            return JsonSerializer.Deserialize<DesignDraft>(row.Text, StrictJson.Options);
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
