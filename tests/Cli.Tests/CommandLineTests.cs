using System.CommandLine;
using System.Globalization;

namespace MomentArm.Cli.Tests;

public sealed class CommandLineTests
{
    /// <summary>Every command by its words, the root first.</summary>
    public static TheoryData<string> Commands { get; } = [.. Below(CommandLine.Build(), "")];

    /// <summary>Command lines that are understood and done; {case} is the demo case, {pose} the demo pose, {out} a file to write.</summary>
    public static TheoryData<string> Done { get; } =
    [
        "exercise list",
        "exercise draw clam --side left --out {out}",
        "exercise draw clam --pose 0.5 --gray --out {out}",
        "exercise load bridge --sex male --age 50 --stature 180 --mass 82",
        "case interpret {case}",
        "case program {case}",
        "case program {case} --handout {out}",
        "body check",
        "body check --group moments",
        "body pose {pose} --sex female --stature 165 --mass 65",
        "content check",
        "content schemas",
    ];

    [Theory]
    [MemberData(nameof(Commands))]
    public async Task Every_command_has_help_with_an_example(string command)
    {
        var ran = await Momentarm.RunAsync([.. Words(command), "--help"]);
        Assert.Equal(0, ran.Code);
        Assert.Contains("Example", ran.Out, StringComparison.Ordinal);
        Assert.Contains("momentarm " + command, ran.Out, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Commands))]
    public async Task Every_example_in_the_help_is_understood(string command)
    {
        var ran = await Momentarm.RunAsync([.. Words(command), "--help"]);
        var examples = ran.Out.Split('\n').Select(line => line.Replace("Example:", "", StringComparison.Ordinal).Trim())
            .Where(line => line.StartsWith("momentarm ", StringComparison.Ordinal)).ToArray();
        Assert.NotEmpty(examples);
        Assert.All(examples, example => Assert.Empty(CommandLine.Build().Parse(Words(example)[1..]).Errors));
    }

    [Theory]
    [MemberData(nameof(Done))]
    public async Task Json_is_one_document_on_every_command(string line)
    {
        using var folder = new TempFolder();
        var ran = await Momentarm.RunAsync([.. Words(line, folder), "--json"]);
        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
        Assert.True(ran.Json.ValueKind is System.Text.Json.JsonValueKind.Object or System.Text.Json.JsonValueKind.Array);
    }

    [Theory]
    [MemberData(nameof(Done))]
    public async Task What_is_done_ends_with_0_and_says_something(string line)
    {
        using var folder = new TempFolder();
        var ran = await Momentarm.RunAsync(Words(line, folder));
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.NotEmpty(ran.Out);
    }

    [Theory]
    [InlineData("", "")]
    [InlineData("exercise", "exercise ")]
    [InlineData("exercise draw", "exercise draw ")]
    [InlineData("exercise sing clam", "exercise ")]
    [InlineData("exercise draw clam --side up", "exercise draw ")]
    [InlineData("exercise draw clam --side 7", "exercise draw ")]
    [InlineData("exercise load clam --sex 3", "exercise load ")]
    [InlineData("exercise load clam --mass heavy", "exercise load ")]
    [InlineData("case program", "case program ")]
    [InlineData("body check --group arms", "body check ")]
    [InlineData("body pose", "body pose ")]
    [InlineData("content check --loud", "content check ")]
    [InlineData("backup only-one", "backup ")]
    public async Task A_command_that_is_not_understood_ends_with_2_and_says_where_help_is(string line, string command)
    {
        var ran = await Momentarm.RunAsync(Words(line));
        Assert.Equal((2, ""), (ran.Code, ran.Out));
        Assert.Contains($"Try: momentarm {command}--help", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("System.", ran.Error, StringComparison.Ordinal);

        var json = await Momentarm.RunAsync([.. Words(line), "--json"]);
        Assert.Equal(2, json.Code);
        Assert.NotEmpty(json.Json.GetProperty("faults").EnumerateArray());
    }

    [Theory]
    [InlineData("exercise draw nope", "There is no exercise \"nope\".")]
    [InlineData("exercise load nope", "There is no exercise \"nope\".")]
    [InlineData("exercise draw clam --pose 2", "0 (start) to 1 (end)")]
    [InlineData("exercise load clam --mass 5000", "5000 kg is not usable")]
    [InlineData("exercise load clam --stature 1.7", "Type it in centimeters.")]
    [InlineData("exercise load clam --age 300", "give an age from 0 to 120")]
    [InlineData("exercise load clam --weight -3", "-3 kg is not usable")]
    [InlineData("case interpret nowhere.json", "nowhere.json")]
    [InlineData("body pose nowhere.json", "nowhere.json")]
    [InlineData("body pose {pose} --mass 5000", "5000 kg is not usable")]
    [InlineData("body check --content nowhere", "nowhere")]
    [InlineData("backup nowhere.db {out}", "There is no database at nowhere.db.")]
    [InlineData("restore nowhere.zip {out}", "nowhere.zip")]
    [InlineData("content check --content nowhere", "nowhere")]
    [InlineData("content schemas --content nowhere", "nowhere")]
    [InlineData("exercise draw clam --out {none}/clam.svg", "cannot be written")]
    public async Task Faulty_input_ends_with_1_says_why_and_writes_nothing(string line, string sentence)
    {
        using var folder = new TempFolder();
        var ran = await Momentarm.RunAsync(Words(line, folder));
        Assert.Equal((1, ""), (ran.Code, ran.Out));
        Assert.Contains(sentence, ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("Parameter", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", ran.Error, StringComparison.Ordinal);
        Assert.Empty(folder.Names.Except([".lock", "out.lock"]));

        var json = await Momentarm.RunAsync([.. Words(line, folder), "--json"]);
        Assert.Equal((1, ""), (json.Code, json.Error));
        Assert.NotEmpty(json.Json.GetProperty("faults").EnumerateArray());
    }

    [Fact]
    public async Task Numbers_are_typed_and_printed_with_a_point_whatever_the_language()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            string[] line = ["exercise", "load", "bridge", "--stature", "168.5", "--mass", "64.5", "--json"];
            var usual = await Momentarm.RunAsync(line);
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            var german = await Momentarm.RunAsync(line);
            Assert.Equal(0, usual.Code);
            Assert.Equal(usual, german);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static IEnumerable<string> Below(Command command, string words) =>
        command.Subcommands.SelectMany(c => Below(c, $"{words} {c.Name}".Trim())).Prepend(words);

    private static string[] Words(string line) => line.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static string[] Words(string line, TempFolder folder) =>
    [
        .. Words(line).Select(w => w
            .Replace("{case}", Momentarm.DemoCase, StringComparison.Ordinal)
            .Replace("{pose}", Momentarm.DemoPose, StringComparison.Ordinal)
            .Replace("{out}", folder.File("out"), StringComparison.Ordinal)
            .Replace("{none}", folder.File("none"), StringComparison.Ordinal)),
    ];
}
