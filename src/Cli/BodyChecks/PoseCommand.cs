using System.CommandLine;
using MomentArm.Body;
using MomentArm.Content;

namespace MomentArm.Cli;

/// <summary>body pose: one pose of one's own, settled and calculated.</summary>
internal static class PoseCommand
{
    private static readonly Argument<string> PosePath = new("file") { Description = "A pose file; see content/demo/single-leg-squat.json." };

    internal static Command Build()
    {
        var person = new PersonOptions();
        var side = new Option<Side>("--side") { Description = "The working side.", DefaultValueFactory = _ => Side.Right };
        side.AcceptOnlyFromAmong("left", "right");
        var pose = new Command("pose", "Settles a pose and prints moments, contact forces and muscle lengths, or why it cannot be held.\nExample: momentarm body pose content/demo/single-leg-squat.json --sex female --stature 168 --mass 64")
        {
            PosePath, side,
        };
        person.AddTo(pose);
        pose.SetAction(parse =>
        {
            var output = Output.For(parse);
            if (output.Library(parse) is not { } library)
                return 1;
            var (input, faults) = PoseInput.Read(parse.GetValue(PosePath)!, library.Body.Points);
            var (physique, fault) = person.Read(parse);
            if (input is null || physique is null)
                return output.Faults([.. faults.Select(f => f.ToString()), .. fault is null ? Array.Empty<string>() : [fault]]);
            try
            {
                var model = library.Body.Build(physique);
                var body = new PersonBody(
                    model, library.Body.Points, library.Body.MusclesOf(model), new PatientCapacity(library.Body.Capacities, physique, model, []));
                return Print(output, input, body, parse.GetValue(side));
            }
            catch (ArgumentOutOfRangeException error)
            {
                return output.Faults([PersonOptions.Sentence(error)]);
            }
        });
        return pose;
    }

    private static int Print(Output output, PoseInput input, PersonBody body, Side side)
    {
        var held = BodyCommands.Hold(body, input, side, 0);
        var report = PoseReport.Of(held, body.Muscles, input, side);
        if (held.Refusal is { } refusal)
        {
            output.Before(PoseText.Resting(report).TrimEnd());
            return output.Faults([refusal]);
        }

        output.Write(report, PoseText.Of(report));
        return 0;
    }
}
