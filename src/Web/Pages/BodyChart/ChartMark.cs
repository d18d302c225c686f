using System.Globalization;
using System.Text.Json;
using MomentArm.Exam;
using MomentArm.Records;

namespace MomentArm.Web.Pages.BodyChart;

/// <summary>From where the figure of the chart is seen.</summary>
public enum ChartView
{
    /// <summary>From the front.</summary>
    Front,

    /// <summary>From behind.</summary>
    Back,

    /// <summary>The right side.</summary>
    Right,

    /// <summary>The left side.</summary>
    Left,
}

/// <summary>What is felt at a place.</summary>
public enum Feeling
{
    /// <summary>Pain.</summary>
    Pain,

    /// <summary>Numbness.</summary>
    Numbness,

    /// <summary>Tingling.</summary>
    Tingling,

    /// <summary>Stiffness.</summary>
    Stiffness,
}

/// <summary>One mark on the body chart.</summary>
/// <param name="View">The picture it is in.</param>
/// <param name="X">From the left of the picture, as a fraction of its width.</param>
/// <param name="Y">From the top of the picture, as a fraction of its height.</param>
/// <param name="Feeling">What is felt there.</param>
/// <param name="Level">How strong, 0 to 10; null when not asked.</param>
/// <param name="Place">The nearest named place in words, with its side.</param>
public sealed record ChartMark(ChartView View, double X, double Y, Feeling Feeling, int? Level, string Place)
{
    /// <summary>The sheet of a visit that holds the marks.</summary>
    public const string Sheet = "chart";

    /// <summary>Item of the answer row, "mark-1".</summary>
    public string Item { get; init; } = "";

    /// <summary>Version of the row; null for a mark not saved yet.</summary>
    public Guid? Version { get; init; }

    /// <summary>The mark in words: "pain 6/10, outer thigh, right".</summary>
    public string Words => $"{Feeling.ToString().ToLowerInvariant()}{(Level is { } level ? string.Create(CultureInfo.InvariantCulture, $" {level}/10") : "")}, {Place}";

    /// <summary>The marks of a visit, oldest first. What cannot be read is left out.</summary>
    public static IReadOnlyList<ChartMark> Of(VisitRecord visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        return [.. visit.Answers.Where(a => a.Sheet == Sheet).OrderBy(a => a.Id).Select(Read).OfType<ChartMark>()];
    }

    /// <summary>As the row keeps it.</summary>
    public string ToValue() => JsonSerializer.Serialize(new Stored(View, X, Y, Feeling, Level, Place));

    /// <summary>The first free item among those taken.</summary>
    public static string FreeItem(IEnumerable<ChartMark> marks)
    {
        var taken = marks.Select(m => m.Item).ToHashSet(StringComparer.Ordinal);
        return Enumerable.Range(1, taken.Count + 1).Select(n => string.Create(CultureInfo.InvariantCulture, $"mark-{n}")).First(i => !taken.Contains(i));
    }

    private static ChartMark? Read(VisitAnswerRow row)
    {
        try
        {
            return JsonSerializer.Deserialize<Stored>(row.Value) is { } s
                ? new ChartMark(s.View, s.X, s.Y, s.Feeling, s.Level, s.Place) { Item = row.Item, Version = row.RowVersion }
                : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private sealed record Stored(ChartView View, double X, double Y, Feeling Feeling, int? Level, string Place);
}
