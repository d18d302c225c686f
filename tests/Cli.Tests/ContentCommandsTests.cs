namespace MomentArm.Cli.Tests;

public sealed class ContentCommandsTests
{
    [Fact]
    public async Task The_shipped_content_has_no_fault()
    {
        var ran = await Momentarm.RunAsync("content", "check");
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Contains($"{Momentarm.Library.Exercises.Count} exercises, no faults", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Check_lists_every_fault_of_a_broken_copy_with_file_and_place()
    {
        using var folder = new TempFolder();
        folder.CopyIn(Momentarm.ContentFolder);
        Damage(folder, "exercises/clam.json", "\"rung\":", "\"rang\":");
        Damage(folder, "exercises/bridge.json", "\"source\": \"", "\"source\": \"no-such-");
        Damage(folder, "measures/pain-now.json", "\"order\":", "\"order\": 0, \"unknownKey\":");
        Damage(folder, "danger-signs/general.json", "\"confirmation\": \"from memory\"", "\"confirmation\": \"rumor\"");
        File.Delete(folder.File("words/en/exercises/sit-to-stand.json"));

        var ran = await Momentarm.RunAsync("content", "check", "--content", folder.Root);
        Assert.Equal((1, ""), (ran.Code, ran.Out));
        var lines = ran.Error.Split('\n');
        Assert.Contains(lines, l => l.StartsWith("exercises/clam.json:", StringComparison.Ordinal) && l.Contains("\"rang\"", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith("exercises/bridge.json", StringComparison.Ordinal) && l.Contains("no-such-", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith("measures/pain-now.json:", StringComparison.Ordinal) && l.Contains("\"unknownKey\"", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith("danger-signs/general.json", StringComparison.Ordinal) && l.Contains("rumor", StringComparison.Ordinal));
        Assert.Contains(lines, l => l.StartsWith("words/en/exercises/sit-to-stand.json", StringComparison.Ordinal));
        Assert.DoesNotContain(".NET", ran.Error, StringComparison.Ordinal);

        var json = await Momentarm.RunAsync("content", "check", "--content", folder.Root, "--json");
        var faults = json.Json.GetProperty("faults").EnumerateArray().ToArray();
        Assert.Equal(lines.Count(l => l.Length > 0), faults.Length);
        Assert.All(faults, f => Assert.NotEmpty(f.GetProperty("mend").GetString()!));
    }

    [Fact]
    public async Task Schemas_says_which_differ_and_writes_them_when_told()
    {
        using var folder = new TempFolder();
        folder.CopyIn(Momentarm.ContentFolder);
        File.AppendAllText(folder.File("schemas/case.schema.json"), " ");
        File.Delete(folder.File("schemas/measure.schema.json"));

        var differing = await Momentarm.RunAsync("content", "schemas", "--content", folder.Root);
        Assert.Equal(1, differing.Code);
        Assert.Contains("case.schema.json", differing.Error, StringComparison.Ordinal);
        Assert.Contains("measure.schema.json", differing.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("skeleton.schema.json", differing.Error, StringComparison.Ordinal);

        var written = await Momentarm.RunAsync("content", "schemas", "--write", "--content", folder.Root);
        Assert.Equal(0, written.Code);
        Assert.Equal(
            File.ReadAllText(Path.Combine(Momentarm.ContentFolder, "schemas", "measure.schema.json")),
            File.ReadAllText(folder.File("schemas/measure.schema.json")));
        Assert.Equal(0, (await Momentarm.RunAsync("content", "schemas", "--content", folder.Root)).Code);
    }

    private static void Damage(TempFolder folder, string name, string from, string to)
    {
        var text = File.ReadAllText(folder.File(name));
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(folder.File(name), text.Replace(from, to, StringComparison.Ordinal));
    }
}
