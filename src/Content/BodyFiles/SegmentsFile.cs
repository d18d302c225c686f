using System.Collections.Immutable;
using System.Text.Json.Serialization;
using MomentArm.Body;

namespace MomentArm.Content;

/// <summary>content/body/segments.json.</summary>
public sealed record SegmentsFile(
    [property: JsonPropertyName("$schema")] string Schema, string Note, IReadOnlyList<SegmentTableFile> Tables)
{
    /// <summary>The tables, or null with faults told.</summary>
    public IReadOnlyList<SegmentTable>? ToTables(FaultList faults)
    {
        var before = faults.Faults.Count;
        foreach (var table in Tables)
        {
            var missing = Enum.GetValues<BodyPart>().Except(table.Parts.Select(p => p.Part)).ToArray();
            if (missing.Length > 0)
                faults.Add("body/segments.json", null, table.Sex.ToString(), $"Missing parts: {string.Join(", ", missing)}.", "Add their rows.");
            if (table.Parts.Select(p => p.Part).Distinct().Count() != table.Parts.Count)
                faults.Add("body/segments.json", null, table.Sex.ToString(), "A part is there twice.", "Keep one row for each.");
        }

        if (!Tables.Select(t => t.Sex).Order().SequenceEqual([Sex.Female, Sex.Male]))
            faults.Add("body/segments.json", null, "tables", "One female and one male table are needed.", "Add or remove a table.");
        return faults.Faults.Count > before ? null : [.. Tables.Select(t => t.ToTable())];
    }
}

/// <summary>The mass table of one sex.</summary>
public sealed record SegmentTableFile(
    Sex Sex, double ReferenceStatureM, double ReferenceMassKg, string Source, IReadOnlyList<BodyPartFile> Parts)
{
    internal SegmentTable ToTable() => new(
        Sex, ReferenceStatureM, ReferenceMassKg,
        Parts.ToImmutableDictionary(
            p => p.Part, p => new BodyPartRow(p.MassPercent / 100, p.LengthFractionOfStature, p.CenterPercentFromOrigin / 100)));
}

/// <summary>One row of a mass table.</summary>
public sealed record BodyPartFile(
    BodyPart Part, double MassPercent, double LengthFractionOfStature, double CenterPercentFromOrigin, string Endpoints);
