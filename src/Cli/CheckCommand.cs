using System.CommandLine;
using System.Globalization;
using System.Text;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Drawing;
using MomentArm.Prescribing;

namespace MomentArm.Cli;

/// <summary>exercise check: one report for each form.</summary>
internal static class CheckCommand
{
    internal static Command Build()
    {
        var id = new Argument<string?>("id") { Description = "Id of an exercise; all when left out.", Arity = ArgumentArity.ZeroOrOne, DefaultValueFactory = _ => null };
        var check = new Command(
            "check",
            "Says of each form whether it settles and stands, what it loads and lengthens against what it is meant for, its place in its ladder, the reading grade of its words and its pictures. "
            + "Reference person: woman, 40 years, 165 cm, 65 kg.\nExample: momentarm exercise check clam") { id };
        check.SetAction(parse =>
        {
            var output = Output.For(parse);
            if (output.Library(parse) is not { } library)
                return 1;
            if (parse.GetValue(id) is { } wanted && library.Exercise(wanted) is null)
                return output.Faults([ExerciseCommands.NoSuch(wanted)]);
            return Report(output, parse, library, parse.GetValue(id));
        });
        return check;
    }

    private static int Report(Output output, ParseResult parse, ContentLibrary library, string? id)
    {
        var (_, settling) = ContentLibrary.TryRead(parse.GetValue(CommandLine.ContentFolder)!);
        var figure = library.Body.Build(new Physique(Sex.Female, 40));
        var reports = LibraryReview.Of(library, id).Exercises
            .Where(r => id is null || r.Figures.Exercise.Id == id)
            .Select(r => One(library, figure, r, [.. settling.Where(f => f.File == $"exercises/{r.Figures.Exercise.Id}.json")]))
            .ToArray();
        var text = new StringBuilder();
        foreach (var report in reports)
            report.Append(text);
        var faults = reports.Sum(r => r.Faults.Count);
        foreach (var region in reports.GroupBy(r => r.Region))
            text.AppendLine(CultureInfo.InvariantCulture, $"{ExerciseCommands.Spaced(region.Key.ToString())}: {region.Count()}");
        text.Append(CultureInfo.InvariantCulture, $"{reports.Length} forms, {faults} faults.");
        output.Write(new { forms = reports, faults }, text.ToString());
        return faults == 0 ? 0 : 1;
    }

    private static FormReport One(ContentLibrary library, BodyModel figure, ExerciseReview review, ContentFault[] settling)
    {
        var (exercise, load) = (review.Figures.Exercise, review.Figures.Load);
        var picture = Pictures.Combined(figure, library.Body.Points, exercise.Movement, Side.Right, PictureOptions.Usual);
        return new FormReport(
            exercise.Id, exercise.Region, settling.Length == 0, load.Computed,
            [.. IntentCheck.Loaded(review.Figures).Take(4).Select(s => new Asked(IntentCheck.Name(s.Action), Math.Round(100 * s.Middle)))],
            [.. IntentCheck.Lengthened(review.Figures).Take(3).Select(g => new Asked(IntentCheck.Name(g.Group), Math.Round(100 * g.Peak.Middle)))],
            [.. exercise.Loads.Select(a => IntentCheck.Name(a)), .. exercise.Groups.Select(g => IntentCheck.Name(g)), .. exercise.BeyondModel],
            [.. review.Disagreements.Select(d => d.What)], [.. exercise.Accepted.Select(a => $"{a.About}: {a.Reason}")],
            exercise.Ladder, exercise.Rung, LibraryReview.Hardness(review.Figures) is { } hardness ? Math.Round(100 * hardness) : null, review.OutOfOrder,
            exercise.OrderNote, review.Grades.ToDictionary(g => g.Key, g => Math.Round(g.Value, 1)), picture.Inner.Length,
            [.. settling.Concat(review.Faults).Select(f => f.ToString())]);
    }

    private sealed record Asked(string Name, double Percent);

    private sealed record FormReport(
        string Id, BodyRegion Region, bool Settles, bool Stands, IReadOnlyList<Asked> Loads, IReadOnlyList<Asked> Lengthens,
        IReadOnlyList<string> MeantFor, IReadOnlyList<string> Disagreements, IReadOnlyList<string> Accepted, string Ladder, int Rung,
        double? HardnessPercent, string? OutOfOrder, string? OrderNote, IReadOnlyDictionary<string, double> ReadingGrades, int PictureCharacters,
        IReadOnlyList<string> Faults)
    {
        internal void Append(StringBuilder text)
        {
            var culture = CultureInfo.InvariantCulture;
            string Listed(IReadOnlyList<Asked> asked) => asked.Count == 0 ? "nothing" : string.Join(", ", asked.Select(a => string.Create(culture, $"{a.Name} {a.Percent} %")));
            text.AppendLine(culture, $"{Id}: {(Settles ? "settles" : "DOES NOT SETTLE")}, {(Stands ? "stands" : "NO LOAD COMPUTED")}, picture of {PictureCharacters / 1024.0:0.0} kB");
            text.AppendLine(culture, $"  meant for {string.Join(", ", MeantFor)}; loads {Listed(Loads)}; lengthens {Listed(Lengthens)}");
            text.AppendLine(culture, $"  ladder {Ladder} {Rung}{(HardnessPercent is { } h ? $", {h} %" : "")}; reading grade {string.Join(", ", ReadingGrades.OrderBy(g => g.Key).Select(g => string.Create(culture, $"{g.Key} {g.Value:0.0}")))}");
            foreach (var line in Accepted.Select(a => "accepted: " + a).Concat(OrderNote is { } note ? [$"order: {OutOfOrder} {note}"] : []))
                text.AppendLine("  " + line);
            foreach (var fault in Faults)
                text.AppendLine("  FAULT " + fault);
        }
    }
}
