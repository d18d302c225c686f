using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>A published starting value for a probability.</summary>
public sealed record PatternPrior
{
    /// <summary>Whom it was counted among.</summary>
    public required string Population { get; init; }

    /// <summary>Probability, above 0 and below 1.</summary>
    public required double Value { get; init; }

    /// <summary>Published or chosen range; null when none is known.</summary>
    public RatioSpan? Range { get; init; }

    /// <summary>Questions that must be answered yes for it to hold.</summary>
    public ImmutableArray<string> When { get; init; } = [];

    /// <summary>Key into content/sources.json.</summary>
    public required string Source { get; init; }

    /// <summary>Whether it may be used without being taken over by a clinician: read, or stated as our choice.</summary>
    public required bool Usable { get; init; }
}

/// <summary>A working hypothesis: how it usually shows, what speaks against it and what else it could be. Never a diagnosis.</summary>
public sealed record Pattern
{
    /// <summary>Id.</summary>
    public required string Id { get; init; }

    /// <summary>Name.</summary>
    public required string Name { get; init; }

    /// <summary>Number of the group of patterns it belongs to, 1 to 22.</summary>
    public required int Group { get; init; }

    /// <summary>Parts of the body where it is considered.</summary>
    public required ImmutableArray<BodyRegion> Regions { get; init; }

    /// <summary>How it usually shows.</summary>
    public required string Summary { get; init; }

    /// <summary>Questions and tests that define it, by id.</summary>
    public required ImmutableArray<string> Defining { get; init; }

    /// <summary>Questions and tests that speak for it.</summary>
    public required ImmutableArray<string> Supporting { get; init; }

    /// <summary>Questions and tests that speak against it.</summary>
    public required ImmutableArray<string> Opposing { get; init; }

    /// <summary>What else to think of.</summary>
    public required ImmutableArray<string> ThinkOf { get; init; }

    /// <summary>Usual course.</summary>
    public required string Course { get; init; }

    /// <summary>Key of the course's source.</summary>
    public required string CourseSource { get; init; }

    /// <summary>Key of the source of the pattern itself.</summary>
    public required string Source { get; init; }

    /// <summary>What to keep in mind; null for nothing in particular.</summary>
    public string? Caution { get; init; }

    /// <summary>Published starting values, the preferred one first.</summary>
    public ImmutableArray<PatternPrior> Priors { get; init; } = [];
}
