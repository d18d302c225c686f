using System.Globalization;

namespace MomentArm.Exam;

/// <summary>Kinds of pieces a typed entry is made of.</summary>
internal enum TokenKind
{
    Number,
    Word,
    Slash,
    Separator,

    /// <summary>Two numbers with a comma and three digits after it: "118,121".</summary>
    DoubtfulNumber,

    /// <summary>A number with a plus or minus behind it: a manual grade, "4+".</summary>
    Grade,
}

/// <summary>One piece of a typed entry.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Text">As typed, or the digits for a number that was said in words.</param>
/// <param name="Value">The number; 0 for others.</param>
/// <param name="At">Where it begins in the text.</param>
/// <param name="End">Where it ends, not included.</param>
internal readonly record struct Token(TokenKind Kind, string Text, double Value, int At, int End)
{
    public bool IsWord(string word) => Kind == TokenKind.Word && Text.Equals(word, StringComparison.OrdinalIgnoreCase);
}

/// <summary>
/// Cuts a typed entry into numbers, words and marks. A comma or point between digits is a decimal mark; several commas in
/// one run of digits, or a comma with a space, separate trials.
/// </summary>
internal static class EntryScanner
{
    public static List<Token> Scan(string text)
    {
        var tokens = new List<Token>();
        var i = 0;
        while (i < text.Length)
        {
            if (char.IsWhiteSpace(text[i]))
                i++;
            else if (StartsNumber(text, i))
                i = Number(text, i, tokens);
            else if (text[i] is '/' or '|')
                tokens.Add(new Token(TokenKind.Slash, "/", 0, i, ++i));
            else if (text[i] is ',' or ';' or '\n')
                tokens.Add(new Token(TokenKind.Separator, ",", 0, i, ++i));
            else
                i = Word(text, i, tokens);
        }

        return tokens;
    }

    private static bool IsDigit(string text, int i) => i < text.Length && char.IsAsciiDigit(text[i]);

    private static bool IsMinus(char c) => c is '-' or '\u2212' or '\u2013';

    private static bool StartsNumber(string text, int i)
    {
        if (IsDigit(text, i))
            return true;
        var afterDigitOrLetter = i > 0 && char.IsLetterOrDigit(text[i - 1]);
        var signed = (IsMinus(text[i]) || text[i] == '+') && !afterDigitOrLetter;
        return (signed && (IsDigit(text, i + 1) || (i + 1 < text.Length && text[i + 1] is '.' && IsDigit(text, i + 2))))
            || (text[i] == '.' && IsDigit(text, i + 1));
    }

    private static int Number(string text, int start, List<Token> tokens)
    {
        var i = start;
        if (IsMinus(text[i]) || text[i] == '+')
            i++;
        while (IsDigit(text, i) || (i < text.Length && text[i] is '.' or ',' && IsDigit(text, i + 1)))
            i++;
        var run = text[start..i];
        if (i < text.Length && (text[i] == '+' || IsMinus(text[i])) && !IsDigit(text, i + 1) && run.Length == 1)
        {
            tokens.Add(new Token(TokenKind.Grade, run + (text[i] == '+' ? '+' : '-'), run[0] - '0', start, i + 1));
            return i + 1;
        }

        // "1RM", "10RM": how often a load can be lifted is a word, not a reading.
        if (i + 2 <= text.Length && text.AsSpan(i, 2).Equals("RM", StringComparison.OrdinalIgnoreCase) && (i + 2 == text.Length || !char.IsLetter(text[i + 2])))
        {
            tokens.Add(new Token(TokenKind.Word, text[start..(i + 2)], 0, start, i + 2));
            return i + 2;
        }

        AddRun(run, start, tokens);
        return i;
    }

    private static void AddRun(string run, int start, List<Token> tokens)
    {
        var commas = run.Count(c => c == ',');
        var points = run.Count(c => c == '.');
        if (commas > 1 || (commas == 1 && points > 0))
        {
            foreach (var part in run.Split(','))
            {
                AddNumber(part, start, tokens);
                start += part.Length + 1;
            }

            return;
        }

        var comma = run.IndexOf(',', StringComparison.Ordinal);
        if (comma > 0 && run.Length - comma - 1 == 3 && run.TrimStart('+', '-')[0] != '0')
            tokens.Add(new Token(TokenKind.DoubtfulNumber, run, 0, start, start + run.Length));
        else
            AddNumber(run.Replace(',', '.'), start, tokens);
    }

    private static void AddNumber(string run, int start, List<Token> tokens)
    {
        var plain = run.Replace('\u2212', '-').Replace('\u2013', '-');
        var kind = double.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value)
            ? TokenKind.Number
            : TokenKind.Word;
        tokens.Add(new Token(kind, run, value, start, start + run.Length));
    }

    private static int Word(string text, int start, List<Token> tokens)
    {
        var i = start;
        var letters = char.IsLetter(text[i]);
        while (i < text.Length && !char.IsWhiteSpace(text[i]) && text[i] is not ('|' or ',' or ';')
            && (letters ? IsInsideWord(text, i) : !char.IsLetterOrDigit(text[i]) && text[i] != '/' && (i == start || !StartsNumber(text, i))))
            i++;
        if (i == start)
            i++;
        tokens.Add(new Token(TokenKind.Word, text[start..i], 0, start, i));
        return i;
    }

    private static bool IsInsideWord(string text, int i)
    {
        if (char.IsLetter(text[i]) || text[i] == '\'')
            return true;
        var between = i > 0 && i + 1 < text.Length && char.IsLetter(text[i - 1]) && char.IsLetter(text[i + 1]);
        return between && (IsMinus(text[i]) || (text[i] == '/' && text[i - 1] is 'm' or 'M' or 'n' or 'N'))
            && (text[i] != '/' || char.ToLowerInvariant(text[i + 1]) == 'k');
    }
}
