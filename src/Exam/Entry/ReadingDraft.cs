using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>A number of a reading, with its unit where one was typed.</summary>
/// <param name="Value">The number.</param>
/// <param name="Unit">Its unit; null for a bare number.</param>
/// <param name="Text">Number and unit as typed.</param>
/// <param name="UnitText">The unit as typed; null for a bare number.</param>
internal readonly record struct DraftNumber(double Value, UnitKind? Unit, string Text, string? UnitText = null);

/// <summary>One reading while it is being read.</summary>
internal sealed class ReadingDraft
{
    public Side? Side { get; set; }

    /// <summary>The same on both sides.</summary>
    public bool Both { get; set; }

    public List<DraftNumber> Numbers { get; } = [];

    public List<string> Words { get; } = [];

    public double? LeverM { get; set; }

    public string? LeverText { get; set; }

    public (double Value, string Text)? Pain { get; set; }

    public string? Grade { get; set; }

    /// <summary>What follows a slash in "7/10".</summary>
    public double? OutOf { get; set; }

    /// <summary>A symmetry typed as such, "82 %".</summary>
    public string? Symmetry { get; set; }

    /// <summary>A value that was printed or told beside the reading.</summary>
    public string? Printed { get; set; }

    /// <summary>The number is what is missing, not what is there.</summary>
    public bool IsDeficit { get; set; }

    /// <summary>The number lies beyond straight.</summary>
    public bool IsHyper { get; set; }

    /// <summary>Which of several readings of the visit, "after".</summary>
    public string? Moment { get; set; }

    /// <summary>The moment came behind its number, so that the next number is another reading.</summary>
    public bool IsClosed { get; set; }

    public TestConditions Conditions { get; set; } = TestConditions.None;

    public int Slashes { get; set; }

    /// <summary>Dashes between numbers, as in "0-118".</summary>
    public int Dashes { get; set; }

    /// <summary>A fault in it was told already; it gives no measurement.</summary>
    public bool Broken { get; set; }

    /// <summary>First and last place of it in the text.</summary>
    public (int From, int To)? Span { get; set; }

    public bool IsEmpty =>
        Numbers.Count == 0 && Words.Count == 0 && Grade is null && LeverM is null && Pain is null && Symmetry is null && Printed is null
        && Moment is null && Conditions == TestConditions.None;

    /// <summary>A new draft of the same side.</summary>
    public ReadingDraft Next() => new() { Side = Side, Both = Both };
}
