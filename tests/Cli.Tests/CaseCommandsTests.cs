using MomentArm.Exam;

namespace MomentArm.Cli.Tests;

public sealed class CaseCommandsTests
{
    private static readonly string AllNo = string.Join(", ", Momentarm.Library.Exam.DangerSigns.Select(s => $"\"{s.Id}\": \"no\""));

    [Fact]
    public async Task Interpret_says_what_the_demo_case_means()
    {
        var ran = await Momentarm.RunAsync("case", "interpret", Momentarm.DemoCase);
        Assert.Equal((0, ""), (ran.Code, ran.Error));

        // By hand: 118 N at 0.36 m = 42.48 N m; 149 N at 0.36 m = 53.64 N m; (149 - 118) / 149 = 20.8 %.
        Assert.Contains("118 N at 36 cm = 42 N m", ran.Out, StringComparison.Ordinal);
        Assert.Contains("149 N", ran.Out, StringComparison.Ordinal);
        Assert.Contains("21 % weaker than the right", ran.Out, StringComparison.Ordinal);
        Assert.Contains("All danger signs asked, none present.", ran.Out, StringComparison.Ordinal);
        Assert.Contains(CaseText.Caution, ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Program_prints_findings_exercises_load_shares_and_why_not_and_writes_the_handout()
    {
        using var folder = new TempFolder();
        var ran = await Momentarm.RunAsync("case", "program", Momentarm.DemoCase, "--handout", folder.File("handout.html"));
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Contains("Findings", ran.Out, StringComparison.Ordinal);
        Assert.Contains("load share, hip abduction:", ran.Out, StringComparison.Ordinal);
        Assert.Contains("Not chosen, and why", ran.Out, StringComparison.Ordinal);
        Assert.Contains("climb the stairs", ran.Out, StringComparison.Ordinal);
        var page = File.ReadAllText(folder.File("handout.html"));
        Assert.Contains("left hip, outer side", page, StringComparison.Ordinal);
        Assert.Contains("left", page, StringComparison.Ordinal);

        var json = (await Momentarm.RunAsync("case", "program", Momentarm.DemoCase, "--json")).Json;
        var item = json.GetProperty("program").GetProperty("items")[0];
        Assert.Equal("left", item.GetProperty("workingSide").GetString());
        Assert.InRange(item.GetProperty("loadShare").GetProperty("middle").GetDouble(), 0.01, 3);
    }

    [Theory]
    [InlineData("""{ "wish": ["run"] }""", "There is no key \"wish\" here.", ":1: wish:")]
    [InlineData("""{ "patient": { "weight": 66 }, "wishes": ["run"] }""", "There is no key \"weight\" here.", "patient.weight")]
    [InlineData("""{ "entries": ["hip abd L 400 N at 4 m"] }""", "A lever arm of 4 m is longer than a leg.", "entries[0]")]
    [InlineData("""{ "entries": ["SLR L 72", "hip flexion L 200 deg"] }""", "200° cannot be a hip flexion range.", "entries[1]")]
    [InlineData("""{ "entries": ["hip abd L 118 deg"] }""", "This unit does not belong to hip abduction strength.", "entries[0]")]
    [InlineData("""{ "entries": ["SLR L 72 N"] }""", "This unit does not belong to straight-leg raise.", "entries[0]")]
    [InlineData("""{ "entries": ["pain worst 14"] }""", "14/10 cannot be", "entries[0]")]
    [InlineData("""{ }""", "The case says nothing to work with.", "case.json:")]
    [InlineData("""{ "entries": [] }""", "The case says nothing to work with.", "case.json:")]
    [InlineData("", "The file is empty.", "case.json:1")]
    [InlineData("""{ "entries": [""", "The file ends too early", "case.json:1")]
    [InlineData("null", "The file holds null.", "case.json:1")]
    [InlineData("""{ "entries": null }""", "The value may not be null.", "entries")]
    [InlineData("""{ "wishes": ["run"], "wishes": ["walk"] }""", "The key \"wishes\" is there twice.", "case.json:1")]
    [InlineData("""{ "wishes": ["run"], "exercises": [{ "id": "nope" }] }""", "There is no exercise \"nope\".", "exercises[0].id")]
    [InlineData("""{ "wishes": ["run"], "exercises": [{ "id": "clam", "sets": 99 }] }""", "99 is not usable. Give 1 to 10.", "exercises[0].sets")]
    [InlineData("""{ "wishes": ["run"], "patient": { "statureCm": 1.67 } }""", "1.67 cm is not usable. Give 80 to 240.", "patient.statureCm")]
    [InlineData("""{ "wishes": ["run"], "patient": { "massKg": "66 kg" } }""", "The value is not of the kind that belongs here.", "patient.massKg")]
    [InlineData("""{ "wishes": ["run"], "dangerSigns": { "hiccups": "no" } }""", "There is no such danger sign.", "dangerSigns.hiccups")]
    [InlineData("""{ "entries": ["SLR L 72"], "visits": [{ "day": "2026-03-02", "entries": ["SLR L 70"] }] }""", "There are entries and visits.", "entries")]
    [InlineData("""{ "visits": [{ "day": "2026-03-09", "entries": ["SLR L 72"] }, { "day": "2026-03-02", "entries": ["SLR L 70"] }] }""", "The visit lies before the one above it.", "visits[1].day")]
    public async Task A_wrong_case_file_is_refused_with_file_and_place_and_nothing_is_written(string json, string sentence, string place)
    {
        using var folder = new TempFolder();
        var file = folder.Write("case.json", json);
        var ran = await Momentarm.RunAsync("case", "program", file, "--handout", folder.File("handout.html"));
        Assert.Equal((1, ""), (ran.Code, ran.Out));
        Assert.Contains("case.json", ran.Error, StringComparison.Ordinal);
        Assert.Contains(sentence, ran.Error, StringComparison.Ordinal);
        Assert.Contains(place, ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain(".NET", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("MomentArm.", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["case.json"], folder.Names);
    }

    [Fact]
    public async Task Every_fault_of_a_case_file_is_told_at_once()
    {
        using var folder = new TempFolder();
        var file = folder.Write("case.json", """
            { "patient": { "ageYears": 400, "massKg": 2 }, "entries": ["hip abd L 400 N at 4 m", "hip flexion L 200 deg"], "exercises": [{ "id": "nope" }] }
            """);
        var ran = await Momentarm.RunAsync("case", "interpret", file);
        Assert.Equal(5, ran.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
    }

    [Fact]
    public async Task A_file_that_is_a_folder_is_refused_in_a_sentence()
    {
        using var folder = new TempFolder();
        var ran = await Momentarm.RunAsync("case", "interpret", folder.Root);
        Assert.Equal((1, ""), (ran.Code, ran.Out));
        Assert.Contains("cannot be read", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"entries\": [\"SLR L 72\"]", "72°")]
    [InlineData("\"entries\": [\"hip abd L 118 N at 36 cm\"]", "42 N m")]
    [InlineData("\"wishes\": [\"climb stairs\"]", "Wish: climb stairs")]
    public async Task One_measurement_or_one_wish_is_enough_and_the_defaults_are_named(string facts, string shown)
    {
        using var folder = new TempFolder();
        var file = folder.Write("case.json", "{ " + facts + " }");
        var interpreted = await Momentarm.RunAsync("case", "interpret", file);
        Assert.Equal((0, ""), (interpreted.Code, interpreted.Error));
        Assert.Contains(shown, interpreted.Out, StringComparison.Ordinal);

        var asked = folder.Write("asked.json", "{ " + facts + ", \"dangerSigns\": { " + AllNo + " } }");
        foreach (var path in new[] { file, asked })
        {
            var ran = await Momentarm.RunAsync("case", "program", path);
            Assert.Equal((0, ""), (ran.Code, ran.Error));
            Assert.Contains("Sex not given", ran.Out, StringComparison.Ordinal);
            Assert.Contains("Stature not given", ran.Out, StringComparison.Ordinal);
            Assert.Contains("Body mass not given", ran.Out, StringComparison.Ordinal);
        }

        Assert.Contains("Not asked is not no.", (await Momentarm.RunAsync("case", "program", file)).Out, StringComparison.Ordinal);
        Assert.Contains("Not chosen, and why", (await Momentarm.RunAsync("case", "program", asked)).Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_unit_that_fits_nothing_comes_back_as_a_question()
    {
        using var folder = new TempFolder();
        var ran = await Momentarm.RunAsync("case", "interpret", folder.Write("case.json", """{ "entries": ["hip abd L 118 N at 36 kg"] }"""));
        Assert.Equal(0, ran.Code);
        Assert.Contains("Question: Lever arm \"36\" read as 36 cm.", ran.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("fever-or-ill")]
    [InlineData("chest-pain-or-fainting")]
    public async Task A_danger_sign_stops_the_program_and_no_handout_is_written(string sign)
    {
        using var folder = new TempFolder();
        var danger = Momentarm.Library.Exam.DangerSigns.Single(s => s.Id == sign);
        var file = folder.Write(
            "case.json",
            "{ \"entries\": [\"hip abd L 118 N at 36 cm, R 149\"], \"exercises\": [{ \"id\": \"clam\" }], \"dangerSigns\": { "
            + AllNo.Replace($"\"{sign}\": \"no\"", $"\"{sign}\": \"yes\"", StringComparison.Ordinal) + " } }");

        var plain = await Momentarm.RunAsync("case", "program", file);
        Assert.Equal(0, plain.Code);
        Assert.Contains("No program:", plain.Out, StringComparison.Ordinal);
        Assert.Contains(danger.Action, plain.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("days a week", plain.Out, StringComparison.Ordinal);

        var handout = await Momentarm.RunAsync("case", "program", file, "--handout", folder.File("handout.html"));
        Assert.Equal(1, handout.Code);
        Assert.Contains("No handout was written.", handout.Error, StringComparison.Ordinal);
        Assert.Equal(["case.json"], folder.Names);

        var json = (await Momentarm.RunAsync("case", "program", file, "--json")).Json;
        Assert.False(json.TryGetProperty("program", out _));
        Assert.Empty(json.GetProperty("candidates").EnumerateArray());
        Assert.True(json.GetProperty("gate").GetProperty("prescribingStopped").GetBoolean());
        Assert.NotEqual(nameof(GateState.Clear), json.GetProperty("gate").GetProperty("state").GetString(), StringComparer.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task A_program_without_exercises_writes_no_empty_handout()
    {
        using var folder = new TempFolder();
        var file = folder.Write("case.json", "{ \"wishes\": [\"run\"], \"dangerSigns\": { " + AllNo + " } }");
        var ran = await Momentarm.RunAsync("case", "program", file, "--handout", folder.File("handout.html"));
        Assert.Equal(1, ran.Code);
        Assert.Contains("no handout was written", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["case.json"], folder.Names);
    }

    [Fact]
    public async Task Exercises_named_in_the_file_are_taken_as_they_are()
    {
        using var folder = new TempFolder();
        var file = folder.Write(
            "case.json",
            "{ \"exercises\": [{ \"id\": \"clam\", \"side\": \"right\", \"sets\": 1, \"repetitions\": 7 }], \"dangerSigns\": { " + AllNo + " } }");
        var ran = await Momentarm.RunAsync("case", "program", file, "--json");
        Assert.Equal(0, ran.Code);
        var item = Assert.Single(ran.Json.GetProperty("program").GetProperty("items").EnumerateArray());
        Assert.Equal("right", item.GetProperty("workingSide").GetString());
        Assert.Equal((1, 7), (item.GetProperty("dose").GetProperty("sets").GetInt32(), item.GetProperty("dose").GetProperty("repetitions").GetInt32()));
        Assert.False(ran.Json.GetProperty("drafted").GetBoolean());
    }
}
