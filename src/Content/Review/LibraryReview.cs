using System.Collections.Immutable;
using System.Globalization;
using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Content;

/// <summary>
/// What takes too long for every reading: each exercise computed for a reference person, its intent held against what is found, its ladder
/// against the computed loads, its words against their reading grade.
/// </summary>
public sealed class LibraryReview
{
    /// <summary>A rung may ask this much less than the one below without being out of order: the model resolves no finer (our choice).</summary>
    public const double Alike = 0.95;

    private LibraryReview(ImmutableArray<ExerciseReview> exercises) => Exercises = exercises;

    /// <summary>The person the library is written for and reviewed with: a woman of 40 years, 1.65 m, 65 kg.</summary>
    public static Physique Person { get; } = new(Sex.Female, 40, 1.65, 65);

    /// <summary>One review for each exercise, by ladder and rung.</summary>
    public ImmutableArray<ExerciseReview> Exercises { get; }

    /// <summary>Every fault: disagreements that no one accepted, acceptances no longer needed, ladders out of order.</summary>
    public IEnumerable<ContentFault> Faults => Exercises.SelectMany(e => e.Faults);

    /// <summary>Reviews a library.</summary>
    /// <param name="library">The library.</param>
    /// <param name="id">Only the ladder of one exercise; null for all.</param>
    /// <returns>The review.</returns>
    public static LibraryReview Of(ContentLibrary library, string? id = null)
    {
        ArgumentNullException.ThrowIfNull(library);
        var ladder = id is null ? null : library.Exercise(id)?.Ladder;
        var reading = CaseReading.Of(library.Basis, new CaseFacts(Person, null, [], null));
        var reviews = ImmutableArray.CreateBuilder<ExerciseReview>();
        ExerciseFigures? below = null;
        foreach (var exercise in library.Exercises.Where(e => ladder is null || e.Ladder == ladder))
        {
            var figures = ExerciseFigures.Of(exercise, reading.Loads, reading.Reach, Side.Right);
            below = below?.Exercise.Ladder == exercise.Ladder ? below : null;
            var order = OutOfOrder(below, figures);
            reviews.Add(new ExerciseReview(figures, IntentCheck.Of(figures), order, Grades(library, exercise))
            {
                Faults = [.. Faulty(exercise, IntentCheck.Of(figures), order)],
            });
            below = figures;
        }

        return new LibraryReview(reviews.ToImmutable());
    }

    /// <summary>The number a ladder goes by: peak share of what it is meant to load, or reach of what it is meant to lengthen; null where neither is computed.</summary>
    /// <param name="figures">The figures of an exercise.</param>
    /// <returns>A fraction.</returns>
    public static double? Hardness(ExerciseFigures figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        return figures.MainLoad?.Middle ?? figures.MainReach?.Peak.Middle;
    }

    private static string? OutOfOrder(ExerciseFigures? below, ExerciseFigures here) =>
        below is not null && Hardness(below) is { } lower && Hardness(here) is { } higher && higher < Alike * lower
            ? string.Create(CultureInfo.InvariantCulture, $"It asks {100 * higher:0} %, the rung below ({below.Exercise.Id}) {100 * lower:0} %.")
            : null;

    private static ImmutableDictionary<string, double> Grades(ContentLibrary library, Exercise exercise) => ContentLibrary.Languages.ToImmutableDictionary(
        language => language, language => ReadingGrade.Of(library.Words(language, exercise.Id).AllText, language));

    private static IEnumerable<ContentFault> Faulty(Exercise exercise, ImmutableArray<Disagreement> disagreements, string? order)
    {
        var file = $"exercises/{exercise.Id}.json";
        foreach (var one in disagreements.Where(d => !exercise.Accepted.Any(a => Same(a.About, d.About))))
            yield return new ContentFault(file, null, "loads", one.What, "Mend poses or intent, or accept it with a reason in \"accepted\".");
        foreach (var spare in exercise.Accepted.Where(a => !disagreements.Any(d => Same(a.About, d.About))))
            yield return new ContentFault(file, null, "accepted", $"Nothing disagrees about {spare.About}.", "Take the acceptance out.");
        if (order is not null && exercise.OrderNote is null)
            yield return new ContentFault(file, null, "rung", order, "Change the rungs, or say in \"orderNote\" why the trade's order stands.");
        if (order is null && exercise.OrderNote is not null)
            yield return new ContentFault(file, null, "orderNote", "The rung below asks less, as it should.", "Take the note out.");
    }

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}

/// <summary>The review of one exercise.</summary>
/// <param name="Figures">What it asks of the reference person, right side working.</param>
/// <param name="Disagreements">Where intent and computation differ, accepted or not.</param>
/// <param name="OutOfOrder">How its ladder's order differs from the loads; null when it does not.</param>
/// <param name="Grades">Reading grade by language.</param>
public sealed record ExerciseReview(
    ExerciseFigures Figures, ImmutableArray<Disagreement> Disagreements, string? OutOfOrder, ImmutableDictionary<string, double> Grades)
{
    /// <summary>What is to be mended.</summary>
    public ImmutableArray<ContentFault> Faults { get; init; } = [];
}
