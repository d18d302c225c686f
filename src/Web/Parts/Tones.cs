using MomentArm.Exam;

namespace MomentArm.Web.Parts;

/// <summary>Class names and shapes of the tones.</summary>
public static class Tones
{
    public static string Suffix(this Tone tone) => tone switch
    {
        Tone.Neutral => "neutral",
        Tone.Good => "good",
        Tone.Watch => "watch",
        Tone.Stop => "stop",
    };

    /// <summary>An outline inside a 10 by 10 box: bar, tick, triangle, octagon.</summary>
    public static string Shape(this Tone tone) => tone switch
    {
        Tone.Neutral => "M1 4H9V6H1Z",
        Tone.Good => "M0.8 5.4L2.3 3.9L4 5.6L7.9 1.6L9.4 3.1L4 8.6Z",
        Tone.Watch => "M5 0.6L9.8 9.4H0.2Z",
        Tone.Stop => "M3 0H7L10 3V7L7 10H3L0 7V3Z",
    };
}
