using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text.Json;
using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Web.Clinic;

/// <summary>
/// What each exercise asks of each patient, kept until what was measured changes: choosing among the whole library asks for the same numbers
/// again and again. Only peaks are kept; curves are computed again where one is looked at.
/// </summary>
public sealed class CaseLoads
{
    private const int MostCases = 200;
    private readonly ConcurrentDictionary<string, ConcurrentDictionary<(string, Side), Lazy<MovementLoad>>> kept = new();

    /// <summary>A hash of everything the numbers of a case depend on.</summary>
    public static string Fingerprint(CaseFacts facts) => Convert.ToHexString(SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes(facts)));

    /// <summary>The peaks of an exercise for a case, computed when first asked for.</summary>
    public Func<Exercise, Side, MovementLoad> Of(PatientCase patientCase)
    {
        ArgumentNullException.ThrowIfNull(patientCase);
        var key = Fingerprint(patientCase.Facts);
        if (kept.Count >= MostCases && !kept.ContainsKey(key))
            kept.Clear();
        var loads = kept.GetOrAdd(key, _ => new());
        return (exercise, side) => loads.GetOrAdd(
            (exercise.Id + patientCase.Library.VersionOf(exercise), side),
            _ => new(() => patientCase.Reading.Loads.Of(exercise, side, exercise.Dose.WeightKg ?? 0) with { Curves = [], Supports = [], Efforts = [], JointForces = [] })).Value;
    }
}
