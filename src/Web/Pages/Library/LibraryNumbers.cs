using System.Collections.Concurrent;
using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Prescribing;
using MomentArm.Web.Clinic;

namespace MomentArm.Web.Pages.Library;

/// <summary>
/// The whole library computed for a person and a side, kept until what was measured changes. The key is a hash of everything the figures
/// depend on, so a new test makes a new entry and an old one is never shown.
/// </summary>
public sealed class LibraryNumbers(ContentLibrary content, ReferenceLoads reference)
{
    private const int MostKept = 200;
    private readonly ConcurrentDictionary<string, Lazy<ImmutableDictionary<string, LibraryLine>>> kept = new();

    /// <summary>The figures of a patient, or of the reference person when there is none.</summary>
    public ImmutableDictionary<string, LibraryLine> Of(ClinicLibrary library, PatientCase? patient, Side working)
    {
        var (loads, reach) = patient is null ? (reference.Loads, reference.Reach) : (patient.Reading.Loads, patient.Reading.Reach);
        var key = (patient is null ? "reference" : CaseLoads.Fingerprint(patient.Facts)) + working;
        if (kept.Count >= MostKept && !kept.ContainsKey(key))
            kept.Clear();
        var lines = kept.GetOrAdd(key, _ => new(() => LibraryLine.All(content.Exercises, loads, reach, working))).Value;
        if (library.Own.IsEmpty)
            return lines;
        var versions = string.Join(' ', library.Own.Select(library.VersionOf));
        return lines.AddRange(kept.GetOrAdd($"{key} {versions}", _ => new(() => LibraryLine.All(library.Own, loads, reach, working))).Value);
    }
}
