using System.Text.Json;

namespace MomentArm.Content.Tests;

/// <summary>The file of published strength: every figure has a source, and a damaged file is refused with what to do.</summary>
public sealed class CapacityContentTests : IDisposable
{
    private const string Name = "body/capacity.json";

    private readonly string folder = Directory.CreateTempSubdirectory("capacity-content").FullName;

    public CapacityContentTests()
    {
        Directory.CreateDirectory(Path.Combine(folder, "body"));
        foreach (var file in Directory.EnumerateFiles(Path.Combine(Shipped.Folder, "body")))
            File.Copy(file, Path.Combine(folder, "body", Path.GetFileName(file)));
    }

    public void Dispose() => Directory.Delete(folder, true);

    [Fact]
    public void Every_source_named_is_in_the_list_of_sources()
    {
        using var document = JsonDocument.Parse(
            File.ReadAllText(Path.Combine(Shipped.Folder, Name)), new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip });
        var named = SourcesIn(document.RootElement).Distinct().ToArray();
        Assert.True(named.Length >= 15);
        Assert.Empty(named.Except(Shipped.Library.Sources.Keys));
    }

    [Theory]
    [InlineData("\"torqueNm\": 72.7", "\"torqueNm\": -72.7", "torques[0]")]
    [InlineData("\"spread\": 0.25", "\"spread\": 25", "torques[0]")]
    [InlineData("\"action\": \"hipInternalRotation\", \"sex\": \"male\"", "\"action\": \"hipAbduction\", \"sex\": \"male\"", "torques.HipAbduction")]
    [InlineData("\"reader\": \"scaleOnStrap\"", "\"reader\": \"handHeld\"", "readerErrors")]
    [InlineData("\"relativeError\": 0.08", "\"relativeError\": 8", "readerErrors[3]")]
    [InlineData("\"m\": -2.06", "\"m\": 2.06", "endurance.holding.Ankle")]
    [InlineData("\"region\": \"grip\"", "\"region\": \"knee\"", "endurance.holding")]
    [InlineData("\"percent\": 75", "\"percent\": 95", "endurance.repetitions.OneJoint")]
    [InlineData("\"demandSpread\": 0.10", "\"demandSpread\": 10", "endurance")]
    [InlineData("\"mostRepetitions\": 60", "\"mostRepetitions\": 0", "endurance")]
    [InlineData("\"untested\": 0.25", "\"untested\": 0", "spread")]
    public void A_damaged_figure_is_told_with_its_place(string right, string wrong, string place)
    {
        var path = Path.Combine(folder, Name);
        var text = File.ReadAllText(path);
        var at = text.IndexOf(right, StringComparison.Ordinal);
        Assert.True(at >= 0, right);
        File.WriteAllText(path, text[..at] + wrong + text[(at + right.Length)..]);
        var faults = new FaultList();
        Assert.Null(BodyContent.Read(folder, faults));
        Assert.Contains(faults.Faults, f => f.File == Name && f.Path == place);
    }

    private static IEnumerable<string> SourcesIn(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.Object => element.EnumerateObject().SelectMany(p =>
            p.Value.ValueKind == JsonValueKind.String && p.Name.EndsWith("ource", StringComparison.Ordinal) ? [p.Value.GetString()!] : SourcesIn(p.Value)),
        JsonValueKind.Array => element.EnumerateArray().SelectMany(SourcesIn),
        _ => [],
    };
}
