using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>
/// Reads free text sentence by sentence. Only whole names and aliases of measures and a few set phrases count here, never the
/// beginning of a word, so that plain speech starts no measure. Nothing is taken over by reading: the reader shows what it found,
/// and what it did not understand stays text. Never throws on any text.
/// </summary>
public static class Narrative
{
    /// <summary>From how many words on a line is a paragraph and not shorthand. Our choice.</summary>
    private const int WordsOfProse = 9;

    /// <summary>Whether a text is a paragraph rather than shorthand: a second sentence, a line break, or many words.</summary>
    /// <param name="text">The text.</param>
    /// <returns>True for a paragraph.</returns>
    public static bool IsProse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var body = text.Trim();
        var words = EntryScanner.Scan(body).Count(t => t.Kind == TokenKind.Word && t.Text.Length > 2 && EntryUnits.Find(t) is null);
        return body.Contains('\n', StringComparison.Ordinal) || body.Contains(". ", StringComparison.Ordinal) || words >= WordsOfProse;
    }

    /// <summary>Reads a paragraph.</summary>
    /// <param name="text">The paragraph.</param>
    /// <param name="measures">The measures that may be meant.</param>
    /// <param name="context">What is known beside the text; null for nothing.</param>
    /// <returns>What was read and what was not.</returns>
    public static NarrativeReading Read(string text, IReadOnlyList<Measure> measures, EntryContext? context = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(measures);
        var matcher = new MeasureMatcher(measures);
        var tokens = NumberWords.Fold(EntryScanner.Scan(text), matcher);
        var groups = new NarrativeGroups(tokens, matcher, measures).Make();
        var parts = new List<NarrativePart>();
        var pieces = new List<EntryPiece>();
        var rest = new List<string>();
        foreach (var group in groups)
        {
            if (group.Measure is not { } measure || !Take(text, group, measure, matcher, context ?? EntryContext.None, parts, pieces))
                rest.Add(text[group.From..group.To].Trim(' ', ',', ';', '\n', '\t'));
        }

        return new NarrativeReading
        {
            Text = text,
            Parts = [.. parts],
            Rest = string.Join(". ", rest.Select(r => r.TrimEnd('.')).Where(r => r.Any(char.IsLetterOrDigit))),
            Pieces = [.. pieces.OrderBy(p => p.From)],
        };
    }

    private static bool Take(
        string text, NarrativeGroup group, Measure measure, MeasureMatcher matcher, EntryContext context,
        List<NarrativePart> parts, List<EntryPiece> pieces)
    {
        var asTyped = text[group.From..group.To].Trim(' ', ',', ';', '\n', '\t', '.');
        var reader = new EntryReader(text, group.Values, matcher, context, asTyped) { IsProse = true };
        reader.Read(measure, null);
        var read = reader.Result();
        // A part that can't be used whole is not used at all: half a sentence in the record is worse than a whole one in the note.
        if (!read.Faults.IsEmpty || read.Measurements.IsEmpty && read.Observations.IsEmpty)
            return false;
        var spans = read.Pieces;
        foreach (var one in read.Measurements)
            parts.Add(Part(measure, one, null, Span(spans, p => !p.IsWords && p.Side == one.Side && p.Activity == one.Activity, group), read));
        foreach (var one in read.Observations)
            parts.Add(Part(measure, null, one, Span(spans, p => p.IsWords && p.Side == one.Side, group), read));
        pieces.AddRange(Apart(spans, group, measure));
        return true;
    }

    private static NarrativePart Part(Measure measure, Measurement? measurement, Observation? observation, (int From, int Length) span, EntryResult read) =>
        new(measure, measurement, observation, span.From, span.Length, read.Questions);

    private static (int From, int Length) Span(ImmutableArray<EntryPiece> spans, Func<EntryPiece, bool> fits, NarrativeGroup group) =>
        spans.FirstOrDefault(fits) is { } piece ? (piece.From, piece.Length) : (group.From, group.To - group.From);

    // "Both 135" gives two readings of one piece of text: it is highlighted once.
    private static IEnumerable<EntryPiece> Apart(ImmutableArray<EntryPiece> spans, NarrativeGroup group, Measure measure) =>
        spans.IsEmpty
            ? [new EntryPiece(group.From, group.To - group.From, measure.Id, null, null, false)]
            : spans.GroupBy(p => p.From).Select(g => g.First());
}
