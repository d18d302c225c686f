namespace MomentArm.Exam;

/// <summary>The unit in which values are stored.</summary>
public enum MeasureUnit
{
    /// <summary>Points of a scale.</summary>
    Points,

    /// <summary>Radians.</summary>
    Radians,

    /// <summary>Newtons.</summary>
    Newtons,

    /// <summary>Seconds.</summary>
    Seconds,

    /// <summary>Times, repetitions, pieces.</summary>
    Count,

    /// <summary>Metres.</summary>
    Metres,

    /// <summary>Metres per second.</summary>
    MetresPerSecond,

    /// <summary>Hundredths of a whole, 100 being the whole.</summary>
    Percent,

    /// <summary>Kilograms.</summary>
    Kilograms,
}
