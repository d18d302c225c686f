using System.CommandLine;
using MomentArm.Content;
using MomentArm.Documents;
using MomentArm.Prescribing;

namespace MomentArm.Cli;

/// <summary>case interpret and case program.</summary>
internal static class CaseCommands
{
    private static readonly Argument<string> CasePath = new("file") { Description = "The case file (JSON; schema: content/schemas/case.schema.json)." };

    internal static Command Build() => new("case", "A whole case from one file, without the web.\nExample: momentarm case program content/demo/outer-hip.json") { Interpret(), Program() };

    private static Command Interpret()
    {
        var interpret = new Command("interpret", "Says what the measurements of a case file mean.\nExample: momentarm case interpret content/demo/outer-hip.json") { CasePath };
        interpret.SetAction(parse => Run(parse, (output, _, input, reading) =>
        {
            output.Write(CaseText.InterpretData(input, reading), CaseText.Interpret(input, reading));
            return 0;
        }));
        return interpret;
    }

    private static Command Program()
    {
        var handout = new Option<string?>("--handout") { Description = "Also writes the handout (HTML) to this file." };
        var program = new Command("program", "Prints findings, program and load shares of a case file.\nExample: momentarm case program content/demo/outer-hip.json --handout handout.html") { CasePath, handout };
        program.SetAction(parse => Run(parse, (output, library, input, reading) =>
        {
            var made = CaseProgram.Make(library, input, reading);
            var path = parse.GetValue(handout);
            if (path is not null && Refusal(input, made) is { } refusal)
            {
                output.Before(CaseText.Program(library, input, reading, made));
                return output.Faults([refusal]);
            }

            if (path is not null && Write(output, path, Page(library, input, reading, made)) is not 0 and var code)
                return code;
            output.Write(
                CaseText.ProgramData(input, reading, made, path),
                CaseText.Program(library, input, reading, made) + (path is null ? "" : $"{Environment.NewLine}Wrote {path}"));
            return 0;
        }));
        return program;
    }

    private static string? Refusal(CaseInput input, CaseProgram made) =>
        made.Stopped ? string.Join(" ", input.Gate.WhatToDo.Prepend(input.Gate.Headline).Append("No handout was written."))
        : made.Program.Items.IsEmpty ? "The program has no exercise, so no handout was written. Name some under \"exercises\" in the case file."
        : null;

    private static string Page(ContentLibrary library, CaseInput input, CaseReading reading, CaseProgram made) => Handout.Page(new HandoutInput
    {
        Program = made.Program,
        Area = input.Title ?? "exercises",
        Exercise = library.Exercise,
        Words = id => library.Words("en", id),
        Phrases = library.PatientWords,
        Model = reading.Loads.Model,
        Points = library.Body.Points,
        Day = DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime),
    });

    private static int Run(ParseResult parse, Func<Output, ContentLibrary, CaseInput, CaseReading, int> act)
    {
        var output = Output.For(parse);
        if (output.Library(parse) is not { } library)
            return 1;
        var (input, faults) = CaseFileReader.ReadFile(parse.GetValue(CasePath)!, library);
        return input is null
            ? output.Faults(faults.Select(f => f.ToString()), faults)
            : act(output, library, input, CaseReading.Of(library.Basis, input.Facts));
    }

    internal static int Write(Output output, string path, string text)
    {
        try
        {
            File.WriteAllText(path, text);
            return 0;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return output.Faults([$"{path} cannot be written: {error.Message}"]);
        }
    }
}
