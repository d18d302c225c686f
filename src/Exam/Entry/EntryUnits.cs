using System.Collections.Frozen;

namespace MomentArm.Exam;

/// <summary>What a unit word stands for.</summary>
internal enum UnitKind
{
    Newton,
    KilogramForce,
    PoundForce,
    NewtonMetre,
    TorquePerMass,
    Degree,
    Radian,
    Metre,
    Centimetre,
    Millimetre,
    Inch,
    Kilometre,
    Foot,
    Mile,
    Second,
    Minute,
    Hour,
    MetrePerSecond,
    KilometrePerHour,
    MilePerHour,
    Times,
    Percent,
    Point,
}

/// <summary>The unit words that are understood.</summary>
internal static class EntryUnits
{
    private static readonly FrozenDictionary<string, UnitKind> Words = new Dictionary<string, UnitKind>
    {
        ["n"] = UnitKind.Newton, ["newton"] = UnitKind.Newton, ["newtons"] = UnitKind.Newton,
        ["kgf"] = UnitKind.KilogramForce, ["kg"] = UnitKind.KilogramForce, ["kp"] = UnitKind.KilogramForce,
        ["lb"] = UnitKind.PoundForce, ["lbs"] = UnitKind.PoundForce, ["lbf"] = UnitKind.PoundForce,
        ["pounds"] = UnitKind.PoundForce,
        ["nm"] = UnitKind.NewtonMetre, ["n-m"] = UnitKind.NewtonMetre,
        ["nm/kg"] = UnitKind.TorquePerMass, ["n/kg"] = UnitKind.TorquePerMass,
        ["°"] = UnitKind.Degree, ["º"] = UnitKind.Degree, ["deg"] = UnitKind.Degree, ["degs"] = UnitKind.Degree,
        ["degree"] = UnitKind.Degree, ["degrees"] = UnitKind.Degree,
        ["rad"] = UnitKind.Radian, ["radians"] = UnitKind.Radian,
        ["m"] = UnitKind.Metre, ["cm"] = UnitKind.Centimetre, ["mm"] = UnitKind.Millimetre,
        ["in"] = UnitKind.Inch, ["inch"] = UnitKind.Inch, ["inches"] = UnitKind.Inch, ["\""] = UnitKind.Inch,
        ["km"] = UnitKind.Kilometre, ["ft"] = UnitKind.Foot, ["feet"] = UnitKind.Foot,
        ["mi"] = UnitKind.Mile, ["mile"] = UnitKind.Mile, ["miles"] = UnitKind.Mile,
        ["s"] = UnitKind.Second, ["sec"] = UnitKind.Second, ["secs"] = UnitKind.Second, ["second"] = UnitKind.Second,
        ["seconds"] = UnitKind.Second, ["min"] = UnitKind.Minute, ["mins"] = UnitKind.Minute, ["minutes"] = UnitKind.Minute,
        ["h"] = UnitKind.Hour, ["hours"] = UnitKind.Hour,
        ["m/s"] = UnitKind.MetrePerSecond, ["km/h"] = UnitKind.KilometrePerHour, ["mph"] = UnitKind.MilePerHour,
        ["x"] = UnitKind.Times, ["reps"] = UnitKind.Times, ["times"] = UnitKind.Times,
        ["%"] = UnitKind.Percent, ["percent"] = UnitKind.Percent,
        ["points"] = UnitKind.Point, ["point"] = UnitKind.Point, ["pts"] = UnitKind.Point,
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    public static UnitKind? Find(Token token) =>
        token.Kind == TokenKind.Word && Words.TryGetValue(token.Text.TrimEnd('.'), out var unit) ? unit : null;

    /// <summary>Metres in one of a length unit; null for other units.</summary>
    public static double? Metres(UnitKind unit) => unit switch
    {
        UnitKind.Metre => 1,
        UnitKind.Centimetre => 0.01,
        UnitKind.Millimetre => 0.001,
        UnitKind.Inch => StrengthMath.MetresPerInch,
        UnitKind.Foot => 12 * StrengthMath.MetresPerInch,
        UnitKind.Kilometre => 1000,
        UnitKind.Mile => 1609.344,
        _ => null,
    };

    private static double? Seconds(UnitKind unit) => unit switch
    {
        UnitKind.Second => 1,
        UnitKind.Minute => 60,
        UnitKind.Hour => 3600,
        _ => null,
    };

    private static double? SpeedOf(UnitKind unit) => unit switch
    {
        UnitKind.MetrePerSecond => 1,
        UnitKind.KilometrePerHour => 1 / 3.6,
        UnitKind.MilePerHour => 0.44704,
        _ => null,
    };

    /// <summary>Stored value of a number with a unit, or null when that unit does not belong to the measure.</summary>
    public static double? ToStored(double value, UnitKind? unit, ShownUnit shown) => shown.Stored switch
    {
        MeasureUnit.Metres when unit is { } length => Metres(length) * value,
        MeasureUnit.Seconds when unit is { } time => Seconds(time) * value,
        MeasureUnit.MetresPerSecond when unit is { } speed => SpeedOf(speed) * value,
        MeasureUnit.Metres or MeasureUnit.Seconds or MeasureUnit.MetresPerSecond => value * shown.StoredPerShown,
        MeasureUnit.Count => unit is null or UnitKind.Times ? value : null,
        MeasureUnit.Percent => unit is null or UnitKind.Percent ? value : null,
        MeasureUnit.Kilograms => unit switch
        {
            null or UnitKind.KilogramForce => value,
            UnitKind.PoundForce => value * 0.45359237,
            _ => null,
        },
        MeasureUnit.Newtons => unit switch
        {
            null or UnitKind.Newton or UnitKind.NewtonMetre => value,
            UnitKind.KilogramForce => StrengthMath.FromKilogramForce(value),
            UnitKind.PoundForce => StrengthMath.FromPoundForce(value),
            _ => null,
        },
        MeasureUnit.Radians => unit switch
        {
            null or UnitKind.Degree => value * (Math.PI / 180),
            UnitKind.Radian => value,
            _ => null,
        },
        MeasureUnit.Points => unit is null or UnitKind.Point ? value : null,
    };
}
