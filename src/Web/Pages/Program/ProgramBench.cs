using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Prescribing;
using MomentArm.Web.Clinic;

namespace MomentArm.Web.Pages.Program;

/// <summary>The bench on which a program is built: the plan, what it asks of this patient, and what could be added.</summary>
public sealed class ProgramBench
{
    private readonly PatientCase patientCase;
    private readonly CaseDesk desk;
    private readonly Stack<Plan> before = new();
    private readonly Dictionary<(string, Side, double), MovementLoad> loads = [];
    private ImmutableArray<Candidate>? candidates;

    public ProgramBench(PatientCase patientCase, CaseDesk desk, Plan plan)
    {
        (this.patientCase, this.desk, Plan) = (patientCase, desk, plan);
        Window = patientCase.Reading.Irritability.Window;
    }

    public Plan Plan { get; private set; }

    /// <summary>The load window that the patient's irritability permits.</summary>
    public LoadWindow Window { get; }

    /// <summary>The exercises of the clinic.</summary>
    public ClinicLibrary Library => patientCase.Library;

    public bool CanUndo => before.Count > 0;

    public Limits Limits => patientCase.LimitsUnder(Plan.Agreed, Plan.DaysPerWeek);

    /// <summary>All exercises, most suitable first, under what is agreed now.</summary>
    public ImmutableArray<Candidate> Candidates => candidates ??= desk.CandidatesFor(patientCase, Plan.Agreed, Plan.DaysPerWeek);

    public double Minutes => SessionTime.Seconds(Items, Exercise) / 60;

    public ImmutableArray<string> Hints => ProgramHints.For(ToProgram(), Exercise, Limits);

    private ImmutableArray<ProgramItem> Items => [.. Plan.Items.Select(i => i.Item)];

    public Exercise? Exercise(string id) => patientCase.Library.Exercise(id);

    /// <summary>Takes a changed plan; the one before can be brought back.</summary>
    public void Take(Plan changed)
    {
        ArgumentNullException.ThrowIfNull(changed);
        if (changed == Plan)
            return;
        if (!ReferenceEquals(changed.Agreed, Plan.Agreed))
            candidates = null;
        before.Push(Plan);
        Plan = changed;
    }

    public void Undo()
    {
        if (before.Count == 0)
            return;
        Plan = before.Pop();
        candidates = null;
    }

    /// <summary>Adds an exercise at its usual dose, for the heaviest finding it acts on.</summary>
    public PlanItem Add(Candidate candidate)
    {
        ArgumentNullException.ThrowIfNull(candidate);
        var added = new PlanItem(Guid.NewGuid(), DraftProgram.Item(candidate, candidate.Findings.FirstOrDefault()));
        Take(Plan.With(added));
        return added;
    }

    /// <summary>A first draft from the findings, in the usual order; what was there before can be brought back.</summary>
    /// <returns>How many exercises it has.</returns>
    public int StartFromDraft()
    {
        var items = ProgramOrder.Sort(DraftProgram.From(Candidates, patientCase.Accepted), Exercise);
        if (items.IsEmpty)
            return 0;
        Take(Plan with
        {
            Items = [.. items.Select(item => new PlanItem(Guid.NewGuid(), item))],
            DaysPerWeek = Plan.Items.IsEmpty ? items.Max(item => item.Dose.DaysPerWeek) : Plan.DaysPerWeek,
        });
        return items.Length;
    }

    public void Sort() => Take(Plan.Sorted(Exercise));

    /// <summary>The sides whose share is shown: both when both work in turn or at once.</summary>
    public IReadOnlyList<Side> SidesOf(ProgramItem item)
    {
        ArgumentNullException.ThrowIfNull(item);
        var first = item.WorkingSide ?? patientCase.WorkingSide;
        return item.BothSides || item.WorkingSide is null ? [first, first.Other()] : [first];
    }

    /// <summary>What an item asks of one side, at its weight.</summary>
    public MovementLoad LoadOf(ProgramItem item, Side side)
    {
        ArgumentNullException.ThrowIfNull(item);
        var weight = item.Dose.WeightKg ?? 0;
        if (!loads.TryGetValue((item.ExerciseId, side, weight), out var load))
        {
            load = Exercise(item.ExerciseId) is { } exercise
                ? patientCase.Reading.Loads.Of(exercise, side, weight)
                : new MovementLoad([], ["The library no longer has this exercise."], false);
            loads[(item.ExerciseId, side, weight)] = load;
        }

        return load;
    }

    /// <summary>The share that counts on one side; null where load is not what the exercise is about, or was not computed.</summary>
    public LoadShare? ShareOf(ProgramItem item, Side side)
    {
        ArgumentNullException.ThrowIfNull(item);
        return Exercise(item.ExerciseId) is { } exercise ? PersonalLoads.Main(exercise, LoadOf(item, side), side) : null;
    }

    /// <summary>The findings an exercise acts on, heaviest first.</summary>
    public IEnumerable<Finding> FindingsOf(ProgramItem item)
    {
        ArgumentNullException.ThrowIfNull(item);
        var ids = Candidates.FirstOrDefault(c => ClinicLibrary.FormOf(c.Exercise.Id) == ClinicLibrary.FormOf(item.ExerciseId))?.Findings ?? [];
        return ids.Select(id => patientCase.Accepted.FirstOrDefault(f => f.Id == id)).OfType<Finding>();
    }

    /// <summary>The newer version of the clinic's own form that an item could take; null when it has the one that is offered.</summary>
    public Exercise? NewerOf(ProgramItem item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return patientCase.Library.Newer(item.ExerciseId);
    }

    /// <summary>Whether the plan has an exercise, in whatever version.</summary>
    public bool Has(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return Plan.Items.Any(i => ClinicLibrary.FormOf(i.Item.ExerciseId) == ClinicLibrary.FormOf(exercise.Id));
    }

    /// <summary>Names of the exercises in the plan that act on a finding.</summary>
    public IReadOnlyList<string> Covers(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return [.. Plan.Items.Where(i => FindingsOf(i.Item).Any(f => f.Id == finding.Id)).Select(i => NameOf(i.Item)).Distinct()];
    }

    public string NameOf(ProgramItem item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return Exercise(item.ExerciseId)?.Name ?? item.ExerciseId;
    }

    /// <summary>The program as it is stored: with the shares as shown now and the versions that made them.</summary>
    public HomeProgram ToProgram() => new()
    {
        Items = [.. Items.Select(item => item with
        {
            ExerciseId = Exercise(item.ExerciseId)?.Id ?? item.ExerciseId,
            Dose = item.Dose with { DaysPerWeek = Plan.DaysPerWeek },
            Note = string.IsNullOrWhiteSpace(item.Note) ? null : item.Note.Trim(),
            LoadShare = Stored(item),
        })],
        DaysPerWeek = Plan.DaysPerWeek,
        PainCeiling = Plan.PainCeiling,
        Note = string.IsNullOrWhiteSpace(Plan.Note) ? null : Plan.Note.Trim(),
        Cards = Plan.Cards,
        Agreed = Plan.Agreed,
        EngineVersion = CaseDesk.EngineVersion,
        ContentVersion = desk.Content.Version,
    };

    /// <summary>Of several sides the one asked most.</summary>
    private StoredLoadShare? Stored(ProgramItem item) => SidesOf(item)
        .Select(side => ShareOf(item, side)).OfType<LoadShare>().OrderByDescending(s => s.Middle)
        .Select(s => new StoredLoadShare(s.Action, s.Low, s.Middle, s.High)).FirstOrDefault();
}
