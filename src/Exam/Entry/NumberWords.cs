using System.Collections.Frozen;
using System.Globalization;

namespace MomentArm.Exam;

/// <summary>
/// Numbers as they are dictated: "one hundred and eighteen", "one eighteen", "six point five", "seven over ten", "five to ten".
/// Words that belong to the name of a measure ("six minute walk") stay words.
/// </summary>
internal static class NumberWords
{
    private static readonly FrozenDictionary<string, int> Units = Numbered(
        "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen", 0, 1);

    private static readonly FrozenDictionary<string, int> Tens = Numbered("twenty thirty forty fifty sixty seventy eighty ninety", 20, 10);

    /// <summary>Puts numbers in the place of their words.</summary>
    public static List<Token> Fold(List<Token> tokens, MeasureMatcher? matcher)
    {
        var folded = new List<Token>(tokens.Count);
        for (var i = 0; i < tokens.Count;)
        {
            if (tokens[i].Kind == TokenKind.Word && matcher?.Find(tokens, i, exactOnly: true) is { } name)
            {
                folded.AddRange(tokens.GetRange(i, name.Tokens));
                i += name.Tokens;
            }
            else if (Read(tokens, i) is { } number)
            {
                folded.Add(number.Token);
                i += number.Taken;
            }
            else
                folded.Add(tokens[i++]);
        }

        return Join(folded);
    }

    /// <summary>"over" and "out of" between numbers are a slash, "to" is a dash.</summary>
    private static List<Token> Join(List<Token> tokens)
    {
        for (var i = 1; i < tokens.Count - 1; i++)
        {
            if (tokens[i - 1].Kind != TokenKind.Number)
                continue;
            var pair = tokens[i].IsWord("out") && tokens[i + 1].IsWord("of") && i + 2 < tokens.Count;
            if (tokens[pair ? i + 2 : i + 1].Kind != TokenKind.Number)
                continue;
            if (pair || tokens[i].IsWord("over"))
            {
                tokens[i] = new Token(TokenKind.Slash, "/", 0, tokens[i].At, tokens[pair ? i + 1 : i].End);
                if (pair)
                    tokens.RemoveAt(i + 1);
            }
            else if (tokens[i].IsWord("to"))
                tokens[i] = new Token(TokenKind.Word, "-", 0, tokens[i].At, tokens[i].End);
        }

        return tokens;
    }

    private static (Token Token, int Taken)? Read(List<Token> tokens, int at)
    {
        var i = at;
        var negative = Word(tokens, i) == "minus";
        if (negative)
            i++;
        var whole = Whole(tokens, ref i);
        var value = (double)(whole ?? 0);
        var decimals = Decimals(tokens, ref i);
        if (whole is null && decimals is null)
            return null;
        value += decimals ?? 0;
        if (negative)
            value = -value;
        var (first, last) = (tokens[at], tokens[i - 1]);
        var text = value.ToString("R", CultureInfo.InvariantCulture);
        return (new Token(TokenKind.Number, text, value, first.At, last.End), i - at);
    }

    private static int? Whole(List<Token> tokens, ref int i)
    {
        var small = Small(tokens, ref i);
        if (small is null && Word(tokens, i) == "a" && Word(tokens, i + 1) == "hundred")
            (small, i) = (1, i + 1);
        if (small is null)
            return null;
        if (Word(tokens, i) == "hundred")
        {
            i++;
            var after = Word(tokens, i) == "and" ? i + 1 : i;
            if (Small(tokens, ref after) is not { } rest)
                return small * 100;
            i = after;
            return small * 100 + rest;
        }

        // "One eighteen" is said for 118; "one five" is not.
        var next = i;
        if (small == 1 && Small(tokens, ref next) is { } tail and >= 10)
        {
            i = next;
            return 100 + tail;
        }

        return small;
    }

    /// <summary>Zero to ninety-nine.</summary>
    private static int? Small(List<Token> tokens, ref int i)
    {
        var word = Word(tokens, i);
        if (word is null)
            return null;
        var parts = word.Split('-');
        if (parts.Length == 2 && Tens.TryGetValue(parts[0], out var tens) && Units.TryGetValue(parts[1], out var unit) && unit is > 0 and < 10)
        {
            i++;
            return tens + unit;
        }

        if (Units.TryGetValue(word, out var plain))
        {
            i++;
            return plain;
        }

        if (!Tens.TryGetValue(word, out var ten))
            return null;
        i++;
        if (Word(tokens, i) is { } after && Units.TryGetValue(after, out var one) && one is > 0 and < 10)
        {
            i++;
            return ten + one;
        }

        return ten;
    }

    private static double? Decimals(List<Token> tokens, ref int i)
    {
        if (Word(tokens, i) != "point")
            return null;
        var (at, scale, value) = (i + 1, 0.1, 0.0);
        while (Word(tokens, at) is { } word && Units.TryGetValue(word, out var digit) && digit < 10)
        {
            value += digit * scale;
            scale /= 10;
            at++;
        }

        if (at == i + 1)
            return null;
        i = at;
        return Math.Round(value, 9);
    }

    private static string? Word(List<Token> tokens, int i) =>
        i < tokens.Count && tokens[i].Kind == TokenKind.Word ? tokens[i].Text.ToLowerInvariant() : null;

    private static FrozenDictionary<string, int> Numbered(string words, int from, int by) =>
        words.Split(' ').Select((word, i) => (word, i)).ToFrozenDictionary(w => w.word, w => from + w.i * by);
}
