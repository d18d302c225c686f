using MomentArm.Exam;

namespace MomentArm.Content;

/// <summary>Holds clinical tests and their figures to the rules: nothing unverified may move a probability, nothing may contradict itself.</summary>
internal sealed class TestChecks(ReasoningBasis basis, IReadOnlyDictionary<string, Source> sources, Action<string, string, string, string> fault)
{
    private string file = "";

    internal void Check(IReadOnlyDictionary<string, string> files)
    {
        foreach (var test in basis.Tests)
        {
            file = files[test.Id];
            Check(test);
        }
        foreach (var twice in basis.Tests.SelectMany(t => t.Figures).GroupBy(f => f.Id, StringComparer.Ordinal).Where(g => g.Count() > 1))
            fault("patterns/tests", twice.Key, "The figure id is used twice.", "Give each figure its own id.");
    }

    private void Check(ClinicalTest test)
    {
        if (new[] { test.Id, test.Name, test.PositiveMeans, test.Family }.Any(string.IsNullOrWhiteSpace))
            Fault(test.Id, "A text is empty.", "Fill id, name, positiveMeans and family.");
        if (!(test.Minutes is > 0 and <= 30))
            Fault(test.Id + ".minutes", $"{Say.Number(test.Minutes)} minutes is not usable.", "Give above 0 to 30.");
        if (test.Figures.IsEmpty)
            Fault(test.Id + ".figures", "There is no figure.", "Give one; with origin none when no accuracy is known.");
        foreach (var member in test.Members.Where(m => m == test.Id || basis.Test(m) is not { } part || part.Family != test.Family))
            Fault(test.Id + ".members", $"\"{member}\" is no other test of the same family.", "Correct it.");
        foreach (var figure in test.Figures)
        {
            Check(test, figure, $"{test.Id}.{figure.Id}");
        }
    }

    private void Check(ClinicalTest test, AccuracyFigure figure, string place)
    {
        if (basis.Pattern(figure.Pattern) is null)
            Fault(place + ".pattern", $"There is no pattern \"{figure.Pattern}\".", "Use the id of a file in patterns/.");
        if (string.IsNullOrWhiteSpace(figure.Confirmation) || string.IsNullOrWhiteSpace(figure.Condition))
            Fault(place, "A text is empty.", "Fill condition and confirmation.");
        if (!sources.TryGetValue(figure.Source, out var source))
            Fault(place + ".source", $"The source \"{figure.Source}\" is not in sources.json.", "Add it there or correct the key.");
        CheckShare(figure.Sensitivity, figure.SensitivityInterval, place + ".sensitivity");
        CheckShare(figure.Specificity, figure.SpecificityInterval, place + ".specificity");
        CheckRatio(figure.Positive, place + ".positive");
        CheckRatio(figure.Negative, place + ".negative");
        if (figure.N < 1 || figure.Prevalence is <= 0 or >= 1)
            Fault(place, "The number of people or their share is not usable.", "Give n of 1 or more and a share above 0 and below 1.");
        var counted = figure.PositiveFrom is not null;
        if (counted != (test.CountOf is not null) || figure.PositiveFrom > test.CountOf || figure.NegativeAtMost >= figure.PositiveFrom)
            Fault(place + ".positiveFrom", "The number of signs does not fit the test.", "Give countOf at the test and positiveFrom within it, with negativeAtMost below; or neither.");
        if (figure.DaysFrom > figure.DaysTo)
            Fault(place + ".daysFrom", "The days are not in order.", "Put the earlier day first.");
        if (figure.Standing == FigureStanding.Usable)
            CheckUsable(figure, source, place);
        foreach (var doubt in AccuracyDoubts.Of(figure).Where(_ => figure.Origin == RatioOrigin.Computed || string.IsNullOrWhiteSpace(figure.Note)))
            Fault(place, doubt, figure.Origin == RatioOrigin.Computed ? "Correct one of them." : "Say in the note which is kept and why.");
    }

    private void CheckUsable(AccuracyFigure figure, Source? source, string place)
    {
        if (figure.Origin == RatioOrigin.None || (RatioRules.Of(figure, true) is null && RatioRules.Of(figure, false) is null))
            Fault(place + ".standing", "A usable figure needs a likelihood ratio.", "Give one, or write notUsable.");
        if (source?.Confirmation == "from memory" || figure.Confirmation.Contains("memory", StringComparison.Ordinal))
            Fault(place + ".standing", "A figure from memory may not move a probability.", "Write checkFirst.");
    }

    private void CheckShare(double? value, RatioSpan? interval, string place)
    {
        if (value is not (null or (>= 0 and <= 1)))
            Fault(place, $"{Say.Number(value.Value, 4)} is no share.", "Give 0 to 1.");
        if (interval is not null && !(value is { } v && interval.Low >= 0 && interval.Low <= v && v <= interval.High && interval.High <= 1))
            Fault(place + "Interval", "The interval does not hold the value, or leaves 0 to 1.", "Correct it.");
    }

    private void CheckRatio(Ratio? ratio, string place)
    {
        if (ratio is null)
            return;
        if (!(ratio.Value > 0 && double.IsFinite(ratio.Value)))
            Fault(place + ".value", $"{Say.Number(ratio.Value, 4)} is no likelihood ratio.", "Give a number above 0.");
        if (ratio.Interval is { } interval && !(interval.Low > 0 && interval.Low <= ratio.Value && ratio.Value <= interval.High))
            Fault(place + ".interval", "The interval does not hold the ratio, or is not above 0.", "Correct it.");
    }

    private void Fault(string path, string what, string mend) => fault(file, path, what, mend);
}
