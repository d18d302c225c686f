using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>How fast a danger sign must be acted on.</summary>
public enum Urgency
{
    /// <summary>Adds limits and watching; exercise may go on.</summary>
    ProceedWithCare,

    /// <summary>No new loading until a clinician records who cleared it.</summary>
    ReferBeforeExercise,

    /// <summary>Medical contact the same day; exercise waits.</summary>
    SameDay,

    /// <summary>Stop and call the emergency service.</summary>
    EmergencyNow,
}

/// <summary>One question of the danger-sign screen.</summary>
/// <param name="Id">Stable id.</param>
/// <param name="Question">The question as asked, in plain words.</param>
/// <param name="MayMean">What a yes may mean, for the clinician.</param>
/// <param name="Urgency">How fast to act on a yes.</param>
/// <param name="Action">What to do on a yes.</param>
/// <param name="Source">Key into content/sources.json.</param>
/// <param name="Confirmation">How far the row was confirmed: read, read in a summary, from memory, common practice.</param>
/// <param name="Regions">Regions whose complaint it is asked about; null or empty for everyone.</param>
/// <param name="AgeFrom">Youngest age in whole years at which it is asked; null for any.</param>
/// <param name="AgeTo">Oldest age in whole years at which it is asked; null for any.</param>
public sealed record DangerSign(
    string Id, string Question, string MayMean, Urgency Urgency, string Action, string Source, string Confirmation,
    IReadOnlyList<BodyRegion>? Regions = null, int? AgeFrom = null, int? AgeTo = null)
{
    /// <summary>Whether it belongs to the general screen, asked whatever the complaint.</summary>
    /// <returns>True without regions.</returns>
    public bool IsGeneral() => Regions is null or { Count: 0 };

    /// <summary>Whether it is asked of a person. An age or region that is not known leaves no question out.</summary>
    /// <param name="person">The person.</param>
    /// <returns>Whether it is asked.</returns>
    public bool IsAskedOf(ScreenedPerson person)
    {
        ArgumentNullException.ThrowIfNull(person);
        return (IsGeneral() || person.Regions.IsEmpty || Regions!.Any(person.Regions.Contains))
            && !(person.AgeYears < AgeFrom)
            && !(person.AgeYears >= AgeTo + 1.0);
    }
}

/// <summary>An answer to one danger-sign question. Not asked is not no.</summary>
public enum DangerAnswer
{
    /// <summary>The question has not been put.</summary>
    NotAsked,

    /// <summary>Answered no.</summary>
    No,

    /// <summary>Answered yes.</summary>
    Yes,
}
