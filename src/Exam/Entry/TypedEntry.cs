using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>
/// Reads what a therapist types: into the cell of a measure ("26 lb at 36 cm", "118 121 116") or into the shorthand line
/// ("hip abd L 118 N at 36 cm pain 3, R 149"). Never throws on any text; what cannot be used is told as a fault.
/// </summary>
public static class TypedEntry
{
    /// <summary>Reads the cell of one measure.</summary>
    /// <param name="text">What was typed; empty gives an empty result without fault.</param>
    /// <param name="measure">The measure of the cell.</param>
    /// <param name="side">The side of the cell; null for measures without side, or when the text names the sides itself.</param>
    /// <param name="context">What is known beside the typing; null for nothing.</param>
    /// <returns>What was read.</returns>
    public static EntryResult Parse(string text, Measure measure, Side? side, EntryContext? context = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(measure);
        var reader = new EntryReader(text, new MeasureMatcher([measure]), context ?? EntryContext.None);
        reader.Read(measure, side);
        return reader.Result();
    }

    /// <summary>Reads the shorthand line.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="measures">The measures that may be meant, found by id, name words or alias.</param>
    /// <param name="context">What is known beside the typing; null for nothing.</param>
    /// <returns>What was read, perhaps of several measures and both sides.</returns>
    public static EntryResult Parse(string text, IReadOnlyList<Measure> measures, EntryContext? context = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(measures);
        var reader = new EntryReader(text, new MeasureMatcher(measures), context ?? EntryContext.None);
        reader.Read(null, null);
        return reader.Result();
    }

    /// <summary>The measures that a typed name may mean: one for a whole name or alias, else all whose name words begin so.</summary>
    /// <param name="text">The name alone, such as "knee flex".</param>
    /// <param name="measures">The measures.</param>
    /// <returns>The measures; empty when nothing fits or when more than a name was typed.</returns>
    public static ImmutableArray<Measure> Find(string text, IReadOnlyList<Measure> measures)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(measures);
        var tokens = EntryScanner.Scan(text.Trim());
        return tokens.Count > 0 && new MeasureMatcher(measures).Find(tokens, 0) is { } match && match.Tokens == tokens.Count ? match.Measures : [];
    }

    /// <summary>The order in which an exam is typed: by position of the patient, then by order inside it, then by id.</summary>
    /// <param name="measures">The measures.</param>
    /// <returns>The measures in working order.</returns>
    public static ImmutableArray<Measure> InExamOrder(IEnumerable<Measure> measures) =>
        [.. measures.OrderBy(m => m.Position).ThenBy(m => m.Order).ThenBy(m => m.Id, StringComparer.Ordinal)];
}
