namespace MomentArm.FollowUp;

/// <summary>What a session's pain allows next. Names of the bands follow the traffic-light rule of the pain-monitoring model.</summary>
public enum PainLight
{
    /// <summary>Pain up to 3 and the next morning no worse: go on.</summary>
    Green,

    /// <summary>Pain 4 or 5, or a morning 2 points up: same dose, no step up.</summary>
    Amber,

    /// <summary>Pain above 5, a morning 3 points up, or both amber signs at once: a step back.</summary>
    Red,
}

/// <summary>
/// Pain-monitoring rule. Bands after Thomee 1997 (Phys Ther 77:1690, from memory) and Silbernagel 2007 (Am J Sports Med
/// 35:897, read in a summary); the lower edge of 3 is a setting (sources differ between 2 and 3).
/// </summary>
public static class PainResponse
{
    /// <summary>Judges one session day.</summary>
    /// <param name="worst">Worst pain during or straight after, 0 to 10; null when not answered.</param>
    /// <param name="morning">Pain the next morning, 0 to 10; null when not answered.</param>
    /// <param name="usualMorning">Usual morning pain before, 0 to 10; null when unknown.</param>
    /// <param name="ceiling">Pain accepted as safe, 0 to 5; usually 3.</param>
    /// <returns>The light and why, or null when nothing was answered.</returns>
    public static (PainLight Light, string Why)? Judge(int? worst, int? morning, int? usualMorning, int ceiling)
    {
        if (worst is null && morning is null)
            return null;
        var rise = morning is { } m && usualMorning is { } usual ? m - usual : (int?)null;
        if (worst is > 5)
            return (PainLight.Red, FormattableString.Invariant($"pain {worst} of 10 while exercising"));
        if (rise is >= 3)
            return (PainLight.Red, FormattableString.Invariant($"next morning {rise} points above usual"));
        if (worst > ceiling && rise is 2)
            return (PainLight.Red, FormattableString.Invariant($"pain {worst} of 10 while exercising and next morning 2 points above usual"));
        if (worst > ceiling)
            return (PainLight.Amber, FormattableString.Invariant($"pain {worst} of 10 while exercising, above {ceiling}"));
        if (rise is 2)
            return (PainLight.Amber, "next morning 2 points above usual");
        return (PainLight.Green, worst is null
            ? FormattableString.Invariant($"next morning {morning} of 10")
            : FormattableString.Invariant($"pain {worst} of 10 while exercising"));
    }
}
