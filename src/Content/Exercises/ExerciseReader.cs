using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Content;

/// <summary>Turns exercise files into exercises and tells every fault of meaning.</summary>
internal sealed class ExerciseReader(SurfacePoints points, ISet<string> sources, FaultList faults)
{
    private string file = "";

    /// <summary>Reads content/exercises, ordered by ladder and rung.</summary>
    internal IReadOnlyList<Exercise> ReadAll(string contentFolder)
    {
        var exercises = new List<Exercise>();
        foreach (var path in StrictJson.FilesIn(Path.Combine(contentFolder, "exercises"), ".json"))
        {
            file = "exercises/" + Path.GetFileName(path);
            var raw = StrictJson.ReadFile<ExerciseFile>(path, file, faults);
            if (raw is null)
                continue;
            if (raw.Id != Path.GetFileNameWithoutExtension(path))
                Fault("id", $"The id \"{raw.Id}\" differs from the file name.", "Give both the same name.");
            if (Make(raw) is { } exercise)
                exercises.Add(exercise);
        }

        foreach (var exercise in exercises.Where(e => e.Rung > 1 && e.Change is null))
        {
            file = $"exercises/{exercise.Id}.json";
            Fault("change", $"Rung {exercise.Rung} does not say what makes it harder.", "Name the change from the rung below.");
        }

        foreach (var rung in exercises.GroupBy(e => (e.Ladder, e.Rung)).Where(g => g.Count() > 1))
        {
            file = "exercises";
            Fault(rung.Key.Ladder, $"Rung {rung.Key.Rung} is held by {string.Join(" and ", rung.Select(e => e.Id))}.", "Give each its own rung.");
        }

        return [.. exercises.OrderBy(e => e.Ladder, StringComparer.Ordinal).ThenBy(e => e.Rung)];
    }

    /// <summary>Reads one exercise that stands in a file of its own, outside any ladder of the shipped content.</summary>
    internal Exercise? ReadOne(ExerciseFile raw, string shownPath)
    {
        file = shownPath;
        if (raw.Rung > 1 && raw.Change is null)
            Fault("change", $"Rung {raw.Rung} does not say what makes it harder.", "Name the change from the rung below.");
        return Make(raw);
    }

    private Exercise? Make(ExerciseFile raw)
    {
        var before = faults.Faults.Count;
        if (raw.Poses.Count == 0)
            Fault("poses", "There is no pose.", "Give at least one.");
        for (var i = 0; i < raw.Poses.Count; i++)
            CheckPose(raw.Poses[i], $"poses[{i}]");
        for (var i = 0; i < raw.Props.Count; i++)
            CheckPoint(raw.Props[i].At, $"props[{i}].at");
        CheckPoint(raw.CloseUp, "closeUp");
        var pulls = new PullReader(points, sources, file, faults);
        for (var i = 0; i < raw.AddedLoads.Count; i++)
        {
            pulls.CheckPlace(new BodyPlace(raw.AddedLoads[i].At, raw.AddedLoads[i].Limb, raw.AddedLoads[i].Toward, raw.AddedLoads[i].Fraction), $"addedLoads[{i}]");
            CheckRange(raw.AddedLoads[i].MassKg, 0, 240, $"addedLoads[{i}].massKg", "kg");
        }

        var pulling = pulls.Read(raw.Pulls);

        if (raw.Loads.Count == 0 && raw.Groups.Count == 0 && raw.BeyondModel.Count == 0)
            Fault("loads", "The exercise acts on nothing.", "Name joint actions in loads, muscle groups in groups, or what the model lacks in beyondModel.");
        for (var i = 0; i < raw.Accepted.Count; i++)
        {
            if (!Enum.GetNames<JointAction>().Concat(Enum.GetNames<MuscleGroup>()).Contains(raw.Accepted[i].About, StringComparer.OrdinalIgnoreCase))
                Fault($"accepted[{i}].about", $"\"{raw.Accepted[i].About}\" is no joint action and no muscle group.", "Name one, as in loads or groups.");
        }

        CheckRange(raw.Rung, 1, 30, "rung", "");
        CheckRange(raw.SetUpSeconds, 0, 300, "setUpSeconds", "s");
        CheckSource(raw.Source, "source");
        CheckSource(raw.Dose.Source, "dose.source");
        CheckDose(raw.Dose);
        if (faults.Faults.Count > before)
            return null;
        return new Exercise
        {
            Id = raw.Id,
            Name = raw.Name,
            Purpose = raw.Purpose,
            Region = raw.Region,
            Position = raw.Position,
            Movement = new Movement
            {
                Frames = [.. raw.Poses.Select(PoseConversion.ToFrame)],
                Props = [.. raw.Props.Select(p => new Prop(p.Kind, p.At, p.Limb, p.HeightM))],
                Loads = PoseConversion.ToLoads(raw.AddedLoads),
                Pulls = pulling,
                View = raw.View,
                CloseUp = raw.CloseUp,
                Bilateral = raw.Bilateral,
                Focus = FocusOf.Exercise(raw.Region, [.. raw.Loads]),
                Aims = [.. raw.Loads],
            },
            Loads = [.. raw.Loads],
            Groups = [.. raw.Groups],
            BeyondModel = [.. raw.BeyondModel],
            Accepted = [.. raw.Accepted.Select(a => new AcceptedMiss(a.About, a.Reason))],
            Equipment = [.. raw.Equipment],
            Dose = PoseConversion.ToDose(raw.Dose),
            DoseSource = raw.Dose.Source,
            Ladder = raw.Ladder,
            Rung = raw.Rung,
            Change = raw.Change,
            OrderNote = raw.OrderNote,
            Avoid = [.. raw.Avoid],
            Cautions = [.. raw.Cautions],
            Faults = [.. raw.Faults.Select(f => new Fault(f.Seen, f.Cue))],
            SetUpSeconds = raw.SetUpSeconds,
        };
    }

    private void CheckPose(PoseFile pose, string path)
    {
        if (pose.Contacts.Count == 0)
            Fault($"{path}.contacts", "Nothing touches anything.", "Name at least one contact.");
        foreach (var fault in FrameCheck.Faults(PoseConversion.ToFrame(pose), points))
            Fault($"{path}.{fault.Place}", fault.What, fault.Mend);
    }

    private void CheckDose(DoseFile dose)
    {
        CheckRange(dose.Sets, 1, 10, "dose.sets", "");
        CheckRange(dose.Repetitions, 1, 200, "dose.repetitions", "");
        if (dose.RepetitionsTo is { } to)
            CheckRange(to, dose.Repetitions, 200, "dose.repetitionsTo", "");
        CheckRange(dose.OutSeconds, 0.5, 30, "dose.outSeconds", "s");
        CheckRange(dose.HoldSeconds, 0, 600, "dose.holdSeconds", "s");
        CheckRange(dose.BackSeconds, 0.5, 30, "dose.backSeconds", "s");
        CheckRange(dose.RestSeconds, 0, 600, "dose.restSeconds", "s");
        CheckRange(dose.TimesPerDay, 1, 10, "dose.timesPerDay", "");
        CheckRange(dose.DaysPerWeek, 1, 7, "dose.daysPerWeek", "");
        if (dose.Effort is { } effort)
            CheckRange(effort, 0, 10, "dose.effort", "");
        if (dose.WeightKg is { } weight)
            CheckRange(weight, 0, 240, "dose.weightKg", "kg");
    }

    private void CheckPoint(string? name, string path)
    {
        if (name is not null && !points.Has(name))
            Fault(path, $"The body has no point \"{name}\".", "Use a name of body/surface-points.json.");
    }

    private void CheckSource(string key, string path)
    {
        if (!sources.Contains(key))
            Fault(path, $"There is no source \"{key}\".", "Add it to sources.json or correct the key.");
    }

    private void CheckRange(double value, double least, double most, string path, string unit)
    {
        if (!(value >= least && value <= most))
        {
            Fault(path, FormattableString.Invariant($"{value} {unit} lies outside {least} to {most}.").Replace("  ", " ", StringComparison.Ordinal), "Correct the number.");
        }
    }

    private void Fault(string path, string what, string mend) => faults.Add(file, null, path, what, mend);
}
