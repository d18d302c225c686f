using System.CommandLine;
using System.Globalization;
using System.Text;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Prescribing;

namespace MomentArm.Cli;

/// <summary>exercise solve-load: which weight, band, height, range or lever gives a wished share.</summary>
internal static class SolveLoadCommand
{
    /// <summary>How far a step or a seat may be raised or lowered from where the exercise has it, metres (our choice).</summary>
    private const double HeightReachM = 0.15;

    private static readonly Dictionary<string, KnobKind> Kinds = new()
    {
        ["weight"] = KnobKind.Weight,
        ["band"] = KnobKind.BandF100,
        ["rest"] = KnobKind.BandRestLength,
        ["stretch"] = KnobKind.BandPreStretch,
        ["help"] = KnobKind.HelpForce,
        ["height"] = KnobKind.SurfaceHeight,
        ["depth"] = KnobKind.Depth,
        ["lever"] = KnobKind.Lever,
    };

    internal static Command Build(Option<Side> workingSide)
    {
        var options = new Options();
        var solve = new Command(
            "solve-load",
            "Finds the weight, band, height, range or lever that gives a wished load share, for a person or a case.\n"
            + "Example: momentarm exercise solve-load --id seated-knee-extension --group knee-extensors --share 65 --knob weight --sex male --stature 178 --mass 80")
        {
            options.Id, options.Group, options.Share, options.Knob, options.Low, options.High, options.Between, options.Weight, options.Limb, options.Case, workingSide,
        };
        options.Person.AddTo(solve);
        solve.SetAction(parse =>
        {
            var output = Output.For(parse);
            if (output.Library(parse) is not { } library)
                return 1;
            try
            {
                return Run(output, library, options, parse, parse.GetValue(workingSide));
            }
            catch (ArgumentOutOfRangeException error)
            {
                return output.Faults([PersonOptions.Sentence(error)]);
            }
        });
        return solve;
    }

    private static int Run(Output output, ContentLibrary library, Options options, ParseResult parse, Side working)
    {
        var id = parse.GetValue(options.Id)!;
        if (library.Exercise(id) is not { } exercise)
            return output.Faults([ExerciseCommands.NoSuch(id)]);
        var (reading, faults) = options.Person.Reading(parse, library, parse.GetValue(options.Case));
        if (reading is null)
            return output.Faults(faults);
        if (Action(parse.GetValue(options.Group)!) is not { } action)
            return output.Faults([$"--group \"{parse.GetValue(options.Group)}\" is no group: give one of {string.Join(", ", Enum.GetValues<JointAction>().Select(Group))}."]);
        var (knob, knobFault) = options.KnobOf(parse, library.Body.Points, exercise.Movement);
        if (knob is null)
            return output.Faults([$"{id}: {knobFault}"]);
        var loads = reading.Loads;
        var model = loads.Model;
        var side = parse.GetValue(options.Limb).On(working);
        if (loads.Person.Capacity.At(action, side, 0) is null)
            return output.Faults([$"--group {Group(action)}: no strength is known for it, so no share can be computed. Ask for another group, such as {Group(exercise.Loads.FirstOrDefault())}."]);
        var (question, questionFault) = options.Question(parse, exercise.Movement, knob, action, side);
        if (question is null)
            return output.Faults([questionFault!]);
        var weight = knob.Kind == KnobKind.Weight ? 0 : parse.GetValue(options.Weight);
        var answer = Inverse.Solve(question, value => Load(loads, exercise, working, knob, value, weight));
        output.Write(
            new
            {
                exercise.Id, working, action, side, question.WishedShare, knob = knob.Kind, answer.Value, answer.Share,
                result = Result(answer.Root), search = (object)answer.Root, answer.Words, answer.Notes, model.Assumptions,
            },
            Text(exercise, question, answer, model));
        return 0;
    }

    private static MovementLoad Load(PersonalLoads loads, Exercise exercise, Side working, Knob knob, double value, double weightKg)
    {
        var movement = Knobs.Apply(exercise.Movement, knob, value);

        // At a height the poses were not made for, contacts miss and the numbers mean nothing.
        return knob.Kind == KnobKind.SurfaceHeight && Knobs.Misfit(loads.Model, loads.Points, movement, working) is { } misfit
            ? new MovementLoad([], [misfit], false)
            : loads.Of(exercise with { Movement = movement }, working, weightKg);
    }

    private static string Text(Exercise exercise, LoadQuestion question, LoadAnswer answer, BodyModel model)
    {
        var text = new StringBuilder();
        text.AppendLine(CultureInfo.InvariantCulture, $"{exercise.Name}, {question.WishedShare * 100:0} % of {CaseText.Words(question.Side)} {CaseText.Words(question.Action)} wished");
        text.AppendLine("  " + answer.Words);
        foreach (var note in answer.Notes.Concat(model.Assumptions))
            text.AppendLine("  Note: " + note);
        return text.Append("  Held poses, no speed. An estimate for a clinician, not a limit.").ToString();
    }

    private static string Result(RootAnswer root) => root switch
    {
        RootFound => "found",
        RootNotReachable => "notReachable",
        _ => "notComputed",
    };

    /// <summary>The action of a group or action typed: hip-abductors, hip-abduction or hipAbduction.</summary>
    internal static JointAction? Action(string typed)
    {
        var plain = Plain(typed);
        foreach (var action in Enum.GetValues<JointAction>())
        {
            if (plain == Plain(action.ToString()) || plain == Plain(Group(action)))
                return action;
        }

        return null;
    }

    /// <summary>The muscles of an action: hip-abductors.</summary>
    internal static string Group(JointAction action)
    {
        var words = string.Concat(action.ToString().Select((c, i) => i > 0 && char.IsUpper(c) ? "-" + char.ToLowerInvariant(c) : char.ToLowerInvariant(c).ToString()));
        return words.EndsWith("ion", StringComparison.Ordinal) ? words[..^3] + "ors" : words + "ers";
    }

    private static string Plain(string words) => words.Replace("-", "", StringComparison.Ordinal).Trim().ToUpperInvariant();

    /// <summary>What can be typed.</summary>
    private sealed class Options
    {
        internal Option<string> Id { get; } = new("--id") { Description = "Id of the exercise; see exercise list.", Required = true };

        internal Option<string> Group { get; } = new("--group") { Description = "Muscles or action, such as hip-abductors or knee-extension.", Required = true };

        internal Option<double> Share { get; } = new("--share") { Description = "Wished load share in percent.", Required = true };

        internal Option<string?> Knob { get; } = Named();

        internal Option<double?> Low { get; } = new("--low") { Description = "Least value asked: kg, N, cm or percent." };

        internal Option<double?> High { get; } = new("--high") { Description = "Largest value asked: kg, N, cm or percent." };

        internal Option<string?> Between { get; } = new("--between") { Description = "For a lever: two body points of one segment, such as kneeFront,ankle." };

        internal Option<double> Weight { get; } = new("--weight") { Description = "Added weight in kilograms while another knob is turned." };

        internal Option<Limb> Limb { get; } = Whose();

        internal Option<string?> Case { get; } = PersonOptions.CaseFile();

        internal PersonOptions Person { get; } = new();

        internal (Knob? Knob, string? Fault) KnobOf(ParseResult parse, SurfacePoints points, Movement movement)
        {
            var kind = parse.GetValue(Knob) is { } typed ? Kinds[typed]
                : !movement.Loads.IsEmpty ? KnobKind.Weight
                : movement.Pulls.Any(p => p is BandPull) ? KnobKind.BandF100
                : KnobKind.Depth;
            var knob = new Knob(kind);
            if (parse.GetValue(Between) is { } between)
            {
                var names = between.Split(',', StringSplitOptions.TrimEntries);
                if (names.Length != 2 || names.Any(n => !points.Has(n) || points.Resolve(n).Length > 1) || points.Resolve(names[0])[0].Segment != points.Resolve(names[1])[0].Segment)
                    return (null, $"--between \"{between}\" are not two body points of one segment. Give two names of content/body/surface-points.json, such as kneeFront,ankle.");
                knob = knob with { From = names[0], To = names[1] };
            }

            if (kind == KnobKind.Lever && !movement.Loads.IsEmpty && movement.Loads[0].MassKg <= 0 && !(parse.GetValue(Weight) > 0))
                return (null, "The place of a weight of 0 kg changes nothing. Give the weight in kilograms, such as --weight 3.");
            return Knobs.Missing(movement, knob) is { } missing
                ? (null, kind == KnobKind.Lever && !movement.Loads.IsEmpty ? missing + " Type them as --between kneeFront,ankle." : missing)
                : (knob, null);
        }

        internal (LoadQuestion? Question, string? Fault) Question(ParseResult parse, Movement movement, Knob knob, JointAction action, Side side)
        {
            var share = parse.GetValue(Share);
            if (!(share is >= 2 and <= 300))
                return (null, string.Create(CultureInfo.InvariantCulture, $"--share {share} is not usable: give a percentage from 2 to 300."));
            var unit = knob.Kind is KnobKind.Weight or KnobKind.BandF100 or KnobKind.HelpForce ? 1.0 : 100.0;
            var (low, high) = knob.UsualRange;
            if (knob.Kind == KnobKind.SurfaceHeight && Knobs.Present(movement, knob) is { } height)
                (low, high) = (Math.Max(0.01, height - HeightReachM), height + HeightReachM);
            (low, high) = (parse.GetValue(Low) / unit ?? low, parse.GetValue(High) / unit ?? high);
            if (!(low <= high))
                return (null, string.Create(CultureInfo.InvariantCulture, $"--low {low * unit} to --high {high * unit} is no range: give the smaller number as --low."));
            return (new LoadQuestion { Knob = knob, Action = action, Side = side, WishedShare = share / 100, Low = low, High = high }, null);
        }

        private static Option<string?> Named()
        {
            var option = new Option<string?>("--knob") { Description = "What may be changed; the weight, else the band, else the range when left out." };
            option.AcceptOnlyFromAmong([.. Kinds.Keys]);
            return option;
        }

        private static Option<Limb> Whose()
        {
            var option = new Option<Limb>("--limb") { Description = "Whose share: the working limb or the other.", DefaultValueFactory = _ => MomentArm.Body.Limb.Working };
            option.AcceptOnlyFromAmong("working", "other");
            return option;
        }
    }
}
