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

    /// <summary>Percent of body weight times stature.</summary>
    PercentWeightHeight,

    /// <summary>Percent of body weight.</summary>
    PercentWeight,

    /// <summary>A unit of something else, such as mmHg or "% of maximum": kept and not judged.</summary>
    Foreign,
}

/// <summary>The unit words that are understood.</summary>
internal static class EntryUnits
{
    private static readonly FrozenDictionary<string, UnitKind> Words = new Dictionary<string, UnitKind>
    {
        ["n"] = UnitKind.Newton, ["newton"] = UnitKind.Newton, ["newtons"] = UnitKind.Newton,
        ["n·m"] = UnitKind.NewtonMetre, ["n*m"] = UnitKind.NewtonMetre,
        ["%bw"] = UnitKind.PercentWeight, ["%bwh"] = UnitKind.PercentWeightHeight,
        ["mmhg"] = UnitKind.Foreign, ["bar"] = UnitKind.Foreign, ["psi"] = UnitKind.Foreign, ["kpa"] = UnitKind.Foreign,
        ["w"] = UnitKind.Foreign, ["watt"] = UnitKind.Foreign, ["watts"] = UnitKind.Foreign, ["j"] = UnitKind.Foreign,
        ["stone"] = UnitKind.Foreign, ["min/km"] = UnitKind.Foreign, ["rm"] = UnitKind.Foreign,
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

    /// <summary>The unit at a place, which may be several words: "% body weight x height", "% of 1RM", "Nm x deg", "min/mile".</summary>
    public static (UnitKind Kind, int Taken)? At(IReadOnlyList<Token> tokens, int at)
    {
        if (at >= tokens.Count || Find(tokens[at]) is not { } kind)
            return null;
        bool Is(int ahead, params ReadOnlySpan<string> words) => at + ahead < tokens.Count && EntryWords.Is(tokens[at + ahead], words);
        if (kind == UnitKind.Percent)
            return Share(Is);
        if (kind == UnitKind.NewtonMetre && Is(1, "x", "*", "times") && Is(2, "deg", "degrees", "°"))
            return (UnitKind.Foreign, 3);
        if (kind == UnitKind.Minute && at + 2 < tokens.Count && tokens[at + 1].Kind == TokenKind.Slash && Is(2, "mile", "mi", "km"))
            return (UnitKind.Foreign, 3);
        return (kind, 1);
    }

    private delegate bool Ahead(int ahead, params ReadOnlySpan<string> words);

    private static (UnitKind Kind, int Taken) Share(Ahead isWord)
    {
        var of = isWord(1, "of") ? 1 : 0;
        if (isWord(of + 1, "bwh", "bw·h"))
            return (UnitKind.PercentWeightHeight, of + 2);
        var weight = isWord(of + 1, "bw") ? 2 : isWord(of + 1, "body") && isWord(of + 2, "weight", "mass") ? 3 : 0;
        if (weight > 0)
            return isWord(of + weight, "x", "*", "times") && isWord(of + weight + 1, "h", "height", "stature")
                ? (UnitKind.PercentWeightHeight, of + weight + 2)
                : (UnitKind.PercentWeight, of + weight);
        return isWord(of + 1, "max", "maximum", "maximal", "mvc", "mvic", "1rm", "10rm", "pre-injury", "peak")
            ? (UnitKind.Foreign, of + 2)
            : (UnitKind.Percent, 1);
    }

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
            null => value * shown.StoredPerShown,
            UnitKind.KilogramForce => value,
            UnitKind.PoundForce => value * 0.45359237,
            _ => null,
        },
        MeasureUnit.Newtons => unit switch
        {
            null => value * shown.StoredPerShown,
            UnitKind.Newton or UnitKind.NewtonMetre => value,
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
