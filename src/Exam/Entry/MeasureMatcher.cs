using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>Finds the measure that typed words mean: an alias, the id or the name first, then unique beginnings of name words.</summary>
internal sealed class MeasureMatcher
{
    private readonly List<(string[] Words, Measure Measure)> exact = [];
    private readonly List<(string[] Words, Measure Measure)> names = [];

    public MeasureMatcher(IEnumerable<Measure> measures)
    {
        foreach (var measure in measures.OrderBy(m => m.Id, StringComparer.Ordinal))
        {
            foreach (var text in measure.Aliases.Append(measure.Id).Append(measure.Name))
                exact.Add((Split(text), measure));
            names.Add((Split(measure.Id), measure));
            names.Add((Split(measure.Name), measure));
        }
    }

    /// <summary>A match: how many tokens it took and which measures it may mean.</summary>
    public sealed record Match(int Tokens, ImmutableArray<Measure> Measures);

    /// <summary>Matches the run of words that starts at a token.</summary>
    public Match? Find(IReadOnlyList<Token> tokens, int at)
    {
        var run = new List<string>();
        var taken = new List<int>();
        for (var i = at; i < tokens.Count && tokens[i].Kind == TokenKind.Word; i++)
        {
            if (i > at && (EntryWords.Side(tokens[i]) is not null || EntryWords.IsBoth(tokens[i]) || EntryWords.IsAt(tokens[i])))
                break;
            run.AddRange(Split(tokens[i].Text));
            taken.Add(run.Count);
        }

        for (var n = taken.Count; n > 0; n--)
        {
            var words = run.Take(taken[n - 1]).ToList();
            var found = Distinct(exact.Where(e => Same(words, e.Words)));
            if (found.Length > 0)
                return new Match(n, found);
        }

        for (var n = taken.Count; n > 0; n--)
        {
            var words = run.Take(taken[n - 1]).ToList();
            var found = words.Count > 0 && words.All(w => w.Length >= 2) && words.Sum(w => w.Length) >= 4
                ? Distinct(names.Where(e => Begins(words, e.Words)))
                : [];
            if (found.Length > 0)
                return new Match(n, found);
        }

        return null;
    }

    private static ImmutableArray<Measure> Distinct(IEnumerable<(string[] Words, Measure Measure)> entries) =>
        [.. entries.Select(e => e.Measure).DistinctBy(m => m.Id)];

    private static string[] Split(string text) =>
        [.. text.ToLowerInvariant().Split([' ', '-', '/', ',', '(', ')', '.', ':'], StringSplitOptions.RemoveEmptyEntries)];

    private static bool Same(List<string> typed, string[] words) =>
        typed.Count > 0 && typed.Count == words.Length && !typed.Where((w, i) => w != words[i]).Any();

    /// <summary>Each typed word begins a word of the name, in order; name words may be passed over.</summary>
    private static bool Begins(List<string> typed, string[] words)
    {
        var next = 0;
        foreach (var word in words)
        {
            if (next < typed.Count && word.StartsWith(typed[next], StringComparison.Ordinal))
                next++;
        }

        return next == typed.Count;
    }
}

/// <summary>The small words of an entry.</summary>
internal static class EntryWords
{
    public static Body.Side? Side(Token token)
    {
        if (token.Kind != TokenKind.Word)
            return null;
        return token.Text.TrimEnd(':', '.', '=').ToLowerInvariant() switch
        {
            "l" or "left" or "lt" => Body.Side.Left,
            "r" or "right" or "rt" => Body.Side.Right,
            _ => null,
        };
    }

    public static bool IsBoth(Token token) => token.IsWord("both") || token.IsWord("bilateral") || token.IsWord("bilat");

    public static bool IsAt(Token token) => token.IsWord("at") || token.IsWord("@") || token.IsWord("lever");

    public static bool IsPain(Token token) => token.IsWord("pain") || token.IsWord("pain:") || token.IsWord("p");

    public static bool IsNotANumber(Token token) =>
        token.IsWord("nan") || token.IsWord("inf") || token.IsWord("infinity") || token.IsWord("∞");

    public static bool IsDash(Token token) =>
        token.Kind == TokenKind.Word && token.Text is "-" or "\u2212" or "\u2013";

    /// <summary>Marks between words that carry no meaning of their own.</summary>
    public static bool IsFiller(Token token) =>
        token.Kind == TokenKind.Word && token.Text.All(c => !char.IsLetterOrDigit(c)) && EntryUnits.Find(token) is null;
}
