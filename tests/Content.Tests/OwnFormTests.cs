using MomentArm.Body;

namespace MomentArm.Content.Tests;

public sealed class OwnFormTests
{
    public static TheoryData<string> Ids => Shipped.Ids;

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_shipped_form_passes_as_a_clinics_own_and_comes_back_the_same_from_its_file(string id)
    {
        var form = Copy(id);
        var (read, damage) = OwnForm.Read(OwnForm.Write(form));
        Assert.Empty(damage);
        Assert.Equal(OwnForm.Write(form), OwnForm.Write(read!));
        var (own, faults) = OwnForm.Check(read!, Shipped.Library);
        Assert.Empty(faults);
        Assert.Equal("own-" + id, own!.Exercise.Id);
        Assert.Equal(Shipped.Exercise(id).Movement.Frames.Length, own.Exercise.Movement.Frames.Length);
        Assert.Equal(Shipped.Library.Words("en", id).AllText, own.English.AllText);
    }

    [Fact]
    public void Every_fault_is_told_at_once()
    {
        var form = Copy("clam");
        var pose = form.Exercise.Poses[0] with { Working = form.Exercise.Poses[0].Working with { KneeFlexionDeg = 900 } };
        var (own, faults) = OwnForm.Check(
            form with
            {
                Exercise = form.Exercise with { Id = "clam", Poses = [pose, form.Exercise.Poses[1]], Cautions = [], Faults = [] },
                Words = form.Words with { En = form.Words.En with { Feel = "Feel your affected side." } },
            },
            Shipped.Library);
        Assert.Null(own);
        foreach (var path in new[] { "id", "poses[0].working.kneeFlexionDeg", "cautions", "faults", "feel" })
            Assert.Contains(faults, f => f.Path == path);
    }

    [Fact]
    public void A_pose_that_does_not_stand_is_told_for_the_builds_it_fails()
    {
        var form = Copy("clam");
        var pose = form.Exercise.Poses[1] with { Contacts = [new ContactFile("palm", SurfaceKind.Floor, Limb.Working)] };
        var (own, faults) = OwnForm.Check(form with { Exercise = form.Exercise with { Poses = [form.Exercise.Poses[0], pose] } }, Shipped.Library);
        Assert.Null(own);
        Assert.Contains(faults, f => f.Path == "poses.end at 1.65 m");
    }

    [Theory]
    [InlineData("", "damaged")]
    [InlineData("{", "damaged")]
    [InlineData("[1, 2]", "no exercise form")]
    [InlineData("{ \"title\": \"a shopping list\" }", "no exercise form")]
    [InlineData("{ \"exercise\": {}, \"words\": {} }", "in which format")]
    [InlineData("{ \"format\": 1, \"exercise\": {}, \"words\": {} }", "Keys are missing")]
    public void What_is_no_form_is_refused_in_words(string text, string said)
    {
        var (form, faults) = OwnForm.Read(text);
        Assert.Null(form);
        Assert.Contains(faults, f => f.What.Contains(said, StringComparison.Ordinal));
    }

    [Fact]
    public void A_newer_format_and_holes_in_lists_are_refused_in_words()
    {
        var text = OwnForm.Write(Copy("clam"));
        Assert.Contains(OwnForm.Read(text.Replace("\"format\": 1", "\"format\": 2", StringComparison.Ordinal)).Faults, f => f.What.Contains("knows up to 1", StringComparison.Ordinal));
        var holed = text.Replace("\"loads\": [", "\"loads\": [ null,", StringComparison.Ordinal);
        Assert.NotEqual(text, holed);
        Assert.Contains(OwnForm.Read(holed).Faults, f => f.Path == "exercise.loads[0]");
    }

    [Fact]
    public void A_file_cut_short_anywhere_is_refused_and_never_breaks_the_reader()
    {
        var text = OwnForm.Write(Copy("clam")).TrimEnd();
        for (var length = 0; length < text.Length; length += 97)
            Assert.NotEmpty(OwnForm.Read(text[..length]).Faults);
    }

    private static OwnFormFile Copy(string id)
    {
        var form = ShippedForms.Read(Shipped.Library, Shipped.Folder, id)!;
        return form with { Exercise = form.Exercise with { Id = "own-" + id } };
    }
}
