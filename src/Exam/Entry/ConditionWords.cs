using System.Collections.Frozen;

namespace MomentArm.Exam;

/// <summary>Words of an entry that say how, by whom and when it was measured.</summary>
internal static class ConditionWords
{
    private static readonly FrozenDictionary<string, ExamPosition> Positions = new Dictionary<string, ExamPosition>
    {
        ["standing"] = ExamPosition.Standing, ["sitting"] = ExamPosition.Sitting, ["seated"] = ExamPosition.Sitting,
        ["supine"] = ExamPosition.Supine, ["side-lying"] = ExamPosition.SideLying, ["sidelying"] = ExamPosition.SideLying,
        ["prone"] = ExamPosition.Prone,
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    private static readonly FrozenSet<string> Devices = new[]
    {
        "hhd", "hand-held", "handheld", "fixed", "strap", "strapped", "belt", "belted", "goniometer", "inclinometer", "tape", "phone", "app",
        "dynamometer", "scale", "gauge",
    }.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    private static readonly FrozenDictionary<string, LowForceReason> Reasons = new Dictionary<string, LowForceReason>
    {
        ["pain-limited"] = LowForceReason.Pain, ["painful"] = LowForceReason.Pain, ["pain"] = LowForceReason.Pain,
        ["fear"] = LowForceReason.Fear, ["afraid"] = LowForceReason.Fear, ["fearful"] = LowForceReason.Fear, ["guarding"] = LowForceReason.Fear,
        ["apprehensive"] = LowForceReason.Fear, ["nerve"] = LowForceReason.Nerve, ["numb"] = LowForceReason.Nerve,
        ["numbness"] = LowForceReason.Nerve, ["tingling"] = LowForceReason.Nerve, ["reflex"] = LowForceReason.Nerve,
        ["weakness"] = LowForceReason.Weakness, ["weak"] = LowForceReason.Weakness,
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    private static readonly FrozenSet<string> Moments = new[]
    {
        "before", "after", "pre", "post", "baseline", "pre-op", "post-op", "preop", "postop", "morning", "evening",
    }.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    private static readonly FrozenSet<string> Counted =
        new[] { "week", "wk", "day", "month" }.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>Takes one condition at a place.</summary>
    /// <returns>How many tokens it took; 0 when there is none.</returns>
    public static int Take(IReadOnlyList<Token> tokens, int at, Measure measure, ReadingDraft draft)
    {
        var token = tokens[at];
        if (token.Kind != TokenKind.Word || measure.Kind == MeasureKind.PatientSpecific)
            return 0;
        if (Moment(tokens, at) is { } moment)
        {
            (draft.Moment, draft.IsClosed) = (moment.Text, draft.Numbers.Count > 0);
            return moment.Taken;
        }

        if (measure.Kind is MeasureKind.PainRating or MeasureKind.Questionnaire or MeasureKind.GlobalChange)
            return 0;
        if (Positions.TryGetValue(token.Text, out var position))
        {
            // The usual position needs no word; another one is kept, because values of two positions are never compared.
            if (position != measure.Position)
                draft.Conditions = draft.Conditions with { Position = position };
            return 1;
        }

        if (Devices.Contains(token.Text))
        {
            draft.Conditions = draft.Conditions with { Device = Joined(draft.Conditions.Device, token.Text) };
            return 1;
        }

        if (token.IsWord("by") && at + 1 < tokens.Count && IsName(tokens[at + 1]))
        {
            draft.Conditions = draft.Conditions with { Examiner = tokens[at + 1].Text.TrimEnd('.') };
            return 2;
        }

        return Reason(tokens, at, measure, draft);
    }

    private static int Reason(IReadOnlyList<Token> tokens, int at, Measure measure, ReadingDraft draft)
    {
        var painRated = EntryWords.IsPain(tokens[at]) && at + 1 < tokens.Count && tokens[at + 1].Kind == TokenKind.Number;
        if (measure.Kind != MeasureKind.Strength || painRated || !Reasons.TryGetValue(tokens[at].Text, out var reason))
            return 0;
        draft.Conditions = draft.Conditions with { LowForce = draft.Conditions.LowForce ?? reason };
        // The words stay as well: nothing typed is lost.
        draft.Words.Add(tokens[at].Text);
        return 1;
    }

    /// <summary>"after", "next morning", "week 6", "6 weeks". A word that goes on ("after running") is no moment of its own.</summary>
    private static (string Text, int Taken)? Moment(IReadOnlyList<Token> tokens, int at)
    {
        Token? next = at + 1 < tokens.Count ? tokens[at + 1] : null;
        if (tokens[at].IsWord("next") && next?.IsWord("morning") == true)
            return ("next morning", 2);
        if (Counted.Contains(tokens[at].Text) && next is { Kind: TokenKind.Number } number)
            return ($"{tokens[at].Text.ToLowerInvariant()} {number.Text}", 2);
        if (!Moments.Contains(tokens[at].Text))
            return null;
        var goesOn = next is { Kind: TokenKind.Word } word && EntryWords.Side(word) is null && !EntryWords.IsPain(word)
            && !EntryWords.IsFiller(word) && EntryWords.BoundBefore(word) is null;
        return goesOn ? null : (tokens[at].Text.ToLowerInvariant(), 1);
    }

    private static bool IsName(Token token) => token.Kind == TokenKind.Word && token.Text.Length <= 20 && char.IsUpper(token.Text[0]);

    private static string Joined(string? before, string word) => before is null ? word : $"{before} {word}";
}
