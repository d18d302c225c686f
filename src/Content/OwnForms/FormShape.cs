using System.Text.Json;
using System.Text.RegularExpressions;

namespace MomentArm.Content;

/// <summary>What a form that comes from outside is held to before anything is computed: whole, of a known format, of a sane size.</summary>
internal static partial class FormShape
{
    private const int MostPoses = 9;
    private const int MostRows = 40;
    private const int LongestText = 400;
    private const int LongestName = 80;

    /// <summary>Tells what is not even readable: no JSON, no form, a newer format, holes in lists.</summary>
    internal static void Check(string text, string shown, FaultList faults)
    {
        try
        {
            using var document = JsonDocument.Parse(text, new JsonDocumentOptions { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip });
            var root = document.RootElement;
            if (root.ValueKind != JsonValueKind.Object || !root.TryGetProperty("exercise", out _) || !root.TryGetProperty("words", out _))
            {
                faults.Add(shown, null, "", "The file is no exercise form.", "Choose a file that was downloaded from the page of a form.");
                return;
            }

            CheckFormat(root, shown, faults);
            Holes(root, "", shown, faults);
        }
        catch (JsonException error)
        {
            var line = error.LineNumber is { } number and < int.MaxValue ? (int?)number + 1 : null;
            faults.Add(shown, line, "", "The file is damaged: it ends too early or holds something that does not belong there.", "Download it again where it came from.");
        }
    }

    /// <summary>Tells what is too long or too many, and ids that could not stand in an address.</summary>
    internal static void CheckSizes(OwnFormFile form, string shown, FaultList faults)
    {
        var exercise = form.Exercise;
        if (!Id().IsMatch(exercise.Id))
            faults.Add(shown, null, "id", $"\"{exercise.Id}\" is no id of a clinic's own form.", $"Use {OwnForm.IdStart} and then small letters, digits and hyphens.");
        if (!Kebab().IsMatch(exercise.Ladder))
            faults.Add(shown, null, "ladder", $"\"{exercise.Ladder}\" is no name of a ladder.", "Use small letters, digits and hyphens.");
        if (string.IsNullOrWhiteSpace(exercise.Name) || exercise.Name.Length > LongestName)
            faults.Add(shown, null, "name", "The name is missing or too long.", FormattableString.Invariant($"Use 1 to {LongestName} characters."));
        if (exercise.Cautions.Count == 0)
            faults.Add(shown, null, "cautions", "There is no caution.", "Write at least one for the clinician.");
        if (exercise.Faults.Count is < 2 or > 3)
            faults.Add(shown, null, "faults", FormattableString.Invariant($"There are {exercise.Faults.Count} faults with their cues."), "Give two or three.");
        Least(form.Words.En.SetUp.Count, "words.en.setUp", shown, faults);
        Least(form.Words.En.Steps.Count, "words.en.steps", shown, faults);
        if (string.IsNullOrWhiteSpace(form.Words.En.RepetitionWord))
            faults.Add(shown, null, "words.en.repetitionWord", "One repetition has no name.", "Write what it is called, such as lift.");
        Most(exercise.Poses.Count, MostPoses, "poses", shown, faults);
        foreach (var (count, path) in Lists(form))
            Most(count, MostRows, path, shown, faults);
        foreach (var (text, path) in Texts(form).Where(t => t.Text.Length > LongestText || string.IsNullOrWhiteSpace(t.Text)))
            faults.Add(shown, null, path, text.Length > LongestText ? "The text is too long." : "A text is empty.", FormattableString.Invariant($"Use 1 to {LongestText} characters."));
    }

    private static void CheckFormat(JsonElement root, string shown, FaultList faults)
    {
        if (!root.TryGetProperty("format", out var format) || format.ValueKind != JsonValueKind.Number || !format.TryGetInt32(out var number) || number < 1)
            faults.Add(shown, null, "format", "The file does not say in which format it is written.", "Download it again where it came from.");
        else if (number > OwnForm.CurrentFormat)
            faults.Add(shown, null, "format", FormattableString.Invariant($"The form is written in format {number}; this program knows up to {OwnForm.CurrentFormat}."), "Use the newer program that wrote it.");
    }

    private static void Holes(JsonElement at, string path, string shown, FaultList faults)
    {
        if (at.ValueKind == JsonValueKind.Object)
        {
            foreach (var property in at.EnumerateObject())
                Holes(property.Value, path.Length == 0 ? property.Name : $"{path}.{property.Name}", shown, faults);
        }
        else if (at.ValueKind == JsonValueKind.Array)
        {
            var i = 0;
            foreach (var item in at.EnumerateArray())
            {
                var place = FormattableString.Invariant($"{path}[{i++}]");
                if (item.ValueKind == JsonValueKind.Null)
                    faults.Add(shown, null, place, "There is nothing in this place of the list.", "Fill it or take it out.");
                Holes(item, place, shown, faults);
            }
        }
    }

    private static IEnumerable<(int Count, string Path)> Lists(OwnFormFile form)
    {
        var e = form.Exercise;
        yield return (e.Loads.Count, "loads");
        yield return (e.Groups.Count, "groups");
        yield return (e.Equipment.Count, "equipment");
        yield return (e.Props.Count, "props");
        yield return (e.AddedLoads.Count, "addedLoads");
        yield return (e.Pulls.Count, "pulls");
        yield return (e.Accepted.Count, "accepted");
        yield return (e.Cautions.Count + e.Avoid.Count + e.BeyondModel.Count, "cautions");
        for (var i = 0; i < Math.Min(e.Poses.Count, MostPoses); i++)
            yield return (Math.Max(e.Poses[i].Contacts.Count, e.Poses[i].Ties.Count), FormattableString.Invariant($"poses[{i}].contacts"));
        foreach (var (words, language) in new[] { (form.Words.En, "en"), (form.Words.Es, "es") })
        {
            if (words is not null)
                yield return (words.SetUp.Count + words.Steps.Count + words.Watch.Count + words.Stop.Count, $"words.{language}");
        }
    }

    private static IEnumerable<(string Text, string Path)> Texts(OwnFormFile form)
    {
        var e = form.Exercise;
        return e.Cautions.Select(t => (t, "cautions")).Concat(e.Avoid.Select(t => (t, "avoid"))).Concat(e.BeyondModel.Select(t => (t, "beyondModel")))
            .Concat(e.Faults.SelectMany(f => new[] { (f.Seen, "faults"), (f.Cue, "faults") }))
            .Concat(e.Accepted.Select(a => (a.Reason, "accepted")))
            .Concat(e.OrderNote is { } note ? [(note, "orderNote")] : [])
            .Concat(form.Words.En.Texts().Where(t => t.Text.Length > LongestText).Select(t => (t.Text, "words.en." + t.Path)))
            .Concat(form.Words.Es?.Texts().Where(t => t.Text.Length > LongestText).Select(t => (t.Text, "words.es." + t.Path)) ?? []);
    }

    private static void Least(int count, string path, string shown, FaultList faults)
    {
        if (count == 0)
            faults.Add(shown, null, path, "Nothing is written.", "Write at least one sentence.");
    }

    private static void Most(int count, int most, string path, string shown, FaultList faults)
    {
        if (count > most)
            faults.Add(shown, null, path, FormattableString.Invariant($"There are {count} entries."), FormattableString.Invariant($"Keep at most {most}."));
    }

    [GeneratedRegex("^own-[a-z0-9]+(-[a-z0-9]+)*$")]
    private static partial Regex Id();

    [GeneratedRegex("^[a-z0-9]+(-[a-z0-9]+)*$")]
    private static partial Regex Kebab();
}
