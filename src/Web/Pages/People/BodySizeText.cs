using System.Globalization;
using System.Text.RegularExpressions;

namespace MomentArm.Web.Pages.People;

/// <summary>What was typed as a size, in SI; or why it could not be read.</summary>
/// <param name="Value">Metres or kilograms; null when nothing was typed or it could not be read.</param>
/// <param name="Fault">What is wrong and how to write it; null when nothing is.</param>
public readonly record struct SizeReading(double? Value, string? Fault);

/// <summary>
/// Reads stature and mass as people say them. 1 inch = 0.0254 m and 1 pound = 0.45359237 kg exactly
/// (international yard and pound agreement, 1959).
/// </summary>
public static partial class BodySizeText
{
    public const double MetresPerInch = 0.0254;
    public const double KilogramsPerPound = 0.45359237;

    private const string StatureHelp = "Write 168 cm, 1.68 m or 5 ft 6.";
    private const string MassHelp = "Write 64 kg or 140 lb.";

    /// <summary>"168", "168 cm", "1.68 m", "5 ft 6", "5'6\"", "66 in".</summary>
    public static SizeReading Stature(string? typed)
    {
        var text = Plain(typed);
        if (text.Length == 0)
            return default;
        if (FeetInches().Match(text) is { Success: true } feet)
        {
            var inches = feet.Groups["in"].Success ? Number(feet.Groups["in"].Value) : 0;
            return inches < 12
                ? Within(12 * MetresPerInch * Number(feet.Groups["ft"].Value) + MetresPerInch * inches, 0.8, 2.4, StatureFault)
                : new SizeReading(null, "There are 12 inches in a foot, so the inches must be under 12. " + StatureHelp);
        }

        if (OneNumber().Match(text) is not { Success: true } one)
            return new SizeReading(null, $"\"{typed!.Trim()}\" is not a stature. {StatureHelp}");
        var value = Number(one.Groups["n"].Value);
        return one.Groups["unit"].Value switch
        {
            "m" => Within(value, 0.8, 2.4, StatureFault),
            "cm" => Within(value / 100, 0.8, 2.4, StatureFault),
            "in" or "inches" or "inch" or "\"" => Within(value * MetresPerInch, 0.8, 2.4, StatureFault),
            "" when value is >= 0.8 and <= 2.4 => new SizeReading(value, null),
            "" when value is >= 80 and <= 240 => new SizeReading(value / 100, null),
            "" => new SizeReading(null, $"\"{typed!.Trim()}\" could be several things. Add the unit: {StatureHelp}"),
            _ => new SizeReading(null, $"\"{one.Groups["unit"].Value}\" is no unit of stature here. {StatureHelp}"),
        };
    }

    /// <summary>"64", "64.5 kg", "140 lb", "10 st 4". A bare number is kilograms.</summary>
    public static SizeReading Mass(string? typed)
    {
        var text = Plain(typed);
        if (text.Length == 0)
            return default;
        if (Stones().Match(text) is { Success: true } stones)
        {
            var rest = stones.Groups["lb"].Success ? Number(stones.Groups["lb"].Value) : 0;
            return rest < 14
                ? Within((14 * Number(stones.Groups["st"].Value) + rest) * KilogramsPerPound, 15, 350, MassFault)
                : new SizeReading(null, "There are 14 pounds in a stone, so the pounds must be under 14. " + MassHelp);
        }

        if (OneNumber().Match(text) is not { Success: true } one)
            return new SizeReading(null, $"\"{typed!.Trim()}\" is not a body mass. {MassHelp}");
        var value = Number(one.Groups["n"].Value);
        return one.Groups["unit"].Value switch
        {
            "" or "kg" or "kilos" or "kilograms" => Within(value, 15, 350, MassFault),
            "lb" or "lbs" or "pounds" or "pound" => Within(value * KilogramsPerPound, 15, 350, MassFault),
            _ => new SizeReading(null, $"\"{one.Groups["unit"].Value}\" is no unit of mass here. {MassHelp}"),
        };
    }

    /// <summary>Stature for the screen: "1.68 m (5 ft 6 in)".</summary>
    public static string Stature(double metres)
    {
        var inches = (int)Math.Round(metres / MetresPerInch, MidpointRounding.AwayFromZero);
        return FormattableString.Invariant($"{metres:0.00} m ({inches / 12} ft {inches % 12} in)");
    }

    /// <summary>Mass for the screen: "64 kg (141 lb)".</summary>
    public static string Mass(double kilograms) =>
        FormattableString.Invariant($"{kilograms:0.#} kg ({kilograms / KilogramsPerPound:0} lb)");

    /// <summary>Stature as it stands in the field.</summary>
    public static string? StatureField(double? metres) =>
        metres is { } m ? FormattableString.Invariant($"{m * 100:0.#} cm") : null;

    /// <summary>Mass as it stands in the field.</summary>
    public static string? MassField(double? kilograms) =>
        kilograms is { } kg ? FormattableString.Invariant($"{kg:0.#} kg") : null;

    private const string StatureFault = "A stature must be from 0.8 to 2.4 m (2 ft 8 to 7 ft 10). " + StatureHelp;
    private const string MassFault = "A body mass must be from 15 to 350 kg (33 to 772 lb). " + MassHelp;

    private static SizeReading Within(double value, double low, double high, string fault) =>
        value >= low && value <= high ? new SizeReading(value, null) : new SizeReading(null, fault);

    private static double Number(string digits) =>
        double.Parse(digits.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    private static string Plain(string? typed) => (typed ?? "").Trim().ToLowerInvariant()
        .Replace('\u2032', '\'').Replace('\u2019', '\'').Replace('\u2033', '"').Replace('\u201d', '"')
        .Replace("''", "\"", StringComparison.Ordinal).TrimEnd('.');

    [GeneratedRegex("""^(?<ft>\d{1,2})\s*(?:ft\.?|feet|foot|')\s*(?:(?<in>\d{1,2}(?:[.,]\d{1,2})?)\s*(?:in\.?|inches|inch|")?)?$""")]
    private static partial Regex FeetInches();

    [GeneratedRegex("""^(?<st>\d{1,2})\s*(?:st\.?|stones?)\s*(?:(?<lb>\d{1,2}(?:[.,]\d{1,2})?)\s*(?:lbs?|pounds?)?)?$""")]
    private static partial Regex Stones();

    [GeneratedRegex("""^(?<n>\d{1,4}(?:[.,]\d{1,3})?)\s*(?<unit>[a-z"']*)$""")]
    private static partial Regex OneNumber();
}
