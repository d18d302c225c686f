using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>When in the range of motion pain comes.</summary>
public enum PainInRange
{
    /// <summary>Only with pressure at the end of range.</summary>
    OnlyWithPressure,

    /// <summary>At the end of range.</summary>
    AtEnd,

    /// <summary>Before the end of range.</summary>
    BeforeEnd,
}

/// <summary>Everything asked about irritability; null for what was not.</summary>
/// <param name="WorstPain">Worst of pain now and recent worst, 0 to 10.</param>
/// <param name="Rest">Pain at rest or at night.</param>
/// <param name="FlareHours">Hours until symptoms settle, 0 or more.</param>
/// <param name="Disability">Disability as low, moderate or high.</param>
/// <param name="InRange">When in the range pain comes.</param>
/// <param name="ActiveLessThanPassive">Whether active range is clearly less than passive range.</param>
public sealed record IrritabilityAnswers(
    double? WorstPain = null, RestPain? Rest = null, double? FlareHours = null, Irritability? Disability = null,
    PainInRange? InRange = null, bool? ActiveLessThanPassive = null);

/// <summary>Irritability with all that was asked.</summary>
/// <param name="Grade">The proposed grade with its reasons and load window.</param>
/// <param name="MayLowerTo">A grade one step lower that disability would allow, for the clinician to choose; null for none.</param>
/// <param name="Permits">What the grade permits, in words. Our choice.</param>
public sealed record IrritabilityReading(IrritabilityGrade Grade, Irritability? MayLowerTo, ImmutableArray<string> Permits)
{
    /// <summary>
    /// Grades: the worst of pain, rest pain and flare decides (<see cref="IrritabilityRule"/>); disability raises it by one step
    /// at most, and where it is lower the step down is offered and left to the clinician. Range signs are told and do not decide.
    /// Rows after Kelley 2013 (read in a summary); the way they combine is our choice.
    /// </summary>
    /// <param name="answers">What was asked.</param>
    /// <returns>The reading.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Pain is not 0 to 10, or the hours are negative or not a number.</exception>
    public static IrritabilityReading Of(IrritabilityAnswers answers)
    {
        ArgumentNullException.ThrowIfNull(answers);
        var start = IrritabilityRule.Grade(answers.WorstPain, answers.Rest, answers.FlareHours);
        var reasons = start.Reasons.ToList();
        var grade = start.Grade;
        Irritability? lower = null;
        if (answers.Disability is { } disability)
        {
            reasons.Add($"disability: {Word(disability)}");
            if (grade is { } low && disability > low)
            {
                grade = low + 1;
                reasons.Add($"disability raises it one step to {Word(low + 1)}");
            }
            else if (grade is { } high && disability < high)
            {
                lower = high - 1;
                reasons.Add($"disability would allow {Word(high - 1)}: yours to decide");
            }
        }
        if (answers.InRange is { } range)
            reasons.Add($"{RangeWords(range)}: as in {Word(OfRange(range))}, told and not deciding");
        if (answers.ActiveLessThanPassive is { } less)
            reasons.Add(less ? "active range is less than passive: as in high, told and not deciding" : "active and passive range are about equal");
        var window = grade is { } final ? IrritabilityRule.WindowFor(final) : start.Window;
        return new IrritabilityReading(new IrritabilityGrade(grade, [.. reasons], window), lower, Permitted(grade ?? Irritability.High));
    }

    private static ImmutableArray<string> Permitted(Irritability grade) => grade switch
    {
        Irritability.High =>
        [
            "Stretch short of pain, 1 to 5 s, mid range.", "Isometric work in mid range or pain-free regions, up to 40 % of measured capacity.",
            "Unload, use aids, halve the volume.", "Re-test in 2 to 3 days.",
        ],
        Irritability.Moderate =>
        [
            "Stretch 5 to 15 s to a mild pull.", "Strength at 40 to 70 % of measured capacity.", "Graded function.", "Re-test weekly.",
        ],
        Irritability.Low =>
        [
            "Long holds at end range.", "Strength at 70 % and more, fast and at end range.", "Full function and sport.", "Re-test in 2 weeks.",
        ],
    };

    private static Irritability OfRange(PainInRange range) => range switch
    {
        PainInRange.OnlyWithPressure => Irritability.Low,
        PainInRange.AtEnd => Irritability.Moderate,
        PainInRange.BeforeEnd => Irritability.High,
    };

    private static string RangeWords(PainInRange range) => range switch
    {
        PainInRange.OnlyWithPressure => "pain only with pressure at the end of range",
        PainInRange.AtEnd => "pain at the end of range",
        PainInRange.BeforeEnd => "pain before the end of range",
    };

    private static string Word(Irritability grade) => grade.ToString().ToLowerInvariant();
}
