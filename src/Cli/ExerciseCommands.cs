using System.CommandLine;
using System.Globalization;
using System.Text;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Drawing;
using MomentArm.Prescribing;

namespace MomentArm.Cli;

/// <summary>exercise list, draw, load, settle, reach, solve-load and check.</summary>
internal static class ExerciseCommands
{
    private static readonly Argument<string> Id = new("id") { Description = "Id of the exercise; see exercise list." };
    private static readonly Option<Side> WorkingSide = SideOption();

    internal static Command Build() => new("exercise", "The exercise library.\nExample: momentarm exercise list") { List(), Draw(), LoadCommand.Build(Id, WorkingSide), SettleCommand.Build(Id, WorkingSide), ReachCommand.Build(WorkingSide), SolveLoadCommand.Build(WorkingSide), CheckCommand.Build() };

    private static Option<Side> SideOption()
    {
        var option = new Option<Side>("--side") { Description = "The working side.", DefaultValueFactory = _ => Side.Right };
        option.AcceptOnlyFromAmong("left", "right");
        return option;
    }

    private static Command List()
    {
        var list = new Command("list", "Lists the exercises by ladder and rung.\nExample: momentarm exercise list --json");
        list.SetAction(parse =>
        {
            var output = Output.For(parse);
            if (output.Library(parse) is not { } library)
                return 1;
            var text = new StringBuilder();
            foreach (var e in library.Exercises)
                text.AppendLine(CultureInfo.InvariantCulture, $"{e.Id,-28} {e.Purpose,-11} {e.Ladder} {e.Rung}  {e.Name}");
            output.Write(
                library.Exercises.Select(e => new { e.Id, e.Name, e.Purpose, e.Position, e.Ladder, e.Rung, e.Loads, e.Groups, e.Equipment }),
                text.ToString().TrimEnd());
            return 0;
        });
        return list;
    }

    private static Command Draw()
    {
        var outPath = new Option<string?>("--out") { Description = "File to write; the id with .svg when left out." };
        var pose = new Option<double?>("--pose") { Description = "One moment, 0 start to 1 end; start and end in one picture when left out." };
        var gray = new Option<bool>("--gray") { Description = "For printing in gray." };
        var draw = new Command("draw", "Draws an exercise as SVG.\nExample: momentarm exercise draw clam --side left --out clam.svg") { Id, WorkingSide, outPath, pose, gray };
        draw.SetAction(parse =>
        {
            var output = Output.For(parse);
            if (output.Library(parse) is not { } library)
                return 1;
            var id = parse.GetValue(Id)!;
            if (library.Exercise(id) is not { } exercise)
                return output.Faults([NoSuch(id)]);
            var side = parse.GetValue(WorkingSide);
            if (parse.GetValue(pose) is < 0 or > 1)
                return output.Faults(["--pose goes from 0 (start) to 1 (end)."]);
            var options = PictureOptions.Usual with { Palette = parse.GetValue(gray) ? Palette.Gray : Palette.Light };
            var model = library.Body.Build(new Physique(Sex.Female, 40));
            var picture = parse.GetValue(pose) is { } fraction
                ? Pictures.Still(model, library.Body.Points, exercise.Movement, side, fraction, options)
                : Pictures.Combined(model, library.Body.Points, exercise.Movement, side, options);
            var words = library.Words("en", id);
            var path = parse.GetValue(outPath) ?? id + ".svg";
            var code = CaseCommands.Write(output, path, SvgWriter.Document(
                picture, library.PatientWords.Sides.Fill(words.Title, side), library.PatientWords.Sides.Fill(string.Join(" ", words.Steps), side)));
            if (code == 0)
                output.Write(new { exercise.Id, side, path }, $"Wrote {path}");
            return code;
        });
        return draw;
    }

    /// <summary>A name of the code in words: "ankle foot".</summary>
    internal static string Spaced(string name) => string.Concat(name.Select((c, i) => char.IsUpper(c) && i > 0 ? " " + char.ToLowerInvariant(c) : char.ToLowerInvariant(c).ToString()));

    internal static string NoSuch(string id) => $"There is no exercise \"{id}\". See: momentarm exercise list";
}
