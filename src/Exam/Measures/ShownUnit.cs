using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>The unit in which a measure is typed, shown and written in files; metric.</summary>
/// <param name="Word">Its word in files.</param>
/// <param name="Stored">The unit stored behind it.</param>
/// <param name="StoredPerShown">Stored units in one shown unit.</param>
/// <param name="Suffix">What follows a number on screens, with its blank.</param>
/// <param name="Decimals">Most decimals shown.</param>
public sealed record ShownUnit(string Word, MeasureUnit Stored, double StoredPerShown, string Suffix, int Decimals)
{
    /// <summary>Degrees.</summary>
    public static ShownUnit Degrees { get; } = new("deg", MeasureUnit.Radians, Math.PI / 180, "°", 0);

    /// <summary>Newtons.</summary>
    public static ShownUnit Newtons { get; } = new("N", MeasureUnit.Newtons, 1, " N", 0);

    /// <summary>Points of a scale.</summary>
    public static ShownUnit Points { get; } = new("points", MeasureUnit.Points, 1, "", 1);

    /// <summary>Every unit a measure may have.</summary>
    public static ImmutableArray<ShownUnit> All { get; } =
    [
        Degrees,
        Newtons,
        Points,
        new("s", MeasureUnit.Seconds, 1, " s", 1),
        new("min", MeasureUnit.Seconds, 60, " min", 1),
        new("h", MeasureUnit.Seconds, 3600, " h", 1),
        new("count", MeasureUnit.Count, 1, "", 0),
        new("cm", MeasureUnit.Metres, 0.01, " cm", 1),
        new("m", MeasureUnit.Metres, 1, " m", 1),
        new("km", MeasureUnit.Metres, 1000, " km", 1),
        new("m/s", MeasureUnit.MetresPerSecond, 1, " m/s", 2),
        new("%", MeasureUnit.Percent, 1, " %", 0),
        new("kg", MeasureUnit.Kilograms, 1, " kg", 1),
    ];

    /// <summary>The unit of a word; null for a word that is none.</summary>
    /// <param name="word">Word as in files.</param>
    /// <returns>The unit or null.</returns>
    public static ShownUnit? Of(string word) => All.FirstOrDefault(u => u.Word == word);
}
