using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>
/// What is known beside the typing. Everything in it may be missing: an entry is read without age, mass, stature or an affected
/// side, and nothing is invented in their place.
/// </summary>
public sealed record EntryContext
{
    /// <summary>Nothing known.</summary>
    public static EntryContext None { get; } = new();

    /// <summary>Body mass, kilograms; turns "1.05 Nm/kg" and "60 % of body weight" into a reading.</summary>
    public double? MassKg { get; init; }

    /// <summary>Stature, metres; with the mass it turns "8 % body weight x height" into a torque.</summary>
    public double? StatureM { get; init; }

    /// <summary>The affected side; gives "worst side" and "other side" a side.</summary>
    public Side? AffectedSide { get; init; }

    /// <summary>Units of bare numbers.</summary>
    public UnitChoice Units { get; init; }

    /// <summary>What this visit holds already. A lever arm typed for one side serves the other; a deficit is taken off the other side.</summary>
    public ImmutableArray<Measurement> Now { get; init; } = [];

    /// <summary>The latest earlier readings. A lever arm not typed again is taken from them; slips of unit show against them.</summary>
    public ImmutableArray<Measurement> Last { get; init; } = [];

    /// <summary>The unit in which a bare number of a measure is meant.</summary>
    internal ShownUnit ShownUnitOf(Measure measure) => UsUnits.Shown(measure.Shown, Units);

    /// <summary>A lever arm that need not be typed again, with where it comes from; null when there is none.</summary>
    internal (double Metres, string From)? LeverOf(Measure measure, Side? side)
    {
        var now = Now.LastOrDefault(m => m.MeasureId == measure.Id && m.Side != side && IsPad(m));
        if (now is not null)
            return (now.LeverArmM!.Value, "as on the other side");
        var last = Last.LastOrDefault(m => m.MeasureId == measure.Id && m.Side == side && IsPad(m))
            ?? Last.LastOrDefault(m => m.MeasureId == measure.Id && IsPad(m));
        return last is null ? null : (last.LeverArmM!.Value, "as last time");
    }

    // A torque is kept as a force at one metre: that is no place of a pad.
    private static bool IsPad(Measurement measurement) => measurement.LeverArmM is { } lever && lever != 1;
}
