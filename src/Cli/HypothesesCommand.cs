using System.CommandLine;
using MomentArm.Content;
using MomentArm.Prescribing;

namespace MomentArm.Cli;

/// <summary>hypotheses FILE: working hypotheses of a case file, with the way to each probability.</summary>
internal static class HypothesesCommand
{
    internal static Command Build()
    {
        var path = new Argument<string>("file") { Description = "The case file (JSON; schema: content/schemas/case.schema.json; tests and answers stand under \"reasoning\")." };
        var command = new Command(
            "hypotheses",
            "Ranks working hypotheses of a case file: what speaks for and against each, the probability with every step, and what to test next. "
            + "It supports and never replaces your judgment.\nExample: momentarm hypotheses content/demo/outer-knee-runner.json") { path };
        command.SetAction(parse =>
        {
            var output = Output.For(parse);
            if (output.Library(parse) is not { } library)
                return 1;
            var (input, faults) = CaseFileReader.ReadFile(parse.GetValue(path)!, library);
            if (input is null)
                return output.Faults(faults.Select(f => f.ToString()), faults);
            var made = CaseHypotheses.Of(library.Exam.Reasoning, input, CaseReading.Of(library.Basis, input.Facts));
            output.Write(HypothesesText.Data(library, input, made), HypothesesText.Text(library, input, made));
            return 0;
        });
        return command;
    }
}
