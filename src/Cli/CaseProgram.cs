using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Prescribing;

namespace MomentArm.Cli;

/// <summary>The program of a case file: chosen by hand in the file, or a draft from the findings.</summary>
internal sealed record CaseProgram(
    HomeProgram Program, ImmutableArray<Candidate> Candidates, ImmutableArray<string> Hints, double Minutes, bool Drafted, bool Stopped)
{
    internal static CaseProgram Make(ContentLibrary library, CaseInput input, CaseReading reading)
    {
        var window = reading.Irritability.Window;
        var limits = new Limits(
            window.Low, window.High, input.Agreed.Owned?.ToImmutableHashSet(), [.. input.Agreed.Avoid], input.Agreed.Minutes, input.DaysPerWeek);
        var candidates = Prescribing.Candidates.For(
            library.Exercises, (exercise, side) => reading.Loads.Of(exercise, side, exercise.Dose.WeightKg ?? 0), reading.Findings,
            limits, input.Facts.AffectedSide ?? Side.Right);
        var drafted = input.Chosen.IsEmpty;
        var items = ProgramOrder.Sort(
            drafted ? DraftProgram.From(candidates, reading.Findings) : [.. input.Chosen.Select(i => WithShare(library, reading, i))],
            library.Exercise);
        var program = new HomeProgram
        {
            Items = items,
            DaysPerWeek = input.DaysPerWeek ?? items.Select(i => i.Dose.DaysPerWeek).DefaultIfEmpty(3).Max(),
            Agreed = input.Agreed,
            EngineVersion = typeof(HomeProgram).Assembly.GetName().Version?.ToString(3) ?? "0",
            ContentVersion = library.Version,
        };
        return new CaseProgram(
            program, candidates, ProgramHints.For(program, library.Exercise, limits),
            SessionTime.Seconds(items, library.Exercise) / 60, drafted, input.Gate.PrescribingStopped);
    }

    private static ProgramItem WithShare(ContentLibrary library, CaseReading reading, ProgramItem item)
    {
        var exercise = library.Exercise(item.ExerciseId)!;
        var side = item.WorkingSide ?? Side.Right;
        var main = PersonalLoads.Main(exercise, reading.Loads.Of(exercise, side, item.Dose.WeightKg ?? 0), side);
        return item with { LoadShare = main is null ? null : new StoredLoadShare(main.Action, main.Low, main.Middle, main.High) };
    }
}
