using MomentArm.Exam;
using MomentArm.Records;

namespace MomentArm.Web.Pages.Exam;

/// <summary>A paragraph typed or dictated: read, shown, and taken over once it is confirmed.</summary>
public sealed partial class ExamSheet
{
    /// <summary>Reads a paragraph; nothing is taken over by that.</summary>
    public NarrativeReading ReadParagraph(string text) => Narrative.Read(text, Measures, Context);

    /// <summary>What of a paragraph does not fit with the rest of the visit or with the last one.</summary>
    public IReadOnlyList<EntryQuestion> DoubtsAbout(NarrativePart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.Measurement is { } one ? [.. part.Questions, .. Doubts(part.Measure, [one])] : part.Questions;
    }

    /// <summary>Takes over one reading of a paragraph.</summary>
    public async Task<LineReport> TakeAsync(NarrativePart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        var report = LineReport.Nothing;
        await OneAtATimeAsync(async () =>
        {
            if (part.Measurement is { } measurement && CellFor(CellKey.Of(measurement)) is { } cell)
                report = await NoteAsync(cell, cell.Saved, await SaveAsync(cell, cell, measurement), CellText.Short(cell.Measure, measurement, Units), report);
            else if (part.Observation is { } seen && CellFor(CellKey.Of(seen)) is { } words)
                report = await NoteAsync(words, words.Saved, await SaveAsync(words, seen, seen.Text), seen.Grade ?? seen.Text, report);
            ReadAgain();
        });
        return report;
    }

    /// <summary>Adds text to what the patient says in the visit's note; null when it was added, else why not.</summary>
    public async Task<string?> AddToNoteAsync(string text)
    {
        if (string.IsNullOrWhiteSpace(text))
            return null;
        for (var tries = 0; tries < 3; tries++)
        {
            var visit = (await desk.Stores.Visits.GetAsync(who, Record.Visit.Id))?.Visit;
            if (visit is null)
                return "This visit is not there any more.";
            var note = VisitNote.Of(visit);
            var told = string.IsNullOrWhiteSpace(note.Subjective) ? text.Trim() : $"{note.Subjective.TrimEnd()}\n{text.Trim()}";
            switch (await desk.Stores.Visits.SaveNoteAsync(who, visit.Id, note with { Subjective = told }, visit.RowVersion))
            {
                case SaveOutcome<Visit>.Saved:
                    return null;
                case SaveOutcome<Visit>.Refused refused:
                    return refused.Sentence;
            }
        }

        return "The note is being changed by someone else. Try again.";
    }
}
