using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>Walks over the tokens of an entry, cuts it into readings and hands each to <see cref="ReadingMaker"/>.</summary>
internal sealed class EntryReader
{
    private readonly string text;
    private readonly List<Token> tokens;
    private readonly MeasureMatcher matcher;
    private readonly ReadingMaker maker;
    private int next;
    private Measure? measure;
    private ReadingDraft draft = new();

    public EntryReader(string text, MeasureMatcher matcher)
    {
        this.text = text;
        this.matcher = matcher;
        tokens = EntryScanner.Scan(text);
        maker = new ReadingMaker(text);
    }

    public EntryResult Result() => maker.Result();

    public void Read(Measure? cell, Side? side)
    {
        measure = cell;
        draft = new ReadingDraft { Side = side };
        var mayNameMeasure = cell is null;
        while (next < tokens.Count)
        {
            if (mayNameMeasure && tokens[next].Kind == TokenKind.Word && TakeMeasure())
            {
                mayNameMeasure = false;
                continue;
            }

            mayNameMeasure = cell is null && tokens[next].Kind == TokenKind.Separator;
            if (measure is null && tokens[next].Kind != TokenKind.Separator)
                SkipUnnamed();
            else
                Take(side);
        }

        Flush();
    }

    private bool TakeMeasure()
    {
        var match = matcher.Find(tokens, next);
        if (match is null)
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

    private void SkipUnnamed()
    {
        var from = next;
        SkipToSeparator();
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
        if (EntryWords.Side(token) is { } side && cellSide is null && measure is { Sided: true })
        {
            TakeSide(side);
            next++;
        }
        else if (EntryWords.IsBoth(token) && cellSide is null && measure is { Sided: true })
        {
            if (draft.Side is not null)
            {
                Flush();
                draft = new ReadingDraft();
            }

            draft.Both = true;
            next++;
        }
        else if (token.Kind is TokenKind.Separator)
        {
            if (measure is { Kind: MeasureKind.PatientSpecific } && draft.Numbers.Count > 0)
                Flush();
            next++;
        }
        else if (EntryWords.IsAt(token) && IsNumber(next + 1))
            TakeLever(next + 1);
        else if (EntryWords.IsPain(token) && IsNumber(next + 1) && measure is { Kind: not MeasureKind.PainRating })
            TakePain();
        else if (token.Kind is TokenKind.Number or TokenKind.DoubtfulNumber)
            TakeNumber();
        else if (token.Kind is TokenKind.Grade)
            TakeGrade(token.Text);
        else
            TakeOther(token);
    }

    /// <summary>
    /// "L 118 R 149" and "118 L 149 R" both work, but not mixed: a number without side is told as a fault. Words and lever arm
    /// before the first side belong to what follows.
    /// </summary>
    private void TakeSide(Side side)
    {
        if (draft.Side is not null)
        {
            Flush();
            draft = new ReadingDraft { Side = side };
            return;
        }

        draft.Side = side;
        if (draft.Numbers.Count > 0 || draft.Grade is not null)
            Flush();
    }

    private bool IsNumber(int at) => at < tokens.Count && tokens[at].Kind == TokenKind.Number;

    private UnitKind? UnitAt(int at) => at < tokens.Count ? EntryUnits.Find(tokens[at]) : null;

    private void TakeLever(int at)
    {
        var unit = UnitAt(at + 1);
        var metres = unit is { } known ? EntryUnits.Metres(known) : null;
        var end = metres is null ? at + 1 : at + 2;
        var value = tokens[at].Value;
        // A bare lever arm of 3 or more can only be centimetres: no limb is 3 m long.
        draft.LeverM = value * (metres ?? (value < 3 ? 1 : 0.01));
        draft.LeverText = Typed(at, end);
        if (metres is null)
            maker.Note($"Lever arm \"{draft.LeverText}\" read as {Say.Centimetres(draft.LeverM.Value)}.");
        next = end;
    }

    private void TakePain()
    {
        var from = next;
        var value = tokens[next + 1].Value;
        next += 2;
        if (next + 1 < tokens.Count && tokens[next].Kind == TokenKind.Slash && IsNumber(next + 1) && tokens[next + 1].Value == 10)
            next += 2;
        draft.Pain = (value, Typed(from, next));
    }

    private void TakeNumber()
    {
        var token = tokens[next];
        if (token.Kind == TokenKind.DoubtfulNumber)
        {
            maker.Question(
                token.Text,
                $"\"{token.Text}\" was read as two trials. For one number with decimals use a point: {token.Text.Replace(',', '.')}.");
            foreach (var part in token.Text.Split(','))
                draft.Numbers.Add((double.Parse(part, System.Globalization.CultureInfo.InvariantCulture), null, part));
            next++;
            return;
        }

        var unit = UnitAt(next + 1);
        if (unit is null && GluedWord())
        {
            maker.Fault(
                "This unit is not known.", Typed(next, next + 2),
                "Leave a blank between number and words, or type N, kgf, lb, Nm or degrees.");
            draft.Broken = true;
            next += 2;
            return;
        }

        var isLength = unit is { } length && EntryUnits.Metres(length) is not null;
        if (isLength && measure is { Kind: MeasureKind.Strength } && draft.Numbers.Count > 0)
        {
            TakeLever(next);
            return;
        }

        var slash = next + 1 < tokens.Count && tokens[next + 1].Kind == TokenKind.Slash;
        if (slash && IsNumber(next + 2) && TakeScore(token.Value, tokens[next + 2].Value))
            return;
        var end = unit is null ? next + 1 : next + 2;
        draft.Numbers.Add((token.Value, unit, Typed(next, end)));
        next = end;
    }

    /// <summary>Whether letters that mean nothing stand right behind the number, as in "1e9" or "118x".</summary>
    private bool GluedWord()
    {
        if (next + 1 >= tokens.Count || tokens[next + 1].Kind != TokenKind.Word || !char.IsLetter(tokens[next + 1].Text[0]))
            return false;
        var word = tokens[next + 1];
        return word.At == tokens[next].At + tokens[next].Text.Length
            && EntryWords.Side(word) is null && !EntryWords.IsAt(word) && !EntryWords.IsPain(word);
    }

    /// <summary>"4/5" on a strength test and "7/10" on a scale are scores; anything else with a slash is a pair of trials.</summary>
    private bool TakeScore(double score, double outOf)
    {
        var moreFollow = next + 3 < tokens.Count && tokens[next + 3].Kind == TokenKind.Slash;
        if (moreFollow || measure is null)
            return false;
        if (measure.Kind == MeasureKind.Strength && outOf == 5 && score is >= 0 and <= 5)
        {
            TakeGrade(Say.Number(score));
            return true;
        }

        if (measure.Unit != MeasureUnit.Points)
            return false;
        draft.OutOf = outOf;
        draft.Numbers.Add((score, null, Typed(next, next + 3)));
        next += 3;
        return true;
    }

    private void TakeGrade(string grade)
    {
        draft.Grade = grade + "/5";
        next++;
        if (next + 1 < tokens.Count && tokens[next].Kind == TokenKind.Slash && IsNumber(next + 1))
            next += 2;
    }

    private void TakeOther(Token token)
    {
        if (token.Kind == TokenKind.Slash)
            draft.Slashes++;
        else if (EntryWords.IsNotANumber(token))
        {
            draft.Broken = true;
            maker.Fault("This is not a number that can be measured.", token.Text, "Type the reading in digits.");
        }
        else if (EntryWords.IsDash(token) && draft.Numbers.Count > 0 && IsNumber(next + 1))
            draft.Dashes++;
        else if (!EntryWords.IsFiller(token))
            draft.Words.Add(token.Text);
        next++;
    }

    private void Flush()
    {
        if (measure is not null && !draft.IsEmpty)
            maker.Make(measure, draft);
        draft = new ReadingDraft();
    }

    private string Typed(int from, int to)
    {
        var end = to < tokens.Count ? tokens[to].At : text.Length;
        return text[tokens[from].At..Math.Max(end, tokens[from].At)].TrimEnd(' ', ',', ';', '\t', '\n');
    }
}
