using System.Globalization;
using System.Net;
using System.Text;
using MomentArm.Drawing;
using MomentArm.Prescribing;
using QRCoder;

namespace MomentArm.Documents;

/// <summary>The sheet a patient takes home, as HTML that prints on letter and A4.</summary>
public static class Handout
{
    /// <summary>The style sheet of the handout; the same for a page of the app and a file on its own.</summary>
    public static string StyleSheet { get; } = ReadStyleSheet();

    /// <summary>A whole HTML file with the style sheet inside and no outside reference.</summary>
    public static string Page(HandoutInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        return $"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8"/>
            <meta name="viewport" content="width=device-width, initial-scale=1"/>
            <title>{Text(Title(input))}</title>
            <style>
            {StyleSheet}
            </style>
            </head>
            <body class="handout-body">
            <main>
            {Body(input)}
            </main>
            </body>
            </html>

            """;
    }

    /// <summary>The handout's main part, for a page of the app.</summary>
    public static string Body(HandoutInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        var html = new StringBuilder();
        html.AppendLine("<article class=\"handout\">");
        Head(html, input);
        foreach (var item in HandoutItems.Of(input))
            Item(html, item, input.Phrases);
        Foot(html, input);
        html.AppendLine("</article>");
        return html.ToString();
    }

    /// <summary>The code that opens an address, as SVG without outside reference.</summary>
    public static string Code(string address, string label)
    {
        using var data = QRCodeGenerator.GenerateQrCode(address, QRCodeGenerator.ECCLevel.M);
        var modules = data.ModuleMatrix;
        var size = modules.Count;
        var path = new StringBuilder();
        for (var row = 0; row < size; row++)
        {
            for (var column = 0; column < size; column++)
            {
                if (modules[row][column])
                    path.Append(CultureInfo.InvariantCulture, $"M{column} {row}h1v1h-1z");
            }
        }

        return $"<svg class=\"handout-code\" role=\"img\" aria-label=\"{Text(label)}\" viewBox=\"0 0 {size} {size}\" width=\"128\" height=\"128\" shape-rendering=\"crispEdges\"><rect width=\"{size}\" height=\"{size}\" fill=\"#fff\"/><path fill=\"#000\" d=\"{path}\"/></svg>";
    }

    private static string Title(HandoutInput input) =>
        input.Phrases.HandoutTitle.Replace("{area}", input.Area, StringComparison.Ordinal);

    private static void Head(StringBuilder html, HandoutInput input)
    {
        var minutes = Math.Max(1, Math.Round(SessionTime.Seconds(input.Program.Items, input.Exercise) / 60));
        var plan = input.Phrases.HandoutPlan
            .Replace("{days}", input.Program.DaysPerWeek.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal)
            .Replace("{minutes}", minutes.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal);
        html.AppendLine("<header class=\"handout-head\"><div>");
        html.AppendLine(CultureInfo.InvariantCulture, $"<h1>{Text(Title(input))}</h1>");
        html.AppendLine(CultureInfo.InvariantCulture, $"<p>{Text(plan)} {Text(Pain(input.Phrases.PainRule, input.Program))}</p>");
        html.AppendLine(CultureInfo.InvariantCulture, $"<p class=\"handout-small\">{input.Day.ToString("d MMM yyyy", CultureInfo.InvariantCulture)}{Contact(input)}</p>");
        if (input.Program.Note is { Length: > 0 } note)
            html.AppendLine(CultureInfo.InvariantCulture, $"<p class=\"handout-note\">{Text(note)}</p>");
        html.AppendLine("</div>");
        if (input.PageAddress is { } address)
        {
            html.AppendLine("<div class=\"handout-page\">");
            html.AppendLine(Code(address, input.Phrases.PageHeading));
            html.AppendLine(CultureInfo.InvariantCulture, $"<p><strong>{Text(input.Phrases.PageHeading)}</strong><br/>{Text(input.Phrases.PageHelp)}</p></div>");
        }

        html.AppendLine("</header>");
    }

    private static void Item(StringBuilder html, HandoutItem item, PatientWords phrases)
    {
        html.AppendLine("<section class=\"handout-item\">");
        html.AppendLine(CultureInfo.InvariantCulture, $"<div class=\"handout-picture\"><svg role=\"img\" aria-label=\"{Text(item.Alt)}\" viewBox=\"{item.Picture.ViewBox}\">{item.Picture.Inner}</svg></div>");
        html.AppendLine("<div class=\"handout-words\">");
        html.AppendLine(CultureInfo.InvariantCulture, $"<h2><span class=\"handout-number\">{item.Number}</span> {Text(item.Title)}</h2>");
        html.AppendLine(CultureInfo.InvariantCulture, $"<p class=\"handout-side\">{Text(item.SideLine)}</p>");
        html.AppendLine("<ol>");
        foreach (var step in item.Steps)
            html.AppendLine(CultureInfo.InvariantCulture, $"<li>{Text(step)}</li>");
        html.AppendLine("</ol>");
        html.AppendLine(CultureInfo.InvariantCulture, $"<p>{Text(item.Feel)}</p>");
        if (item.Note is { Length: > 0 } note)
            html.AppendLine(CultureInfo.InvariantCulture, $"<p class=\"handout-note\">{Text(note)}</p>");
        html.AppendLine(CultureInfo.InvariantCulture, $"<p class=\"handout-dose\">{Text(item.Dose)}</p>");
        html.Append("<p class=\"handout-days\">");
        foreach (var day in phrases.Weekdays)
            html.Append(CultureInfo.InvariantCulture, $"<span>{Text(day)} <i></i></span>");
        html.AppendLine("</p></div></section>");
    }

    private static void Foot(StringBuilder html, HandoutInput input)
    {
        html.AppendLine("<section class=\"handout-stop\">");
        html.AppendLine(CultureInfo.InvariantCulture, $"<h2>{Text(input.Phrases.StopHeading)}</h2><ul>");
        foreach (var sign in input.Phrases.StopSigns)
            html.AppendLine(CultureInfo.InvariantCulture, $"<li>{Text(Pain(sign, input.Program))}</li>");
        html.AppendLine("</ul>");
        html.AppendLine(CultureInfo.InvariantCulture, $"<p><strong>{Text(input.Phrases.Emergency)}</strong></p>");
        if (input.ClinicPhone is { Length: > 0 } phone)
            html.AppendLine(CultureInfo.InvariantCulture, $"<p class=\"handout-phone\">{Text(input.ClinicName ?? "")} {Text(phone)}</p>");
        html.AppendLine("</section>");
        html.AppendLine(CultureInfo.InvariantCulture, $"<section class=\"handout-lines\"><h2>{Text(input.Phrases.NotesHeading)}</h2><p></p><p></p><p></p></section>");
        html.AppendLine(CultureInfo.InvariantCulture, $"<p class=\"handout-small\">{Text(input.Phrases.About)}</p>");
    }

    private static string Pain(string text, HomeProgram program) =>
        text.Replace("{ceiling}", program.PainCeiling.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal);

    private static string Contact(HandoutInput input)
    {
        var parts = new[] { input.ClinicName, input.ClinicPhone }.Where(p => !string.IsNullOrWhiteSpace(p)).Select(p => Text(p!));
        var joined = string.Join(", ", parts);
        return joined.Length > 0 ? " \u00b7 " + joined : "";
    }

    /// <summary>Encoded; control characters, which a page may not hold, become spaces.</summary>
    private static string Text(string text) =>
        WebUtility.HtmlEncode(string.Concat(text.Select(c => char.IsControl(c) && c is not ('\n' or '\r' or '\t') ? ' ' : c)));

    private static string ReadStyleSheet()
    {
        using var stream = typeof(Handout).Assembly.GetManifestResourceStream("handout.css")
            ?? throw new InvalidOperationException("The handout's style sheet is not in the program.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
