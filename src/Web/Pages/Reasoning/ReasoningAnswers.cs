using System.Collections.Immutable;
using System.Globalization;
using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Records;

namespace MomentArm.Web.Pages.Reasoning;

/// <summary>How the answers of the reasoning are written on the sheets of a visit, and read back.</summary>
public static class ReasoningAnswers
{
    public const string TestSheet = "test";
    public const string QuestionSheet = "history";
    public const string YellowSheet = "yellow";
    public const string HypothesisSheet = "hypothesis";
    public const string RegionItem = "region";
    public const string InjuryItem = "injury-day";
    public const string PriorStart = "prior/";
    public const string ConfirmStart = "confirm/";
    public const string AcceptedStart = "accepted";
    public const string DismissedStart = "dismissed";

    /// <summary>The outcome of a test from its stored text; null for what cannot be read.</summary>
    public static TestResult? Result(ClinicalTest test, Side? side, string? value)
    {
        ArgumentNullException.ThrowIfNull(test);
        if (value == "unclear")
            return new TestResult(test.Id, side, TestOutcome.Unclear);
        if (test.CountOf is { } most)
        {
            return int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count <= most
                ? new TestResult(test.Id, side, TestOutcome.Counted, count)
                : null;
        }
        return value switch
        {
            "positive" => new TestResult(test.Id, side, TestOutcome.Positive),
            "negative" => new TestResult(test.Id, side, TestOutcome.Negative),
            _ => null,
        };
    }

    /// <summary>A yes-or-no answer from its stored text.</summary>
    public static ItemAnswer Answer(string? value) => value switch
    {
        "yes" => ItemAnswer.Yes,
        "no" => ItemAnswer.No,
        _ => ItemAnswer.Unknown,
    };

    /// <summary>A starting value as stored: "0.3" or "0.3;0.2;0.45".</summary>
    public static string PriorText(OwnPrior prior)
    {
        ArgumentNullException.ThrowIfNull(prior);
        return prior.Range is { } range
            ? string.Create(CultureInfo.InvariantCulture, $"{prior.Value};{range.Low};{range.High}")
            : prior.Value.ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>A starting value from its stored text; null for what cannot be read.</summary>
    public static OwnPrior? Prior(string value)
    {
        ArgumentNullException.ThrowIfNull(value);
        var numbers = value.Split(';')
            .Select(v => double.TryParse(v, NumberStyles.Float, CultureInfo.InvariantCulture, out var n) ? n : double.NaN).ToArray();
        return numbers switch
        {
            [> 0 and < 1 and var alone] => new OwnPrior(alone),
            [> 0 and < 1 and var middle, > 0 and var low, < 1 and var high] when low <= middle && middle <= high => new OwnPrior(middle, new RatioSpan(low, high)),
            _ => null,
        };
    }

    /// <summary>The part of the body from the words of an episode; null when they name none.</summary>
    public static BodyRegion? RegionOf(string? words)
    {
        (string Word, BodyRegion Region)[] known =
        [
            ("knee", BodyRegion.Knee), ("hip", BodyRegion.Hip), ("groin", BodyRegion.Hip), ("ankle", BodyRegion.AnkleFoot), ("foot", BodyRegion.AnkleFoot),
            ("heel", BodyRegion.AnkleFoot), ("shin", BodyRegion.AnkleFoot), ("calf", BodyRegion.AnkleFoot), ("achilles", BodyRegion.AnkleFoot),
            ("back", BodyRegion.Trunk), ("trunk", BodyRegion.Trunk), ("shoulder", BodyRegion.Shoulder), ("elbow", BodyRegion.ElbowWrist),
            ("wrist", BodyRegion.ElbowWrist), ("neck", BodyRegion.Neck),
        ];
        foreach (var (word, region) in known)
        {
            if (words?.Contains(word, StringComparison.OrdinalIgnoreCase) == true)
                return region;
        }
        return null;
    }

    /// <summary>The latest answers up to a visit, one per cell.</summary>
    public static ImmutableArray<DatedAnswer> Latest(IEnumerable<DatedAnswer> answers, int visitNumber) =>
    [
        .. answers.Where(a => a.VisitNumber <= visitNumber)
            .GroupBy(a => a.Row.Cell, StringComparer.Ordinal)
            .Select(g => g.MaxBy(a => a.VisitNumber)!),
    ];
}
