using System.CommandLine;
using MomentArm.Content;

namespace MomentArm.Cli;

/// <summary>content check and content schemas.</summary>
internal static class ContentCommands
{
    internal static Command Build() => new("content", "The content a clinician may read and edit.\nExample: momentarm content check")
    {
        Check(), SchemaFiles(),
    };

    private static Command Check()
    {
        var check = new Command("check", "Reads all content and prints every fault with file, line, place and how to mend it.\nExample: momentarm content check --content my-content");
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
        return check;
    }

    private static Command SchemaFiles()
    {
        var write = new Option<bool>("--write") { Description = "Write them; without it, say which differ." };
        var schemas = new Command("schemas", "Compares the JSON schemas in content/schemas with the program's own, or writes them.\nExample: momentarm content schemas --write") { write };
        schemas.SetAction(parse =>
        {
            var output = Output.For(parse);
            var folder = parse.GetValue(CommandLine.ContentFolder)!;
            if (!Directory.Exists(folder))
                return output.Faults([$"The content folder {folder} does not exist."]);
            try
            {
                var differing = Schemas.Differing(folder);
                if (!parse.GetValue(write) && differing.Count > 0)
                    return output.Faults(differing.Select(name => $"schemas/{name} is missing or differs. Write it: momentarm content schemas --write"));
                if (parse.GetValue(write))
                    Schemas.Write(folder);
                output.Write(
                    new { schemas = Schemas.All().Select(s => s.Name), written = parse.GetValue(write) ? differing : [] },
                    differing.Count == 0 ? "Every schema is as it should be." : $"Wrote {string.Join(", ", differing)}.");
                return 0;
            }
            catch (Exception error) when (error is IOException or UnauthorizedAccessException)
            {
                return output.Faults([error.Message]);
            }
        });
        return schemas;
    }
}
