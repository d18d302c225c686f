using MomentArm.Exam;

namespace MomentArm.Content;

/// <summary>Reads content/norms/predictions.json; a content without it has no equations.</summary>
internal static class PredictionReader
{
    private const string Name = "norms/predictions.json";

    internal static IReadOnlyList<Prediction> ReadAll(
        string contentFolder, IReadOnlyDictionary<string, Measure> measures, ISet<string> sources, FaultList faults)
    {
        var path = Path.Combine(contentFolder, "norms", "predictions.json");
        var files = File.Exists(path) ? StrictJson.ReadFile<PredictionsFile>(path, Name, faults)?.Predictions ?? [] : [];
        var list = new List<Prediction>();
        for (var i = 0; i < files.Count; i++)
        {
            var file = files[i];
            if (!measures.TryGetValue(file.MeasureId, out var measure))
            {
                faults.Add(Name, null, $"predictions[{i}].measureId", $"There is no measure \"{file.MeasureId}\".", "Use the id of a file in measures/.");
                continue;
            }
            if (!sources.Contains(file.Source))
                faults.Add(
                    Name, null, $"predictions[{i}].source", $"The source \"{file.Source}\" is not in sources.json.", "Add it there or correct the key.");
            if (!(file.AgeFrom < file.AgeTo) || file.LimitBelow <= 0)
                faults.Add(
                    Name, null, $"predictions[{i}].ageFrom", "The ages are not in order, or the distance to the limit is not above 0.",
                    "Put the younger age first and give the distance as a positive number.");
            list.Add(ToPrediction(file, measure.Shown.StoredPerShown));
        }
        return list;
    }

    private static Prediction ToPrediction(PredictionFile file, double scale) => new()
    {
        MeasureId = file.MeasureId,
        Sex = file.Sex,
        AgeFrom = file.AgeFrom,
        AgeTo = file.AgeTo,
        Constant = file.Constant * scale,
        PerYear = file.PerYear * scale,
        PerCentimetre = file.PerCm * scale,
        PerKilogram = file.PerKg * scale,
        LimitBelow = file.LimitBelow * scale,
        N = file.N,
        Population = file.Population,
        Method = file.Method,
        Source = file.Source,
        Verified = file.Verified,
    };
}
