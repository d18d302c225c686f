using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>A stretch of a paragraph that belongs to one measure, or to none.</summary>
/// <param name="Measure">The measure; null for text that names none.</param>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends, not included.</param>
/// <param name="Values">Its tokens without the name of the measure.</param>
internal sealed record NarrativeGroup(Measure? Measure, int From, int To, List<Token> Values);

/// <summary>Cuts a paragraph into stretches: clause by clause, each with the measure named in it or, for bare values, the one before.</summary>
internal sealed class NarrativeGroups(List<Token> tokens, MeasureMatcher matcher, IReadOnlyList<Measure> measures)
{
    /// <summary>Phrases of plain speech that mean a measure: all words of a row, in one clause, in any order. Our choice of phrases.</summary>
    private static readonly ImmutableArray<(ImmutableArray<string> Words, string MeasureId)> Phrases =
    [
        (["run|runs|running|ran", "week"], "run-distance-week"),
        (["longest", "run"], "run-longest"),
        (["sit|sits|sitting|sat", "hours"], "sitting-hours"),
        (["stand|stands|standing|feet", "hours"], "standing-hours"),
        (["gave|gives|giving", "way"], "giving-way"),
        (["worst|highest|maximum", "pain"], "pain-worst"),
        (["least|best|lowest", "pain"], "pain-best"),
        (["usual|average|usually", "pain"], "pain-usual"),
        (["morning", "pain"], "pain-next-morning"),
        (["now|current|today|present", "pain"], "pain-now"),
        (["with|when|while|during|on", "pain"], "pain-task"),
    ];

    private readonly List<NarrativeGroup> groups = [];

    public List<NarrativeGroup> Make()
    {
        var start = 0;
        for (var i = 0; i <= tokens.Count; i++)
        {
            if (i < tokens.Count && !EndsClause(i))
                continue;
            if (i > start)
                AddClause(start, i, newSentence: start == 0 || EndsSentence(start - 1));
            start = i + 1;
        }

        return groups;
    }

    private bool EndsClause(int i) =>
        tokens[i].Kind == TokenKind.Separator || EndsSentence(i)
        || (EntryWords.Is(tokens[i], "and", "but") && i + 1 < tokens.Count && StartsReading(i + 1));

    private bool EndsSentence(int i) => tokens[i].Kind == TokenKind.Word && tokens[i].Text.StartsWith('.') && !IsInitial(i);

    private bool IsInitial(int i) => i > 0 && tokens[i - 1].Text.Length == 1 && char.IsUpper(tokens[i - 1].Text[0]) && tokens[i - 1].End == tokens[i].At;

    private bool StartsReading(int i) => matcher.Find(tokens, i, exactOnly: true) is not null || tokens[i].Kind == TokenKind.Number || EntryWords.Side(tokens[i]) is not null;

    private void AddClause(int from, int to, bool newSentence)
    {
        var names = Names(from, to);
        if (names.Count == 0 && Phrase(from, to) is { } phrase)
        {
            var left = tokens[from..to].Where(t => phrase.Measure.Id == "pain-task" ? !t.IsWord("pain") : !IsIn(phrase.Words, t) && !t.IsWord("last")).ToList();
            groups.Add(new NarrativeGroup(phrase.Measure, tokens[from].At, tokens[to - 1].End, left));
            return;
        }

        if (names.Count == 0)
        {
            AddUnnamed(from, to, newSentence);
            return;
        }

        for (var n = 0; n < names.Count; n++)
        {
            // Values stand behind the name, or before the first name of a clause: "118 degrees of knee flexion on the left".
            var (at, taken, measure) = names[n];
            var first = n == 0 ? from : at;
            var end = n + 1 < names.Count ? names[n + 1].At : to;
            var values = tokens[first..at].Where(IsOfValue).Concat(tokens[(at + taken)..end]).ToList();
            groups.Add(new NarrativeGroup(measure, tokens[first].At, tokens[end - 1].End, values));
        }
    }

    /// <summary>A clause without a name goes on with the measure before it when it holds a number and nothing but words of values.</summary>
    private void AddUnnamed(int from, int to, bool newSentence)
    {
        var clause = tokens[from..to];
        var goesOn = !newSentence && groups.Count > 0 && groups[^1].Measure is { } before && clause.Any(t => t.Kind is TokenKind.Number or TokenKind.Grade)
            && (clause.All(IsOfValue) || before.Kind == MeasureKind.PatientSpecific);
        if (!goesOn)
        {
            groups.Add(new NarrativeGroup(null, tokens[from].At, tokens[to - 1].End, []));
            return;
        }

        var last = groups[^1];
        var comma = new Token(TokenKind.Separator, ",", 0, tokens[from].At, tokens[from].At);
        groups[^1] = last with { To = tokens[to - 1].End, Values = [.. last.Values, comma, .. clause] };
    }

    private static bool IsOfValue(Token token) =>
        token.Kind != TokenKind.Word || EntryWords.Side(token) is not null || EntryWords.IsBoth(token) || EntryWords.IsAt(token)
        || EntryWords.IsPain(token) || EntryUnits.Find(token) is not null || EntryWords.IsProse(token) || EntryWords.IsFiller(token)
        || EntryWords.BoundBefore(token) is not null || EntryWords.Is(token, "least", "or", "more", "less", "no", "than");

    private List<(int At, int Taken, Measure Measure)> Names(int from, int to)
    {
        var names = new List<(int, int, Measure)>();
        for (var i = from; i < to; i++)
        {
            if (matcher.Find(tokens, i, exactOnly: true) is not { Measures: [var measure] } match || i + match.Tokens > to)
                continue;
            if (IsPlainWord(match, measure, i, to))
                continue;
            names.Add((i, match.Tokens, measure));
            i += match.Tokens - 1;
        }

        return names;
    }

    /// <summary>A single word of plain speech ("hop", "function", "activity") names a measure only with a value close behind it.</summary>
    private bool IsPlainWord(MeasureMatcher.Match match, Measure measure, int at, int to)
    {
        var afterList = groups.Count > 0 && groups[^1].Measure is { Kind: MeasureKind.PatientSpecific };
        var plain = match.Tokens == 1 && (measure.Name.Contains(tokens[at].Text, StringComparison.OrdinalIgnoreCase) || EntryWords.Is(tokens[at], "activity"));
        if (!plain)
            return false;
        var next = at + 1 < to ? tokens[at + 1] : (Token?)null;
        return afterList || next is not { } value || (value.Kind != TokenKind.Number && EntryWords.Side(value) is null);
    }

    private (Measure Measure, string[] Words)? Phrase(int from, int to)
    {
        var clause = tokens[from..to];
        if (!clause.Any(t => t.Kind is TokenKind.Number or TokenKind.Grade))
            return null;
        foreach (var (words, id) in Phrases)
        {
            if (words.All(word => clause.Any(t => IsIn([word], t))) && measures.FirstOrDefault(m => m.Id == id) is { } measure)
                return (measure, [.. words, "distance|km/week|per|each|every"]);
        }

        return null;
    }

    private static bool IsIn(string[] words, Token token) =>
        token.Kind == TokenKind.Word && words.Any(word => word.Split('|').Any(token.IsWord));

}
