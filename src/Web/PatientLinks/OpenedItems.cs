using System.Globalization;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Prescribing;
using MomentArm.Web.Clinic;
using MomentArm.Web.Pages.Education;
using MomentArm.Web.Pages.Library;

namespace MomentArm.Web.PatientLinks;

/// <summary>Turns a program into what the phone shows, in the patient's words and on their side.</summary>
internal sealed class OpenedItems(ContentLibrary content, ExercisePictures pictures, CardPictures cards)
{
    private const string Language = "en";

    /// <summary>One entry for each exercise and side; exercises that the library no longer has are left out.</summary>
    internal IReadOnlyList<OpenedItem> Of(HomeProgram program, ClinicLibrary library)
    {
        var items = new List<OpenedItem>();
        foreach (var item in program.Items)
        {
            if (library.Exercise(item.ExerciseId) is not { } exercise)
                continue;
            if (exercise.Movement.Bilateral || item.WorkingSide is not { } side)
            {
                items.Add(One(item, exercise, library.Words(Language, exercise.Id), null));
                continue;
            }

            items.Add(One(item, exercise, library.Words(Language, exercise.Id), side));
            if (item.BothSides)
                items.Add(One(item, exercise, library.Words(Language, exercise.Id), side.Other()));
        }

        return items;
    }

    /// <summary>The explanations that go with the program, on the side that works most.</summary>
    internal IReadOnlyList<OpenedCard> CardsOf(HomeProgram program)
    {
        var side = program.Items.Select(i => i.WorkingSide).OfType<Side>().GroupBy(s => s).OrderByDescending(g => g.Count()).Select(g => g.Key).FirstOrDefault(Side.Right);
        string Fill(string text) => content.PatientWords.Sides.Fill(text, side);
        return
        [
            .. program.Cards.Select(id => content.Cards.FirstOrDefault(c => c.Id == id)).OfType<EducationCard>().Select(card =>
            {
                var words = content.CardWords(Language, card.Id);
                return new OpenedCard(
                    Fill(words.Title), [.. words.Text.Select(Fill)],
                    [.. cards.Of(card, side).Zip(words.Captions, (p, caption) => new OpenedPicture(p.ViewBox, Fill(caption), [p.Inner]))],
                    [.. words.Help.Select(Fill)]);
            }),
        ];
    }

    /// <summary>The stop signs; each completes "Stop and call us if".</summary>
    internal IReadOnlyList<string> StopSigns(HomeProgram program) =>
    [
        .. content.PatientWords.StopSigns.Select(sign => sign.Replace(
            "{ceiling}", program.PainCeiling.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal)),
    ];

    private OpenedItem One(ProgramItem item, Exercise exercise, ExerciseWords words, Side? side)
    {
        var phrases = content.PatientWords;
        var drawn = side ?? Side.Right;
        string Fill(string text) => phrases.Sides.Fill(text, drawn);
        var title = Fill(words.Title);
        var sideLine = side is null ? phrases.TogetherLine : Fill(phrases.SideLine);
        var moving = pictures.Moving(exercise, drawn);
        var dose = item.Dose;
        return new OpenedItem(
            exercise.Id, title, side, sideLine, [.. words.SetUp.Select(Fill)], [.. words.Steps.Append(words.Breathing).OfType<string>().Select(Fill)], Fill(words.Feel),
            [.. words.Watch.Select(Fill)], Fill(words.Easier), Fill(words.Harder),
            [.. exercise.Equipment.Select(e => content.Thing(Language, e)).Select(t => $"{char.ToUpperInvariant(t.Name[0])}{t.Name[1..]}. {t.Instead}")],
            [.. words.Stop.Select(Fill)], words.ShortSpace is { } little ? Fill(little) : null,
            string.IsNullOrWhiteSpace(item.Note) ? null : item.Note, words.RepetitionWord,
            new OpenedDose(
                dose.Sets, dose.Repetitions, dose.RepetitionsTo, dose.OutSeconds, dose.HoldSeconds, dose.BackSeconds,
                dose.RestSeconds, dose.WeightKg, DoseText.ForPatient(dose, words.RepetitionWord)),
            new OpenedPicture(moving.ViewBox, $"{title}. {sideLine}", [.. moving.Frames.Select(frame => moving.Backdrop + frame)]));
    }
}
