using System.Globalization;
using System.Text;
using MomentArm.Content;
using MomentArm.Exam;
using MomentArm.Prescribing;

namespace MomentArm.Cli;

/// <summary>A case as text and as data for JSON; both say the same.</summary>
internal static class CaseText
{
    internal const string Caution =
        "Estimates support, never replace, a licensed clinician's judgment and local rules.";

    internal static string Interpret(CaseInput input, CaseReading reading)
    {
        var text = new StringBuilder();
        Head(text, input);
        foreach (var found in reading.Interpretations)
        {
            text.AppendLine(found.Measure.Name);
            foreach (var statement in found.Statements)
                text.AppendLine("  " + statement.Text);
        }

        Findings(text, reading);
        Notes(text, input, reading);
        return text.Append(Caution).ToString();
    }

    internal static object InterpretData(CaseInput input, CaseReading reading) => new
    {
        gate = new { input.Gate.State, input.Gate.PrescribingStopped, input.Gate.Headline, input.Gate.WhatToDo },
        interpretations = reading.Interpretations.Select(i => new
        {
            measure = i.Measure.Id,
            readings = i.Readings.Select(r => new { r.Measurement.Side, r.Shown, r.TorqueNm, r.TorquePerKg, r.TotalTorqueNm, r.PainLimited }),
            statements = i.Statements.Select(s => new { s.Side, s.Text, s.Tone }),
        }),
        findings = reading.Findings,
        irritability = reading.Irritability,
        notes = reading.Notes,
        questions = input.Questions,
        wishes = input.Wishes,
    };

    internal static string Program(ContentLibrary library, CaseInput input, CaseReading reading, CaseProgram made)
    {
        var text = new StringBuilder();
        Head(text, input);
        Findings(text, reading);
        if (made.Stopped)
        {
            text.AppendLine("No program: " + input.Gate.Headline).AppendLine();
            Notes(text, input, reading);
            return text.Append(Caution).ToString();
        }

        text.AppendLine(CultureInfo.InvariantCulture, $"{(made.Drafted ? "Draft for the clinician to change" : "Program as chosen")}: {made.Program.Items.Length} exercises, {made.Minutes:0} min, {made.Program.DaysPerWeek} days a week");
        foreach (var item in made.Program.Items)
        {
            var exercise = library.Exercise(item.ExerciseId)!;
            var side = item.WorkingSide is { } s ? ", " + s.ToString().ToLowerInvariant() : "";
            text.AppendLine(CultureInfo.InvariantCulture, $"  {exercise.Name}{side}: {DoseText.ForClinician(item.Dose)}");
            if (item.LoadShare is { } share)
                text.AppendLine(CultureInfo.InvariantCulture, $"    load share, {Words(share.Action)}: {share.Middle * 100:0} % ({share.Low * 100:0}-{share.High * 100:0} %)");
        }

        foreach (var hint in made.Hints)
            text.AppendLine("  Hint: " + hint);
        text.AppendLine().AppendLine("Not chosen, and why");
        foreach (var candidate in made.Candidates.Where(c => made.Program.Items.All(i => i.ExerciseId != c.Exercise.Id)))
            text.AppendLine(CultureInfo.InvariantCulture, $"  {candidate.Exercise.Name}: {string.Join(" ", candidate.Obstacles.Concat(candidate.Reasons).DefaultIfEmpty("acts on none of the findings."))}");
        text.AppendLine();
        Notes(text, input, reading);
        return text.Append(Caution).ToString();
    }

    internal static object ProgramData(CaseInput input, CaseReading reading, CaseProgram made, string? handout) => new
    {
        gate = new { input.Gate.State, input.Gate.PrescribingStopped, input.Gate.Headline, input.Gate.WhatToDo },
        findings = reading.Findings,
        window = reading.Irritability.Window,
        drafted = made.Drafted,
        program = made.Stopped ? null : made.Program,
        minutes = made.Stopped ? (double?)null : made.Minutes,
        hints = made.Stopped ? [] : made.Hints,
        candidates = made.Stopped ? [] : made.Candidates.Select(c => new
        {
            c.Exercise.Id, c.Side, c.Fit, c.Relevance, c.Findings, c.Reasons, c.Obstacles,
            share = c.Main is { } m ? new { m.Action, m.Low, m.Middle, m.High } : null,
        }),
        notes = reading.Notes,
        questions = input.Questions,
        handout,
    };

    /// <summary>The trade words of a joint action or side: "hip abduction".</summary>
    internal static string Words(Enum value) =>
        string.Concat(value.ToString().Select((letter, i) => char.IsUpper(letter) ? (i > 0 ? " " : "") + char.ToLowerInvariant(letter) : letter.ToString()));

    private static void Head(StringBuilder text, CaseInput input)
    {
        if (input.Title is { } title)
            text.AppendLine(title);
        text.AppendLine("Danger signs: " + input.Gate.Headline);
        foreach (var line in input.Gate.WhatToDo)
            text.AppendLine("  " + line);
        foreach (var wish in input.Wishes)
            text.AppendLine("Wish: " + wish);
        text.AppendLine();
    }

    private static void Findings(StringBuilder text, CaseReading reading)
    {
        text.AppendLine("Findings");
        foreach (var finding in reading.Findings)
            text.AppendLine("  " + finding.Headline).AppendLine("    " + finding.Detail);
        if (reading.Findings.IsEmpty)
            text.AppendLine("  none beyond measurement error");
        var window = reading.Irritability.Window;
        text.AppendLine(CultureInfo.InvariantCulture, $"Irritability: {reading.Irritability.Grade?.ToString().ToLowerInvariant() ?? "not graded"}; load window {window.Low * 100:0}-{window.High * 100:0} %").AppendLine();
    }

    private static void Notes(StringBuilder text, CaseInput input, CaseReading reading)
    {
        foreach (var question in input.Questions)
            text.AppendLine("Question: " + question);
        foreach (var note in reading.Notes)
            text.AppendLine("Note: " + note);
    }
}
