using System.Collections.Immutable;
using System.Globalization;

namespace MomentArm.Exam;

/// <summary>What was typed into an item of a rule, as understood.</summary>
/// <param name="Value">The answer; null when it is unknown or could not be read.</param>
/// <param name="Fault">What is wrong and what to do; null when it was understood.</param>
public sealed record RuleReading(RuleValue? Value, string? Fault)
{
    private static readonly ImmutableArray<string> UnknownWords = ["", "?", "u", "unknown", "not known"];

    /// <summary>Reads what was typed into an item: yes, no, y, n, unknown, a number with or without its unit, a choice.</summary>
    /// <param name="item">The item.</param>
    /// <param name="typed">What was typed; blank and "unknown" mean unknown.</param>
    /// <returns>The answer, unknown, or a fault that says what to do.</returns>
    public static RuleReading Of(RuleItem item, string? typed)
    {
        ArgumentNullException.ThrowIfNull(item);
        var text = (typed ?? "").Trim().ToLowerInvariant();
        if (UnknownWords.Contains(text))
            return new RuleReading(null, null);
        return item.Kind switch
        {
            RuleItemKind.YesNo => YesNo(text, typed!),
            RuleItemKind.Number => Number(item, text, typed!),
            RuleItemKind.Choice => item.Choices.FirstOrDefault(c => c.Id == text || string.Equals(c.Text, text, StringComparison.OrdinalIgnoreCase)) is { } choice
                ? new RuleReading(RuleValue.Choice(choice.Id), null)
                : Wrong($"\"{typed!.Trim()}\" is none of the choices. Give one of: {string.Join(", ", item.Choices.Select(c => c.Id))}, or unknown."),
        };
    }

    /// <summary>What is wrong with a value for an item; null when it fits.</summary>
    /// <param name="item">The item.</param>
    /// <param name="value">A value.</param>
    /// <returns>A sentence that says what to do, or null.</returns>
    public static string? FaultOf(RuleItem item, RuleValue value)
    {
        ArgumentNullException.ThrowIfNull(item);
        ArgumentNullException.ThrowIfNull(value);
        return item.Kind switch
        {
            RuleItemKind.Number => value.Number is not { } number ? $"{item.Id} is a number: give {Range(item)}."
                : number < item.Low || number > item.High ? $"{Say.Number(number, 2)} {item.Unit} is not usable: give {Range(item)}."
                : null,
            RuleItemKind.YesNo => value.Word is "yes" or "no" ? null : $"{item.Id} is answered yes, no or unknown.",
            RuleItemKind.Choice => item.Choices.Any(c => c.Id == value.Word) ? null
                : $"{item.Id} is one of: {string.Join(", ", item.Choices.Select(c => c.Id))}.",
        };
    }

    private static RuleReading YesNo(string text, string typed) => text switch
    {
        "y" or "yes" or "true" or "+" or "positive" => new RuleReading(RuleValue.Yes, null),
        "n" or "no" or "false" or "-" or "negative" => new RuleReading(RuleValue.No, null),
        _ => Wrong($"\"{typed.Trim()}\" is not an answer here: type yes, no or unknown."),
    };

    private static RuleReading Number(RuleItem item, string text, string typed)
    {
        var digits = text.EndsWith(item.Unit, StringComparison.Ordinal) ? text[..^item.Unit.Length].Trim() : text.TrimEnd('°');
        if (!double.TryParse(digits, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)
            || !double.IsFinite(number))
            return Wrong($"\"{typed.Trim()}\" is not a number: give {Range(item)}, or unknown.");
        var value = RuleValue.Of(number);
        return FaultOf(item, value) is { } fault ? Wrong(fault) : new RuleReading(value, null);
    }

    private static string Range(RuleItem item) => $"{Say.Number(item.Low, 2)} to {Say.Number(item.High, 2)} {item.Unit}";

    private static RuleReading Wrong(string sentence) => new(null, sentence);
}
