using System.CommandLine;

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

    internal static RootCommand Build()
    {
        var root = new RootCommand(
            "MomentArm on the command line: draws and loads exercises, reads a case file from findings to handout, "
            + "checks content, backs up and restores.\n\nExamples:\n"
            + "  momentarm exercise list\n"
            + "  momentarm exercise draw clam --side left --out clam.svg\n"
            + "  momentarm exercise load side-lying-leg-raise --sex female --stature 168 --mass 64\n"
            + "  momentarm case program my-case.json --handout handout.html\n"
            + "  momentarm content check\n"
            + "  momentarm backup data/demo/clinic.db clinic-backup.zip\n\n"
            + "Exit codes: 0 done, 1 the input has faults (each is printed), 2 the command is not understood.");
        root.Options.Add(Json);
        root.Options.Add(ContentFolder);
        root.Subcommands.Add(ContentCommands.Build());
        root.Subcommands.Add(ExerciseCommands.Build());
        root.Subcommands.Add(CaseCommands.Build());
        root.Subcommands.Add(BackupCommands.Backup());
        root.Subcommands.Add(BackupCommands.Restore());
        return root;
    }
}
