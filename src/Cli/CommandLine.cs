using System.CommandLine;
using System.CommandLine.Invocation;
using System.CommandLine.Parsing;
using System.Globalization;

namespace MomentArm.Cli;

/// <summary>The commands and what they have in common.</summary>
internal static class CommandLine
{
    /// <summary>Machine-readable output, on every command.</summary>
    internal static readonly Option<bool> Json = new("--json") { Description = "Print JSON instead of text.", Recursive = true };

    /// <summary>The content folder.</summary>
    internal static readonly Option<string> ContentFolder = new("--content")
    {
        Description = "The content folder.",
        Recursive = true,
        DefaultValueFactory = _ => Environment.GetEnvironmentVariable("MOMENTARM_CONTENT") ?? "content",
    };

    /// <summary>Understands and runs one command line.</summary>
    /// <returns>0 done, 1 the input has faults, 2 the command is not understood.</returns>
    internal static async Task<int> RunAsync(IReadOnlyList<string> args, TextWriter standard, TextWriter error)
    {
        // Numbers are typed with a point whatever the machine's language.
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
        var parse = Build().Parse(args);
        if (parse.Action is not ParseErrorAction)
            return await parse.InvokeAsync(new InvocationConfiguration { Output = standard, Error = error });
        var output = new Output(parse.GetValue(Json), standard, error);
        output.Faults([.. parse.Errors.Select(e => Plain(e.Message)), $"Try: momentarm {Words(parse.CommandResult)}--help"]);
        return 2;
    }

    /// <summary>The command's words with a blank after each: "exercise draw ".</summary>
    private static string Words(SymbolResult? result) =>
        result is CommandResult { Command: not RootCommand and var command } ? $"{Words(result.Parent)}{command.Name} " : "";

    private static string Plain(string message)
    {
        var type = message.IndexOf(" as expected type", StringComparison.Ordinal);
        return type < 0 ? message : message[..type] + ": it is not of the kind that is asked for.";
    }

    internal static RootCommand Build()
    {
        var root = new RootCommand(
            "MomentArm on the command line: draws and loads exercises, reads a case file from findings to handout, "
            + "checks content, backs up and restores.\n\nExamples:\n"
            + "  momentarm exercise list\n"
            + "  momentarm exercise draw clam --side left --out clam.svg\n"
            + "  momentarm exercise load side-lying-leg-raise --sex female --stature 168 --mass 64\n"
            + "  momentarm exercise reach --rank hamstrings\n"
            + "  momentarm exercise solve-load --id seated-knee-extension --group knee-extensors --share 65\n"
            + "  momentarm measures show knee-flexion-range\n"
            + "  momentarm case program my-case.json --handout handout.html\n"
            + "  momentarm hypotheses content/demo/outer-knee-runner.json\n"
            + "  momentarm rules apply ottawa-knee age=55 days=1 unfit=no\n"
            + "  momentarm body check\n"
            + "  momentarm content check\n"
            + "  momentarm content schemas\n"
            + "  momentarm backup data/demo/clinic.db clinic-backup.zip\n\n"
            + "Exit codes: 0 done, 1 the input has faults (each is printed), 2 the command is not understood.");
        root.Options.Add(Json);
        root.Options.Add(ContentFolder);
        root.Subcommands.Add(ContentCommands.Build());
        root.Subcommands.Add(ExerciseCommands.Build());
        root.Subcommands.Add(MeasureCommands.Build());
        root.Subcommands.Add(CaseCommands.Build());
        root.Subcommands.Add(HypothesesCommand.Build());
        root.Subcommands.Add(RuleCommands.Build());
        root.Subcommands.Add(BodyCommands.Build());
        root.Subcommands.Add(BackupCommands.Backup());
        root.Subcommands.Add(BackupCommands.Restore());
        return root;
    }
}
