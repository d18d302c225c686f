using System.Text;
using MomentArm.Exam;

namespace MomentArm.Web.Pages.Exam;

/// <summary>What a finding asks of the program, in words.</summary>
public static class FindingWords
{
    /// <summary>How the finding stands against error.</summary>
    public static (string Words, Tone Tone) Verdict(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return finding.Better is { } better && finding.BeyondError == true
            ? better ? ("better beyond error", Tone.Good) : ("worse beyond error", Tone.Watch)
            : Against(finding.BeyondError);
    }

    private static (string Words, Tone Tone) Against(bool? beyondError)
    {
        return beyondError switch
        {
            true => ("beyond error", Tone.Watch),
            false => ("within error", Tone.Good),
            null => ("no published error", Tone.Neutral),
        };
    }

    /// <summary>What it feeds.</summary>
    public static string Feeds(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        if (finding.Impairment is not { } lack)
            return finding.BeyondError == false ? "Feeds nothing: a difference within error is not acted on." : "Feeds no exercise by itself: for the record and for your judgment.";
        var side = lack.Side is { } one ? $" on the {Say.Side(one)}" : "";
        var what = lack.Kind switch
        {
            ImpairmentKind.Weak => $"strength of {Spaced(lack.Action?.ToString() ?? "the tested muscles")}{side}",
            ImpairmentKind.Short => $"length of {Spaced(lack.Group?.ToString() ?? "the tested muscles")}{side}",
            ImpairmentKind.Stiff => $"range of {Spaced(lack.Action?.ToString() ?? "the tested muscles")}{side}",
            ImpairmentKind.Tires => $"endurance of {Spaced(lack.Action?.ToString() ?? "the tested muscles")}{side}",
            ImpairmentKind.PoorControl => $"control of {Spaced(lack.Action?.ToString() ?? "the tested muscles")}{side}",
            ImpairmentKind.LowLoadTolerance => "how much load the days hold",
            ImpairmentKind.PainUnderLoad => $"the load ceiling of {Spaced(lack.Action?.ToString() ?? "the tested muscles")}{side}",
            ImpairmentKind.Activity => "the choice of functional exercises and the goal",
        };
        return $"Feeds {what}; size of the lack {Say.Percent(lack.Deficit)}.";
    }

    /// <summary>A kind of lack, for a list.</summary>
    public static string Kind(ImpairmentKind kind) => kind switch
    {
        ImpairmentKind.Weak => "Strength",
        ImpairmentKind.Short => "Muscle length",
        ImpairmentKind.Stiff => "Joint range",
        ImpairmentKind.Tires => "Endurance",
        ImpairmentKind.PoorControl => "Control",
        ImpairmentKind.LowLoadTolerance => "Load of the day",
        ImpairmentKind.PainUnderLoad => "Pain under load",
        ImpairmentKind.Activity => "An activity",
    };

    /// <summary>Id of a finding's fields on the page.</summary>
    public static string ElementId(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return string.Concat(finding.Id.Select(letter => char.IsLetterOrDigit(letter) ? letter : '-'));
    }

    /// <summary>What a grade of irritability means.</summary>
    public static string Means(Irritability grade) => grade switch
    {
        Irritability.Low => "pain 0 to 3, none at rest, settles in under 2 hours",
        Irritability.Moderate => "pain 4 to 6, rest pain comes and goes, settles in 2 to 24 hours",
        Irritability.High => "pain 7 to 10, constant rest pain, or a flare of over 24 hours",
    };

    /// <summary>"HipAbduction" as "hip abduction".</summary>
    public static string Spaced(string name)
    {
        var words = new StringBuilder();
        foreach (var letter in name)
        {
            if (char.IsUpper(letter) && words.Length > 0)
                words.Append(' ');
            words.Append(char.ToLowerInvariant(letter));
        }

        return words.ToString();
    }
}
