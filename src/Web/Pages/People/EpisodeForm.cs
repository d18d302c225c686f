using System.Globalization;
using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Records;

namespace MomentArm.Web.Pages.People;

/// <summary>What the pages ask about an episode of care, as typed.</summary>
public sealed class EpisodeForm : ITypedForm
{
    public string? Title { get; set; }

    public string? Side { get; set; }

    public string? StartedOn { get; set; }

    public string? Goal { get; set; }

    public string? Irritability { get; set; }

    /// <summary>Made when the empty form is shown: the same form sent twice begins one episode.</summary>
    public Guid FormId { get; set; }

    public string? Version { get; set; }

    public string? AsRead { get; set; }

    /// <summary>Whether anything but the day was filled in.</summary>
    public bool IsTouched => new[] { Title, Side, Goal, Irritability }.Any(text => !string.IsNullOrWhiteSpace(text));

    public IReadOnlyList<TypedField> Fields() =>
    [
        new(nameof(Title), "Title", () => Title, v => Title = v),
        new(nameof(Side), "Affected side", () => Side, v => Side = v),
        new(nameof(StartedOn), "Started on", () => StartedOn, v => StartedOn = v),
        new(nameof(Goal), "Goal", () => Goal, v => Goal = v),
        new(nameof(Irritability), "Irritability", () => Irritability, v => Irritability = v),
    ];

    /// <summary>An empty form that begins today.</summary>
    public static EpisodeForm New(DateOnly today) => new() { StartedOn = Day(today), FormId = Guid.CreateVersion7() };

    /// <summary>The form of a stored episode.</summary>
    public static EpisodeForm Of(Episode row)
    {
        ArgumentNullException.ThrowIfNull(row);
        var form = new EpisodeForm
        {
            Title = row.Title,
            Side = row.AffectedSide?.ToString(),
            StartedOn = Day(row.StartedOn),
            Goal = row.Goal,
            Irritability = row.Irritability?.ToString(),
        };
        form.MarkRead(row.RowVersion);
        return form;
    }

    /// <summary>Reads the fields.</summary>
    /// <param name="region">Kept from the stored episode.</param>
    /// <param name="today">Today in the clinic.</param>
    public EpisodeReading Read(string? region, DateOnly today)
    {
        var faults = new Dictionary<string, string>();
        if (string.IsNullOrWhiteSpace(Title))
            faults[nameof(Title)] = "Give the episode a short title, for example \"left hip, outer side\".";
        else if (Title.Length > 120)
            faults[nameof(Title)] = "The title is longer than 120 characters; shorten it.";
        var started = today;
        if (!string.IsNullOrWhiteSpace(StartedOn)
            && !DateOnly.TryParseExact(StartedOn.Trim(), ["yyyy-MM-dd", "M/d/yyyy"], CultureInfo.InvariantCulture, DateTimeStyles.None, out started))
            faults[nameof(StartedOn)] = $"\"{StartedOn.Trim()}\" is not a day. Write it as 2026-03-25 or 3/25/2026.";
        else if (started > today)
            faults[nameof(StartedOn)] = "An episode can't begin in the future.";
        else if (started < today.AddYears(-20))
            faults[nameof(StartedOn)] = "An episode of care that began more than 20 years ago? Check the year.";
        if (faults.Count > 0)
            return new EpisodeReading(null, faults);
        return new EpisodeReading(
            new EpisodeDetails(
                Title!.Trim(), started, region, Enum.TryParse<Side>(Side, out var side) ? side : null,
                string.IsNullOrWhiteSpace(Goal) ? null : Goal.Trim(),
                Enum.TryParse<Irritability>(Irritability, out var grade) ? grade : null),
            faults);
    }

    private static string Day(DateOnly day) => FormattableString.Invariant($"{day:yyyy-MM-dd}");
}

/// <summary>An episode form as read.</summary>
/// <param name="Details">What can be saved; null when a field could not be read.</param>
/// <param name="Faults">What is wrong, by field.</param>
public sealed record EpisodeReading(EpisodeDetails? Details, IReadOnlyDictionary<string, string> Faults);
