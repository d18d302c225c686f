using System.CommandLine;
using MomentArm.Content;

namespace MomentArm.Cli;

/// <summary>content check.</summary>
internal static class ContentCommands
{
    internal static Command Build()
    {
        var check = new Command("check", "Reads all content and prints every fault with file, line, place and how to mend it.");
        check.SetAction(parse =>
        {
            var output = Output.For(parse);
            var folder = parse.GetValue(CommandLine.ContentFolder)!;
            var (library, faults) = ContentLibrary.TryRead(folder);
            if (library is null)
                return output.Faults(faults.Select(f => f.ToString()), faults);
            output.Write(
                new { library.Version, exercises = library.Exercises.Count, faults = 0 },
                $"Content {library.Version}: {library.Exercises.Count} exercises, no faults.");
            return 0;
        });
        return new Command("content", "The content a clinician may read and edit.") { check };
    }
}
