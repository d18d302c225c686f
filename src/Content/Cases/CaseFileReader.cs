using System.Collections.Immutable;
using System.Globalization;
using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Prescribing;

namespace MomentArm.Content;

/// <summary>Reads case files against the content: every fault at once, every doubt as a question.</summary>
public sealed class CaseFileReader
{
    private readonly ContentLibrary library;
    private readonly FaultList faults = new();
    private readonly List<string> questions = [];
    private readonly string shown;

    private CaseFileReader(ContentLibrary library, string shown)
    {
        this.library = library;
        this.shown = shown;
    }

    /// <summary>Reads a file.</summary>
    /// <param name="path">Where it is.</param>
    /// <param name="library">The content.</param>
    /// <returns>The case, or every fault.</returns>
    public static (CaseInput? Input, IReadOnlyList<ContentFault> Faults) ReadFile(string path, ContentLibrary library)
    {
        var reader = new CaseFileReader(library, Path.GetFileName(path));
        var file = StrictJson.ReadFile<CaseFile>(path, reader.shown, reader.faults);
        return reader.Finish(file);
    }

    /// <summary>Reads a text.</summary>
    public static (CaseInput? Input, IReadOnlyList<ContentFault> Faults) Read(string json, ContentLibrary library)
    {
        var reader = new CaseFileReader(library, "case");
        return reader.Finish(StrictJson.Read<CaseFile>(json, reader.shown, reader.faults));
    }

    private (CaseInput?, IReadOnlyList<ContentFault>) Finish(CaseFile? file)
    {
        var input = file is null ? null : Understand(file);
        return faults.Faults.Count > 0 ? (null, faults.Faults) : (input, []);
    }

    private CaseInput Understand(CaseFile file)
    {
        CheckRange(file.Patient.AgeYears, 0, 120, "patient.ageYears", "years");
        CheckRange(file.Patient.StatureCm, 80, 240, "patient.statureCm", "cm");
        CheckRange(file.Patient.MassKg, 15, 350, "patient.massKg", "kg");
        CheckRange(file.Limits.Minutes, 1, 120, "limits.minutes", "minutes");
        CheckRange(file.Limits.DaysPerWeek, 1, 7, "limits.daysPerWeek", "days");
        if (file.Entries.Count > 0 && file.Visits.Count > 0)
            Fault("entries", "There are entries and visits.", "Use entries for one visit, or visits for several.");
        var visits = ReadVisits(file);
        if (file.Entries.Count == 0 && file.Visits.All(v => v.Entries.Count == 0) && file.Wishes.Count == 0 && file.Exercises.Count == 0 && file.Reasoning is null)
            Fault("", "The case says nothing to work with.", "Give at least one measurement in entries, one wish, or one exercise.");
        foreach (var id in file.DangerSigns.Keys.Where(id => library.Exam.DangerSigns.All(s => s.Id != id)).Order(StringComparer.Ordinal))
            Fault($"dangerSigns.{id}", "There is no such danger sign.", "Known: " + string.Join(", ", library.Exam.DangerSigns.Select(s => s.Id)) + ".");
        if (file.Patient is { StatureCm: { } cm, MassKg: { } kg } && kg / (cm * cm / 10000) is < 12 or > 70)
            questions.Add(string.Create(CultureInfo.InvariantCulture, $"Stature {cm} cm and mass {kg} kg do not go together: is one of them in another unit?"));
        return new CaseInput
        {
            Facts = new CaseFacts(
                new Physique(file.Patient.Sex, file.Patient.AgeYears, file.Patient.StatureCm / 100, file.Patient.MassKg),
                file.Complaint.Side, visits, file.Complaint.Irritability),
            Title = file.Complaint.Title,
            Gate = DangerScreen.Judge(
                library.Exam.DangerSigns,
                new ScreenedPerson(
                    file.Complaint.Region is { } region ? [region] : RegionWords.Read(null, file.Complaint.Title), file.Patient.AgeYears),
                file.DangerSigns.ToDictionary(), []),
            Agreed = new AgreedLimits
            {
                Minutes = file.Limits.Minutes,
                Owned = file.Limits.Equipment?.ToImmutableArray(),
                Avoid = [.. file.Limits.Avoid],
            },
            DaysPerWeek = file.Limits.DaysPerWeek,
            Wishes = [.. file.Wishes],
            Reasoning = new CaseReasoningReader(library.Exam.Reasoning, Fault).Read(file.Reasoning ?? new CaseReasoning(), file),
            YellowFlags = (file.Reasoning?.YellowFlags ?? new Dictionary<string, ItemAnswer>()).ToImmutableDictionary(),
            IrritabilityAsked = file.Reasoning?.Irritability,
            Chosen = [.. file.Exercises.Select((e, i) => Choose(e, i, file.Complaint.Side)).OfType<ProgramItem>()],
            Questions = [.. questions],
        };
    }

    private ImmutableArray<CaseVisit> ReadVisits(CaseFile file)
    {
        if (file.Entries.Count > 0)
            return [ReadVisit(1, DateOnly.MinValue, file.Entries, "entries")];
        var visits = ImmutableArray.CreateBuilder<CaseVisit>();
        for (var i = 0; i < file.Visits.Count; i++)
        {
            if (i > 0 && file.Visits[i].Day < file.Visits[i - 1].Day)
                Fault($"visits[{i}].day", "The visit lies before the one above it.", "Order visits first to last.");
            visits.Add(ReadVisit(i + 1, file.Visits[i].Day, file.Visits[i].Entries, $"visits[{i}].entries"));
        }

        return visits.ToImmutable();
    }

    private CaseVisit ReadVisit(int order, DateOnly day, IReadOnlyList<string> entries, string path)
    {
        var measurements = ImmutableArray.CreateBuilder<Measurement>();
        var observations = ImmutableArray.CreateBuilder<Observation>();
        for (var i = 0; i < entries.Count; i++)
        {
            var result = TypedEntry.Parse(entries[i], library.Exam.Measures);
            foreach (var fault in result.Faults)
                Fault($"{path}[{i}]", $"\"{fault.Where}\": {fault.What}", fault.Mend);
            questions.AddRange(result.Questions.Select(q => q.Sentence));
            questions.AddRange(result.Notes);
            measurements.AddRange(result.Measurements);
            observations.AddRange(result.Observations);
        }

        return new CaseVisit(order, day, measurements.ToImmutable(), observations.ToImmutable());
    }

    private ProgramItem? Choose(CaseExercise chosen, int index, Side? affected)
    {
        var path = $"exercises[{index}]";
        if (library.Exercise(chosen.Id) is not { } exercise)
        {
            Fault($"{path}.id", $"There is no exercise \"{chosen.Id}\".", "See: momentarm exercise list");
            return null;
        }

        CheckRange(chosen.Sets, 1, 10, $"{path}.sets", "");
        CheckRange(chosen.Repetitions, 1, 200, $"{path}.repetitions", "");
        CheckRange(chosen.HoldSeconds, 0, 600, $"{path}.holdSeconds", "s");
        CheckRange(chosen.WeightKg, 0, 240, $"{path}.weightKg", "kg");
        return new ProgramItem
        {
            ExerciseId = exercise.Id,
            WorkingSide = exercise.Movement.Bilateral ? null : chosen.Side ?? affected ?? Side.Right,
            BothSides = chosen.BothSides,
            Dose = exercise.Dose with
            {
                Sets = chosen.Sets ?? exercise.Dose.Sets,
                Repetitions = chosen.Repetitions ?? exercise.Dose.Repetitions,
                RepetitionsTo = chosen.Repetitions is null ? exercise.Dose.RepetitionsTo : null,
                HoldSeconds = chosen.HoldSeconds ?? exercise.Dose.HoldSeconds,
                WeightKg = chosen.WeightKg ?? exercise.Dose.WeightKg,
            },
        };
    }

    private void CheckRange(double? value, double least, double most, string path, string unit)
    {
        if (value is { } given && !(given >= least && given <= most))
            Fault(path, string.Create(CultureInfo.InvariantCulture, $"{given} {unit} is not usable.").Replace("  ", " ", StringComparison.Ordinal), string.Create(CultureInfo.InvariantCulture, $"Give {least} to {most}."));
    }

    private void Fault(string path, string what, string mend) => faults.Add(shown, null, path, what, mend);
}
