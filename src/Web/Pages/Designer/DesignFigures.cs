using System.Collections.Immutable;
using System.Diagnostics;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Drawing;
using MomentArm.Prescribing;
using MomentArm.Web.Pages.Library;

namespace MomentArm.Web.Pages.Designer;

/// <summary>How a pose stands.</summary>
/// <param name="Name">Start, end, or a pose between.</param>
/// <param name="Refusal">Why it can't be; null when it stands.</param>
/// <param name="Changes">What settling changed, in words.</param>
public sealed record PoseVerdict(string Name, string? Refusal, ImmutableArray<string> Changes);

/// <summary>Everything a form that is being made comes to, for the reference person with the right side working.</summary>
public sealed record DesignFigures
{
    /// <summary>What is still wrong; a form is saved only when this is empty.</summary>
    public required IReadOnlyList<ContentFault> Faults { get; init; }

    /// <summary>The verdict of each pose; empty when the poses can't be read.</summary>
    public ImmutableArray<PoseVerdict> Verdicts { get; init; } = [];

    /// <summary>The load; null when the poses can't be read.</summary>
    public MovementLoad? Load { get; init; }

    /// <summary>The reach.</summary>
    public MovementReach? Reach { get; init; }

    /// <summary>The picture of one pose, with its body; null when both are shown.</summary>
    public PosedPicture? Posed { get; init; }

    /// <summary>The picture.</summary>
    public Picture? Picture { get; init; }

    /// <summary>How long all of it took, milliseconds.</summary>
    public double Milliseconds { get; init; }

    /// <summary>Computes a form.</summary>
    /// <param name="form">As it stands.</param>
    /// <param name="shown">The pose that is drawn; null for the end with the start behind it.</param>
    /// <param name="content">The body and its rules.</param>
    /// <param name="reference">The reference person.</param>
    /// <param name="figure">The body that is drawn.</param>
    public static DesignFigures Of(OwnFormFile form, int? shown, ContentLibrary content, ReferenceLoads reference, BodyModel figure)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(content);
        ArgumentNullException.ThrowIfNull(reference);
        var begun = Stopwatch.GetTimestamp();
        var (_, faults) = OwnForm.Check(form, content);
        var made = Computed(form.Exercise, content) is { } exercise
            ? Computed(exercise, shown, content, reference, figure)
            : new DesignFigures { Faults = [] };
        return made with { Faults = faults, Milliseconds = Stopwatch.GetElapsedTime(begun).TotalMilliseconds };
    }

    private static DesignFigures Computed(Exercise exercise, int? shown, ContentLibrary content, ReferenceLoads reference, BodyModel figure)
    {
        var (movement, points) = (exercise.Movement, content.Body.Points);
        var settled = reference.Loads.Settle(exercise, Side.Right);
        var settler = new Settler(settled.Model, points);
        var posed = shown is { } pose
            ? PosedPicture.Of(figure, points, movement, Side.Right, (double)pose / Math.Max(1, movement.Frames.Length - 1), PictureOptions.Usual)
            : null;
        return new DesignFigures
        {
            Faults = [],
            Verdicts = [.. movement.Frames.Select(frame => Verdict(frame, settled.Model, settler.Settle(frame, Side.Right)))],
            Load = reference.Loads.Of(exercise, settled, exercise.Dose.WeightKg ?? 0),
            Reach = reference.Reach.Of(settled),
            Posed = posed,
            Picture = posed?.Picture ?? Pictures.Combined(figure, points, movement, Side.Right, PictureOptions.Usual),
        };
    }

    /// <summary>The exercise as far as it can be computed: what is only missing in words does not hide the numbers.</summary>
    private static Exercise? Computed(ExerciseFile file, ContentLibrary content)
    {
        var nothing = file.Loads.Count + file.Groups.Count + file.BeyondModel.Count == 0;
        return OwnForm.ExerciseOf(file with { BeyondModel = nothing ? ["not said yet"] : file.BeyondModel, Rung = 1, Accepted = [] }, content).Exercise;
    }

    private static PoseVerdict Verdict(PosedFrame frame, BodyModel model, PlacedBody placed) => new(
        frame.Name,
        Settling.Refusal(model, placed) is { } why ? ExerciseText.Plain(why) : null,
        [
            .. placed.Changes.Take(4).Select(c => FormattableString.Invariant(
                $"{(c.Side is { } side ? side == Side.Right ? "working " : "other " : "")}{ExerciseText.Words(c.Motion)} from {Math.Round(c.From * 180 / Math.PI) + 0.0:0}° to {Math.Round(c.To * 180 / Math.PI) + 0.0:0}°")),
        ]);
}
