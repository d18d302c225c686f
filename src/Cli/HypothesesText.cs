using System.Globalization;
using System.Text;
using MomentArm.Content;
using MomentArm.Exam;

namespace MomentArm.Cli;

/// <summary>Working hypotheses as text and as data for JSON; both say the same.</summary>
internal static class HypothesesText
{
    private const int NextShown = 6;

    internal static string Text(ContentLibrary library, CaseInput input, CaseHypotheses made)
    {
        var text = new StringBuilder();
        if (input.Title is { } title)
            text.AppendLine(title);
        text.AppendLine("Danger signs: " + input.Gate.Headline);
        foreach (var line in input.Gate.WhatToDo)
            text.AppendLine("  " + line);
        text.AppendLine().AppendLine("Working hypotheses (they may fit; none is a diagnosis)");
        var told = made.Ranked.Where(h => h.Fit is PatternFit.Fits or PatternFit.Partly).ToArray();
        if (told.Length == 0)
            text.AppendLine("  Nothing that was told speaks for any of them yet.");
        for (var i = 0; i < told.Length; i++)
            One(text, library, told[i], i + 1);
        Others(text, made, PatternFit.Against, "Spoken against");
        Others(text, made, PatternFit.NotAsked, "Not asked about");
        Next(text, made);
        text.AppendLine("Yellow flags: " + made.Yellow.Sentence);
        foreach (var flag in made.Yellow.Present)
            text.AppendLine(CultureInfo.InvariantCulture, $"  {flag.About}: {flag.WhenYes}");
        if (made.Irritability is { } irritability)
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"Irritability, proposed: {irritability.Grade.Grade?.ToString().ToLowerInvariant() ?? "not graded"} ({string.Join("; ", irritability.Grade.Reasons)})");
            foreach (var permit in irritability.Permits)
                text.AppendLine("  " + permit);
        }
        foreach (var question in input.Questions)
            text.AppendLine("Question: " + question);
        return text.Append(CaseText.Caution).ToString();
    }

    internal static object Data(ContentLibrary library, CaseInput input, CaseHypotheses made) => new
    {
        gate = new { input.Gate.State, input.Gate.PrescribingStopped, input.Gate.Headline, input.Gate.WhatToDo },
        hypotheses = made.Ranked.Select((h, i) => new
        {
            rank = i + 1,
            h.Pattern.Id,
            h.Pattern.Name,
            h.Fit,
            probability = h.Probability is { } p ? new { p.Value, p.Low, p.High, p.Band, p.TotalRatio, p.Capped } : null,
            prior = h.Prior,
            steps = h.Probability?.Steps.Select(s => new
            {
                test = s.Reading.Test.Id,
                result = s.Reading.ResultWords,
                figure = s.Reading.Ratio?.Figure.Id,
                ratio = s.Reading.Ratio?.Used,
                intervalOrigin = s.Reading.Ratio?.Origin,
                s.Weight,
                s.After,
                s.Why,
                source = s.Reading.Ratio is { } ratio ? SourceText(library, ratio.Figure.Source) : null,
                confirmation = s.Reading.Ratio?.Figure.Confirmation,
                setting = s.Reading.Ratio?.Figure.Setting,
            }),
            h.InWords,
            h.Supporting,
            h.Opposing,
            h.Missing,
            h.NotKnown,
            h.Pattern.ThinkOf,
            h.Pattern.Caution,
            h.Pattern.Course,
            courseSource = SourceText(library, h.Pattern.CourseSource),
        }),
        next = made.Next.Select(n => new { test = n.Test.Id, n.Test.Name, n.Bits, n.Promises, n.Test.Minutes, n.Test.Burden, n.Test.Caution, n.Why }),
        yellowFlags = new { made.Yellow.Sentence, present = made.Yellow.Present.Select(f => f.Id), unasked = made.Yellow.Unasked.Select(f => f.Id) },
        irritability = made.Irritability,
        questions = input.Questions,
        caution = CaseText.Caution,
    };

    private static void One(StringBuilder text, ContentLibrary library, Hypothesis hypothesis, int rank)
    {
        var chance = hypothesis.Probability is { } p
            ? $"{Say.Percent(p.Value)}{(p.Low < p.High ? $" ({Say.Percent(p.Low)} to {Say.Percent(p.High)})" : "")}, {CaseText.Words(p.Band)}"
            : "no probability";
        text.AppendLine(CultureInfo.InvariantCulture, $"  {rank}. {hypothesis.Pattern.Name}: {(hypothesis.Fit == PatternFit.Fits ? "may fit" : "fits in part")}; {chance}");
        Lines(text, "for", hypothesis.Supporting);
        Lines(text, "against", hypothesis.Opposing);
        Lines(text, "missing", hypothesis.Missing);
        foreach (var line in hypothesis.InWords.Concat(hypothesis.NotKnown))
            text.AppendLine("     " + line);
        if (hypothesis.Pattern.Caution is { } caution)
            text.AppendLine("     Mind: " + caution);
        text.AppendLine("     Think of: " + string.Join("; ", hypothesis.Pattern.ThinkOf));
        text.AppendLine(CultureInfo.InvariantCulture, $"     Course: {hypothesis.Pattern.Course} ({SourceText(library, hypothesis.Pattern.CourseSource)})");
        foreach (var source in (hypothesis.Probability?.Steps ?? []).Where(s => s.Weight > 0).Select(s => s.Reading.Ratio!.Figure).DistinctBy(f => f.Id))
            text.AppendLine(CultureInfo.InvariantCulture, $"     Source of the ratio: {SourceText(library, source.Source)} ({source.Confirmation}).");
    }

    private static void Lines(StringBuilder text, string what, IReadOnlyList<PatternLine> lines)
    {
        if (lines.Count > 0)
            text.AppendLine(CultureInfo.InvariantCulture, $"     {what}: {string.Join("; ", lines.Select(l => l.Says))}");
    }

    private static void Others(StringBuilder text, CaseHypotheses made, PatternFit fit, string what)
    {
        var names = made.Ranked.Where(h => h.Fit == fit).Select(h => h.Pattern.Name).ToArray();
        if (names.Length > 0)
            text.AppendLine(CultureInfo.InvariantCulture, $"  {what}: {string.Join(", ", names)}.");
    }

    private static void Next(StringBuilder text, CaseHypotheses made)
    {
        text.AppendLine().AppendLine("What to test next");
        var telling = made.Next.Where(n => n.Bits >= 0.0005).Take(NextShown).ToArray();
        if (telling.Length == 0)
            text.AppendLine("  No remaining test with known accuracy would move a hypothesis that has a starting value.");
        foreach (var next in telling)
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"  {next.Test.Name}: {Say.Number(next.Bits!.Value, 2)} bits expected. {next.Why}");
            if (next.Test.Caution is { } caution)
                text.AppendLine("    " + caution);
        }
        text.AppendLine();
    }

    private static string SourceText(ContentLibrary library, string key) =>
        library.Sources.TryGetValue(key, out var source) ? source.Text : key;
}
