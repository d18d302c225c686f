using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.FollowUp;

/// <summary>What a patient reports of one home session. An immutable event with an id made by the patient's device.</summary>
public sealed record SessionLog
{
    /// <summary>Made on the device; the same id sent twice is the same session.</summary>
    public required Guid Id { get; init; }

    /// <summary>The patient's local day on which the session was done.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>What was done of each exercise, in the order of the program.</summary>
    public required ImmutableArray<ExerciseLog> Exercises { get; init; }

    /// <summary>Effort of the session, 0 to 10; null when not answered.</summary>
    public int? Effort { get; init; }

    /// <summary>Worst pain while exercising, 0 to 10; null when not answered.</summary>
    public int? PainDuring { get; init; }

    /// <summary>Pain straight after, 0 to 10; null when not answered.</summary>
    public int? PainAfter { get; init; }

    /// <summary>The patient's own words, if any.</summary>
    public string? Note { get; init; }
}

/// <summary>What was done of one exercise in one session.</summary>
/// <param name="ExerciseId">The exercise.</param>
/// <param name="Side">The side that worked; null when both worked together.</param>
/// <param name="SetsDone">Sets finished.</param>
/// <param name="RepetitionsDone">Repetitions finished in all sets together.</param>
/// <param name="Difficulty">How it went.</param>
public sealed record ExerciseLog(string ExerciseId, Side? Side, int SetsDone, int RepetitionsDone, ExerciseReport Difficulty);

/// <summary>How one exercise went, in the patient's words.</summary>
public enum ExerciseReport
{
    /// <summary>Done, nothing said.</summary>
    Done,

    /// <summary>Done but too easy.</summary>
    TooEasy,

    /// <summary>Too hard to finish as written.</summary>
    TooHard,

    /// <summary>Stopped or cut because it hurt.</summary>
    Hurt,

    /// <summary>Left out for another reason.</summary>
    Skipped,
}

/// <summary>The next-morning answer that belongs to a session day.</summary>
/// <param name="Id">Made on the device; the same id sent twice is the same answer.</param>
/// <param name="Day">The morning's local day.</param>
/// <param name="Pain">Pain this morning, 0 to 10.</param>
/// <param name="Compared">Compared with the usual morning.</param>
public sealed record MorningLog(Guid Id, DateOnly Day, int Pain, MorningChange Compared);

/// <summary>How a morning compares with the usual.</summary>
public enum MorningChange
{
    /// <summary>Better than usual.</summary>
    Better,

    /// <summary>As usual.</summary>
    Same,

    /// <summary>Worse than usual.</summary>
    Worse,
}
