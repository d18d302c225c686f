using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Content;

/// <summary>Reads content/codes: codes of diagnoses and functions with our own labels.</summary>
internal static class CodeReader
{
    private static readonly string[] Columns = ["system", "code", "side", "label", "condition", "seventhCharacter", "note", "confirmation"];

    private static readonly string[] Systems = ["ICD-10-CM", "ICF"];

    internal static IReadOnlyList<RecordCode> ReadAll(string contentFolder, FaultList faults)
    {
        var all = new List<RecordCode>();
        foreach (var path in StrictJson.FilesIn(Path.Combine(contentFolder, "codes"), ".csv"))
        {
            var file = "codes/" + Path.GetFileName(path);
            var lines = File.ReadAllLines(path);
            if (lines.Length == 0 || !CsvLine.TrySplit(lines[0], out var head) || !head.SequenceEqual(Columns))
            {
                faults.Add(file, 1, "", "The first line does not name the columns.", "Write: " + string.Join(',', Columns));
                continue;
            }

            for (var line = 2; line <= lines.Length; line++)
            {
                if (Fault(lines[line - 1], all, out var code) is { } fault)
                    faults.Add(file, line, "", fault, "Give system, code, label and confirmation; left, right, unspecified or nothing as side.");
                else
                    all.Add(code!);
            }
        }

        return all;
    }

    private static string? Fault(string text, List<RecordCode> before, out RecordCode? code)
    {
        code = null;
        if (!CsvLine.TrySplit(text, out var cells) || cells.Length != Columns.Length)
            return $"The row does not have {Columns.Length} cells.";
        if (!Systems.Contains(cells[0]) || cells[1].Length == 0 || cells[3].Length == 0)
            return "System, code or label is not usable.";
        if (cells[2] is not ("" or "left" or "right" or "unspecified"))
            return $"\"{cells[2]}\" is no side.";
        if (cells[7] is not ("read in a summary" or "from memory"))
            return $"\"{cells[7]}\" says not how far it was confirmed.";
        if (before.Any(c => c.System == cells[0] && c.Code == cells[1]))
            return $"The code {cells[1]} is there twice.";
        Side? side = cells[2] switch { "left" => Side.Left, "right" => Side.Right, _ => null };
        code = new RecordCode(cells[0], cells[1], side, cells[3], cells[4], cells[5], cells[6], cells[7]);
        return null;
    }
}
