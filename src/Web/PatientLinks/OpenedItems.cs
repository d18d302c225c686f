using System.Globalization;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Prescribing;
using MomentArm.Web.Clinic;
using MomentArm.Web.Pages.Library;

namespace MomentArm.Web.PatientLinks;

/// <summary>Turns a program into what the phone shows, in the patient's words and on their side.</summary>
internal sealed class OpenedItems(ContentLibrary content, ExercisePictures pictures)
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
            exercise.Id, title, side, sideLine, [.. words.SetUp.Select(Fill)], [.. words.Steps.Select(Fill)], Fill(words.Feel),
            [.. words.Watch.Select(Fill)], Fill(words.Easier), Fill(words.Harder),
            string.IsNullOrWhiteSpace(item.Note) ? null : item.Note, words.RepetitionWord,
            new OpenedDose(
                dose.Sets, dose.Repetitions, dose.RepetitionsTo, dose.OutSeconds, dose.HoldSeconds, dose.BackSeconds,
                dose.RestSeconds, dose.WeightKg, DoseText.ForPatient(dose, words.RepetitionWord)),
            new OpenedPicture(moving.ViewBox, $"{title}. {sideLine}", [.. moving.Frames.Select(frame => moving.Backdrop + frame)]));
    }
}
