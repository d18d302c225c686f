using System.Collections.Immutable;
using System.Globalization;

namespace MomentArm.Exam;

/// <summary>How item answers become a score.</summary>
public enum ScoreForm
{
    /// <summary>Only the total is typed, from the form that the clinic is entitled to use.</summary>
    TotalOnly,

    /// <summary>Sum of the answers.</summary>
    Sum,

    /// <summary>Mean of the answers.</summary>
    Mean,

    /// <summary>Where the mean answer lies between the lowest and the highest, 0 to 100.</summary>
    PercentOfRange,

    /// <summary>100 minus <see cref="PercentOfRange"/>.</summary>
    PercentOfRangeReversed,
}

/// <summary>A questionnaire: what may be typed, how it is scored, and on whose terms its words may be shown.</summary>
public sealed record QuestionnaireSetUp
{
    /// <summary>How it is scored.</summary>
    public required ScoreForm Form { get; init; }

    /// <summary>Items; 0 when only the total is typed.</summary>
    public int ItemCount { get; init; }

    /// <summary>Fewest answers that still give a score.</summary>
    public int LeastAnswered { get; init; }

    /// <summary>Lowest answer.</summary>
    public int ItemLow { get; init; }

    /// <summary>Highest answer.</summary>
    public int ItemHigh { get; init; }

    /// <summary>The items in words, where they are ours or free to everyone; else empty, and the numbers come from the paper form.</summary>
    public ImmutableArray<string> Items { get; init; } = [];

    /// <summary>On what terms it may be used.</summary>
    public required string Terms { get; init; }

    /// <summary>Scores typed answers.</summary>
    /// <param name="answers">One entry an item in its order; null for an item left out.</param>
    /// <returns>The score, or the reason why there is none and what to do.</returns>
    public QuestionnaireScore Score(IReadOnlyList<int?> answers)
    {
        ArgumentNullException.ThrowIfNull(answers);
        if (Form == ScoreForm.TotalOnly)
            return QuestionnaireScore.None("Only the total is taken here: type the total of the paper form.");
        if (answers.Count != ItemCount)
            return QuestionnaireScore.None(Told($"{answers.Count} answers were given, and there are {ItemCount} items: leave a blank for an item left out."));
        for (var i = 0; i < answers.Count; i++)
        {
            if (answers[i] is { } answer && (answer < ItemLow || answer > ItemHigh))
                return QuestionnaireScore.None(Told($"Item {i + 1} is answered with {answer}: answers go from {ItemLow} to {ItemHigh}."));
        }

        var given = answers.OfType<int>().ToList();
        if (given.Count < LeastAnswered)
            return QuestionnaireScore.None(
                Told($"{given.Count} of {ItemCount} items are answered, and at least {LeastAnswered} are needed: ask the open ones."));
        var mean = given.Average();
        var share = 100 * (mean - ItemLow) / (ItemHigh - ItemLow);
        return new QuestionnaireScore(
            Form switch
            {
                ScoreForm.Sum => given.Sum(),
                ScoreForm.Mean => mean,
                ScoreForm.PercentOfRange => share,
                ScoreForm.PercentOfRangeReversed => 100 - share,
                ScoreForm.TotalOnly => null,
            },
            given.Count == ItemCount ? null : Told($"From {given.Count} of {ItemCount} items."));
    }

    private static string Told(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

/// <summary>A score, or why there is none.</summary>
/// <param name="Value">The score in points; null when there is none.</param>
/// <param name="Sentence">What to know about it, or what to do; null when all items were answered.</param>
public sealed record QuestionnaireScore(double? Value, string? Sentence)
{
    /// <summary>No score.</summary>
    internal static QuestionnaireScore None(string sentence) => new(null, sentence);
}
