using System.Text.RegularExpressions;

namespace MomentArm.Architecture.Tests;

/// <summary>One member of a type and how many lines it takes.</summary>
internal sealed record MemberSize(string File, int Line, string Name, int Lines);

/// <summary>Finds the members of types in C# by counting braces.</summary>
internal static partial class MemberSizes
{
    internal static IEnumerable<MemberSize> Of(string file, string text)
    {
        var code = SourceText.Code(text);
        var open = new Stack<bool>();
        var (start, line, startLine) = (0, 1, 1);
        for (var i = 0; i < code.Length; i++)
        {
            if (code[i] == '\n')
                line++;
            if (i == start && char.IsWhiteSpace(code[i]))
                (start, startLine) = (i + 1, line);
            var inType = open.Count == 0 || open.Peek();
            switch (code[i])
            {
                case '{':
                    open.Push(inType && IsType(code[start..i]));
                    if (open.Peek())
                        (start, startLine) = (i + 1, line);
                    break;
                case '}':
                    var wasType = open.TryPop(out var type) && type;
                    if (wasType)
                        (start, startLine) = (i + 1, line);
                    else if (open.Count == 0 || open.Peek())
                    {
                        if (IsExpression(code[start..i]))
                            break;
                        yield return new MemberSize(file, startLine, Name(code[start..i]), line - startLine + 1);
                        (start, startLine) = (i + 1, line);
                    }

                    break;
                case ';' when inType:
                    yield return new MemberSize(file, startLine, Name(code[start..i]), line - startLine + 1);
                    (start, startLine) = (i + 1, line);
                    break;
            }
        }
    }

    private static bool IsType(string header) => TypeWord().IsMatch(Where().Replace(Brackets(header), "")) && !Brackets(header).Contains('=', StringComparison.Ordinal);

    /// <summary>A braced part of a longer member: an initializer, a switch, a lambda.</summary>
    private static bool IsExpression(string member)
    {
        var header = Brackets(member.Split('{')[0]);
        return Operator().Replace(header, "operator").Contains('=', StringComparison.Ordinal);
    }

    private static string Name(string member)
    {
        var flat = Spaces().Replace(member.Split('{')[0], " ").Trim();
        return flat.Length > 100 ? flat[..100] : flat;
    }

    /// <summary>The header without what stands in round or square brackets.</summary>
    private static string Brackets(string header)
    {
        var depth = 0;
        return string.Concat(header.Where(c =>
        {
            if (c is '(' or '[')
                depth++;
            var keep = depth == 0;
            if (c is ')' or ']')
                depth--;
            return keep;
        }));
    }

    [GeneratedRegex(@"\b(class|struct|interface|enum|record|namespace)\s+\w|@code")]
    private static partial Regex TypeWord();

    [GeneratedRegex(@"\bwhere\s.*", RegexOptions.Singleline)]
    private static partial Regex Where();

    [GeneratedRegex(@"operator\s*[^\s(]+")]
    private static partial Regex Operator();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
