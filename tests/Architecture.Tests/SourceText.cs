using System.Text;

namespace MomentArm.Architecture.Tests;

/// <summary>C# source without what could be mistaken for code. Line breaks stay, so line numbers stay.</summary>
internal static class SourceText
{
    /// <summary>Blanks comments; blanks texts too unless they are asked for.</summary>
    internal static string Code(string text, bool keepTexts = false)
    {
        var code = new StringBuilder(text);
        for (var i = 0; i < text.Length;)
        {
            var end = Comment(text, i);
            var isText = end == i;
            if (isText)
                end = Literal(text, i);
            if (end == i)
            {
                i++;
                continue;
            }

            if (!isText || !keepTexts)
                Blank(code, i, end);
            i = end;
        }

        return code.ToString();
    }

    private static void Blank(StringBuilder code, int from, int to)
    {
        for (var i = from; i < to; i++)
        {
            if (code[i] != '\n')
                code[i] = ' ';
        }
    }

    private static int Comment(string text, int at)
    {
        if (At(text, at, "//"))
            return End(text, "\n", at);
        return At(text, at, "/*") ? End(text, "*/", at + 2) + 2 : at;
    }

    private static int Literal(string text, int at)
    {
        if (text[at] == '\'' && (at == 0 || !char.IsLetterOrDigit(text[at - 1])))
            return Quoted(text, at + 1, '\'');
        var start = at;
        while (start < text.Length && text[start] is '$' or '@')
            start++;
        if (start >= text.Length || text[start] != '"')
            return at;
        if (text[at..start].Contains('@', StringComparison.Ordinal))
            return Verbatim(text, start + 1);
        var quotes = 0;
        while (start + quotes < text.Length && text[start + quotes] == '"')
            quotes++;
        if (quotes >= 3)
            return Math.Min(text.Length, End(text, new string('"', quotes), start + quotes) + quotes);
        if (quotes == 2)
            return start + 2;
        return start > at ? Interpolated(text, start + 1) : Quoted(text, start + 1, '"');
    }

    private static int Quoted(string text, int at, char close)
    {
        while (at < text.Length && text[at] != close && text[at] != '\n')
            at += text[at] == '\\' ? 2 : 1;
        return Math.Min(text.Length, at + 1);
    }

    private static int Verbatim(string text, int at)
    {
        while (at < text.Length && (text[at] != '"' || At(text, at, "\"\"")))
            at += text[at] == '"' ? 2 : 1;
        return Math.Min(text.Length, at + 1);
    }

    private static int Interpolated(string text, int at)
    {
        var depth = 0;
        while (at < text.Length && !(depth == 0 && text[at] == '"'))
        {
            if (depth > 0)
            {
                var inner = Literal(text, at);
                if (inner > at)
                {
                    at = inner;
                    continue;
                }
            }

            if (depth == 0 && (At(text, at, "{{") || At(text, at, "}}") || text[at] == '\\'))
            {
                at += 2;
                continue;
            }

            depth += text[at] switch { '{' => 1, '}' => -1, _ => 0 };
            at++;
        }

        return Math.Min(text.Length, at + 1);
    }

    private static bool At(string text, int at, string word) => string.CompareOrdinal(text, at, word, 0, word.Length) == 0;

    private static int End(string text, string word, int from)
    {
        var found = text.IndexOf(word, Math.Min(from, text.Length), StringComparison.Ordinal);
        return found < 0 ? text.Length : found;
    }
}
