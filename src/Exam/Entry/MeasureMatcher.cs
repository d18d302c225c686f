using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>Finds the measure that typed words mean: an alias, the id or the name first, then unique beginnings of name words.</summary>
internal sealed class MeasureMatcher
{
    private const int LongestName = 12;

    private readonly Dictionary<string, List<Measure>> exact = [];
    private readonly List<(List<string> Words, Measure Measure)> names = [];

    public MeasureMatcher(IEnumerable<Measure> measures)
    {
        foreach (var measure in measures.OrderBy(m => m.Id, StringComparer.Ordinal))
        {
            foreach (var text in measure.Aliases.Append(measure.Id).Append(measure.Name))
                AddExact(string.Join(' ', Split(text)), measure);
            names.Add((Split(measure.Id), measure));
            names.Add((Split(measure.Name), measure));
        }
    }

    private void AddExact(string key, Measure measure)
    {
        if (!exact.TryGetValue(key, out var list))
            exact[key] = list = [];
        if (!list.Contains(measure))
            list.Add(measure);
    }

    /// <summary>A match: how many tokens it took and which measures it may mean.</summary>
    public sealed record Match(int Tokens, ImmutableArray<Measure> Measures);

    /// <summary>Matches the run of words that starts at a token.</summary>
    /// <param name="tokens">The tokens.</param>
    /// <param name="at">Where the run starts.</param>
    /// <param name="exactOnly">Whether only an alias, an id or a whole name counts, and no beginnings of words.</param>
    public Match? Find(IReadOnlyList<Token> tokens, int at, bool exactOnly = false)
    {
        var run = new List<string>();
        var taken = new List<int>();
        // A number may be part of a name ("6 m walk"), of a whole one only.
        var words = 0;
        for (var i = at; i < tokens.Count && tokens[i].Kind is TokenKind.Word or TokenKind.Number && run.Count < LongestName; i++)
        {
            if (i > at && (EntryWords.Side(tokens[i]) is not null || EntryWords.IsBoth(tokens[i]) || EntryWords.IsAt(tokens[i])))
                break;
            if (words == i - at && tokens[i].Kind == TokenKind.Word)
                words++;
            run.AddRange(Split(tokens[i].Text));
            taken.Add(run.Count);
        }

        for (var n = taken.Count; n > 0; n--)
        {
            var key = string.Join(' ', run.Take(taken[n - 1]));
            if (exact.TryGetValue(key, out var found))
                return new Match(n, [.. found]);
        }

        return exactOnly ? null : FindByBeginnings(run, taken, words);
    }

    private Match? FindByBeginnings(List<string> run, List<int> taken, int most)
    {
        for (var n = most; n > 0; n--)
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

    private static ImmutableArray<Measure> Distinct(IEnumerable<(List<string> Words, Measure Measure)> entries) =>
        [.. entries.Select(e => e.Measure).DistinctBy(m => m.Id)];

    /// <summary>Words of a name as the scanner cuts typing: digits apart from letters.</summary>
    private static List<string> Split(string text)
    {
        var words = new List<string>();
        var start = -1;
        for (var i = 0; i <= text.Length; i++)
        {
            var part = i < text.Length && char.IsLetterOrDigit(text[i]);
            if (start >= 0 && (!part || char.IsAsciiDigit(text[i]) != char.IsAsciiDigit(text[i - 1])))
            {
                words.Add(text[start..i].ToLowerInvariant());
                start = -1;
            }

            if (part && start < 0)
                start = i;
        }

        return words;
    }

    /// <summary>Each typed word begins a word of the name, in order; name words may be passed over.</summary>
    private static bool Begins(List<string> typed, List<string> words)
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
