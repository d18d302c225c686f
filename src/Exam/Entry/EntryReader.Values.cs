namespace MomentArm.Exam;

/// <summary>Numbers, and the words that say what a number is.</summary>
internal sealed partial class EntryReader
{
    /// <summary>Lever arm, pain, symmetry, printed values, bounds: words with a number behind them.</summary>
    private bool TakeFigures()
    {
        var token = tokens[next];
        if (EntryWords.IsAt(token) && IsNumber(next + 1) && measure is not { Kind: MeasureKind.PainRating or MeasureKind.PatientSpecific })
            TakeLever(next + 1);
        else if (EntryWords.IsPain(token) && IsNumber(next + 1) && measure is { Kind: not MeasureKind.PainRating })
            TakePain();
        else if (token.IsWord("no") && next + 1 < tokens.Count && EntryWords.IsPain(tokens[next + 1]) && measure is { Kind: not MeasureKind.PainRating })
        {
            draft.Pain = (0, "no pain");
            next += 2;
        }
        else if (EntryWords.IsSymmetry(token) && IsNumber(next + 1))
            draft.Symmetry = Told(next + 1);
        else if (EntryWords.IsPrinted(token) && IsNumber(next + 1))
            draft.Printed = Told(next + 1);
        else
            return TakeBound(token) || TakeChange(token);
        return true;
    }

    /// <summary>A number with its unit, kept as written.</summary>
    private string Told(int at)
    {
        var end = at + 1 + (EntryUnits.At(tokens, at + 1)?.Taken ?? 0);
        if (end + 1 < tokens.Count && tokens[end].Kind == TokenKind.Slash && IsNumber(end + 1))
            end += 2;
        next = end;
        return Typed(at, end);
    }

    private bool TakeBound(Token token)
    {
        var wordy = token.IsWord("at") && next + 2 < tokens.Count && (tokens[next + 1].IsWord("least") || tokens[next + 1].IsWord("most"));
        var upTo = token.IsWord("up") && next + 2 < tokens.Count && tokens[next + 1].IsWord("to");
        var compared = EntryWords.Is(token, "more", "less", "fewer") && next + 2 < tokens.Count && tokens[next + 1].IsWord("than");
        var taken = wordy || upTo || compared ? 2 : 1;
        var bound = upTo ? ValueBound.AtMost
            : wordy ? tokens[next + 1].IsWord("least") ? ValueBound.AtLeast : ValueBound.AtMost
            : compared ? token.IsWord("more") ? ValueBound.AtLeast : ValueBound.AtMost
            : EntryWords.BoundBefore(token);
        if (bound is { } known && IsNumber(next + taken))
        {
            draft.Conditions = draft.Conditions with { Bound = known };
            next += taken;
            return true;
        }

        return TakeBoundBehind(token);
    }

    /// <summary>"60+", "8 or more", "8 RM or lighter".</summary>
    private bool TakeBoundBehind(Token token)
    {
        if (draft.Numbers.Count == 0)
            return false;
        var or = token.IsWord("or") && next + 1 < tokens.Count;
        ValueBound? bound = token.Kind == TokenKind.Word && token.Text == "+" && token.At == tokens[Math.Max(0, next - 1)].End ? ValueBound.AtLeast
            : or && EntryWords.Is(tokens[next + 1], "more", "better", "over", "heavier") ? ValueBound.AtLeast
            : or && EntryWords.Is(tokens[next + 1], "less", "fewer", "under", "lighter") ? ValueBound.AtMost
            : null;
        if (bound is null)
            return false;
        draft.Conditions = draft.Conditions with { Bound = bound.Value };
        next += or ? 2 : 1;
        return true;
    }

    /// <summary>"up 30 %", "+30 %": a change without a reading is kept in words, since nothing can be computed from it.</summary>
    private bool TakeChange(Token token)
    {
        if (measure!.Unit == MeasureUnit.Percent)
            return false;
        var signed = token.Kind == TokenKind.Number && token.Text[0] is '+' or '-';
        var worded = EntryWords.IsChange(token) && IsNumber(next + 1);
        var at = worded ? next + 1 : next;
        if ((!signed && !worded) || EntryUnits.At(tokens, at + 1) is not { Kind: UnitKind.Percent } unit)
            return false;
        var end = at + 1 + unit.Taken;
        draft.Words.Add(Typed(next, end));
        next = end;
        return true;
    }

    private bool TakeQualifier()
    {
        var token = tokens[next];
        if (token.Kind != TokenKind.Word)
            return false;
        if (measure!.Unit == MeasureUnit.Radians && (EntryWords.IsDeficit(token) || EntryWords.IsHyper(token)))
        {
            if (EntryWords.IsDeficit(token))
                draft.IsDeficit = true;
            else
                draft.IsHyper = true;
            next++;
            return true;
        }

        if (measure.Unit == MeasureUnit.Radians && EntryWords.IsSum(token) && IsNumber(next + 1))
        {
            var end = next + 2 + (EntryUnits.At(tokens, next + 2)?.Taken ?? 0);
            draft.Words.Add(Typed(next, end));
            next = end;
            return true;
        }

        if (measure.Mode != MotionMode.NotApplicable && EntryWords.Is(token, "active", "actively", "passive", "passively"))
        {
            TakeMode(token);
            next++;
            return true;
        }

        var before = draft.Moment;
        var taken = ConditionWords.Take(tokens, next, measure, draft);
        if (taken == 0)
            return false;
        if (before is not null && draft.Moment != before && draft.Numbers.Count > 0)
        {
            // "before 118 after 125": the first reading is complete.
            var moment = draft.Moment;
            draft.Moment = before;
            Renew(draft.Next());
            draft.Moment = moment;
        }

        next += taken;
        return true;
    }

    /// <summary>Active and passive are two readings; the one that is not the measure's own stands apart and is never compared.</summary>
    private void TakeMode(Token token)
    {
        var passive = token.Text.StartsWith("passive", StringComparison.OrdinalIgnoreCase);
        if (draft.Numbers.Count > 0 && IsNumber(next + 1))
            Renew(draft.Next());
        draft.IsClosed = draft.Numbers.Count > 0;
        draft.Moment = passive == (measure!.Mode == MotionMode.Passive) ? null : passive ? "passive" : "active";
    }

    private void TakeLever(int at)
    {
        var unit = EntryUnits.At(tokens, at + 1);
        var metres = unit is { } known ? EntryUnits.Metres(known.Kind) : null;
        var end = metres is null ? at + 1 : at + 2;
        var value = tokens[at].Value;
        // A bare lever arm of 3 or more can only be centimetres, or inches for those who work in them: no limb is 3 m long.
        var bare = value < 3 ? 1 : context.Units == UnitChoice.Us ? StrengthMath.MetresPerInch : 0.01;
        draft.LeverM = value * (metres ?? bare);
        draft.LeverText = Typed(at, end);
        if (metres is null)
            maker.Note($"Lever arm \"{draft.LeverText}\" read as {UsUnits.Lever(draft.LeverM.Value, context.Units)}.");
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
        if (draft.IsClosed && draft.Numbers.Count > 0)
            Renew(draft.Next());
        var token = tokens[next];
        if (token.Kind == TokenKind.DoubtfulNumber)
        {
            maker.Question(
                token.Text,
                $"\"{token.Text}\" was read as two trials. For one number with decimals use a point: {token.Text.Replace(',', '.')}.");
            foreach (var part in token.Text.Split(','))
                draft.Numbers.Add(new DraftNumber(Parsed(part), null, part));
            next++;
            return;
        }

        var unit = EntryUnits.At(tokens, next + 1);
        if (unit is null && GluedWord() is { } glued)
        {
            TakeGlued(token, glued);
            return;
        }

        var isLength = unit is { } length && EntryUnits.Metres(length.Kind) is not null;
        if (isLength && measure is { Kind: MeasureKind.Strength } && draft.Numbers.Count > 0)
        {
            TakeLever(next);
            return;
        }

        var slash = next + 1 < tokens.Count && tokens[next + 1].Kind == TokenKind.Slash;
        if (slash && IsNumber(next + 2) && TakeScore(token.Value, tokens[next + 2].Value))
            return;
        var end = next + 1 + (unit?.Taken ?? 0);
        draft.Numbers.Add(new DraftNumber(token.Value, unit?.Kind, Typed(next, end), unit is null ? null : Typed(next + 1, end)));
        next = end;
    }

    /// <summary>Letters that mean nothing and stand right behind the number, as in "1e9" or "118kpx"; null when there are none.</summary>
    private Token? GluedWord()
    {
        if (next + 1 >= tokens.Count || tokens[next + 1].Kind != TokenKind.Word || !char.IsLetter(tokens[next + 1].Text[0]))
            return null;
        var word = tokens[next + 1];
        var glued = word.At == tokens[next].End && EntryWords.Side(word) is null && !EntryWords.IsAt(word) && !EntryWords.IsPain(word);
        return glued ? word : null;
    }

    /// <summary>A unit that nobody knows is kept and not judged; letters between digits are no unit.</summary>
    private void TakeGlued(Token number, Token word)
    {
        var between = next + 2 < tokens.Count && tokens[next + 2].Kind == TokenKind.Number && tokens[next + 2].At == word.End;
        if (between)
        {
            maker.Fault(
                "This unit is not known.", Typed(next, next + 2),
                "Leave a blank between number and words, or type N, kgf, lb, Nm or degrees.");
            draft.Broken = true;
        }
        else
        {
            draft.Numbers.Add(new DraftNumber(number.Value, UnitKind.Foreign, Typed(next, next + 2), word.Text));
        }

        next += 2;
    }

    /// <summary>"4/5" on a strength test, "7/10" and "54/80" on a scale are scores; anything else with a slash is a pair of trials.</summary>
    private bool TakeScore(double score, double outOf)
    {
        var moreFollow = next + 3 < tokens.Count && tokens[next + 3].Kind == TokenKind.Slash;
        if (moreFollow || measure is null)
            return false;
        if (measure.Kind == MeasureKind.Strength && outOf == 5 && score is >= 0 and <= 5)
        {
            TakeGrade(new Token(TokenKind.Grade, Say.Number(score), score, tokens[next].At, tokens[next].End));
            return true;
        }

        if (measure.Unit != MeasureUnit.Points && measure.Unit != MeasureUnit.Percent)
            return false;
        draft.OutOf = outOf;
        draft.Numbers.Add(new DraftNumber(score, null, Typed(next, next + 3)));
        next += 3;
        return true;
    }

    private void TakeGrade(Token token)
    {
        if (measure is not { Kind: MeasureKind.Strength })
        {
            // "5+" on anything but a muscle is "5 or more".
            if (token.Text.EndsWith('+'))
                draft.Conditions = draft.Conditions with { Bound = ValueBound.AtLeast };
            draft.Numbers.Add(new DraftNumber(token.Value, null, token.Text));
            next++;
            return;
        }

        draft.Grade = token.Text + "/5";
        next++;
        if (next + 1 < tokens.Count && tokens[next].Kind == TokenKind.Slash && IsNumber(next + 1))
            next += 2;
    }

    /// <summary>What stands in brackets is kept beside the reading: a printed value, a spread, the ends of a scale.</summary>
    private void TakeAside()
    {
        var from = next;
        while (next < tokens.Count && !(tokens[next].Kind == TokenKind.Word && tokens[next].Text.Contains(')', StringComparison.Ordinal)))
            next++;
        next = Math.Min(next + 1, tokens.Count);
        var inside = Typed(from, next).Trim('(', ')', ' ');
        if (inside.Length == 0)
            return;
        draft.Printed = draft.Printed is null ? inside : $"{draft.Printed}; {inside}";
        var ends = tokens[from..next].Where(t => t.Kind == TokenKind.Number).Select(t => t.Value).ToArray();
        if (ends is [var high, var low] && high > low && measure is { Unit: MeasureUnit.Points })
            maker.Question(inside, $"This scale is printed from {Say.Number(high)} down to {Say.Number(low)}. Here more is {(measure.Direction == Direction.LowerBetter ? "worse" : "better")}. Is the score meant so?");
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
        else if (!EntryWords.IsFiller(token) && !(IsProse && EntryWords.IsProse(token)))
            draft.Words.Add(token.Text);
        next++;
    }
}
