using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Prescribing;
using MomentArm.Records;

namespace MomentArm.Web.Clinic;

/// <summary>One patient's case as the pages need it: the records, and what is computed from them.</summary>
public sealed record PatientCase
{
    /// <summary>The patient.</summary>
    public required Patient Patient { get; init; }

    /// <summary>The episode shown: the open one, else the latest.</summary>
    public required Episode Episode { get; init; }

    /// <summary>Its visits, first to last.</summary>
    public required IReadOnlyList<Visit> Visits { get; init; }

    /// <summary>The visit shown, with its parts; null when there is none yet.</summary>
    public required VisitRecord? Shown { get; init; }

    /// <summary>What the reading was computed from.</summary>
    public required CaseFacts Facts { get; init; }

    /// <summary>What the measurements up to the shown visit say.</summary>
    public required CaseReading Reading { get; init; }

    /// <summary>The danger-sign gate of the shown visit.</summary>
    public required DangerGate Gate { get; init; }

    /// <summary>The version the patient has, if any.</summary>
    public required ProgramVersion? Current { get; init; }

    /// <summary>The newest version, handed over or not, if any.</summary>
    public required ProgramVersion? Latest { get; init; }

    /// <summary>Today in the clinic's time zone.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>The clinic.</summary>
    public required Records.Clinic Clinic { get; init; }

    /// <summary>What the clinic can prescribe.</summary>
    public required ClinicLibrary Library { get; init; }

    /// <summary>The findings as the clinician left them, dismissed ones included.</summary>
    public ImmutableArray<ReviewedFinding> Reviewed =>
        FindingReview.Apply(Reading.Findings, [.. (Shown?.FindingDecisions ?? []).Select(d => d.ToJudgment())]);

    /// <summary>Findings not dismissed, in the clinician's order, else heaviest first.</summary>
    public ImmutableArray<Finding> Accepted => [.. Reviewed.Where(r => r.Counts).Select(r => r.Finding)];

    /// <summary>The side that works when nothing else names one.</summary>
    public Side WorkingSide => Episode.AffectedSide ?? Side.Right;

    /// <summary>Age in whole years today.</summary>
    public int? Age => Patient.AgeOn(Today);

    /// <summary>Weeks since the episode began.</summary>
    public int Week => Math.Max(0, (Today.DayNumber - Episode.StartedOn.DayNumber) / 7);

    /// <summary>The choice's limits under what was agreed.</summary>
    public Limits LimitsUnder(AgreedLimits agreed, int? daysPerWeek)
    {
        ArgumentNullException.ThrowIfNull(agreed);
        return new Limits(
            Reading.Irritability.Window.Low, Reading.Irritability.Window.High, agreed.Owned?.ToImmutableHashSet(),
            [.. agreed.Avoid], agreed.Minutes, daysPerWeek);
    }
}
