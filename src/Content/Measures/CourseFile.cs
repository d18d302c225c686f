using System.Text.Json.Serialization;

namespace MomentArm.Content;

/// <summary>content/courses.json: published courses of complaints, from papers that were read.</summary>
public sealed record CoursesFile
{
    /// <summary>Where the schema is.</summary>
    [JsonPropertyName("$schema")]
    public required string Schema { get; init; }

    /// <summary>One entry a working hypothesis.</summary>
    public required IReadOnlyList<CourseFile> Courses { get; init; }
}

/// <summary>How people with one complaint fared.</summary>
public sealed record CourseFile
{
    /// <summary>Id of the working hypothesis.</summary>
    public required string Pattern { get; init; }

    /// <summary>The figures, earliest first.</summary>
    public required IReadOnlyList<CourseFigureFile> Figures { get; init; }
}

/// <summary>One figure.</summary>
public sealed record CourseFigureFile
{
    /// <summary>Share of the people, over 0 and up to 1.</summary>
    public double? Share { get; init; }

    /// <summary>Time, days.</summary>
    public double? Days { get; init; }

    /// <summary>Later end of a span, days.</summary>
    public double? ToDays { get; init; }

    /// <summary>What came true, to follow "44 of 100".</summary>
    public required string Outcome { get; init; }

    /// <summary>Who they were and what was done.</summary>
    public required string Population { get; init; }

    /// <summary>Key into sources.json.</summary>
    public required string Source { get; init; }
}
