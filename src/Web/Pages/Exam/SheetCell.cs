using System.Collections.Immutable;
using MomentArm.Exam;
using MomentArm.Records;

namespace MomentArm.Web.Pages.Exam;

/// <summary>How a cell stands.</summary>
public enum CellState
{
    /// <summary>What is shown is what is saved.</summary>
    Settled,

    /// <summary>Something else has been typed and not been left yet, or came back from a draft.</summary>
    Typing,

    /// <summary>What was typed can't be used; the faults say why.</summary>
    Faulty,

    /// <summary>What was typed is unusual; it is saved once it is confirmed.</summary>
    Asking,

    /// <summary>Someone else filled or changed the cell meanwhile; both values are shown.</summary>
    Conflict,

    /// <summary>The record refused it; the sentence says why.</summary>
    Refused,
}

/// <summary>One cell: what is saved, what is typed, and what there is to say about it.</summary>
public sealed class SheetCell(CellKey key, Measure measure, UnitChoice units = UnitChoice.Metric)
{
    /// <summary>Which cell.</summary>
    public CellKey Key { get; } = key;

    /// <summary>Its measure.</summary>
    public Measure Measure { get; } = measure;

    /// <summary>The saved measurement; null when there is none.</summary>
    public MeasurementRow? Measured { get; private set; }

    /// <summary>The saved words or grade; null when there are none.</summary>
    public ObservationRow? Observed { get; private set; }

    /// <summary>The text of what is saved.</summary>
    public string Saved { get; private set; } = "";

    /// <summary>The text in the field.</summary>
    public string Typed { get; set; } = "";

    /// <summary>How it stands.</summary>
    public CellState State { get; private set; }

    /// <summary>What could not be used.</summary>
    public ImmutableArray<EntryFault> Faults { get; private set; } = [];

    /// <summary>What is unusual.</summary>
    public ImmutableArray<EntryQuestion> Questions { get; private set; } = [];

    /// <summary>What was done with the typing and is not obvious.</summary>
    public ImmutableArray<string> Notes { get; private set; } = [];

    /// <summary>Why the record took nothing, or who was faster.</summary>
    public string? Sentence { get; private set; }

    /// <summary>After a conflict: what the other person left there; null when they emptied it.</summary>
    public string? Theirs { get; private set; }

    /// <summary>Whether something typed waits to be saved.</summary>
    public bool IsOpen => State != CellState.Settled;

    /// <summary>Takes over what stands in the record, and shows it.</summary>
    public void Settle(MeasurementRow? measured, ObservationRow? observed, ImmutableArray<string> notes = default)
    {
        Stand(measured, observed);
        Typed = Saved;
        Mark(CellState.Settled);
        Notes = notes.IsDefault ? [] : notes;
    }

    /// <summary>Takes over what stands in the record and leaves the typing as it is.</summary>
    public void Stand(MeasurementRow? measured, ObservationRow? observed)
    {
        (Measured, Observed) = (measured, observed);
        Saved = CellText.Of(Measure, measured, observed, units);
    }

    /// <summary>Something was typed and is not judged yet.</summary>
    public void Type(string text)
    {
        Typed = text;
        if (State is CellState.Settled or CellState.Typing)
            Mark(text.Trim() == Saved ? CellState.Settled : CellState.Typing);
    }

    /// <summary>The typing can't be used.</summary>
    public void Fault(ImmutableArray<EntryFault> faults)
    {
        Mark(CellState.Faulty);
        Faults = faults;
    }

    /// <summary>The typing is unusual and waits to be confirmed.</summary>
    public void Ask(ImmutableArray<EntryQuestion> questions)
    {
        Mark(CellState.Asking);
        Questions = questions;
    }

    /// <summary>Someone else was faster.</summary>
    public void Collide(string sentence, string theirs)
    {
        Mark(CellState.Conflict);
        Sentence = sentence;
        Theirs = theirs.Length > 0 ? theirs : null;
    }

    /// <summary>The record refused it.</summary>
    public void Refuse(string sentence)
    {
        Mark(CellState.Refused);
        Sentence = sentence;
    }

    private void Mark(CellState state) => (State, Faults, Questions, Notes, Sentence, Theirs) = (state, [], [], [], null, null);
}
