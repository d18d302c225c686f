namespace MomentArm.Web.Pages.Exam;

/// <summary>What the clinician makes of one finding.</summary>
public sealed class FindingForm
{
    public string? FindingId { get; set; }

    public bool Accepted { get; set; }

    public string? Reason { get; set; }
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

    /// <summary>"sign" to sign after saving.</summary>
    public string? Act { get; set; }

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
