using System.Globalization;
using System.Text;
using MomentArm.Exam;

namespace MomentArm.Cli;

/// <summary>A measure as text: how it is taken, how far it can be trusted, what people reach.</summary>
internal static class MeasureText
{
    internal static string Of(Measure measure, IReadOnlyList<Norm> norms)
    {
        var text = new StringBuilder();
        Line($"{measure.Name} ({measure.Id})");
        Line($"Typed as: {string.Join(", ", measure.Aliases)}");
        Line($"Unit: {measure.Shown.Word}; {(measure.Sided ? "each side" : "no side")}; {ExerciseCommands.Spaced(measure.Direction.ToString())}; {(measure.TrialRule == TrialRule.Best ? "the best trial counts" : "trials are averaged")}");
        if (measure.Convention is { } convention)
            Line(convention);
        Line("");
        for (var i = 0; i < measure.Method.Steps.Length; i++)
            Line($"{i + 1}. {measure.Method.Steps[i]}");
        Add("Held still", measure.Method.Stabilization);
        Add("Placed", measure.Method.Placement);
        Add("Technique", measure.Method.Technique);
        Add("Without a device", measure.Method.WithoutDevice);
        Add("Terms", measure.Questionnaire?.Terms);
        foreach (var caution in measure.Cautions)
            Add("Caution", caution);
        Line("");
        foreach (var error in measure.Error is null ? [] : measure.OtherErrors.Insert(0, measure.Error))
            Line($"Error: {Form(measure, error)}; {error.Population} [{error.Source}]");
        if (measure.Error is null)
            Line("Error: none published; the default limit is used.");
        if (measure.Mcid is { } mcid)
            Line($"Change that matters: {Needed(measure, mcid)}; {mcid.Population} [{mcid.Source}]");
        foreach (var norm in norms)
            Line($"Norm: {NormLine(measure, norm)}");
        return text.ToString().TrimEnd();

        void Line(string line) => text.AppendLine(line);
        void Add(string head, string? what)
        {
            if (what is not null)
                Line($"{head}: {what}");
        }
    }

    private static string Form(Measure measure, MeasurementError error) => error.Form switch
    {
        ErrorForm.Sem => $"SEM {Say.Difference(measure, error.Value)}, MDC95 {Say.Difference(measure, ErrorMath.Mdc95(error.Value))}",
        ErrorForm.RelativeSem => $"SEM {Say.Percent(error.Value)} of the value",
        ErrorForm.PrintedMdc => $"detectable change {Say.Difference(measure, error.Value)} as printed{Level(error)}",
        ErrorForm.RelativePrintedMdc => $"detectable change {Say.Percent(error.Value)} of the value as printed{Level(error)}",
    };

    private static string Level(MeasurementError error) =>
        error.Level is { } level ? string.Create(CultureInfo.InvariantCulture, $" at {level} %") : ", level not stated";

    private static string Needed(Measure measure, McidRule rule) => rule.Form switch
    {
        McidForm.Fixed => Say.Difference(measure, rule.Value),
        McidForm.Fraction => Say.Percent(rule.Value) + " of the first value",
        McidForm.ByBaseline => string.Join(", ", rule.Bands.Select(b => $"{Say.Difference(measure, b.Change)} from {Say.InShownUnit(measure, b.From)}")),
    };

    private static string NormLine(Measure measure, Norm norm)
    {
        var scale = norm.Unit == NormUnit.Measure ? measure.Shown.StoredPerShown : 1;
        var parts = new List<string>();
        Add(norm.IsMedian ? "median" : "mean", norm.Mean);
        Add("SD", norm.Sd);
        Add("middle half from", norm.Quarter);
        Add("to", norm.ThreeQuarters);
        Add("limit", norm.Limit);
        var ages = string.Create(CultureInfo.InvariantCulture, $"{norm.AgeFrom}{(norm.AgeTo is { } to ? $"-{to}" : "+")}");
        var sex = norm.Sex?.ToString().ToLowerInvariant() ?? "both";
        var unit = norm.Unit == NormUnit.Measure ? measure.Shown.Word : ExerciseCommands.Spaced(norm.Unit.ToString());
        return $"{sex} {ages}: {string.Join(" ", parts)} {unit}; {norm.Population} [{norm.Source}{(norm.Verified ? "" : ", not verified")}; {(norm.Use == NormUse.Grade ? "may grade" : "beside")}]";

        void Add(string word, double? value)
        {
            if (value is { } number)
                parts.Add($"{word} {Say.Number(number / scale, 2)}");
        }
    }
}
