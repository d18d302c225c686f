using System.Text;

namespace MomentArm.Content;

/// <summary>Splits one line of a comma-separated table; cells with a comma or quote stand in double quotes.</summary>
internal static class CsvLine
{
    /// <summary>Splits the line; false when a quote is left open.</summary>
    internal static bool TrySplit(string line, out string[] cells)
    {
        var list = new List<string>();
        var cell = new StringBuilder();
        var quoted = false;
        for (var i = 0; i < line.Length; i++)
        {
            var c = line[i];
            if (quoted && c == '"' && i + 1 < line.Length && line[i + 1] == '"')
            {
                cell.Append('"');
                i++;
            }
            else if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                list.Add(cell.ToString());
                cell.Clear();
            }
            else
            {
                cell.Append(c);
            }
        }

        list.Add(cell.ToString());
        cells = [.. list];
        return !quoted;
    }
}
