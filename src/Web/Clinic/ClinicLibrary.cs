using System.Collections.Immutable;
using MomentArm.Content;
using MomentArm.Prescribing;

namespace MomentArm.Web.Clinic;

/// <summary>The exercises of one clinic: the shipped ones and those it made itself. Immutable; a save makes another.</summary>
public sealed class ClinicLibrary
{
    private readonly ContentLibrary content;
    private readonly ImmutableDictionary<string, KeptForm> own;

    internal ClinicLibrary(ContentLibrary content, IReadOnlyList<KeptForm> kept)
    {
        this.content = content;
        own = kept.Where(k => k.Form is not null).ToImmutableDictionary(k => k.FormId);
        Kept = kept;
        Own = [.. own.Values.Where(k => k.InUse).Select(k => k.Form!.Exercise).OrderBy(e => e.Name, StringComparer.Ordinal)];
        Exercises = Own.IsEmpty
            ? content.Exercises
            : [.. content.Exercises.Concat(Own).OrderBy(e => e.Ladder, StringComparer.Ordinal).ThenBy(e => e.Rung).ThenBy(e => e.Id, StringComparer.Ordinal)];
    }

    /// <summary>The clinic's own forms that are in use.</summary>
    public ImmutableArray<Exercise> Own { get; }

    /// <summary>Everything that can be prescribed, ordered by ladder and rung.</summary>
    public IReadOnlyList<Exercise> Exercises { get; }

    /// <summary>Stored forms that this program can no longer use, with the reason; they are kept as they are.</summary>
    public IEnumerable<(string Name, ContentFault Fault)> Unusable => Kept.Where(k => k.Form is null).Select(k => (k.Name, k.Fault!));

    internal IReadOnlyList<KeptForm> Kept { get; }

    /// <summary>An exercise by id; a retired form of the clinic too, since programs may have it. Null when there is none.</summary>
    public Exercise? Exercise(string id) => own.GetValueOrDefault(id)?.Form!.Exercise ?? content.Exercise(id);

    /// <summary>The words of an exercise; English where the clinic wrote no Spanish.</summary>
    public ExerciseWords Words(string language, string id) => own.GetValueOrDefault(id)?.Form!.Words(language) ?? content.Words(language, id);

    /// <summary>Whether the clinic made it.</summary>
    public static bool IsOwn(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return exercise.Id.StartsWith(OwnForm.IdStart, StringComparison.Ordinal);
    }

    /// <summary>What changes when the exercise does: the version of the content, or of the form.</summary>
    public string VersionOf(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return own.GetValueOrDefault(exercise.Id)?.VersionId.ToString("N") ?? content.Version;
    }
}

/// <summary>A stored version of a form, read once.</summary>
/// <param name="VersionId">The version.</param>
/// <param name="FormId">The form.</param>
/// <param name="Name">Its name.</param>
/// <param name="InUse">Whether it is offered.</param>
/// <param name="Form">The form; null when it can't be used.</param>
/// <param name="Fault">Why it can't be used.</param>
internal sealed record KeptForm(Guid VersionId, string FormId, string Name, bool InUse, OwnForm? Form, ContentFault? Fault);
