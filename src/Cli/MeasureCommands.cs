using System.CommandLine;
using System.Globalization;
using System.Text;
using MomentArm.Exam;

namespace MomentArm.Cli;

/// <summary>measures list, show and score.</summary>
internal static class MeasureCommands
{
    private static readonly Argument<string> Id = new("id") { Description = "Id, name or short name of the measure; see measures list." };

    internal static Command Build() =>
        new("measures", "What is measured in an exam, and how.\nExample: momentarm measures list") { List(), Show(), Score() };

    private static Command List()
    {
        var list = new Command("list", "Lists the measures in the order of an exam.\nExample: momentarm measures list --json");
        list.SetAction(parse =>
        {
            var output = Output.For(parse);
            if (output.Library(parse) is not { } library)
                return 1;
            var text = new StringBuilder();
            foreach (var m in library.Exam.Measures)
                text.AppendLine(CultureInfo.InvariantCulture, $"{m.Id,-32} {ExerciseCommands.Spaced(m.Position.ToString()),-12} {ExerciseCommands.Spaced(m.Kind.ToString()),-16} {m.Shown.Word,-7} {m.Name}");
            output.Write(
                library.Exam.Measures.Select(m => new { m.Id, m.Name, m.Kind, m.Position, Unit = m.Shown.Word, m.Sided, m.Regions, m.Aliases }),
                text.ToString().TrimEnd());
            return 0;
        });
        return list;
    }

    private static Command Show()
    {
        var show = new Command("show", "Shows one measure: how it is taken, its errors and its norms with their sources.\nExample: momentarm measures show slr") { Id };
        show.SetAction(parse =>
        {
            var output = Output.For(parse);
            if (output.Library(parse) is not { } library)
                return 1;
            if (Find(library.Exam.Measures, parse.GetValue(Id)!) is not { } measure)
                return output.Faults([NoSuch(parse.GetValue(Id)!)]);
            var norms = library.Exam.Norms.Where(n => n.MeasureId == measure.Id).ToList();
            output.Write(
                new { Measure = measure, Norms = norms, Predictions = library.Exam.Predictions.Where(p => p.MeasureId == measure.Id) },
                MeasureText.Of(measure, norms));
            return 0;
        });
        return show;
    }

    private static Command Score()
    {
        var answers = new Argument<string[]>("answers") { Description = "One answer an item in its order; - for an item left out.", Arity = ArgumentArity.OneOrMore };
        var score = new Command("score", "Scores the items of a questionnaire.\nExample: momentarm measures score quickdash 3 3 3 3 3 3 2 2 2 2 2") { Id, answers };
        score.SetAction(parse =>
        {
            var output = Output.For(parse);
            if (output.Library(parse) is not { } library)
                return 1;
            if (Find(library.Exam.Measures, parse.GetValue(Id)!) is not { } measure)
                return output.Faults([NoSuch(parse.GetValue(Id)!)]);
            if (measure.Questionnaire is not { } questionnaire)
                return output.Faults([$"{measure.Name} has no items to score."]);
            var typed = parse.GetValue(answers)!;
            if (typed.FirstOrDefault(t => t != "-" && !int.TryParse(t, CultureInfo.InvariantCulture, out _)) is { } wrong)
                return output.Faults([$"\"{wrong}\" is no answer: type a whole number for each item, - for one left out."]);
            var result = questionnaire.Score([.. typed.Select(t => t == "-" ? (int?)null : int.Parse(t, CultureInfo.InvariantCulture))]);
            if (result.Value is not { } value)
                return output.Faults([result.Sentence!]);
            output.Write(
                new { measure.Id, Score = value, result.Sentence },
                $"{measure.Name}: {Say.Shown(measure, value)}{(result.Sentence is { } sentence ? $". {sentence}" : "")}");
            return 0;
        });
        return score;
    }

    private static Measure? Find(IEnumerable<Measure> measures, string name) => measures.FirstOrDefault(m =>
        string.Equals(m.Id, name, StringComparison.OrdinalIgnoreCase) || string.Equals(m.Name, name, StringComparison.OrdinalIgnoreCase)
        || m.Aliases.Contains(name.ToLowerInvariant()));

    private static string NoSuch(string id) => $"There is no measure \"{id}\". See: momentarm measures list";
}
