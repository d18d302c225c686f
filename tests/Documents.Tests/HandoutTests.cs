using System.Text.RegularExpressions;
using System.Xml.Linq;
using MomentArm.Body;
using MomentArm.Drawing;
using MomentArm.Prescribing;

namespace MomentArm.Documents.Tests;

public sealed partial class HandoutTests
{
    public static TheoryData<string> Ids { get; } = [.. Sheets.Library.Exercises.Select(e => e.Id)];

    [Theory]
    [InlineData(Side.Left)]
    [InlineData(Side.Right)]
    public void A_page_with_every_exercise_is_well_formed_and_holds_what_the_patient_needs(Side side)
    {
        var input = Sheets.Input(Sheets.All(side));
        var page = Sheets.Parse(Handout.Page(input));
        var text = page.Root!.Element("body")!.Value;

        Assert.Contains("Your home program: left hip, outer side", text, StringComparison.Ordinal);
        Assert.Contains("4 days a week", text, StringComparison.Ordinal);
        Assert.Contains("2 Mar 2026", text, StringComparison.Ordinal);
        Assert.Single(page.Descendants("h1"));
        var items = page.WithClass("handout-item");
        Assert.Equal(input.Program.Items.Length, items.Length);
        foreach (var (item, element) in input.Program.Items.Zip(items))
        {
            var words = Sheets.Library.Words("en", item.ExerciseId);
            var working = item.WorkingSide ?? Side.Right;
            Assert.Contains(Fill(words.Title, working), element.Value, StringComparison.Ordinal);
            Assert.Contains(DoseText.ForPatient(item.Dose, words.RepetitionWord), element.Value, StringComparison.Ordinal);
            Assert.All(words.SetUp.Concat(words.Steps), step => Assert.Contains(Fill(step, working), element.Value, StringComparison.Ordinal));
            Assert.Equal(7, element.WithClass("handout-days").Single().Elements("span").Count());
            Assert.True(element.Descendants("path").Count() > 10);
        }

        var stop = page.WithClass("handout-stop").Single();
        Assert.Equal(Sheets.Library.PatientWords.StopSigns.Length, stop.Descendants("li").Count());
        Assert.Contains("stays above 3", stop.Value, StringComparison.Ordinal);
        Assert.Contains(Sheets.Library.PatientWords.Emergency, stop.Value, StringComparison.Ordinal);
        Assert.DoesNotMatch(Mark(), text);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_other_side_changes_words_and_picture_and_nothing_is_left_of_the_first(string id)
    {
        var left = Sheets.Parse(Handout.Page(Sheets.Input(Sheets.Item(id, Side.Left)))).WithClass("handout-item").Single();
        var right = Sheets.Parse(Handout.Page(Sheets.Input(Sheets.Item(id, Side.Right)))).WithClass("handout-item").Single();
        if (Sheets.Library.Exercise(id)!.Movement.Bilateral)
        {
            Assert.Equal(Sheets.Library.PatientWords.TogetherLine, left.WithClass("handout-side").Single().Value);
            return;
        }

        Assert.Equal("Your left side works.", left.WithClass("handout-side").Single().Value);
        Assert.Equal("Your right side works.", right.WithClass("handout-side").Single().Value);
        Assert.Equal(left.Value, Swap(right.Value));
        Assert.NotEqual(left.Descendants("svg").Single().ToString(), right.Descendants("svg").Single().ToString());
        Assert.Equal(left.Descendants("svg").Single().Attribute("aria-label")!.Value, Swap(right.Descendants("svg").Single().Attribute("aria-label")!.Value));
    }

    [Fact]
    public void The_picture_is_the_Drawing_rooms_picture_of_the_working_side()
    {
        var input = Sheets.Input(Sheets.Item("clam", Side.Left));
        var drawn = Pictures.Combined(
            input.Model, input.Points, Sheets.Library.Exercise("clam")!.Movement, Side.Left, PictureOptions.Usual);
        Assert.Contains(drawn.Inner, Handout.Page(input), StringComparison.Ordinal);
    }

    [Fact]
    public void Both_sides_in_turn_name_the_working_side_first()
    {
        var item = Sheets.Item("clam", Side.Right) with { BothSides = true };
        Assert.Equal(
            "First your right side, then your left side.",
            Sheets.Parse(Handout.Page(Sheets.Input(item))).WithClass("handout-side").Single().Value);
    }

    [Fact]
    public void Nothing_is_asked_from_another_place_and_the_address_stands_in_the_code_only()
    {
        const string Address = "https://clinic.example.test/p#abcdefghijklmnopqrstuvwxyz0123456789";
        var page = Handout.Page(Sheets.Input(Sheets.Item("bridge", Side.Left)) with
        {
            PageAddress = Address, ClinicName = "Clinic (invented)", ClinicPhone = "555 0100",
        });
        Assert.DoesNotContain(Address, page, StringComparison.Ordinal);
        Assert.DoesNotMatch(Outside(), page);
        Assert.DoesNotContain(Sheets.Parse(page).Descendants().Attributes(), a => a.Name.LocalName is "src" or "href" or "style" || a.Name.LocalName.StartsWith("on", StringComparison.Ordinal));
        Assert.Empty(Sheets.Parse(page).Descendants("script"));
        Assert.Contains("Clinic (invented), 555 0100", page, StringComparison.Ordinal);
    }

    [Fact]
    public void No_part_of_the_input_can_carry_a_patients_name()
    {
        // The sheet lies about in kitchens: its input has no place for a person.
        var texts = typeof(HandoutInput).GetProperties().Where(p => p.PropertyType == typeof(string)).Select(p => p.Name);
        Assert.Equal(["Area", "ClinicName", "ClinicPhone", "PageAddress"], texts.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Typed_marks_stay_text()
    {
        const string Typed = "<script>alert(1)</script> & \"quoted\" 'single' <b>";
        var input = Sheets.Input(Sheets.Item("clam", Side.Left, Typed)) with { Area = Typed, ClinicName = Typed, ClinicPhone = Typed };
        var page = Handout.Page(input with { Program = input.Program with { Note = Typed } });
        Assert.DoesNotContain("<script", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<b>", page, StringComparison.Ordinal);
        var read = Sheets.Parse(page);
        Assert.Equal(2, read.WithClass("handout-note").Count(e => e.Value == Typed));
        Assert.Contains(Typed, read.Descendants("title").First().Value, StringComparison.Ordinal);
        Assert.Contains(Typed, read.WithClass("handout-phone").Single().Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Control_characters_and_braces_in_a_note_do_not_break_the_page()
    {
        var page = Handout.Page(Sheets.Input(Sheets.Item("clam", Side.Left, "a\u0000b\u0008c {side} {ceiling} \ud83d\ude00")));
        var note = Sheets.Parse(page).WithClass("handout-note").Single().Value;
        Assert.Contains("{side}", note, StringComparison.Ordinal);
        Assert.Contains("\ud83d\ude00", note, StringComparison.Ordinal);
    }

    [Fact]
    public void The_longest_sheet_keeps_every_word_and_nothing_has_a_fixed_height()
    {
        var note = string.Join(" ", Enumerable.Repeat("Stop if the ache comes back and write down when.", 40));
        var input = Sheets.Input([.. Sheets.Library.Exercises.Take(8).Select(e => Sheets.Item(e.Id, Side.Left, note))]);
        var page = Sheets.Parse(Handout.Page(input with { Program = input.Program with { Note = note } }));
        Assert.Equal(9, page.WithClass("handout-note").Count(e => e.Value == note));
        Assert.Equal(8, page.WithClass("handout-item").Length);

        // A box that holds words must grow with them. The code, the tick boxes and the empty writing lines hold none.
        var fixedHeights = Rule().Matches(Handout.StyleSheet)
            .Where(r => FixedHeight().IsMatch(r.Groups[2].Value) || r.Groups[2].Value.Contains("overflow: hidden", StringComparison.Ordinal))
            .Select(r => r.Groups[1].Value.Trim()).Distinct().Order(StringComparer.Ordinal);
        Assert.Equal([".handout-code", ".handout-days i", ".handout-lines p"], fixedHeights);
    }

    [Fact]
    public void An_exercise_the_library_no_longer_has_is_left_out()
    {
        var gone = Sheets.Item("clam", Side.Left) with { ExerciseId = "gone" };
        var items = Sheets.Parse(Handout.Page(Sheets.Input(gone, Sheets.Item("bridge", Side.Left)))).WithClass("handout-item");
        Assert.StartsWith("1", Assert.Single(items).WithClass("handout-number").Single().Value, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_input_gives_the_same_page()
    {
        var input = Sheets.Input(Sheets.All(Side.Left));
        Assert.Equal(Handout.Page(input), Handout.Page(input));
    }

    private static string Fill(string text, Side side) => Sheets.Library.PatientWords.Sides.Fill(text, side);

    private static string Swap(string text) => SideWord().Replace(text, m => m.Value switch
    {
        "left" => "right",
        "right" => "left",
        "Left" => "Right",
        _ => "Left",
    });

    [GeneratedRegex(@"\b[Ll]eft\b|\b[Rr]ight\b")]
    private static partial Regex SideWord();

    [GeneratedRegex(@"\{(side|Side|other|Other|area|days|minutes|ceiling)\}")]
    private static partial Regex Mark();

    [GeneratedRegex(@"(https?:)?//[a-z0-9-]+\.[a-z]|url\(|@import", RegexOptions.IgnoreCase)]
    private static partial Regex Outside();

    [GeneratedRegex(@"([^{}]+)\{([^{}]*)\}")]
    private static partial Regex Rule();

    [GeneratedRegex(@"(?<![-\w])(max-)?height:\s*(?!\s|auto)")]
    private static partial Regex FixedHeight();
}
