using MomentArm.Exam;
using System.Globalization;

namespace MomentArm.Web.Parts;

/// <summary>Where a load share stands on its bar, and how it is said in words. Shares are fractions: 1 is all of the capacity.</summary>
public static class ShareScale
{
    /// <summary>The end of the bar. What lies beyond is marked by an arrow and said in numbers.</summary>
    public const double End = 1.5;

    /// <summary>Length of the bar in drawing units.</summary>
    public const double Length = 300;

    /// <summary>Free space before and after the bar, for dots and whiskers at its ends.</summary>
    public const double Margin = 10;

    /// <summary>Place of a share along the bar; shares outside the bar stand at its ends.</summary>
    public static double Place(double share)
    {
        if (double.IsNaN(share))
        {
            throw new ArgumentException("A load share must be a number.", nameof(share));
        }

        return Margin + Length * Math.Clamp(share / End, 0, 1);
    }

    /// <summary>A number as written into a drawing.</summary>
    public static string Attribute(double value) => Math.Round(value, 1).ToString(CultureInfo.InvariantCulture);

    /// <summary>54 % for 0.54.</summary>
    public static string Percent(double share) =>
        Math.Round(100 * share).ToString(CultureInfo.InvariantCulture) + " %";

    /// <summary>Just the figure: 54 for 0.54.</summary>
    public static string Figure(double share) => Math.Round(100 * share).ToString(CultureInfo.InvariantCulture);

    /// <summary>How an interval lies to the window: which tone, and in which words. Null window: compared with the whole only.</summary>
    public static (Tone Tone, string Words) Verdict(double middle, double low, double high, double? windowLow, double? windowHigh)
    {
        if (middle > 1)
        {
            return (Tone.Stop, "more than the capacity");
        }

        if (windowHigh is { } top && middle > top)
        {
            return (Tone.Watch, high > 1 ? "over the window, may pass the capacity" : "over the window");
        }

        if (windowLow is { } bottom && middle < bottom)
        {
            return (Tone.Watch, "under the window");
        }

        if (high > 1)
        {
            return (Tone.Watch, "may pass the capacity");
        }

        if (windowLow is null && windowHigh is null)
        {
            return (Tone.Neutral, "within the capacity");
        }

        var whole = low >= (windowLow ?? 0) && high <= (windowHigh ?? 1);
        return (Tone.Good, whole ? "in the window" : "in the window, range reaches outside");
    }
}
