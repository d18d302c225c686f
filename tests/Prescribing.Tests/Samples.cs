using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Prescribing.Tests;

/// <summary>Invented exercises, findings and loads.</summary>
internal static class Samples
{
    internal static Exercise Exercise(
        string id, Purpose purpose = Purpose.Strengthen, BodyPosition position = BodyPosition.SideLying,
        JointAction[]? loads = null, MuscleGroup[]? groups = null, Equipment[]? equipment = null, int setUpSeconds = 20) => new()
        {
            Id = id,
            Name = "Exercise " + id,
            Purpose = purpose,
            Region = BodyRegion.Hip,
            Position = position,
            Movement = new Movement { Frames = [], Props = [], Loads = [], View = ViewKind.Side },
            Loads = [.. loads ?? []],
            Groups = [.. groups ?? []],
            Equipment = [.. equipment ?? []],
            Dose = ThreeTens,
            DoseSource = "invented",
            Ladder = id,
            Rung = 1,
            Cautions = [],
            Faults = [],
            SetUpSeconds = setUpSeconds,
        };

    internal static Dose ThreeTens { get; } = new() { Sets = 3, Repetitions = 10, DaysPerWeek = 3, OutSeconds = 2, HoldSeconds = 2, BackSeconds = 3, RestSeconds = 60 };

    internal static ProgramItem Item(string id, Dose? dose = null, bool bothSides = false) =>
        new() { ExerciseId = id, Dose = dose ?? ThreeTens, BothSides = bothSides, WorkingSide = Side.Right };

    internal static HomeProgram Program(int days, params ProgramItem[] items) =>
        new() { Items = [.. items], DaysPerWeek = days, EngineVersion = "1", ContentVersion = "1" };

    internal static Limits NoLimits { get; } = new(0.5, 0.8, null, [], null, null);

    internal static Finding Finding(
        string id, ImpairmentKind kind, double weight, JointAction? action = null, MuscleGroup? group = null, Side? side = Side.Right) =>
        new(id, "Headline " + id, "Detail", weight, true, new Impairment(kind, side, action, group, 0.3), [id]);

    internal static LoadShare Share(double low, double middle, double high, JointAction action = JointAction.HipAbduction, Side side = Side.Right) =>
        new(action, side, low, middle, high, 50, new Capacity(40, 50, 60, CapacityBasis.Tested, false), 1);

    internal static MovementLoad Load(params LoadShare[] shares) => new([.. shares], [], true);
}
