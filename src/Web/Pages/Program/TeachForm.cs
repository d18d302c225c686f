using MomentArm.Body;
using MomentArm.Prescribing;
using MomentArm.Records;
using MomentArm.Web.Pages.Library;

namespace MomentArm.Web.Pages.Program;

/// <summary>What was ticked at the teaching, exercise by exercise.</summary>
public sealed class TeachForm
{
    public Guid VersionId { get; set; }

    public List<TeachRow> Rows { get; set; } = [];

    /// <summary>Why it is handed over although something was not shown or said back.</summary>
    public string? Reason { get; set; }

    /// <summary>An empty form for a version.</summary>
    public static TeachForm For(ProgramVersion version, HomeProgram program)
    {
        ArgumentNullException.ThrowIfNull(version);
        ArgumentNullException.ThrowIfNull(program);
        return new TeachForm
        {
            VersionId = version.Id,
            Rows =
            [
                .. program.Items.DistinctBy(i => (i.ExerciseId, i.WorkingSide)).Select(item => new TeachRow
                {
                    ExerciseId = item.ExerciseId,
                    Side = item.WorkingSide is { } side ? ExerciseText.Path(side) : null,
                }),
            ],
        };
    }

    /// <summary>Whether it was ticked for these exercises, in this order.</summary>
    public bool Fits(TeachForm other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return Rows.Select(r => (r.ExerciseId, Side: r.Side ?? "")).SequenceEqual(other.Rows.Select(r => (r.ExerciseId, Side: r.Side ?? "")));
    }

    public IReadOnlyList<TeachBackInput> ToInputs() => [.. Rows.Select(row => row.ToInput())];
}

/// <summary>One exercise.</summary>
public sealed class TeachRow
{
    public string ExerciseId { get; set; } = "";

    /// <summary>left, right, or nothing for both at once.</summary>
    public string? Side { get; set; }

    public bool Shown { get; set; }

    public bool SaidBack { get; set; }

    public string? Missed { get; set; }

    public TeachBackInput ToInput() => new(
        ExerciseId, ExerciseText.SideOf(Side), Shown, SaidBack, string.IsNullOrWhiteSpace(Missed) ? null : Missed.Trim());
}
