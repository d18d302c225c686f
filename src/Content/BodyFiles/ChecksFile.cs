using System.Text.Json.Serialization;
using MomentArm.Body;

namespace MomentArm.Content;

/// <summary>content/body/checks.json: values from outside that the body model is held to. Angles in degrees, clinical signs.</summary>
public sealed record ChecksFile
{
    /// <summary>Where the schema is.</summary>
    [JsonPropertyName("$schema")]
    public required string Schema { get; init; }

    /// <summary>What the file holds.</summary>
    public required string Note { get; init; }

    /// <summary>People by name.</summary>
    public required IReadOnlyDictionary<string, CheckPersonFile> Persons { get; init; }

    /// <summary>Poses, each with its own name. A pose without contacts is free: a table carries what the check does not ask about.</summary>
    public required IReadOnlyList<CheckPoseFile> Poses { get; init; }

    /// <summary>The checks, in the order they are printed within their group.</summary>
    public required IReadOnlyList<CheckFile> Checks { get; init; }
}

/// <summary>A person of the checks.</summary>
public sealed record CheckPersonFile
{
    /// <summary>The published skeleton unscaled, with its paths followed everywhere; then nothing else is given.</summary>
    public bool Published { get; init; }

    /// <summary>Sex.</summary>
    public Sex? Sex { get; init; }

    /// <summary>Age in years.</summary>
    public double? AgeYears { get; init; }

    /// <summary>Stature in meters.</summary>
    public double? StatureM { get; init; }

    /// <summary>Mass in kilograms.</summary>
    public double? MassKg { get; init; }
}

/// <summary>A pose of the checks.</summary>
public sealed record CheckPoseFile
{
    /// <summary>The pose, as in an exercise.</summary>
    public required PoseFile Pose { get; init; }

    /// <summary>Added loads.</summary>
    public IReadOnlyList<AddedLoadFile> AddedLoads { get; init; } = [];

    /// <summary>Bands, ropes and forces from outside; told from this pose itself.</summary>
    public IReadOnlyList<PullFile> Pulls { get; init; } = [];

    /// <summary>Where its angles come from, or what was chosen.</summary>
    public required string Basis { get; init; }
}

/// <summary>What a check is about.</summary>
public enum CheckGroup
{
    /// <summary>Joint places, path lengths and moment arms.</summary>
    Paths,

    /// <summary>Statics that can be worked by hand.</summary>
    Statics,

    /// <summary>Published torques of people.</summary>
    Strength,

    /// <summary>Which pose lengthens a muscle most.</summary>
    Stretch,

    /// <summary>Shares of body weight on contacts.</summary>
    Support,

    /// <summary>Net joint moments in exercises.</summary>
    Moments,

    /// <summary>Forces between the bones of a joint.</summary>
    Contact,

    /// <summary>Orders of exercises by a quantity.</summary>
    Orders,

    /// <summary>Effort of muscle groups beside measured muscle activity: rank correlations.</summary>
    Activation,
}

/// <summary>How the expected value is known.</summary>
public enum CheckMarks
{
    /// <summary>Seen in a document or a summary of it.</summary>
    Read,

    /// <summary>Calculated by another program or by hand from published figures.</summary>
    Computed,

    /// <summary>Recalled, not seen; never gates.</summary>
    Memory,

    /// <summary>Our choice or common teaching.</summary>
    Choice,
}

/// <summary>The unit of an expected value.</summary>
public enum CheckUnit
{
    /// <summary>Millimeters.</summary>
    Mm,

    /// <summary>Newton meters per kilogram of body mass.</summary>
    NmPerKg,

    /// <summary>Percent of body weight.</summary>
    PercentBodyWeight,

    /// <summary>Body weights.</summary>
    BodyWeights,

    /// <summary>Degrees.</summary>
    Degrees,

    /// <summary>Newtons.</summary>
    N,

    /// <summary>Percent of what a muscle group can give.</summary>
    PercentEffort,

    /// <summary>A number without unit.</summary>
    Ratio,
}

/// <summary>One check.</summary>
public sealed record CheckFile
{
    /// <summary>Short name in kebab case, at most 29 letters.</summary>
    public required string Id { get; init; }

    /// <summary>What it is about.</summary>
    public required CheckGroup Group { get; init; }

    /// <summary>A sentence that says what is compared.</summary>
    public required string What { get; init; }

    /// <summary>A key of sources.json, or "computed", "from memory", "common practice, no source".</summary>
    public required string Source { get; init; }

    /// <summary>How the expected value is known.</summary>
    public required CheckMarks Marks { get; init; }

    /// <summary>Whether a miss fails the whole; false only reports.</summary>
    public required bool Gate { get; init; }

    /// <summary>The person, where a quantity names none of its own.</summary>
    public string? Person { get; init; }

    /// <summary>The pose, where a quantity names none of its own.</summary>
    public string? Pose { get; init; }

    /// <summary>What is calculated, for a number, band or table.</summary>
    public QuantityFile? Quantity { get; init; }

    /// <summary>What is calculated, by name, for an order.</summary>
    public IReadOnlyDictionary<string, QuantityFile>? Values { get; init; }

    /// <summary>What must come out.</summary>
    public required ExpectedFile Expected { get; init; }

    /// <summary>Unit of the expected value.</summary>
    public required CheckUnit Unit { get; init; }

    /// <summary>Whether trunk (10 degrees), shank (5 degrees) and center of pressure (2 cm) are varied and the spread told.</summary>
    public bool Vary { get; init; }

    /// <summary>Why it misses, what was chosen, or what the figure cannot say.</summary>
    public string? Remark { get; init; }
}

/// <summary>An expected value: exactly one of number, band, table, order or ranks.</summary>
public sealed record ExpectedFile
{
    /// <summary>A number, with a tolerance.</summary>
    public double? Number { get; init; }

    /// <summary>Lower end of a band.</summary>
    public double? Low { get; init; }

    /// <summary>Upper end of a band.</summary>
    public double? High { get; init; }

    /// <summary>Numbers by muscle or by angle, with a tolerance; the quantity leaves that part open.</summary>
    public IReadOnlyDictionary<string, double>? Table { get; init; }

    /// <summary>Names from largest to smallest; those of one list need no order among themselves.</summary>
    public IReadOnlyList<IReadOnlyList<string>>? Order { get; init; }

    /// <summary>Ids of checks with a number, whose calculated and expected rank orders are compared; agrees when the rank correlation is above 0.</summary>
    public IReadOnlyList<string>? Ranks { get; init; }

    /// <summary>Largest difference allowed, in the unit of the check.</summary>
    public double? Absolute { get; init; }

    /// <summary>Largest difference allowed, as a fraction of the expected number.</summary>
    public double? Relative { get; init; }
}
