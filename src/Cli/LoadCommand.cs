using System.CommandLine;
using MomentArm.Body;

namespace MomentArm.Cli;

/// <summary>exercise load: what an exercise asks of a person, pose by pose.</summary>
internal static class LoadCommand
{
    internal static Command Build(Argument<string> id, Option<Side> workingSide)
    {
        var person = new PersonOptions();
        var file = PersonOptions.CaseFile();
        var weight = new Option<double>("--weight") { Description = "Added weight in kilograms where the exercise takes one." };
        var cubes = new Option<bool>("--cubes") { Description = "Share effort by least cubes in place of squares: how much do the muscle figures depend on the rule?" };
        var load = new Command(
            "load", "Prints what an exercise asks: load shares with their curves, weight on each contact, muscle effort, joint forces.\nExample: momentarm exercise load side-lying-leg-raise --side left --sex female --stature 168 --mass 64\nExample: momentarm exercise load bridge --case content/demo/outer-hip.json")
        {
            id, workingSide, weight, file, cubes,
        };
        person.AddTo(load);
        load.SetAction(parse =>
        {
            var output = Output.For(parse);
            if (output.Library(parse) is not { } library)
                return 1;
            if (library.Exercise(parse.GetValue(id)!) is not { } exercise)
                return output.Faults([ExerciseCommands.NoSuch(parse.GetValue(id)!)]);
            var (reading, faults) = person.Reading(parse, library, parse.GetValue(file));
            if (reading is null)
                return output.Faults(faults);
            try
            {
                var side = parse.GetValue(workingSide);
                var result = Loading.Of(
                    reading.Loads.Person, exercise.Movement, side, parse.GetValue(weight), EffortRule.Usual with { Cubes = parse.GetValue(cubes) });
                var model = reading.Loads.Model;
                output.Write(
                    new
                    {
                        exercise.Id,
                        side,
                        result.Computed,
                        result.Shares,
                        curves = result.Curves.Select(c => new { c.Action, c.Side, c.WorkJ, c.MeanShare, c.Points }),
                        supports = result.Supports,
                        efforts = result.Efforts,
                        jointForces = result.JointForces,
                        result.Problems,
                        result.Notes,
                        model.Assumptions,
                    },
                    LoadText.Of(exercise, side, result, model));
                return 0;
            }
            catch (ArgumentOutOfRangeException error)
            {
                return output.Faults([PersonOptions.Sentence(error)]);
            }
        });
        return load;
    }
}
