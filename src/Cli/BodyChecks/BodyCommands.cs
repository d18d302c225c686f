using System.CommandLine;
using MomentArm.Content;

namespace MomentArm.Cli;

/// <summary>body check and body pose.</summary>
internal static class BodyCommands
{
    /// <summary>How poses are held by both commands; a fuller calculation takes its place here.</summary>
    internal static readonly HoldPose Hold = BalancedHold.Hold;

    internal static Command Build() => new("body", "The body model: what it gives beside published figures, and for a pose of your own.\nExample: momentarm body check")
    {
        Check(), PoseCommand.Build(),
    };

    private static Command Check()
    {
        var group = new Option<CheckGroup?>("--group") { Description = "One group only." };
        group.AcceptOnlyFromAmong([.. Enum.GetNames<CheckGroup>().Select(n => n.ToLowerInvariant())]);
        var check = new Command("check", "Compares the body model with published and hand-worked figures, each with its source; ends with 1 when one that must agree does not.\nExample: momentarm body check --group moments") { group };
        check.SetAction(parse =>
        {
            var output = Output.For(parse);
            if (output.Library(parse) is not { } library)
                return 1;
            var runner = new CheckRunner(library, Hold);
            var wanted = parse.GetValue(group);
            var results = library.BodyChecks.Checks.Where(c => wanted is null || c.Group == wanted).Select(runner.Run).ToArray();
            output.Write(CheckTable.Data(results), CheckTable.Text(results));
            return results.Any(r => r.Verdict == Verdict.Miss) ? 1 : 0;
        });
        return check;
    }
}
