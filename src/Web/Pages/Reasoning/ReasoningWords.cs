using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Web.Parts;

namespace MomentArm.Web.Pages.Reasoning;

/// <summary>Words of the reasoning page.</summary>
public static class ReasoningWords
{
    public static string Fit(PatternFit fit) => fit switch
    {
        PatternFit.Fits => "may fit",
        PatternFit.Partly => "fits in part",
        PatternFit.NotAsked => "not asked",
        PatternFit.Against => "spoken against",
    };

    public static Tone ToneOf(PatternFit fit) => fit == PatternFit.Fits ? Tone.Good : Tone.Neutral;

    public static string Band(ProbabilityBand band) => band switch
    {
        ProbabilityBand.Unlikely => "unlikely",
        ProbabilityBand.Possible => "possible",
        ProbabilityBand.Probable => "probable",
        ProbabilityBand.VeryProbable => "very probable",
    };

    public static string Region(BodyRegion region) => region switch
    {
        BodyRegion.Hip => "hip",
        BodyRegion.Knee => "knee",
        BodyRegion.AnkleFoot => "ankle and foot",
        BodyRegion.Trunk => "back and trunk",
        BodyRegion.Shoulder => "shoulder",
        BodyRegion.ElbowWrist => "elbow and wrist",
        BodyRegion.Neck => "neck",
        BodyRegion.WholeBody => "whole body",
    };

    /// <summary>The questions of a hypothesis, those that define it first.</summary>
    public static IReadOnlyList<PatternQuestion> Questions(ReasoningBasis basis, Pattern pattern)
    {
        ArgumentNullException.ThrowIfNull(basis);
        ArgumentNullException.ThrowIfNull(pattern);
        return [.. pattern.Defining.Concat(pattern.Supporting).Concat(pattern.Opposing).Select(basis.Question).OfType<PatternQuestion>()];
    }

    /// <summary>The tests of a hypothesis, those with accuracy first.</summary>
    public static IReadOnlyList<ClinicalTest> Tests(ReasoningBasis basis, Pattern pattern, ReasoningInput input)
    {
        ArgumentNullException.ThrowIfNull(basis);
        ArgumentNullException.ThrowIfNull(pattern);
        var named = pattern.Defining.Concat(pattern.Supporting).Concat(pattern.Opposing).ToHashSet();
        return
        [
            .. basis.Tests.Where(t => named.Contains(t.Id) || t.Figures.Any(f => f.Pattern == pattern.Id))
                .OrderBy(t => t.Figures.Any(f => f.Pattern == pattern.Id && TestReader.MayMove(f, input)) ? 0 : 1),
        ];
    }

    /// <summary>The figure of a test that counts for a hypothesis, else the first known.</summary>
    public static AccuracyFigure? FigureOf(ClinicalTest test, Pattern pattern, ReasoningInput input)
    {
        ArgumentNullException.ThrowIfNull(test);
        ArgumentNullException.ThrowIfNull(pattern);
        var figures = test.Figures.Where(f => f.Pattern == pattern.Id).ToArray();
        return figures.FirstOrDefault(f => TestReader.MayMove(f, input)) ?? figures.FirstOrDefault();
    }

    /// <summary>What is known of a figure in one line.</summary>
    public static string Accuracy(AccuracyFigure figure, ReasoningInput input)
    {
        ArgumentNullException.ThrowIfNull(figure);
        if (figure.Origin == RatioOrigin.None)
            return "no accuracy data";
        var parts = new[]
        {
            Ratio("if positive", RatioRules.Of(figure, true), figure.Use != TestUse.RuleOut),
            Ratio("if negative", RatioRules.Of(figure, false), figure.Use != TestUse.RuleIn),
        }.OfType<string>().ToArray();
        var words = parts.Length == 0 ? "no likelihood ratio" : "likelihood ratio " + string.Join(", ", parts);
        return TestReader.MayMove(figure, input) ? words
            : words + (figure.Standing == FigureStanding.CheckFirst ? "; from memory, not used until confirmed" : "; not fit for use");
    }

    private static string? Ratio(string when, UsedRatio? ratio, bool used) => ratio is null || !used ? null
        : ratio.Strength == 0 ? $"{Say.Number(ratio.Reported.Value, 2)} {when} (shifts nothing: its interval holds 1)"
        : $"{Say.Number(ratio.Used.Value, 2)} {when} ({Say.Number(ratio.Used.Interval!.Low, 2)} to {Say.Number(ratio.Used.Interval.High, 2)}{(ratio.Origin == IntervalOrigin.Assumed ? ", assumed" : "")})";
}
