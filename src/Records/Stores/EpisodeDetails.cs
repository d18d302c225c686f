using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Records;

/// <summary>What can be typed about an episode of care.</summary>
public sealed record EpisodeDetails(
    string Title,
    DateOnly StartedOn,
    string? Region = null,
    Side? AffectedSide = null,
    string? Goal = null,
    Irritability? Irritability = null)
{
    /// <summary>What a row says, ready for editing.</summary>
    public static EpisodeDetails Of(Episode row) =>
        new(row.Title, row.StartedOn, row.Region, row.AffectedSide, row.Goal, row.Irritability);

    internal string? Fault() => string.IsNullOrWhiteSpace(Title)
        ? "Give the episode a short title, for example \"left hip, outer side\"."
        : null;

    /// <summary>Whether a row says what writing these details would make it say.</summary>
    internal bool IsWrittenIn(Episode row)
    {
        var written = new Episode { Title = Title };
        WriteTo(written);
        return Of(written) == Of(row);
    }

    internal void WriteTo(Episode row)
    {
        row.Title = Title.Trim();
        row.StartedOn = StartedOn;
        row.Region = Region;
        row.AffectedSide = AffectedSide;
        row.Goal = Goal;
        row.Irritability = Irritability;
    }
}
