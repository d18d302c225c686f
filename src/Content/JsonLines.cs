using System.Globalization;
using System.Text;
using System.Text.Json;

namespace MomentArm.Content;

/// <summary>The line at which each place of a JSON text stands, so that faults of meaning can name it too.</summary>
internal static class JsonLines
{
    /// <summary>The same faults, each with the line of its place, or of the nearest place around it that is there.</summary>
    internal static IReadOnlyList<ContentFault> Placed(string json, IReadOnlyList<ContentFault> faults)
    {
        if (faults.All(f => f.Line is not null))
            return faults;
        var lines = Of(json);
        return [.. faults.Select(f => f.Line is null && f.Path.Length > 0 ? f with { Line = Nearest(lines, f.Path) } : f)];
    }

    private static int? Nearest(Dictionary<string, int> lines, string path)
    {
        for (var at = path; at.Length > 0;)
        {
            if (lines.TryGetValue(at, out var line))
                return line;
            at = at[..Math.Max(0, at.LastIndexOfAny(['.', '[']))];
        }

        return null;
    }

    /// <summary>Line of each property and list element by path, such as contacts[0].point; empty for a text that is not JSON.</summary>
    private static Dictionary<string, int> Of(string json)
    {
        var bytes = Encoding.UTF8.GetBytes(json);
        var reader = new Utf8JsonReader(bytes, new JsonReaderOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true });
        var lines = new Dictionary<string, int>();
        var around = new Stack<(string Path, int Next)>();
        var name = "";
        var (line, counted) = (1, 0);
        try
        {
            while (reader.Read())
            {
                for (; counted < reader.TokenStartIndex; counted++)
                    line += bytes[counted] == (byte)'\n' ? 1 : 0;
                if (reader.TokenType is JsonTokenType.EndObject or JsonTokenType.EndArray)
                {
                    around.Pop();
                    continue;
                }

                if (reader.TokenType == JsonTokenType.PropertyName)
                {
                    var owner = around.Peek().Path;
                    name = owner.Length == 0 ? reader.GetString()! : $"{owner}.{reader.GetString()}";
                    lines.TryAdd(name, line);
                    continue;
                }

                var path = name;
                if (around.TryPeek(out var outer) && outer.Next >= 0)
                {
                    around.Pop();
                    around.Push((outer.Path, outer.Next + 1));
                    path = string.Create(CultureInfo.InvariantCulture, $"{outer.Path}[{outer.Next}]");
                    lines.TryAdd(path, line);
                }

                if (reader.TokenType is JsonTokenType.StartObject or JsonTokenType.StartArray)
                    around.Push((path, reader.TokenType == JsonTokenType.StartArray ? 0 : -1));
            }
        }
        catch (JsonException)
        {
            // The reader of the file tells what is wrong with its form; lines found so far still serve.
        }

        return lines;
    }
}
