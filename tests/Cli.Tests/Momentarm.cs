using System.Text.Json;
using MomentArm.Content;

namespace MomentArm.Cli.Tests;

/// <summary>What one command line printed and its exit code.</summary>
internal sealed record Ran(int Code, string Out, string Error)
{
    public JsonElement Json => JsonDocument.Parse(Out).RootElement;
}

/// <summary>Runs the command line in this process, against the shipped content unless another folder is named.</summary>
internal static class Momentarm
{
    public static string Root { get; } = FindRoot();

    public static string ContentFolder { get; } = Path.Combine(Root, "content");

    public static string DemoCase { get; } = Path.Combine(ContentFolder, "demo", "outer-hip.json");

    public static string DemoPose { get; } = Path.Combine(ContentFolder, "demo", "single-leg-squat.json");

    public static ContentLibrary Library { get; } = ContentLibrary.Read(ContentFolder);

    public static async Task<Ran> RunAsync(params string[] args)
    {
        await using var standard = new StringWriter();
        await using var error = new StringWriter();
        string[] whole = args.Contains("--content") ? args : [.. args, "--content", ContentFolder];
        var code = await CommandLine.RunAsync(whole, standard, error);
        return new Ran(code, standard.ToString(), error.ToString());
    }

    private static string FindRoot()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, "MomentArm.slnx")))
                return at.FullName;
        }

        throw new InvalidOperationException("No folder above holds MomentArm.slnx.");
    }
}
