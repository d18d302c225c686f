namespace MomentArm.Exam;

/// <summary>The unit in which values are stored. Screens and files show degrees for radians.</summary>
public enum MeasureUnit
{
    /// <summary>Points of a scale from 0 to 10.</summary>
    Points,

    /// <summary>Radians; shown in degrees.</summary>
    Radians,

    /// <summary>Newtons.</summary>
    Newtons,
}
