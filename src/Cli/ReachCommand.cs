using System.CommandLine;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Prescribing;

namespace MomentArm.Cli;

/// <summary>exercise reach: how far an exercise lengthens each muscle group of a person, or which exercise lengthens one most.</summary>
internal static class ReachCommand
{
    internal static Command Build(Option<Side> workingSide)
    {
        var id = new Argument<string?>("id") { Description = "Id of the exercise; left out with --rank.", Arity = ArgumentArity.ZeroOrOne };
        var rank = new Option<string?>("--rank") { Description = "A muscle group to rank all exercises by, such as hamstrings or lateral-hip; or the short name of a muscle." };
        var file = PersonOptions.CaseFile();
        var person = new PersonOptions();
        var reach = new Command(
            "reach", "Prints how far an exercise lengthens each muscle group, against the person's own limits.\nExample: momentarm exercise reach hamstring-strap-stretch --side left --case content/demo/outer-hip.json\nExample: momentarm exercise reach --rank hamstrings --sex female --stature 168 --mass 64")
        {
            id, workingSide, rank, file,
        };
        person.AddTo(reach);
        reach.SetAction(parse =>
        {
            var output = Output.For(parse);
            if (output.Library(parse) is not { } library)
                return 1;
            var (reading, faults) = person.Reading(parse, library, parse.GetValue(file));
            if (reading is null)
                return output.Faults(faults);
            var side = parse.GetValue(workingSide);
            return (parse.GetValue(id), parse.GetValue(rank)) switch
            {
                ({ } one, null) => One(output, library, reading, one, side),
                (null, { } group) => Rank(output, library, reading, group, side),
                _ => output.Faults(["Give the id of an exercise, or --rank with a muscle group."]),
            };
        });
        return reach;
    }

    private static int One(Output output, ContentLibrary library, CaseReading reading, string id, Side side)
    {
        if (library.Exercise(id) is not { } exercise)
            return output.Faults([ExerciseCommands.NoSuch(id)]);
        var reach = reading.Reach.Of(exercise, side);
        var main = PersonalReach.Main(exercise, reach, side);
        var farther = main is null ? [] : reading.Reach.Farther(exercise, side, main.Group, main.Side, reach.Fractions[main.PeakAt]);
        output.Write(
            new
            {
                exercise.Id,
                side,
                reach.Fractions,
                groups = reach.Groups.Select(g => new
                {
                    g.Group, g.Side, g.Lengthens, g.Peak, atFraction = reach.Fractions[g.PeakAt], changeMm = Math.Round(g.PeakChangeM * 1000, 2),
                    g.Leading, g.LeadingReach, g.Basis, g.Tests, g.Extrapolated, g.Verdict, g.Curve,
                }),
                muscles = reach.Muscles,
                main = main is null ? null : new { main.Group, main.Side },
                farther = farther.Select(s => new { s.Words, mmPer10Deg = Math.Round(s.MmPer10Deg, 2), roomDeg = Math.Round(s.Room * 180 / Math.PI, 1) }),
                reach.Problems,
                reading.Reach.Limits.Set.Model.Assumptions,
            },
            ReachText.Of(exercise, side, reach, main, farther, reading.Reach.Limits.Set.Model));
        return 0;
    }

    private static int Rank(Output output, ContentLibrary library, CaseReading reading, string name, Side side)
    {
        var exercises = library.Exercises.Select(e => (e.Id, reading.Reach.Of(e, side))).ToArray();
        var model = reading.Reach.Limits.Set.Model;
        if (Enum.GetValues<MuscleGroup>().Where(g => string.Equals(Kebab(g), name, StringComparison.OrdinalIgnoreCase)).Select(g => (MuscleGroup?)g).FirstOrDefault() is { } group)
        {
            var ranked = ReachRanking.Of(exercises, group, side);
            output.Write(new { group, side, basis = reading.Reach.Limits.BasisOf(group, side), ranked, model.Assumptions }, ReachText.Ranked(name, side, ranked, model));
            return 0;
        }

        try
        {
            var ranked = ReachRanking.Of(exercises, name, side);
            output.Write(new { muscle = name, side, ranked, model.Assumptions }, ReachText.Ranked(name, side, ranked, model));
            return 0;
        }
        catch (ArgumentException)
        {
            return output.Faults([$"There is no muscle group or muscle with a limit of length called \"{name}\". Groups: {string.Join(", ", Enum.GetValues<MuscleGroup>().Select(Kebab))}."]);
        }
    }

    /// <summary>Such as lateral-hip.</summary>
    private static string Kebab(MuscleGroup group) => CaseText.Words(group).ToLowerInvariant().Replace(' ', '-');
}
