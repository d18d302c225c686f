using System.Globalization;
using System.Text;

namespace MomentArm.Web.Parts;

/// <summary>Places and words of the pain chart.</summary>
public sealed class PainLayout(string label, IReadOnlyList<PainDay> days)
{
    public const double LeftEdge = 30;
    public const double Height = 210;
    public const double BarTop = 166;
    public const double BarHeight = 16;

    private const double Top = 12;
    private const double Bottom = 156;

    public double Width => 640;

    public double RightEdge => Width - 10;

    private double Step => (RightEdge - LeftEdge) / Math.Max(1, days.Count);

    /// <summary>Half the width of a session's bar.</summary>
    public double BarHalf => Math.Min(9, 0.36 * Step);

    /// <summary>The line through the pain of sessions, broken by nothing: a session is joined to the next session.</summary>
    public string DuringPath
    {
        get
        {
            var path = new StringBuilder();
            for (var i = 0; i < days.Count; i++)
            {
                if (days[i].PainDuring is { } pain)
                {
                    path.Append(path.Length == 0 ? 'M' : 'L')
                        .Append(ShareScale.Attribute(X(i))).Append(' ').Append(ShareScale.Attribute(Y(pain)));
                }
            }

            return path.ToString();
        }
    }

    /// <summary>At most eight days are named, the first always.</summary>
    public IEnumerable<(double X, string Text)> DayLabels
    {
        get
        {
            var every = Math.Max(1, (int)Math.Ceiling(days.Count / 8.0));
            every = days.Count > 14 ? Math.Max(7, every) : every;
            for (var i = 0; i < days.Count; i += every)
            {
                yield return (X(i), days[i].Day.ToString("d MMM", CultureInfo.InvariantCulture));
            }
        }
    }

    /// <summary>The chart in one sentence.</summary>
    public string Summary
    {
        get
        {
            if (days.Count == 0)
            {
                return label + ": no days yet.";
            }

            var done = days.Count(day => day.Done);
            var planned = days.Count(day => day.Planned || day.Done);
            var pains = days.Where(day => day.PainDuring is not null).Select(day => day.PainDuring!.Value).ToList();
            var mornings = days.Where(day => day.Morning is not null).Select(day => day.Morning!.Value).ToList();
            return FormattableString.Invariant(
                $"{label} from {Said(days[0].Day)} to {Said(days[^1].Day)}: {done} of {planned} sessions done. ")
                + Range("Pain in sessions", pains) + " " + Range("Pain in the morning", mornings);
        }
    }

    public double X(int index) => LeftEdge + (index + 0.5) * Step;

    /// <summary>Height of a pain rating 0 to 10.</summary>
    public static double Y(int pain)
    {
        if (pain is < 0 or > 10)
        {
            throw new ArgumentOutOfRangeException(nameof(pain), pain, "A pain rating is a whole number from 0 to 10.");
        }

        return Bottom - (Bottom - Top) * pain / 10;
    }

    /// <summary>A day in words that no reader can take for another.</summary>
    public static string Said(DateOnly day) => day.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    private static string Range(string what, List<int> values) => values.Count == 0
        ? what + ": no answers."
        : FormattableString.Invariant($"{what}: first {values[0]}, last {values[^1]}, highest {values.Max()} of 10.");
}
