using MomentArm.Body;

namespace MomentArm.Web.PatientLinks;

/// <summary>What an opened link answers. Nothing in it names the patient.</summary>
internal sealed record OpenedProgram(
    int ProgramVersion, OpenedClinic Clinic, string Language, DateOnly Today, int DaysPerWeek, int DoneThisWeek, int Minutes,
    int PainCeiling, OpenedMorning? AskMorning, string? Note, IReadOnlyList<OpenedItem> Items, IReadOnlyList<OpenedCard> Cards,
    IReadOnlyList<string> StopSigns, string About);

/// <summary>An explanation that goes with the program.</summary>
internal sealed record OpenedCard(string Title, IReadOnlyList<string> Text, IReadOnlyList<OpenedPicture> Pictures, IReadOnlyList<string> Help);

internal sealed record OpenedClinic(string Name, string Phone);

/// <summary>The morning to ask about.</summary>
internal sealed record OpenedMorning(DateOnly Day);

/// <summary>One exercise on one side.</summary>
internal sealed record OpenedItem(
    string ExerciseId, string Title, Side? Side, string? SideLine, IReadOnlyList<string> SetUp, IReadOnlyList<string> Steps,
    string Feel, IReadOnlyList<string> Watch, string Easier, string Harder, IReadOnlyList<string> Needs, IReadOnlyList<string> Stop,
    string? ShortSpace, string? Note, string RepetitionWord, OpenedDose Dose,
    OpenedPicture Picture);

internal sealed record OpenedDose(
    int Sets, int Repetitions, int? RepetitionsTo, double OutSeconds, double HoldSeconds, double BackSeconds, int RestSeconds,
    double? WeightKg, string Text);

internal sealed record OpenedPicture(string ViewBox, string Alt, IReadOnlyList<string> Frames);

/// <summary>Why something was not done, for the patient.</summary>
internal sealed record Trouble(string Title, string Detail);

/// <summary>That a report is in the record: saved now, or already.</summary>
internal sealed record Taken(string Status);
