using System.Globalization;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>Walks over the tokens of an entry, cuts it into readings and hands each to <see cref="ReadingMaker"/>.</summary>
internal sealed partial class EntryReader
{
    private readonly string text;
    private readonly List<Token> tokens;
    private readonly MeasureMatcher matcher;
    private readonly ReadingMaker maker;
    private readonly EntryContext context;
    private int next;
    private Measure? measure;
    private ReadingDraft draft = new();

    public EntryReader(string text, MeasureMatcher matcher, EntryContext context)
        : this(text, NumberWords.Fold(EntryScanner.Scan(text), matcher), matcher, context, text)
    {
    }

    /// <summary>Reads some tokens of a longer text.</summary>
    public EntryReader(string text, List<Token> tokens, MeasureMatcher matcher, EntryContext context, string asTyped)
    {
        (this.text, this.tokens, this.matcher, this.context) = (text, tokens, matcher, context);
        maker = new ReadingMaker(asTyped, context);
    }

    /// <summary>Whether words that only hold a sentence together are left out.</summary>
    public bool IsProse { get; init; }

    public EntryResult Result() => maker.Result();

    public void Read(Measure? cell, Side? side)
    {
        measure = cell;
        draft = new ReadingDraft { Side = side };
        var mayNameMeasure = cell is null;
        while (next < tokens.Count)
        {
            if (mayNameMeasure && tokens[next].Kind is TokenKind.Word or TokenKind.Number && TakeMeasure())
            {
                mayNameMeasure = false;
                continue;
            }

            mayNameMeasure = cell is null && tokens[next].Kind == TokenKind.Separator;
            if (measure is null && tokens[next].Kind != TokenKind.Separator)
                SkipUnnamed();
            else
                TakeNext(side);
        }

        Flush();
    }

    private void TakeNext(Side? cellSide)
    {
        var (from, before) = (next, draft);
        Take(cellSide);
        if (tokens[from].Kind == TokenKind.Separator || (IsProse && EntryWords.IsProse(tokens[from])) || (draft != before && draft.IsEmpty && !draft.Both && draft.Side is null))
            return;
        var (start, end) = (tokens[from].At, tokens[Math.Max(next - 1, from)].End);
        draft.Span = draft.Span is { } span ? (span.From, end) : (start, end);
    }

    private bool TakeMeasure()
    {
        // Inside a list of activities a plain word is one more activity, not a measure that happens to hold it.
        var inActivities = measure is { Kind: MeasureKind.PatientSpecific } or { Kind: MeasureKind.PainRating };
        var match = matcher.Find(tokens, next, exactOnly: inActivities || tokens[next].Kind == TokenKind.Number);
        if (match is null || (inActivities && !IsSurelyName(match)))
            return false;
        Flush();
        if (match.Measures.Length > 1)
        {
            var names = string.Join(", ", match.Measures.Select(m => m.Name));
            maker.Fault(
                "This may mean more than one measure:", Typed(next, next + match.Tokens),
                names + ". Type one more word of the name.");
            measure = null;
            next += match.Tokens;
            SkipToSeparator();
            return true;
        }

        measure = match.Measures[0];
        maker.StartMeasure();
        draft = new ReadingDraft();
        next += match.Tokens;
        return true;
    }

    /// <summary>Two words of a name and no number at its end, a word that is not plain speech, or a name with a side behind it.</summary>
    private bool IsSurelyName(MeasureMatcher.Match match)
    {
        if (tokens[next + match.Tokens - 1].Kind == TokenKind.Number)
            return false;
        var sideFollows = next + match.Tokens < tokens.Count && EntryWords.Side(tokens[next + match.Tokens]) is not null;
        return match.Tokens > 1 || sideFollows
            || match.Measures.All(m => m.Id == measure!.Id || !m.Name.Contains(tokens[next].Text, StringComparison.OrdinalIgnoreCase));
    }

    private void SkipUnnamed()
    {
        var from = next;
        var grade = tokens.FindIndex(from, t => t.Kind == TokenKind.Grade);
        SkipToSeparator();
        if (grade >= from && grade < next)
            maker.Fault(
                "A manual grade needs the muscle it belongs to.", Typed(from, next), "Begin with the test, such as \"hip abd L 4+/5\", or keep it as note text.");
        else
            maker.Fault("No measure of this name is known.", Typed(from, next), "Begin with a measure, such as \"hip abd L 118\".");
    }

    private void SkipToSeparator()
    {
        while (next < tokens.Count && tokens[next].Kind != TokenKind.Separator)
            next++;
    }

    private void Take(Side? cellSide)
    {
        var token = tokens[next];
        if (token.Kind == TokenKind.Separator)
        {
            if (draft.Numbers.Count > 0 && (measure!.Kind == MeasureKind.PatientSpecific || (measure.Kind == MeasureKind.PainRating && NumberFollows())))
                Flush();
            next++;
        }
        else if (token.Kind == TokenKind.Word && token.Text.StartsWith('('))
            TakeAside();
        else if (TakeSideWords(cellSide) || TakeFigures() || TakeQualifier())
            return;
        else if (token.Kind is TokenKind.Number or TokenKind.DoubtfulNumber)
            TakeNumber();
        else if (token.Kind is TokenKind.Grade)
            TakeGrade(token);
        else
            TakeOther(token);
    }

    private bool TakeSideWords(Side? cellSide)
    {
        var token = tokens[next];
        if (cellSide is not null)
            return false;
        if (EntryWords.Side(token) is { } side)
        {
            if (measure is { Sided: true })
                TakeSide(side);
            else if (measure is { Kind: MeasureKind.PainRating })
                TakeSideOfPain(side);
            else
                return false;
            next++;
            return true;
        }

        if (measure is not { Sided: true })
            return false;
        if (EntryWords.IsBoth(token))
        {
            if (draft.Side is not null)
                Renew(new ReadingDraft());
            draft.Both = true;
            next += token.IsWord("each") && next + 1 < tokens.Count && EntryWords.Is(tokens[next + 1], "way", "side", "leg", "arm") ? 2 : 1;
            return true;
        }

        return TakeNamedSide(token);
    }

    /// <summary>"worst side 118", "other side 135": the side comes from the episode, and is asked for where the episode names none.</summary>
    private bool TakeNamedSide(Token token)
    {
        if (EntryWords.IsAffected(token) is not { } affected || next + 1 >= tokens.Count || !tokens[next + 1].IsWord("side"))
            return false;
        if (context.AffectedSide is { } known)
            TakeSide(affected ? known : known == Side.Left ? Side.Right : Side.Left);
        else
        {
            maker.Fault("No affected side is named for this episode.", Typed(next, next + 2), "Write L or R before the number.");
            draft.Broken = true;
        }

        next += 2;
        return true;
    }

    /// <summary>
    /// "L 118 R 149" and "118 L 149 R" both work, but not mixed: a number without side is told as a fault. Words and lever arm
    /// before the first side belong to what follows.
    /// </summary>
    private void TakeSide(Side side)
    {
        if (draft.Side is not null)
        {
            Renew(new ReadingDraft { Side = side });
            return;
        }

        draft.Side = side;
        if (draft.Numbers.Count == 0 && draft.Grade is null)
            return;
        draft.Span = draft.Span is { } span ? (span.From, tokens[next].End) : null;
        Flush();
    }

    private void TakeSideOfPain(Side side)
    {
        if (draft.Numbers.Count > 0 && NumberFollows())
            Flush();
        draft.Words.Add(Say.Side(side));
    }

    private void Renew(ReadingDraft with)
    {
        Flush();
        draft = with;
    }

    private bool NumberFollows()
    {
        for (var i = next + 1; i < tokens.Count && tokens[i].Kind != TokenKind.Separator; i++)
        {
            if (tokens[i].Kind is TokenKind.Number or TokenKind.Grade)
                return true;
        }

        return false;
    }

    private bool IsNumber(int at) => at < tokens.Count && tokens[at].Kind == TokenKind.Number;

    private void Flush()
    {
        if (measure is not null && !draft.IsEmpty)
            maker.Make(measure, draft);
        draft = new ReadingDraft();
    }

    private string Typed(int from, int to)
    {
        var end = to < tokens.Count ? tokens[to].At : tokens[^1].End;
        return text[tokens[from].At..Math.Max(end, tokens[from].At)].TrimEnd(' ', ',', ';', '\t', '\n');
    }

    private static double Parsed(string digits) => double.Parse(digits, CultureInfo.InvariantCulture);
}
