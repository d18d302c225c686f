using System.Collections.Immutable;
using MomentArm.Exam;

namespace MomentArm.Content;

/// <summary>Reads content/patterns: hypotheses, questions, tests and yellow flags; every fault is told at once.</summary>
internal sealed class ReasoningReader(IReadOnlyDictionary<string, Source> sources, IReadOnlyDictionary<string, Measure> measures, FaultList faults)
{
    private const int Groups = 22;

    private readonly Dictionary<string, string> files = [];
    private string file = "";

    /// <summary>Reads everything; a content without the folder has no hypotheses.</summary>
    internal ReasoningBasis ReadAll(string contentFolder)
    {
        var folder = Path.Combine(contentFolder, "patterns");
        if (!Directory.Exists(folder))
            return ReasoningBasis.Empty;
        var questions = Read<PatternQuestionsFile>(Path.Combine(folder, "questions", "questions.json"), "patterns/questions/questions.json")?.Questions ?? [];
        var flags = Read<YellowFlagsFile>(Path.Combine(folder, "questions", "yellow-flags.json"), "patterns/questions/yellow-flags.json")?.Flags ?? [];
        var tests = StrictJson.FilesIn(Path.Combine(folder, "tests"), ".json").SelectMany(ReadTests).ToArray();
        var patterns = StrictJson.FilesIn(folder, ".json").Select(ReadPattern).OfType<Pattern>().ToArray();
        var basis = new ReasoningBasis([.. patterns.OrderBy(p => p.Group).ThenBy(p => p.Id, StringComparer.Ordinal)], [.. questions], [.. tests], [.. flags]);
        CheckQuestions(basis);
        CheckFlags(basis);
        new TestChecks(basis, sources, Fault).Check(files);
        foreach (var pattern in patterns)
            CheckPattern(pattern, basis);
        return basis;
    }

    private T? Read<T>(string path, string shown)
        where T : class => StrictJson.ReadFile<T>(path, shown, faults);

    private IReadOnlyList<ClinicalTest> ReadTests(string path)
    {
        var shown = "patterns/tests/" + Path.GetFileName(path);
        var tests = Read<ClinicalTestsFile>(path, shown)?.Tests ?? [];
        foreach (var test in tests)
            files.TryAdd(test.Id, shown);
        return tests;
    }

    private Pattern? ReadPattern(string path)
    {
        var shown = "patterns/" + Path.GetFileName(path);
        var pattern = Read<PatternFile>(path, shown)?.Pattern;
        if (pattern is not null && pattern.Id != Path.GetFileNameWithoutExtension(path))
            Fault(shown, "pattern.id", $"The id \"{pattern.Id}\" differs from the file name.", "Give both the same name.");
        return pattern;
    }

    private void CheckQuestions(ReasoningBasis basis)
    {
        file = "patterns/questions/questions.json";
        foreach (var twice in Twice(basis.Questions.Select(q => q.Id).Concat(basis.Tests.Select(t => t.Id))))
            Fault(file, "questions", $"The id \"{twice}\" is used twice among questions and tests.", "Give each its own id.");
        for (var i = 0; i < basis.Questions.Length; i++)
        {
            var (question, place) = (basis.Questions[i], $"questions[{i}]");
            if (Blank(question.Id, question.Question, question.Says))
                Fault(file, place, "A text is empty.", "Fill id, question and says.");
            if (question.AgeFrom > question.AgeTo)
                Fault(file, place + ".ageFrom", "The ages are not in order.", "Put the younger age first.");
            foreach (var found in question.Findings.Where(f => !KnownFinding(f)))
                Fault(file, place + ".findings", $"\"{found}\" names no finding.", "Write a measure and a kind of lack, such as hip-abduction-strength:weak.");
        }
    }

    private bool KnownFinding(string text) => text.Split(':') is [var measure, var kind]
        && measures.ContainsKey(measure) && Enum.TryParse<ImpairmentKind>(kind, ignoreCase: true, out _);

    private void CheckFlags(ReasoningBasis basis)
    {
        file = "patterns/questions/yellow-flags.json";
        foreach (var twice in Twice(basis.YellowFlags.Select(f => f.Id)))
            Fault(file, "flags", $"The id \"{twice}\" is used twice.", "Give each its own id.");
        for (var i = 0; i < basis.YellowFlags.Length; i++)
        {
            var (flag, place) = (basis.YellowFlags[i], $"flags[{i}]");
            if (Blank(flag.Id, flag.Question, flag.About, flag.WhenYes))
                Fault(file, place, "A text is empty.", "Fill id, question, about and whenYes.");
            CheckSource(place + ".source", flag.Source);
        }
    }

    private void CheckPattern(Pattern pattern, ReasoningBasis basis)
    {
        file = $"patterns/{pattern.Id}.json";
        if (Blank(pattern.Name, pattern.Summary, pattern.Course))
            Fault(file, "pattern", "A text is empty.", "Fill name, summary and course.");
        if (pattern.Group is < 1 or > Groups)
            Fault(file, "pattern.group", $"There is no group {pattern.Group}.", $"Give 1 to {Groups}.");
        if (pattern.Regions.IsEmpty || pattern.Defining.IsEmpty || pattern.ThinkOf.IsEmpty)
            Fault(file, "pattern", "A part is missing.", "Give at least one region, one defining finding and one thing to think of.");
        string[] all = [.. pattern.Defining, .. pattern.Supporting, .. pattern.Opposing];
        foreach (var id in all.Concat(pattern.Priors.SelectMany(p => p.When)).Distinct().Where(id => basis.Question(id) is null && basis.Test(id) is null))
            Fault(file, "pattern", $"\"{id}\" is neither a question nor a test.", "Correct it, or add it to patterns/questions or patterns/tests.");
        foreach (var twice in Twice(all))
            Fault(file, "pattern", $"\"{twice}\" stands in it twice.", "A finding defines, supports or opposes.");
        CheckSource("pattern.source", pattern.Source);
        CheckSource("pattern.courseSource", pattern.CourseSource);
        for (var i = 0; i < pattern.Priors.Length; i++)
            CheckPrior(pattern.Priors[i], $"pattern.priors[{i}]");
    }

    private void CheckPrior(PatternPrior prior, string place)
    {
        if (string.IsNullOrWhiteSpace(prior.Population))
            Fault(file, place + ".population", "It does not say among whom it was counted.", "Say it.");
        if (prior.Value is not (> 0 and < 1))
            Fault(file, place + ".value", $"{Say.Number(prior.Value, 4)} is no probability.", "Give a share above 0 and below 1.");
        if (prior.Range is { } range && !(range.Low > 0 && range.Low <= prior.Value && prior.Value <= range.High && range.High < 1))
            Fault(file, place + ".range", "The range does not hold the value, or leaves 0 to 1.", "Correct it.");
        CheckSource(place + ".source", prior.Source);
        if (prior.Usable && sources.TryGetValue(prior.Source, out var source) && source.Confirmation == "from memory")
            Fault(file, place + ".usable", "A starting value from memory may not be used by itself.", "Write false; a clinician may take it over.");
    }

    private void CheckSource(string place, string key)
    {
        if (!sources.ContainsKey(key))
            Fault(file, place, $"The source \"{key}\" is not in sources.json.", "Add it there or correct the key.");
    }

    private static IEnumerable<string> Twice(IEnumerable<string> ids) =>
        ids.GroupBy(id => id, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => g.Key);

    private static bool Blank(params string[] texts) => texts.Any(string.IsNullOrWhiteSpace);

    private void Fault(string shown, string path, string what, string mend) => faults.Add(shown, null, path, what, mend);
}
