using System.Text.Json;
using System.Text.Json.Nodes;
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
            ? await RowAsync(who, from) is { } row ? Read(row) : null
            : ShippedForms.Read(content, settings.ContentPath, from);
        return source is null ? null : NewForm.CopyOf(source, $"{source.Exercise.Name}, our way");
    }

    /// <summary>The version that an id names, or the latest; null when there is none.</summary>
    public Task<ClinicForm?> RowAsync(Acting who, string id) => ClinicLibrary.VersionIn(id) is { } number
        ? stores.Forms.VersionAsync(who, ClinicLibrary.FormOf(id), number)
        : stores.Forms.LatestAsync(who, ClinicLibrary.FormOf(id));

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

    /// <summary>
    /// A kept draft and when it was kept; null when there is none. One that can't be read is put aside under another name first, so that nothing
    /// is written over it, and the reason is told.
    /// </summary>
    public async Task<(DesignDraft? Draft, DateTime AtUtc, string? Why, string? PutAside)?> DraftAsync(Acting who, string name)
    {
        if (await stores.Drafts.GetAsync(who, DraftKey(name)) is not { } row)
            return null;
        var (draft, why) = ReadDraft(row);
        if (draft is not null)
            return (draft, row.UpdatedAtUtc, null, null);
        var aside = $"kept-{Guid.NewGuid().ToString("N")[..8]}";
        await stores.Drafts.SaveAsync(who, DraftKey(aside), row.Text);
        await DropAsync(who, name);
        return (null, row.UpdatedAtUtc, why, aside);
    }

    /// <summary>Drops a draft.</summary>
    public Task DropAsync(Acting who, string name) => stores.Drafts.RemoveAsync(who, DraftKey(name));

    /// <summary>Retires a form that is in use, or takes a retired one into use; null, or why not.</summary>
    public async Task<string?> TurnAsync(Acting who, ClinicForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        return await stores.Forms.SetInUseAsync(who, form.Id, form.State != ClinicFormState.InUse) switch
        {
            SaveOutcome<ClinicForm>.Refused no => no.Sentence,
            SaveOutcome<ClinicForm>.Conflict met => met.Sentence,
            _ => null,
        };
    }

    /// <summary>The name of a kept draft.</summary>
    public static string NameOf(DraftRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return row.Key[DraftStart.Length..];
    }

    /// <summary>Where the file of a draft is.</summary>
    public static string DraftFilePath(string name) => $"/exercises/own/drafts/{Uri.EscapeDataString(name)}/file";

    /// <summary>A draft row as a draft, or why it can't be read.</summary>
    public static (DesignDraft? Draft, string? Why) ReadDraft(DraftRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        try
        {
            if (JsonNode.Parse(row.Text)?["form"] is not JsonObject form)
                return (null, "It holds no form.");
            if (form["format"] is JsonValue value && value.TryGetValue<int>(out var format) && format != OwnForm.CurrentFormat)
                return (null, FormattableString.Invariant($"It is written in format {format}; this program writes {OwnForm.CurrentFormat}."));
            var draft = JsonSerializer.Deserialize<DesignDraft>(row.Text, StrictJson.Options);
            return draft is { Form.Exercise.Poses.Count: > 0 } ? (draft, null) : (null, "It has no pose.");
        }
        catch (JsonException error)
        {
            return (null, error.Path is { Length: > 0 } path
                ? $"It is damaged or of another version of the program, at {path.TrimStart('$', '.')}."
                : "It is damaged or of another version of the program.");
        }
        catch (InvalidOperationException)
        {
            return (null, "It is damaged.");
        }
    }

    /// <summary>The trade name that stands in a draft, read as loosely as can be; null where there is none.</summary>
    public static string? NameIn(DraftRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        try
        {
            return JsonNode.Parse(row.Text)?["form"]?["exercise"]?["name"]?.GetValue<string>() is { Length: > 0 } name ? name : null;
        }
        catch (Exception error) when (error is JsonException or InvalidOperationException or FormatException)
        {
            return null;
        }
    }
}
