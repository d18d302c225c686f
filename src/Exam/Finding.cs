namespace MomentArm.Exam;

/// <summary>
/// One sentence a therapist can agree with or dismiss, made from measurements. Ranked by <see cref="Weight"/>.
/// </summary>
/// <param name="Id">Stable within a visit: measure id, side and kind joined, so that a decision about it can be stored.</param>
/// <param name="Headline">What was found, in one short sentence.</param>
/// <param name="Detail">The numbers behind it, with units and the error they were held against.</param>
/// <param name="Weight">Rank weight, 0 to 1; larger first. Design choice of this tool, see docs/models/exam.md.</param>
/// <param name="BeyondError">Whether the difference is larger than measurement error; null when no error is known.</param>
/// <param name="Impairment">What prescribing can act on, if anything.</param>
/// <param name="MeasureIds">The measures it rests on.</param>
public sealed record Finding(
    string Id,
    string Headline,
    string Detail,
    double Weight,
    bool? BeyondError,
    Impairment? Impairment,
    IReadOnlyList<string> MeasureIds)
{
    /// <summary>For a finding about change over time: better (true) or worse (false); null for all others.</summary>
    public bool? Better { get; init; }
}
