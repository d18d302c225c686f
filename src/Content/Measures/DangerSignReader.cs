using System.Text.Json.Serialization;
using MomentArm.Exam;

namespace MomentArm.Content;

/// <summary>One file of content/danger-signs.</summary>
/// <param name="Schema">Where the schema is.</param>
/// <param name="Signs">The signs in the order asked.</param>
public sealed record DangerSignsFile([property: JsonPropertyName("$schema")] string Schema, IReadOnlyList<DangerSign> Signs);

/// <summary>Reads content/danger-signs.</summary>
internal static class DangerSignReader
{
    private static readonly string[] Confirmations = ["read", "read in a summary", "from memory", "common practice"];

    /// <summary>Reads every file; the general signs come first, then those of regions, each in the order written.</summary>
    internal static IReadOnlyList<DangerSign> ReadAll(string contentFolder, ISet<string> sources, FaultList faults)
    {
        var all = new List<DangerSign>();
        foreach (var path in StrictJson.FilesIn(Path.Combine(contentFolder, "danger-signs"), ".json"))
        {
            var file = "danger-signs/" + Path.GetFileName(path);
            var signs = StrictJson.ReadFile<DangerSignsFile>(path, file, faults)?.Signs ?? [];
            for (var i = 0; i < signs.Count; i++)
            {
                var (sign, place) = (signs[i], $"signs[{i}]");
                if (all.Any(s => s.Id == sign.Id))
                    faults.Add(file, null, place + ".id", $"The id \"{sign.Id}\" is used twice.", "Give each sign its own id.");
                if (new[] { sign.Id, sign.Question, sign.MayMean, sign.Action }.Any(string.IsNullOrWhiteSpace))
                    faults.Add(file, null, place, "A text is empty.", "Fill id, question, mayMean and action.");
                if (!sources.Contains(sign.Source))
                    faults.Add(
                        file, null, place + ".source", $"The source \"{sign.Source}\" is not in sources.json.",
                        "Add it there or correct the key.");
                if (!Confirmations.Contains(sign.Confirmation))
                    faults.Add(
                        file, null, place + ".confirmation", $"\"{sign.Confirmation}\" is not known.",
                        "Write one of: " + string.Join(", ", Confirmations) + ".");
                if (sign.AgeFrom is < 0 || sign.AgeTo is > 120 || sign.AgeFrom > sign.AgeTo)
                    faults.Add(file, null, place, "The ages are not a range.", "Give ageFrom and ageTo in years, the younger first.");
                all.Add(sign);
            }
        }

        return [.. all.OrderBy(s => s.IsGeneral() ? 0 : 1)];
    }
}
