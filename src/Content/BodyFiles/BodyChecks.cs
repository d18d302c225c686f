using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Content;

/// <summary>The checks of the body model, read and checked themselves.</summary>
/// <param name="Persons">People by name; null stands for the published skeleton unscaled.</param>
/// <param name="Poses">Poses by name.</param>
/// <param name="Checks">The checks.</param>
public sealed record BodyChecks(
    ImmutableDictionary<string, Physique?> Persons, ImmutableDictionary<string, PoseInput> Poses, ImmutableArray<CheckFile> Checks)
{
    private const string Name = "body/checks.json";

    /// <summary>Reads content/body/checks.json.</summary>
    /// <param name="contentFolder">The content folder.</param>
    /// <param name="body">The body content that the checks speak of.</param>
    /// <param name="sources">Keys of sources.json.</param>
    /// <param name="faults">Gathers every fault.</param>
    /// <returns>The checks, or null when a fault makes them unusable.</returns>
    internal static BodyChecks? Read(string contentFolder, BodyContent body, ISet<string> sources, FaultList faults)
    {
        var path = Path.Combine(contentFolder, "body", "checks.json");
        var before = faults.Faults.Count;
        if (StrictJson.ReadFile<ChecksFile>(path, Name, faults) is not { } raw)
            return null;
        var own = new FaultList();
        new CheckRules(raw, body, sources, Name, own).CheckAll();
        foreach (var fault in JsonLines.Placed(File.ReadAllText(path), own.Faults))
            faults.Add(fault.File, fault.Line, fault.Path, fault.What, fault.Mend);
        return faults.Faults.Count > before
            ? null
            : new BodyChecks(
                raw.Persons.ToImmutableDictionary(
                    p => p.Key,
                    p => p.Value.Published ? null : new Physique(p.Value.Sex, p.Value.AgeYears, p.Value.StatureM, p.Value.MassKg)),
                raw.Poses.ToImmutableDictionary(
                    p => p.Pose.Name,
                    p => new PoseInput(PoseConversion.ToFrame(p.Pose), PoseConversion.ToLoads(p.AddedLoads))
                    {
                        Pulls = new PullReader(body.Points, sources, Name, own).Read(p.Pulls),
                    }),
                [.. raw.Checks]);
    }
}
