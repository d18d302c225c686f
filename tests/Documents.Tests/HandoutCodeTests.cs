using System.Text.RegularExpressions;
using System.Xml.Linq;
using ZXing;
using ZXing.Common;
using ZXing.QrCode;

namespace MomentArm.Documents.Tests;

/// <summary>The code on the handout, read back by another program's reader from the drawn picture.</summary>
public sealed partial class HandoutCodeTests
{
    private const int Scale = 4;

    [Theory]
    [InlineData("https://clinic.example.test/p#t=AbCdEfGhIjKlMnOpQrStUvWxYz0123456789_-AbCdE")]
    [InlineData("http://192.168.1.20:5080/p#x")]
    [InlineData("https://a-very-long-name-of-a-clinic.example.test:8443/some/folder/p#AbCdEfGhIjKlMnOpQrStUvWxYz0123456789AbCdEfGhIjKlMnOpQrStUvWxYz0123456789")]
    public void A_phone_reads_the_address_from_the_picture(string address) =>
        Assert.Equal(address, Decode(Handout.Code(address, "Do it with your phone")));

    [Fact]
    public void The_code_on_the_sheet_is_the_code_of_its_address()
    {
        const string Address = "https://clinic.example.test/p#token-invented-0001";
        var page = Sheets.Parse(Handout.Page(Sheets.Input(Sheets.Item("clam", Body.Side.Left)) with { PageAddress = Address }));
        Assert.Equal(Address, Decode(page.WithClass("handout-code").Single().ToString()));
        Assert.NotEqual(Handout.Code(Address, "x"), Handout.Code(Address + "2", "x"));
    }

    [Fact]
    public void The_code_has_a_quiet_border_of_four_modules_and_says_what_it_is()
    {
        var svg = XElement.Parse(Handout.Code("https://clinic.example.test/p", "Point & \"shoot\""));
        Assert.Equal("Point & \"shoot\"", svg.Attribute("aria-label")!.Value);
        Assert.Equal("img", svg.Attribute("role")!.Value);
        var size = Size(svg);
        Assert.All(Dark(svg), m => Assert.True(m.X >= 4 && m.Y >= 4 && m.X < size - 4 && m.Y < size - 4));
    }

    private static string? Decode(string code)
    {
        var svg = XElement.Parse(code);
        var (size, side) = (Size(svg), Size(svg) * Scale);
        var gray = Enumerable.Repeat((byte)255, side * side).ToArray();
        foreach (var (x, y) in Dark(svg))
        {
            for (var i = 0; i < Scale * Scale; i++)
                gray[(y * Scale + i / Scale) * side + x * Scale + i % Scale] = 0;
        }

        var picture = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(gray, side, side, RGBLuminanceSource.BitmapFormat.Gray8)));
        Assert.True(size >= 21);
        return new QRCodeReader().decode(picture)?.Text;
    }

    private static int Size(XElement svg) =>
        int.Parse(svg.Attribute("viewBox")!.Value.Split(' ')[2], System.Globalization.CultureInfo.InvariantCulture);

    private static IEnumerable<(int X, int Y)> Dark(XElement svg) =>
        Module().Matches(svg.Elements().Single(e => e.Name.LocalName == "path").Attribute("d")!.Value)
            .Select(m => (int.Parse(m.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture), int.Parse(m.Groups[2].Value, System.Globalization.CultureInfo.InvariantCulture)));

    [GeneratedRegex(@"M(\d+) (\d+)h1v1h-1z")]
    private static partial Regex Module();
}
