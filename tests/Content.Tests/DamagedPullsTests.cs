namespace MomentArm.Content.Tests;

/// <summary>Every fault of a pull is told with its place and what to do.</summary>
public sealed class DamagedPullsTests : IDisposable
{
    private const string Exercise = "exercises/band-side-step.json";
    private const string Sound = "\"at\": \"kneeOuter\", \"toward\": \"kneeInner\", \"fraction\": 0.5, \"limbRadiusM\": 0.06,";
    private const string Band = "\"band\": { \"f100N\": 30, \"restLengthM\": 0.60, \"source\": \"common-practice\" }";

    private readonly string folder = Directory.CreateTempSubdirectory("damaged-pulls").FullName;

    public DamagedPullsTests()
    {
        foreach (var file in Directory.EnumerateFiles(Shipped.Folder, "*", SearchOption.AllDirectories))
        {
            var to = Path.Combine(folder, Path.GetRelativePath(Shipped.Folder, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.Copy(file, to);
        }
    }

    public void Dispose() => Directory.Delete(folder, true);

    [Theory]
    [InlineData("\"toward\": \"kneeInner\"", "\"toward\": \"ankle\"", "pulls[0].toward", "different segments")]
    [InlineData("\"toward\": \"kneeInner\"", "\"toward\": \"kneeIner\"", "pulls[0].toward", "no point")]
    [InlineData("\"toward\": \"kneeInner\", \"fraction\": 0.5", "\"fraction\": 0.5", "pulls[0].toward", "no second point")]
    [InlineData("\"fraction\": 0.5", "\"fraction\": 1.5", "pulls[0].fraction", "outside 0 to 1")]
    [InlineData("\"limbRadiusM\": 0.06,", "", "pulls[0].limbRadiusM", "needs \"limbRadiusM\"")]
    [InlineData("\"limbRadiusM\": 0.06", "\"limbRadiusM\": 0.6", "pulls[0].limbRadiusM", "outside 0 to 0.2")]
    [InlineData("\"limbRadiusM\": 0.06,", "\"limbRadiusM\": 0.06, \"forceN\": 30,", "pulls[0].forceN", "no use for \"forceN\"")]
    [InlineData("\"limbRadiusM\": 0.06,", "\"limbRadiusM\": 0.06, \"limb\": \"working\",", "pulls[0].limb", "no use for \"limb\"")]
    [InlineData("\"f100N\": 30", "\"f100N\": 0", "pulls[0].band.f100N", "outside 0.1 to 2000")]
    [InlineData("\"f100N\": 30", "\"f100N\": 30, \"f200N\": 29", "pulls[0].band.f200N", "does not rise")]
    [InlineData("\"f100N\": 30", "\"f100N\": 30, \"strands\": 9", "pulls[0].band.strands", "outside 1 to 8")]
    [InlineData("\"restLengthM\": 0.60, ", "", "pulls[0].band", "exactly one number")]
    [InlineData("\"restLengthM\": 0.60", "\"restLengthM\": 0.60, \"preStretchPercent\": 20", "pulls[0].band", "exactly one number")]
    [InlineData("\"restLengthM\": 0.60", "\"preStretchPercent\": 260", "pulls[0].band.preStretchPercent", "outside 0 to 250")]
    [InlineData("\"source\": \"common-practice\" }", "\"source\": \"nobody\" }", "pulls[0].band.source", "no source \"nobody\"")]
    public void A_faulty_loop_is_told(string sound, string damaged, string path, string told) => AssertTold(sound, damaged, path, told);

    [Theory]
    [InlineData("\"kind\": \"link\", \"at\": \"ankle\", \"limb\": \"working\",", "pulls[0].to", "needs \"to\"")]
    [InlineData("\"kind\": \"link\", \"at\": \"ankle\", \"to\": { \"at\": \"ankle\", \"limb\": \"other\" },", "pulls[0].limb", "on both sides")]
    [InlineData("\"kind\": \"link\", \"at\": \"ankle\", \"limb\": \"working\", \"to\": { \"at\": \"foot\", \"limb\": \"other\" },", "pulls[0].to.at", "Name one point", true)]
    [InlineData("\"kind\": \"anchored\", \"at\": \"ankle\", \"limb\": \"working\",", "pulls[0].anchor", "needs \"anchor\"")]
    [InlineData("\"kind\": \"anchored\", \"at\": \"ankle\", \"limb\": \"working\", \"anchor\": { \"direction\": \"up\", \"distanceM\": 1, \"heightM\": 0.1 },", "pulls[0].anchor.direction", "no way along the floor")]
    [InlineData("\"kind\": \"anchored\", \"at\": \"ankle\", \"limb\": \"working\", \"anchor\": { \"direction\": \"forward\", \"distanceM\": 7, \"heightM\": 0.1 },", "pulls[0].anchor.distanceM", "outside 0 to 5")]
    [InlineData("\"kind\": \"help\", \"at\": \"ankle\", \"limb\": \"working\", \"forceN\": 30, \"direction\": \"up\", \"source\": \"common-practice\",", "pulls[0].band", "no use for \"band\"")]
    public void A_faulty_other_pull_is_told(string keys, string path, string told, bool inMend = false) =>
        AssertTold("\"kind\": \"loop\", " + Sound, keys, path, told, inMend);

    [Theory]
    [InlineData("\"kind\": \"help\", \"at\": \"ankle\", \"limb\": \"working\"", "pulls[0].forceN", "needs \"forceN\"")]
    [InlineData("\"kind\": \"help\", \"at\": \"ankle\", \"limb\": \"working\", \"forceN\": 30, \"source\": \"common-practice\"", "pulls[0].direction", "needs \"direction\"")]
    [InlineData("\"kind\": \"help\", \"at\": \"ankle\", \"limb\": \"working\", \"forceN\": 3000, \"direction\": \"up\", \"source\": \"common-practice\"", "pulls[0].forceN", "outside -2000 to 2000")]
    [InlineData("\"kind\": \"help\", \"at\": \"ankle\", \"limb\": \"working\", \"forceN\": 30, \"direction\": \"up\"", "pulls[0].source", "needs \"source\"")]
    public void Faulty_help_is_told(string keys, string path, string told)
    {
        Change(Band, "");
        AssertTold("\"kind\": \"loop\", " + Sound, keys, path, told);
    }

    [Theory]
    [InlineData("\"kind\": \"link\", \"at\": \"ankle\", \"limb\": \"working\", \"to\": { \"at\": \"ankle\", \"limb\": \"other\" },")]
    [InlineData("\"kind\": \"anchored\", \"at\": \"ankle\", \"limb\": \"working\", \"anchor\": { \"direction\": \"towardOther\", \"distanceM\": 0.5, \"heightM\": 0.1 },")]
    public void Sound_pulls_of_the_other_kinds_are_read(string keys)
    {
        Change("\"kind\": \"loop\", " + Sound, keys);

        Assert.Empty(ContentLibrary.TryRead(folder).Faults);
    }

    [Fact]
    public void A_band_stretched_too_far_in_some_pose_is_refused_with_the_stretch()
    {
        Change("\"restLengthM\": 0.60", "\"restLengthM\": 0.25");

        var faults = ContentLibrary.TryRead(folder).Faults;

        Assert.Contains(faults, f => f.File == Exercise && f.Path.EndsWith(", end", StringComparison.Ordinal) && f.What.Contains("beyond 250 %", StringComparison.Ordinal));
    }

    private void AssertTold(string sound, string damaged, string path, string told, bool inMend = false)
    {
        Change(sound, damaged);

        Assert.Contains(
            ContentLibrary.TryRead(folder).Faults,
            f => f.File == Exercise && f.Path == path && (inMend ? f.Mend : f.What).Contains(told, StringComparison.Ordinal));
    }

    private void Change(string from, string to)
    {
        var path = Path.Combine(folder, Exercise);
        var text = File.ReadAllText(path);
        Assert.Contains(from, text, StringComparison.Ordinal);
        File.WriteAllText(path, text.Replace(from, to, StringComparison.Ordinal));
    }
}
