using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Web.Demo;

/// <summary>One invented patient of the demo clinic. Days count back from the day on which the demo is made.</summary>
internal sealed record DemoPatient
{
    internal required string Name { get; init; }

    internal required int Age { get; init; }

    internal required Sex Sex { get; init; }

    internal double? StatureM { get; init; }

    internal double? MassKg { get; init; }

    internal required string Occupation { get; init; }

    internal required string Title { get; init; }

    internal required string Region { get; init; }

    internal Side? Side { get; init; }

    internal required string Goal { get; init; }

    internal Irritability? Irritability { get; init; }

    internal required DemoVisit[] Visits { get; init; }

    internal DemoProgram[] Programs { get; init; } = [];

    /// <summary>Home sessions, oldest first.</summary>
    internal DemoSession[] Sessions { get; init; } = [];
}

/// <summary>A visit: how many days ago, what was typed, and the note.</summary>
internal sealed record DemoVisit(int DaysAgo, string[] Entries, bool SignsAsked, bool Signed, string? Subjective, string? Plan);

/// <summary>A program: how many days ago, exercises by id, and whether it was handed over.</summary>
internal sealed record DemoProgram(int DaysAgo, string[] Exercises, int DaysPerWeek, bool HandedOver, string? Reason);

/// <summary>A home session: how many days ago, worst pain, effort, the morning after, and how the first exercise went.</summary>
internal sealed record DemoSession(
    int DaysAgo, int Pain, int Effort, int? Morning, FollowUp.ExerciseReport First = FollowUp.ExerciseReport.Done, string? Note = null);
