using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Drawing;
using MomentArm.Prescribing;

namespace MomentArm.Documents;

/// <summary>Turns a program into what the patient reads and sees, on the patient's side.</summary>
public static class HandoutItems
{
    /// <summary>Makes the items; exercises that the library no longer has are left out.</summary>
    public static ImmutableArray<HandoutItem> Of(HandoutInput input)
    {
        ArgumentNullException.ThrowIfNull(input);
        var items = ImmutableArray.CreateBuilder<HandoutItem>();
        foreach (var item in input.Program.Items)
        {
            if (input.Exercise(item.ExerciseId) is not { } exercise)
                continue;
            var side = item.WorkingSide ?? Side.Right;
            var words = input.Words(item.ExerciseId);
            string Fill(string text) => input.Phrases.Sides.Fill(text, side);
            var title = Fill(words.Title);
            var sideLine = SideLine(item, exercise, input.Phrases);
            ImmutableArray<string> steps = [.. words.SetUp.Concat(words.Steps).Select(Fill)];
            items.Add(new HandoutItem(
                items.Count + 1,
                title,
                sideLine,
                Pictures.Combined(input.Model, input.Points, exercise.Movement, side, PictureOptions.Usual),
                $"{title}. {sideLine} {string.Join(" ", steps)}",
                steps,
                Fill(words.Feel),
                DoseText.ForPatient(item.Dose, words.RepetitionWord),
                item.Note));
        }

        return items.ToImmutable();
    }

    /// <summary>Which side works, in words.</summary>
    public static string SideLine(ProgramItem item, Exercise exercise, PatientWords phrases)
    {
        ArgumentNullException.ThrowIfNull(item);
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(phrases);
        if (exercise.Movement.Bilateral || item.WorkingSide is not { } side)
            return phrases.TogetherLine;
        return phrases.Sides.Fill(item.BothSides ? phrases.BothSidesLine : phrases.SideLine, side);
    }
}
