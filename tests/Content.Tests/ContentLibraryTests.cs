using System.Globalization;
using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Content.Tests;

public sealed class ContentLibraryTests(ITestOutputHelper output)
{
    [Fact]
    public void All_shipped_content_loads_without_a_fault()
    {
        var (library, faults) = ContentLibrary.TryRead(Shipped.Folder);

        Assert.True(faults.Count == 0, string.Join(Environment.NewLine, faults));
        foreach (var region in library!.Exercises.GroupBy(e => e.Region).OrderBy(g => g.Key))
            output.WriteLine($"{region.Key}: {region.Count()}");
    }

    [Fact]
    public void Release_stretch_strengthening_and_daily_tasks_are_covered_on_the_floor_and_standing()
    {
        var exercises = Shipped.Library.Exercises;

        Assert.Superset(new HashSet<Purpose> { Purpose.Release, Purpose.Stretch, Purpose.Strengthen, Purpose.Functional }, exercises.Select(e => e.Purpose).ToHashSet());
        Assert.Equal(Enum.GetValues<BodyPosition>(), exercises.Select(e => e.Position).Distinct().Order());
    }

    [Fact]
    public void A_ladder_has_no_missing_rung()
    {
        foreach (var ladder in Shipped.Library.Exercises.GroupBy(e => e.Ladder))
            Assert.Equal(Enumerable.Range(1, ladder.Count()), ladder.Select(e => e.Rung));
    }

    [Theory]
    [InlineData("clam", "side-lying-leg-raise")]
    [InlineData("bridge", "single-leg-bridge")]
    [InlineData("sit-to-stand", "lateral-step-down")]
    public void A_harder_form_stands_above_an_easier_one(string easier, string harder)
    {
        Assert.Equal(Shipped.Exercise(easier).Ladder, Shipped.Exercise(harder).Ladder);
        Assert.True(Shipped.Exercise(easier).Rung < Shipped.Exercise(harder).Rung);
    }

    [Fact]
    public void Every_exercise_has_cautions_two_or_three_faults_with_cues_and_a_place_in_the_picture()
    {
        foreach (var exercise in Shipped.Library.Exercises)
        {
            Assert.NotEmpty(exercise.Cautions);
            Assert.InRange(exercise.Faults.Length, 2, 3);
            Assert.All(exercise.Faults, f => Assert.False(string.IsNullOrWhiteSpace(f.Cue)));
            Assert.Equal("start", exercise.Movement.Frames[0].Name);
            Assert.Equal("end", exercise.Movement.Frames[^1].Name);
        }
    }

    [Fact]
    public void What_an_exercise_needs_is_in_its_picture()
    {
        var shown = new Dictionary<Equipment, PropKind>
        {
            [Equipment.Mat] = PropKind.Mat,
            [Equipment.Chair] = PropKind.Chair,
            [Equipment.Step] = PropKind.Step,
            [Equipment.Wall] = PropKind.Wall,
            [Equipment.Roller] = PropKind.Roller,
            [Equipment.Strap] = PropKind.Strap,
            [Equipment.LoopBand] = PropKind.LoopBand,
            [Equipment.CuffWeight] = PropKind.CuffWeight,
            [Equipment.Band] = PropKind.Band,
            [Equipment.HandWeight] = PropKind.HandWeight,
            [Equipment.Ball] = PropKind.Ball,
            [Equipment.SmallBall] = PropKind.SmallBall,
            [Equipment.Towel] = PropKind.Towel,
            [Equipment.Pillow] = PropKind.Pillow,
            [Equipment.Bench] = PropKind.Bench,
            [Equipment.Table] = PropKind.Table,
            [Equipment.Board] = PropKind.Board,
            [Equipment.Stick] = PropKind.Stick,
            [Equipment.Bicycle] = PropKind.Bicycle,
        };
        foreach (var exercise in Shipped.Library.Exercises)
        {
            Assert.All(exercise.Equipment, e => Assert.Contains(shown[e], exercise.Movement.Props.Select(p => p.Kind)));
            Assert.All(
                exercise.Movement.Props.Where(p => p.Kind != PropKind.Pillow),
                p => Assert.Contains(exercise.Equipment, e => shown[e] == p.Kind));
        }
    }

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void Words_are_plain_and_name_the_persons_own_side(string language)
    {
        foreach (var exercise in Shipped.Library.Exercises)
        {
            var words = Shipped.Library.Words(language, exercise.Id);
            string[] texts = [words.Title, .. words.SetUp, .. words.Steps, words.Feel, .. words.Watch, words.Easier, words.Harder];
            var text = string.Join(" ", texts.Select(t => t.TrimEnd('.') + "."));
            var grade = ReadingGrade.Of(text, language);
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{exercise.Id}: reading grade {grade:0.0}, longest sentence {ReadingGrade.LongestSentence(text)} words"));

            Assert.True(grade <= 6, exercise.Id);
            Assert.InRange(words.Watch.Length, 2, 3);
            if (!exercise.Movement.Bilateral)
                Assert.True(text.Contains("{side}", StringComparison.Ordinal) || text.Contains("{side.m}", StringComparison.Ordinal), exercise.Id);
            foreach (var side in new[] { Side.Left, Side.Right })
            {
                var filled = Shipped.Library.PatientWordsIn(language).Sides.Fill(text, side);
                Assert.DoesNotContain('{', filled);
            }
        }
    }

    [Theory]
    [InlineData("pelvis")]
    [InlineData("abduct")]
    [InlineData("adduct")]
    [InlineData("flexion")]
    [InlineData("extension")]
    [InlineData("gluteal")]
    [InlineData("quadriceps")]
    [InlineData("supine")]
    [InlineData("prone")]
    public void Patients_read_no_trade_words(string tradeWord)
    {
        foreach (var path in Directory.EnumerateFiles(Path.Combine(Shipped.Folder, "words", "en", "exercises"), "*.json"))
            Assert.DoesNotContain(tradeWord, File.ReadAllText(path), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Sources_are_sorted_and_say_how_far_they_were_confirmed()
    {
        var lines = File.ReadAllLines(Path.Combine(Shipped.Folder, "sources.json"));
        var keys = lines.Where(l => l.StartsWith("  \"", StringComparison.Ordinal)).Select(l => l.Trim().Split('"')[1]).ToArray();

        Assert.Equal(keys.Order(StringComparer.Ordinal), keys);
        Assert.Equal(keys.Length, Shipped.Library.Sources.Count);
        Assert.All(Shipped.Library.Sources.Values, s => Assert.False(string.IsNullOrWhiteSpace(s.Confirmation)));
    }
}
