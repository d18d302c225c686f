using System.CommandLine;
using System.Text.Json;
using MomentArm.Content;

namespace MomentArm.Cli;

/// <summary>Prints either text or JSON, the same facts in both.</summary>
internal sealed class Output(bool json, TextWriter standard, TextWriter error)
{
    internal static Output For(ParseResult parse) =>
        new(parse.GetValue(CommandLine.Json), parse.InvocationConfiguration.Output, parse.InvocationConfiguration.Error);

    /// <summary>Prints a result.</summary>
    internal void Write(object data, string text) =>
        standard.WriteLine(json ? JsonSerializer.Serialize(data, StrictJson.Options) : text);

    /// <summary>Prints text that comes before a fault; JSON holds one document only, the fault.</summary>
    internal void Before(string text)
    {
        if (!json)
            standard.WriteLine(text);
    }

    /// <summary>Prints faults; gives the exit code.</summary>
    internal int Faults(IEnumerable<string> sentences, object? data = null)
    {
        var list = sentences.ToArray();
        if (json)
            standard.WriteLine(JsonSerializer.Serialize(new { faults = data ?? list }, StrictJson.Options));
        else
            foreach (var sentence in list)
                error.WriteLine(sentence);
        return 1;
    }

    /// <summary>Reads the content, or prints its faults and gives null.</summary>
    internal ContentLibrary? Library(ParseResult parse)
    {
        var (library, faults) = ContentLibrary.TryRead(parse.GetValue(CommandLine.ContentFolder)!, settle: false);
        if (library is null)
            Faults(faults.Select(f => f.ToString()), faults);
        return library;
    }
}
