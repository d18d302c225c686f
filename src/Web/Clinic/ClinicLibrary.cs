using System.Collections.Immutable;
using MomentArm.Content;
using MomentArm.Prescribing;

namespace MomentArm.Web.Clinic;

/// <summary>
/// The exercises of one clinic: the shipped ones and those it made itself. Immutable; a save makes another. An exercise of the clinic's own is
/// named with its version (own-step@2), and so programs name it: what they were made with is what they show.
/// </summary>
public sealed class ClinicLibrary
{
    private const char VersionMark = '@';
    private readonly ContentLibrary content;
    private readonly ImmutableDictionary<string, KeptForm> latest;
    private readonly ImmutableDictionary<string, Lazy<KeptForm>> versions;

    internal ClinicLibrary(ContentLibrary content, IReadOnlyList<KeptForm> kept, IReadOnlyDictionary<string, Lazy<KeptForm>> earlier)
    {
        this.content = content;
        latest = kept.Where(k => k.Form is not null).ToImmutableDictionary(k => k.FormId);
        versions = earlier.ToImmutableDictionary().SetItems(kept.Select(k => KeyValuePair.Create(IdOf(k.FormId, k.Number), new Lazy<KeptForm>(k))));
        Kept = kept;
        Own = [.. latest.Values.Where(k => k.InUse).Select(k => k.Form!.Exercise).OrderBy(e => e.Name, StringComparer.Ordinal)];
        Exercises = Own.IsEmpty
            ? content.Exercises
            : [.. content.Exercises.Concat(Own).OrderBy(e => e.Ladder, StringComparer.Ordinal).ThenBy(e => e.Rung).ThenBy(e => e.Id, StringComparer.Ordinal)];
    }

    /// <summary>The clinic's own forms that are in use, each in its latest version.</summary>
    public ImmutableArray<Exercise> Own { get; }

    /// <summary>Everything that can be prescribed, ordered by ladder and rung.</summary>
    public IReadOnlyList<Exercise> Exercises { get; }

    /// <summary>Stored forms that this program can no longer use, with the reason; they are kept as they are.</summary>
    public IEnumerable<(string Name, ContentFault Fault)> Unusable => Kept.Where(k => k.Form is null).Select(k => (k.Name, k.Fault!));

    internal IReadOnlyList<KeptForm> Kept { get; }

    internal IReadOnlyDictionary<string, Lazy<KeptForm>> Versions => versions;

    /// <summary>
    /// An exercise by id: of the clinic's own the version named, or the latest where none is; a replaced or retired one too, since programs may
    /// have it. Null when there is none.
    /// </summary>
    public Exercise? Exercise(string id) => Find(id)?.Form?.Exercise ?? content.Exercise(id);

    /// <summary>The words of an exercise; English where the clinic wrote no Spanish.</summary>
    public ExerciseWords Words(string language, string id) => Find(id)?.Form?.Words(language) ?? content.Words(language, id);

    /// <summary>The version that is offered in place of an exercise; null when it is the offered one itself, or the form is retired or shipped.</summary>
    public Exercise? Newer(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return IsOwn(id) && latest.GetValueOrDefault(FormOf(id)) is { InUse: true } last && last.Form!.Exercise.Id != Exercise(id)?.Id ? last.Form.Exercise : null;
    }

    /// <summary>Whether the clinic made it.</summary>
    public static bool IsOwn(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return IsOwn(exercise.Id);
    }

    /// <summary>The form of an exercise, whatever the version: the same id without it.</summary>
    public static string FormOf(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return IsOwn(id) && id.IndexOf(VersionMark, StringComparison.Ordinal) is > 0 and var mark ? id[..mark] : id;
    }

    /// <summary>The number of the version that an id names; null where it names none.</summary>
    public static int? VersionIn(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return FormOf(id) is var form && form.Length < id.Length
            && int.TryParse(id.AsSpan(form.Length + 1), System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var number) ? number : null;
    }

    /// <summary>The id of one version of a form.</summary>
    public static string IdOf(string formId, int number) => FormattableString.Invariant($"{formId}{VersionMark}{number}");

    /// <summary>What changes when the exercise does: the version of the content, or of the form.</summary>
    public string VersionOf(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return Find(exercise.Id)?.VersionId.ToString("N") ?? content.Version;
    }

    private static bool IsOwn(string id) => id.StartsWith(OwnForm.IdStart, StringComparison.Ordinal);

    private KeptForm? Find(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return versions.GetValueOrDefault(id)?.Value ?? latest.GetValueOrDefault(id);
    }
}

/// <summary>A stored version of a form, read once.</summary>
/// <param name="VersionId">The version.</param>
/// <param name="FormId">The form.</param>
/// <param name="Number">1 for the first version.</param>
/// <param name="Name">Its name.</param>
/// <param name="InUse">Whether it is offered.</param>
/// <param name="Form">The form; null when it can't be used.</param>
/// <param name="Fault">Why it can't be used.</param>
internal sealed record KeptForm(Guid VersionId, string FormId, int Number, string Name, bool InUse, OwnForm? Form, ContentFault? Fault);
