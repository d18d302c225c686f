using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Web.Pages.Exam;

/// <summary>What the clinician makes of one finding.</summary>
public sealed class FindingForm
{
    public string? FindingId { get; set; }

    public bool Accepted { get; set; }

    public string? Reason { get; set; }

    public string? Headline { get; set; }

    public int? Rank { get; set; }
}

/// <summary>A finding that the clinician writes.</summary>
public sealed class OwnFinding
{
    public Guid Id { get; set; }

    public string? Headline { get; set; }

    public string? Kind { get; set; }

    public string? Action { get; set; }

    public string? Group { get; set; }

    public string? Side { get; set; }

    /// <summary>Size of the lack, 1 to 100.</summary>
    public int? Percent { get; set; }

    /// <summary>What the fields say; null without a sentence. What a kind does not use is left out.</summary>
    public FindingJudgment? ToJudgment() => string.IsNullOrWhiteSpace(Headline) || Id == Guid.Empty
        ? null
        : new FindingJudgment($"{FindingJudgment.OwnStart}{Id:N}", true) { Headline = Headline.Trim(), Impairment = Lack() };

    private Impairment? Lack()
    {
        if (One<ImpairmentKind>(Kind) is not { } kind)
            return null;
        var group = kind == ImpairmentKind.Short ? One<MuscleGroup>(Group) : null;
        var action = kind is ImpairmentKind.Short or ImpairmentKind.Activity or ImpairmentKind.LowLoadTolerance ? null : One<JointAction>(Action);
        return new Impairment(kind, One<Side>(Side), action, group, Math.Clamp(Percent ?? 20, 1, 100) / 100.0);
    }

    private static T? One<T>(string? name)
        where T : struct, Enum => Enum.TryParse<T>(name, out var value) && Enum.IsDefined(value) ? value : null;
}

/// <summary>The clinician's own grade of irritability.</summary>
public sealed class GradeForm
{
    /// <summary>Name of the grade; empty to follow the pain ratings.</summary>
    public string? Choice { get; set; }

    public Guid Version { get; set; }
}

/// <summary>The free text of a visit.</summary>
public sealed class NoteForm
{
    public string? Subjective { get; set; }

    public string? Objective { get; set; }

    public string? Assessment { get; set; }

    public string? Plan { get; set; }

    /// <summary>Version of the visit that was read.</summary>
    public Guid Version { get; set; }

    /// <summary>"sign" to sign after saving; "take/" and a part to put the record's lines into it before.</summary>
    public string? Act { get; set; }

    /// <summary>Puts text into a part.</summary>
    public void Put(string part, string text)
    {
        switch (part)
        {
            case nameof(Subjective):
                Subjective = text;
                break;
            case nameof(Objective):
                Objective = text;
                break;
            case nameof(Assessment):
                Assessment = text;
                break;
            case nameof(Plan):
                Plan = text;
                break;
        }
    }

    /// <summary>Fields for a note.</summary>
    public static NoteForm Of(Records.VisitNote note, Guid version)
    {
        ArgumentNullException.ThrowIfNull(note);
        return new NoteForm
        {
            Subjective = note.Subjective, Objective = note.Objective, Assessment = note.Assessment, Plan = note.Plan, Version = version,
        };
    }

    /// <summary>The note that the fields say; blank parts are left out.</summary>
    public Records.VisitNote ToNote() => new(Clean(Subjective), Clean(Objective), Clean(Assessment), Clean(Plan));

    private static string? Clean(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim().ReplaceLineEndings("\n");
}
