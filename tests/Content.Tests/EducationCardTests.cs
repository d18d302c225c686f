using MomentArm.Body;
using MomentArm.Drawing;

namespace MomentArm.Content.Tests;

/// <summary>Explanations for patients: read strictly, plain in every language, drawn from the body model.</summary>
public sealed class EducationCardTests(ITestOutputHelper output)
{
    [Fact]
    public void At_least_ten_common_problems_are_explained_in_every_language()
    {
        Assert.True(Shipped.Library.Cards.Count >= 10);
        foreach (var card in Shipped.Library.Cards)
        {
            foreach (var language in ContentLibrary.Languages)
            {
                var words = Shipped.Library.CardWords(language, card.Id);
                var grade = ReadingGrade.Of(words.AllText, language);
                output.WriteLine(FormattableString.Invariant($"{card.Id}, {language}: reading grade {grade:0.0}"));
                Assert.True(grade <= 6, card.Id);
                Assert.InRange(words.Help.Length, 2, 5);
                Assert.Equal(card.Pictures.Length, words.Captions.Length);
            }
        }
    }

    [Fact]
    public void Every_picture_settles_and_is_drawn_alike_on_both_sides()
    {
        var model = Shipped.Library.Body.Build(new Physique());
        var muscles = Shipped.Library.Body.MusclesOf(model);
        foreach (var picture in Shipped.Library.Cards.SelectMany(c => c.Pictures))
        {
            var right = picture.Draw(muscles, Shipped.Library.Body.Points, Side.Right, PictureOptions.Usual);
            var left = picture.Draw(muscles, Shipped.Library.Body.Points, Side.Left, PictureOptions.Usual);
            Assert.Equal(right.Scene.Shapes.Length, left.Scene.Shapes.Length);
            Assert.All(picture.Movement.Frames, f => Assert.InRange(
                Settling.Settle(model, Shipped.Library.Body.Points, f, Side.Right).LargestGapM, 0, Settling.Refused));
        }
    }

    /// <summary>The band's line is in front of the knee axis when straight and behind it when bent, as the card says.</summary>
    [Fact]
    public void The_band_card_shows_what_the_model_computes()
    {
        var card = Shipped.Library.Cards.Single(c => c.Id == "outer-knee-band");
        var model = Shipped.Library.Body.Build(new Physique());
        var muscles = Shipped.Library.Body.MusclesOf(model);
        double KneeArm(CardPicture picture)
        {
            var pose = Settling.Settle(model, Shipped.Library.Body.Points, picture.Movement.Frames[0], Side.Right).Pose;
            var state = new BodyState(model);
            state.Update(pose);
            var lines = new MuscleState(muscles);
            lines.Update(state, pose);
            return lines.Arm(muscles.IndexOf(picture.Lines[0], Side.Right), model.IndexOf(Motion.KneeExtension, Side.Right));
        }

        Assert.True(KneeArm(card.Pictures[0]) > 0);
        Assert.True(KneeArm(card.Pictures[1]) < 0);
    }

    [Theory]
    [InlineData("\"sources\": [", "\"sources\": [\"nobody-1900\", ", "There is no source \"nobody-1900\".")]
    [InlineData("iliotibial-band-tensor", "iliotibial-cable", "There is no line \"iliotibial-cable\".")]
    [InlineData("\"id\": \"outer-knee-band\"", "\"id\": \"other\"", "differs from the file name")]
    public void A_damaged_card_is_told(string sound, string damaged, string told)
    {
        var folder = Directory.CreateTempSubdirectory().FullName;
        try
        {
            Copy(Shipped.Folder, folder);
            var path = Path.Combine(folder, "cards", "outer-knee-band.json");
            var text = File.ReadAllText(path);
            Assert.Contains(sound, text, StringComparison.Ordinal);
            File.WriteAllText(path, text.Replace(sound, damaged, StringComparison.Ordinal));
            Assert.Contains(ContentLibrary.TryRead(folder, settle: false).Faults, f => f.ToString().Contains(told, StringComparison.Ordinal) && f.File == "cards/outer-knee-band.json");
        }
        finally
        {
            Directory.Delete(folder, true);
        }
    }

    private static void Copy(string from, string to)
    {
        foreach (var folder in Directory.EnumerateDirectories(from, "*", SearchOption.AllDirectories))
            Directory.CreateDirectory(Path.Combine(to, Path.GetRelativePath(from, folder)));
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
            File.Copy(file, Path.Combine(to, Path.GetRelativePath(from, file)));
    }
}
