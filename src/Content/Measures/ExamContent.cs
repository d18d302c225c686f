using System.Collections.Immutable;
using MomentArm.Exam;

namespace MomentArm.Content;

/// <summary>What the exam is made of: measures, norms, danger signs and decision rules. Immutable and shareable.</summary>
/// <param name="Measures">Measures in the order of an exam.</param>
/// <param name="Norms">Norm rows.</param>
/// <param name="DangerSigns">Danger signs in the order asked.</param>
public sealed record ExamContent(
    ImmutableArray<Measure> Measures, ImmutableArray<Norm> Norms, ImmutableArray<DangerSign> DangerSigns)
{
    /// <summary>Equations that predict a value.</summary>
    public ImmutableArray<Prediction> Predictions { get; init; } = [];

    /// <summary>Published decision rules, ordered by id.</summary>
    public ImmutableArray<DecisionRule> Rules { get; init; } = [];

    /// <summary>A decision rule by id; null when there is none.</summary>
    public DecisionRule? Rule(string id) => Rules.FirstOrDefault(r => r.Id == id);

    /// <summary>Codes that a note may carry.</summary>
    public ImmutableArray<RecordCode> Codes { get; init; } = [];

    /// <summary>Working hypotheses, their questions and tests, and the yellow flags.</summary>
    public ReasoningBasis Reasoning { get; init; } = ReasoningBasis.Empty;

    /// <summary>Published courses of complaints.</summary>
    public ImmutableArray<Course> Courses { get; init; } = [];

    /// <summary>A measure by id; null when there is none.</summary>
    public Measure? Measure(string id) => Measures.FirstOrDefault(m => m.Id == id);

    /// <summary>Reads measures/, norms/, danger-signs/ and rules/ of a content folder; adds every fault to the list.</summary>
    /// <param name="folder">The content folder.</param>
    /// <param name="sources">Known source keys.</param>
    /// <param name="faults">Gathers the faults.</param>
    /// <returns>What could be read; use it only when no fault was added.</returns>
    public static ExamContent Read(string folder, ISet<string> sources, FaultList faults)
    {
        var measures = new MeasureReader(sources, faults).ReadAll(folder);
        var byId = measures.DistinctBy(m => m.Id).ToDictionary(m => m.Id);
        var norms = new NormReader(byId, sources, faults).ReadAll(folder);
        var rules = new RuleReader(sources, faults).ReadAll(folder);
        var signs = DangerSignReader.ReadAll(folder, sources, faults);
        if (measures.Count == 0)
            faults.Add("measures", null, "", "There is no measure.", "Give at least one file.");
        if (signs.Count == 0)
            faults.Add(
                "danger-signs", null, "", "There is no danger sign.",
                "Without a screen nothing may be prescribed: give at least one file.");
        return new ExamContent([.. measures], [.. norms], [.. signs])
        {
            Codes = [.. CodeReader.ReadAll(folder, faults)],
            Courses = [.. CourseReader.ReadAll(folder, sources, faults)],
            Predictions = [.. PredictionReader.ReadAll(folder, byId, sources, faults)],
            Rules = [.. rules],
        };
    }

    /// <summary>This content with the working hypotheses of patterns/ read against its measures; adds every fault to the list.</summary>
    /// <param name="folder">The content folder.</param>
    /// <param name="sources">Known sources.</param>
    /// <param name="faults">Gathers the faults.</param>
    /// <returns>The content with its reasoning.</returns>
    public ExamContent WithReasoning(string folder, IReadOnlyDictionary<string, Source> sources, FaultList faults) =>
        this with { Reasoning = new ReasoningReader(sources, Measures.DistinctBy(m => m.Id).ToDictionary(m => m.Id), faults).ReadAll(folder) };

    /// <summary>Reads the exam part of a content folder alone.</summary>
    /// <param name="folder">The content folder.</param>
    /// <returns>The content.</returns>
    /// <exception cref="ContentException">Anything is wrong; every fault is listed.</exception>
    public static ExamContent Read(string folder)
    {
        var faults = new FaultList();
        var sources = StrictJson.ReadFile<Dictionary<string, Source>>(Path.Combine(folder, "sources.json"), "sources.json", faults) ?? [];
        var content = Read(folder, sources.Keys.ToHashSet(), faults).WithReasoning(folder, sources, faults);
        faults.ThrowIfAny();
        return content;
    }
}
