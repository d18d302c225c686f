using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>One reading while it is being read.</summary>
internal sealed class ReadingDraft
{
    public Side? Side { get; set; }

    /// <summary>The same on both sides.</summary>
    public bool Both { get; set; }

    public List<(double Value, UnitKind? Unit, string Text)> Numbers { get; } = [];

    public List<string> Words { get; } = [];

    public double? LeverM { get; set; }

    public string? LeverText { get; set; }

    public (double Value, string Text)? Pain { get; set; }

    public string? Grade { get; set; }

    /// <summary>What follows a slash in "7/10".</summary>
    public double? OutOf { get; set; }

    public int Slashes { get; set; }

    /// <summary>Dashes between numbers, as in "0-118".</summary>
    public int Dashes { get; set; }

    /// <summary>A fault in it was told already; it gives no measurement.</summary>
    public bool Broken { get; set; }

    public bool IsEmpty => Numbers.Count == 0 && Words.Count == 0 && Grade is null && LeverM is null && Pain is null;
}
