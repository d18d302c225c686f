namespace MomentArm.Exam;

/// <summary>A known answer to an item of a rule: a number, or a word ("yes", "no" or the id of a choice).</summary>
public sealed record RuleValue
{
    private RuleValue(double? number, string? word) => (Number, Word) = (number, word);

    /// <summary>The answer yes.</summary>
    public static RuleValue Yes { get; } = new(null, "yes");

    /// <summary>The answer no.</summary>
    public static RuleValue No { get; } = new(null, "no");

    /// <summary>The number, in the unit of the item; null for a word.</summary>
    public double? Number { get; }

    /// <summary>The word; null for a number.</summary>
    public string? Word { get; }

    /// <summary>A number.</summary>
    /// <param name="number">The number, in the unit of the item.</param>
    /// <returns>The value.</returns>
    /// <exception cref="ArgumentOutOfRangeException">It is not finite.</exception>
    public static RuleValue Of(double number) => double.IsFinite(number)
        ? new RuleValue(number, null)
        : throw new ArgumentOutOfRangeException(nameof(number), number, "A finite number is needed.");

    /// <summary>A choice by its id.</summary>
    /// <param name="id">Id of the choice.</param>
    /// <returns>The value.</returns>
    public static RuleValue Choice(string id)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(id);
        return new RuleValue(null, id);
    }

    /// <summary>Yes or no.</summary>
    /// <param name="yes">Whether it is yes.</param>
    /// <returns>The value.</returns>
    public static RuleValue Of(bool yes) => yes ? Yes : No;

    /// <summary>The value as stored and typed: "yes", "55", the id of a choice.</summary>
    /// <returns>Text without unit.</returns>
    public override string ToString() => Number is { } number ? Say.Number(number, 4) : Word!;
}
