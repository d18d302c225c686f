using System.Collections.Frozen;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>The small words of an entry.</summary>
internal static class EntryWords
{
    private static readonly FrozenSet<string> Fillers = new[]
    {
        "was", "is", "are", "the", "on", "of", "and", "with", "a", "an", "measured", "about", "for", "to", "side", "way", "scored", "score",
        "scores", "that", "had", "has", "his", "her", "their", "it", "reads", "read", "now", "today",
    }.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    public static Side? Side(Token token)
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

    public static bool IsBoth(Token token) => Is(token, "both", "bilateral", "bilaterally", "bilat", "each");

    /// <summary>"worst", "affected", "involved": the side that hurts; "other", "unaffected", "good": the one that does not.</summary>
    public static bool? IsAffected(Token token) =>
        Is(token, "worst", "worse", "affected", "involved", "painful", "bad", "sore") ? true
        : Is(token, "other", "unaffected", "uninvolved", "good", "opposite", "better") ? false
        : null;

    public static bool IsAt(Token token) => Is(token, "at", "@", "lever");

    public static bool IsPain(Token token) => Is(token, "pain", "pain:", "p");

    public static bool IsNotANumber(Token token) => Is(token, "nan", "inf", "infinity", "∞");

    public static bool IsDash(Token token) => token.Kind == TokenKind.Word && token.Text is "-" or "\u2212" or "\u2013";

    public static bool IsSymmetry(Token token) => Is(token, "lsi", "symmetry", "si");

    public static bool IsPrinted(Token token) => Is(token, "printed", "reported", "wrote", "written");

    public static bool IsDeficit(Token token) => Is(token, "lacks", "lacking", "lack", "deficit", "missing");

    public static bool IsHyper(Token token) => Is(token, "hyper", "hyperextension", "hyperextends");

    public static bool IsSum(Token token) => Is(token, "total", "sum", "arc");

    /// <summary>Words in front of a percentage that make it a change.</summary>
    public static bool IsChange(Token token) => Is(
        token, "up", "down", "gain", "gained", "gains", "improved", "increase", "increased", "lost", "loss", "decreased", "change", "changed");

    /// <summary>What a mark or word in front of a number says about it.</summary>
    public static ValueBound? BoundBefore(Token token) =>
        token.Kind != TokenKind.Word ? null
        : token.Text is "<" or "≤" or "<=" || Is(token, "under", "below") ? ValueBound.AtMost
        : token.Text is ">" or "≥" or ">=" || Is(token, "over", "above", "atleast") ? ValueBound.AtLeast
        : null;

    public static bool Is(Token token, params ReadOnlySpan<string> words)
    {
        if (token.Kind != TokenKind.Word)
            return false;
        foreach (var word in words)
        {
            if (token.Text.Equals(word, StringComparison.OrdinalIgnoreCase))
                return true;
        }

        return false;
    }

    /// <summary>Marks between words that carry no meaning of their own.</summary>
    public static bool IsFiller(Token token) =>
        token.Kind == TokenKind.Word && token.Text.All(c => !char.IsLetterOrDigit(c)) && EntryUnits.Find(token) is null;

    /// <summary>Words that only hold a sentence together.</summary>
    public static bool IsProse(Token token) => token.Kind == TokenKind.Word && Fillers.Contains(token.Text);
}
