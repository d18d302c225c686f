using System.Collections.Immutable;

namespace MomentArm.Prescribing;

/// <summary>What patients read around the exercises, in one language: handout and patient page say the same.</summary>
public sealed record PatientWords
{
    /// <summary>Left and right.</summary>
    public required SideWords Sides { get; init; }

    /// <summary>Whether a clinician who speaks the language from childhood has read all its words.</summary>
    public bool Reviewed { get; init; } = true;

    /// <summary>Title of the handout; {area} is the complaint as the clinic names it.</summary>
    public required string HandoutTitle { get; init; }

    /// <summary>One line under the title; {days} and {minutes} are numbers.</summary>
    public required string HandoutPlan { get; init; }

    /// <summary>The side of one exercise; {side} is the working side.</summary>
    public required string SideLine { get; init; }

    /// <summary>Both sides in turn; {side} first, then {other}.</summary>
    public required string BothSidesLine { get; init; }

    /// <summary>An exercise that both sides do at once.</summary>
    public required string TogetherLine { get; init; }

    /// <summary>Heading over the stop signs, such as "Stop and call us if".</summary>
    public required string StopHeading { get; init; }

    /// <summary>Stop signs; each completes the heading. {ceiling} is the highest acceptable pain.</summary>
    public required ImmutableArray<string> StopSigns { get; init; }

    /// <summary>Signs on which to call the emergency number at once.</summary>
    public required string Emergency { get; init; }

    /// <summary>What pain is fine; {ceiling} is the highest acceptable pain.</summary>
    public required string PainRule { get; init; }

    /// <summary>Heading of the code that opens the patient page.</summary>
    public required string PageHeading { get; init; }

    /// <summary>Under the code.</summary>
    public required string PageHelp { get; init; }

    /// <summary>Heading over the lines for notes.</summary>
    public required string NotesHeading { get; init; }

    /// <summary>The standing caution.</summary>
    public required string About { get; init; }

    /// <summary>Two-letter names of the weekdays from Monday.</summary>
    public required ImmutableArray<string> Weekdays { get; init; }
}
