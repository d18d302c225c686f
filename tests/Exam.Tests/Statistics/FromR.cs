using System.Text.Json;

namespace MomentArm.Exam.Tests;

/// <summary>The numbers that tools/statistics/make.R wrote.</summary>
internal static class FromR
{
    private static readonly JsonElement Root = JsonDocument.Parse(
        File.ReadAllText(Path.Combine(Path.GetDirectoryName(Shipped.ContentFolder)!, "tests", "Exam.Tests", "Statistics", "r.json"))).RootElement;

    internal static IEnumerable<double[]> Rows(string name) => Root.GetProperty(name).EnumerateArray().Select(Numbers);

    internal static IEnumerable<JsonElement> Tables => Root.GetProperty("icc").EnumerateArray();

    internal static double[] Agreement => Numbers(Root.GetProperty("agreement"));

    internal static double[] Numbers(JsonElement row) => [.. row.EnumerateArray().Select(n => n.GetDouble())];

    internal static void Near(double expected, double actual, double relative) =>
        Assert.True(Math.Abs(actual - expected) <= relative * Math.Max(1, Math.Abs(expected)), $"{actual} is not {expected}");
}
