using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>Pain at rest or at night.</summary>
public enum RestPain
{
    /// <summary>None.</summary>
    None,

    /// <summary>Comes and goes.</summary>
    ComesAndGoes,

    /// <summary>Constant.</summary>
    Constant,
}

/// <summary>A grade of irritability and why.</summary>
/// <param name="Grade">The grade; null when nothing was asked.</param>
/// <param name="Reasons">One sentence per answer, the deciding ones first.</param>
/// <param name="Window">
/// Load window that the grade permits; without a grade that of high irritability, since not asked is not low.
/// </param>
public sealed record IrritabilityGrade(Irritability? Grade, ImmutableArray<string> Reasons, LoadWindow Window);

/// <summary>
/// Irritability as the worst of pain, rest pain and flare. Bands of pain and rest pain after the shoulder guideline
/// (Kelley 2013, JOSPT 43(5):A1-31, read in a summary), used for every region; flare bands and load windows are our choice.
/// </summary>
public static class IrritabilityRule
{
    /// <summary>What the load windows rest on.</summary>
    public const string WindowSource = "kelley-2013";

    /// <summary>Grades irritability.</summary>
    /// <param name="worstPain">Worst of pain now and recent worst, 0 to 10; null when not asked.</param>
    /// <param name="rest">Pain at rest or at night; null when not asked.</param>
    /// <param name="flareHours">Hours until symptoms settle after being provoked, 0 or more; null when not asked.</param>
    /// <returns>The worst of the three, with reasons.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Pain is not 0 to 10, or the hours are negative or not a number.</exception>
    public static IrritabilityGrade Grade(double? worstPain, RestPain? rest, double? flareHours)
    {
        if (worstPain is { } p && !(p is >= 0 and <= 10))
            throw new ArgumentOutOfRangeException(nameof(worstPain), p, "Give pain from 0 to 10.");
        if (flareHours is { } h && !(h >= 0 && double.IsFinite(h)))
            throw new ArgumentOutOfRangeException(nameof(flareHours), h, "Give the hours as 0 or more.");
        var answers = new List<(Irritability Grade, string Reason)>();
        if (worstPain is { } pain)
            answers.Add((ByPain(pain), $"worst pain {Say.Number(pain)}/10"));
        if (rest is { } restPain)
            answers.Add((ByRest(restPain), RestText(restPain)));
        if (flareHours is { } hours)
            answers.Add((ByFlare(hours), $"a flare lasts {Say.Number(hours)} h"));
        if (answers.Count == 0)
            return new IrritabilityGrade(null, ["Pain, rest pain and flare were not asked."], WindowFor(Irritability.High));
        var worst = answers.Max(a => a.Grade);
        var reasons = answers.OrderByDescending(a => a.Grade).Select(a => $"{a.Reason}: {a.Grade.ToString().ToLowerInvariant()}").ToList();
        var open = new[] { worstPain is null ? "pain" : null, rest is null ? "rest pain" : null, flareHours is null ? "flare" : null };
        if (answers.Count < 3)
            reasons.Add($"not asked: {string.Join(", ", open.OfType<string>())}");
        return new IrritabilityGrade(worst, [.. reasons], WindowFor(worst));
    }

    /// <summary>The load window of a grade: up to 40 %, 40 to 70 %, 70 % and more of measured capacity. Our choice.</summary>
    /// <param name="grade">The grade.</param>
    /// <returns>The window.</returns>
    public static LoadWindow WindowFor(Irritability grade) => grade switch
    {
        Irritability.High => new LoadWindow(0, 0.40, WindowSource),
        Irritability.Moderate => new LoadWindow(0.40, 0.70, WindowSource),
        Irritability.Low => new LoadWindow(0.70, 1.00, WindowSource),
    };

    private static Irritability ByPain(double pain) =>
        pain >= 7 ? Irritability.High : pain > 3 ? Irritability.Moderate : Irritability.Low;

    private static Irritability ByRest(RestPain rest) => rest switch
    {
        RestPain.None => Irritability.Low,
        RestPain.ComesAndGoes => Irritability.Moderate,
        RestPain.Constant => Irritability.High,
    };

    private static Irritability ByFlare(double hours) =>
        hours > 24 ? Irritability.High : hours >= 2 ? Irritability.Moderate : Irritability.Low;

    private static string RestText(RestPain rest) => rest switch
    {
        RestPain.None => "no pain at rest",
        RestPain.ComesAndGoes => "pain at rest comes and goes",
        RestPain.Constant => "constant pain at rest or at night",
    };
}
