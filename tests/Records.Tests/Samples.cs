using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.FollowUp;
using MomentArm.Prescribing;

namespace MomentArm.Records.Tests;

/// <summary>Invented things to store, with every field filled.</summary>
internal static class Samples
{
    public static Measurement Strength(params double[] trials) => new()
    {
        MeasureId = "hip-abduction-strength",
        Side = Side.Left,
        Trials = [.. trials],
        LeverArmM = 0.41,
        PainDuring = 3,
        Moment = "after",
        Conditions = new TestConditions { Device = "invented gauge", Bound = ValueBound.AtLeast, LowForce = LowForceReason.Pain },
        AsTyped = "112.5/0.1",
        Note = "invented note",
    };

    public static HomeProgram Program(int daysPerWeek = 4) => new()
    {
        DaysPerWeek = daysPerWeek,
        PainCeiling = 4,
        Note = "invented note to the patient",
        EngineVersion = "0.1.0",
        ContentVersion = "2026-03",
        Items =
        [
            new ProgramItem
            {
                ExerciseId = "side-lying-hip-abduction",
                WorkingSide = Side.Left,
                BothSides = true,
                Dose = new Dose { Sets = 3, Repetitions = 8, RepetitionsTo = 12, DaysPerWeek = 4, Effort = 7, WeightKg = 1.25 },
                Note = "toes forward",
                FindingId = "hip-abduction-strength|Left|Weak",
                LoadShare = new StoredLoadShare(JointAction.HipAbduction, 0.31, 0.4 + 0.1 / 3, 0.55),
            },
        ],
    };

    public static SessionLog Session(Guid id, DateOnly day, int pain = 2) => new()
    {
        Id = id,
        Day = day,
        Exercises = [new ExerciseLog("side-lying-hip-abduction", Side.Left, 3, 28, ExerciseReport.TooEasy)],
        Effort = 6,
        PainDuring = pain,
        PainAfter = 1,
        Note = "invented words",
    };

    public static MorningLog Morning(Guid id, DateOnly day, int pain = 1) => new(id, day, pain, MorningChange.Worse);

    public static T Conflict<T>(SaveOutcome<T> outcome, out SaveOutcome<T>.Conflict conflict)
    {
        conflict = Assert.IsType<SaveOutcome<T>.Conflict>(outcome);
        return conflict.Theirs!;
    }

    public static string Refused<T>(SaveOutcome<T> outcome) => Assert.IsType<SaveOutcome<T>.Refused>(outcome).Sentence;
}
