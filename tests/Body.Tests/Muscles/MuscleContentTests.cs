using MomentArm.Content;

namespace MomentArm.Body.Tests.Muscles;

/// <summary>Bad muscle content is refused with every fault.</summary>
public class MuscleContentTests
{
    private static readonly string Shipped = File.ReadAllText(Path.Combine(TestBody.ContentFolder, "body", "muscles.json"));

    [Fact]
    public void Every_fault_is_told_at_once_with_its_place()
    {
        var faults = Faults(
            ("\"hipFlexion\": [-20, 90]", "\"hipFlexion\": [90, -20]"),
            ("\"maximalForceN\": 819", "\"maximalForceN\": -819"),
            ("\"optimalFiberM\": 0.0845", "\"optimalFiberM\": 84.5"),
            ("\"pennationRad\": 0.33161256", "\"pennationRad\": 19"),
            ("\"id\": \"gluteus-minimus-middle\"", "\"id\": \"gluteus-minimus-front\""),
            ("[-0.0408, 0.0304, 0.1209]", "[-0.0408, 0.0304]"),
            ("\"fromDeg\": -32, \"toDeg\": 10", "\"fromDeg\": 32, \"toDeg\": 10"),
            ("\"from\": [\"tensor-fasciae-latae\"]", "\"from\": [\"tensor\"]"),
            ("\"share\": 0.5", "\"share\": 1.5"),
            ("[-2.0944, 0.0155805], ", "[9, 0.0155805], "));

        (string Path, string What)[] told =
        [
            ("trustedDeg.HipFlexion", "rising"), ("muscles[0].maximalForceN", "-819"), ("muscles[1].optimalFiberM", "84.5"),
            ("muscles[2].pennationRad", "right angle"), ("muscles", "gluteus-minimus-front is there twice"),
            ("muscles[0].points[0].atM", "Three numbers"), ("muscles[6].points[1].when", "fromDeg"), ("band.parts[0].from", "\"tensor\""),
            ("band.parts[1].share", "between 0 and 1"), ("muscles[27].points[2].moving.x", "rising"),
        ];
        foreach (var (path, what) in told)
            Assert.True(faults.Any(f => f.Path == path && f.What.Contains(what, StringComparison.Ordinal)), $"{path}: {what}; told: {string.Join("; ", faults)}");
        Assert.All(faults, f => Assert.Equal("body/muscles.json", f.File));
    }

    [Theory]
    [InlineData("{ \"segment\": \"thigh\", \"atM\": [-0.0218, -0.0117, 0.0555] }", "{ \"segment\": \"pelvis\", \"atM\": [-0.02, -0.01, 0.05] }", "crosses no joint")]
    [InlineData("{ \"segment\": \"thigh\", \"atM\": [-0.003, -0.3568, -0.0421] }", "{ \"segment\": \"foot\", \"atM\": [0, 0, 0] }", "outward")]
    [InlineData("{ \"segment\": \"thigh\", \"atM\": [-0.0218, -0.0117, 0.0555] }", "{ \"segment\": \"thigh\", \"atM\": [0, 0, 0], \"when\": { \"motion\": \"hipFlexion\", \"fromDeg\": 0, \"toDeg\": 9 } }", "always there")]
    [InlineData("\"motion\": \"hipFlexion\", \"fromDeg\": -90.0002", "\"motion\": \"toeExtension\", \"fromDeg\": -90.0002", "does not cross")]
    [InlineData("\"share\": 1,", "\"share\": null,", "not of the kind")]
    [InlineData("\"credit\"", "\"kredit\"", "kredit")]
    public void A_path_that_cannot_be_is_refused(string old, string changed, string told) =>
        Assert.Contains(Faults((old, changed)), f => f.What.Contains(told, StringComparison.Ordinal));

    [Fact]
    public void More_than_the_whole_force_cannot_be_passed_on() => Assert.Contains(
        Faults(("\"from\": [\"tensor-fasciae-latae\"]", "\"from\": [\"tensor-fasciae-latae\", \"gluteus-maximus-upper\"]")),
        f => f.What.Contains("gluteus-maximus-upper", StringComparison.Ordinal));

    [Fact]
    public void The_model_itself_refuses_paths_that_cannot_be()
    {
        var table = TestBody.Content.Muscles;
        MuscleTable With(params PathPoint[] points) => table with { Paths = [table.Paths[0] with { Points = [.. points] }], BandParts = [] };
        var pelvis = new PathPoint(SegmentKind.Pelvis, Vec3.Zero);
        var thigh = new PathPoint(SegmentKind.Thigh, Vec3.UnitX);
        foreach (var bad in new[] { With(pelvis), With(pelvis, pelvis), With(thigh, pelvis), With(pelvis, new PathPoint(SegmentKind.Torso, Vec3.Zero), thigh) })
            Assert.Throws<ArgumentException>(() => MuscleSet.Build(bad, TestBody.Content.Skeleton, TestBody.Man));
    }

    [Fact]
    public void The_shipped_file_keeps_the_credit() => Assert.Contains("Creative Commons Attribution 3.0", Shipped, StringComparison.Ordinal);

    private static IReadOnlyList<ContentFault> Faults(params (string Old, string Changed)[] changes)
    {
        var text = Shipped;
        foreach (var (old, changed) in changes)
        {
            var at = text.IndexOf(old, StringComparison.Ordinal);
            Assert.True(at >= 0, $"The file does not hold {old}.");
            text = text[..at] + changed + text[(at + old.Length)..];
        }

        var faults = new FaultList();
        var table = StrictJson.Read<MusclesFile>(text, "body/muscles.json", faults)?.ToTable(TestBody.Content.Skeleton, faults);
        Assert.Null(table);
        return faults.Faults;
    }
}
