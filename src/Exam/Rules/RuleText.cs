using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>Results of rules in words.</summary>
public static class RuleText
{
    /// <summary>The result in one or two sentences: the band and what it means, what is still needed, or why it is not for this person.</summary>
    /// <param name="result">A result.</param>
    /// <returns>Text.</returns>
    public static string Headline(RuleResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result.State switch
        {
            RuleState.Told => $"{result.Advice!.Name}. {result.Advice.Means}",
            RuleState.NotForThisPerson => $"Not for this person: {string.Join("; ", (result.Excluded.IsEmpty ? result.Rule.NotFor : result.Excluded).Select(e => e.Text))}.",
            RuleState.NotYet => NotYet(result),
        };
    }

    /// <summary>A score: "3 points" or "1 to 4 points so far".</summary>
    /// <param name="score">A score.</param>
    /// <returns>Text.</returns>
    public static string Points(ScoreResult score)
    {
        ArgumentNullException.ThrowIfNull(score);
        return score.Low == score.High
            ? $"{Signed(score.Low)} point{(score.Low is 1 ? "" : "s")}"
            : $"between {Signed(score.Low)} and {Signed(score.High)} points";
    }

    /// <summary>One criterion: points counted, not counted, or not known.</summary>
    /// <param name="criterion">A criterion.</param>
    /// <returns>Text such as "+1", "0", "not known: 0 or +1", "met", "not met", "not known".</returns>
    public static string Counted(CriterionResult criterion)
    {
        ArgumentNullException.ThrowIfNull(criterion);
        var points = criterion.Criterion.Points;
        return (criterion.Met, points) switch
        {
            (null, 0) => "not known",
            (null, _) => $"not known: 0 or {WithSign(points)}",
            (true, 0) => "met",
            (true, _) => WithSign(points),
            (false, 0) => "not met",
            (false, _) => "0",
        };
    }

    /// <summary>An accuracy row: figures with intervals, population, and why an interval is missing.</summary>
    /// <param name="accuracy">A row.</param>
    /// <returns>Text.</returns>
    public static string Accuracy(RuleAccuracy accuracy)
    {
        ArgumentNullException.ThrowIfNull(accuracy);
        var figures = string.Join(", ", accuracy.Figures.Select(Figure));
        var text = figures.Length == 0 ? accuracy.Population : $"{accuracy.Population}: {figures}";
        return accuracy.IntervalNote is null ? text + "." : $"{text}. {accuracy.IntervalNote}";
    }

    private static string Figure(RuleFigure figure)
    {
        var name = figure.Kind switch
        {
            RuleFigureKind.Sensitivity => "sensitivity",
            RuleFigureKind.Specificity => "specificity",
            RuleFigureKind.LikelihoodRatio => "likelihood ratio",
            RuleFigureKind.NegativeLikelihoodRatio => "likelihood ratio of a negative",
            RuleFigureKind.Probability => "had it",
        };
        var interval = figure is { Low: { } low, High: { } high } ? $" ({Shown(figure.Kind, low)} to {Shown(figure.Kind, high)})" : "";
        return $"{(figure.Of is null ? "" : figure.Of + ": ")}{name} {Shown(figure.Kind, figure.Value)}{interval}";
    }

    private static string Shown(RuleFigureKind kind, double value) =>
        kind is RuleFigureKind.LikelihoodRatio or RuleFigureKind.NegativeLikelihoodRatio ? Say.Number(value, 2) : Say.Number(value * 100, 1) + " %";

    private static string NotYet(RuleResult result)
    {
        var possible = result.Outcomes[0].Possible;
        var needs = string.Join("; ", result.Needs.Select(i => i.Text));
        return possible.Length == 1
            ? $"Cannot be told yet: needs {needs}. If the rule is for this person: {possible[0].Name}."
            : $"Cannot be told yet: needs {needs}. Still possible: {string.Join("; ", possible.Select(b => b.Name))}.";
    }

    private static string WithSign(int points) => points > 0 ? $"+{Signed(points)}" : Signed(points);

    private static string Signed(int points) => Say.Number(points, 0);
}
