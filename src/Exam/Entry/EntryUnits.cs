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
        _ => null,
    };

    /// <summary>Stored value of a number with a unit, or null when that unit does not belong to the measure.</summary>
    public static double? ToStored(double value, UnitKind? unit, MeasureUnit stored) => stored switch
    {
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
