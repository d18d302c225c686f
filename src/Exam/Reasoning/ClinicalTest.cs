using System.Collections.Immutable;
using System.Text.Json.Serialization;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>What is done in a clinical test.</summary>
public enum TestKind
{
    /// <summary>A movement or position.</summary>
    Test,

    /// <summary>Feeling with the fingers.</summary>
    Palpation,

    /// <summary>A question.</summary>
    History,

    /// <summary>Something seen or found.</summary>
    Sign,

    /// <summary>Several tests taken together.</summary>
    Cluster,

    /// <summary>A list of criteria.</summary>
    Criteria,
}

/// <summary>What a test asks of the person.</summary>
public enum TestBurden
{
    /// <summary>Nothing to feel.</summary>
    None,

    /// <summary>May bring on the pain for a moment.</summary>
    Provokes,

    /// <summary>Loads the limb or strains a joint; leave it when the limb is irritable or freshly hurt.</summary>
    Loads,
}

/// <summary>A clinical test with the figures known about it.</summary>
public sealed record ClinicalTest
{
    /// <summary>Id in the words of the test.</summary>
    public required string Id { get; init; }

    /// <summary>Name.</summary>
    public required string Name { get; init; }

    /// <summary>Name up to its first colon, for sentences.</summary>
    [JsonIgnore]
    public string ShortName => Name.Split(':')[0];

    /// <summary>The part of the body it is kept under.</summary>
    public required BodyRegion Region { get; init; }

    /// <summary>What is done.</summary>
    public required TestKind Kind { get; init; }

    /// <summary>What counts as positive.</summary>
    public required string PositiveMeans { get; init; }

    /// <summary>Tests of one family stress the same tissue in the same way: one ratio of them counts.</summary>
    public required string Family { get; init; }

    /// <summary>Whether left and right are tested apart.</summary>
    public bool Sided { get; init; } = true;

    /// <summary>Youngest age, years, at which it is positive by itself; null for a test that is done.</summary>
    public double? AgeFrom { get; init; }

    /// <summary>Most signs of a counted test; null for positive or negative.</summary>
    public int? CountOf { get; init; }

    /// <summary>Tests that this one is made of; it replaces them.</summary>
    public ImmutableArray<string> Members { get; init; } = [];

    /// <summary>Minutes it takes, both sides; common practice.</summary>
    public required double Minutes { get; init; }

    /// <summary>What it asks of the person.</summary>
    public required TestBurden Burden { get; init; }

    /// <summary>When not to do it; null for nothing in particular.</summary>
    public string? Caution { get; init; }

    /// <summary>Figures, the preferred one first.</summary>
    public required ImmutableArray<AccuracyFigure> Figures { get; init; }
}
