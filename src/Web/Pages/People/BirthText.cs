using System.Globalization;
using System.Text.RegularExpressions;

namespace MomentArm.Web.Pages.People;

/// <summary>What was typed as birth: a year, a whole date, nothing, or a fault.</summary>
public readonly record struct BirthReading(int? Year, DateOnly? Date, string? Fault);

/// <summary>Reads a birth year or date. Dates by slashes are month first, as in the United States.</summary>
public static partial class BirthText
{
    private const string Help = "Write the year (1984) or the date (1984-03-25, 3/25/1984 or 25 Mar 1984).";

    private static readonly string[] Forms =
    [
        "yyyy-M-d", "M/d/yyyy", "d MMM yyyy", "d MMMM yyyy", "MMM d yyyy", "MMMM d yyyy", "MMM d, yyyy", "MMMM d, yyyy", "yyyyMMdd",
    ];

    public static BirthReading Read(string? typed, DateOnly today)
    {
        var text = (typed ?? "").Trim();
        if (text.Length == 0)
            return default;
        if (Year().IsMatch(text))
        {
            var year = int.Parse(text, NumberStyles.None, CultureInfo.InvariantCulture);
            return year >= today.Year - 120 && year <= today.Year
                ? new BirthReading(year, null, null)
                : new BirthReading(null, null, FormattableString.Invariant(
                    $"The birth year must be from {today.Year - 120} to {today.Year}."));
        }

        if (!DateOnly.TryParseExact(text, Forms, CultureInfo.InvariantCulture, DateTimeStyles.AllowWhiteSpaces, out var day))
            return new BirthReading(null, null, $"\"{text}\" is not a birth year or date. {Help}");
        return day <= today && day.Year >= today.Year - 120
            ? new BirthReading(day.Year, day, null)
            : new BirthReading(null, null, "The birth date must lie in the last 120 years and not in the future.");
    }

    [GeneratedRegex(@"^\d{4}$")]
    private static partial Regex Year();
}
