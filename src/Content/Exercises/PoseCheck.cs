using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Content;

/// <summary>
/// Every shipped pose must settle: contacts meet by a change of a few degrees, and the body stands on them. For the body it was
/// written for, and within wider limits for a small and a tall one, whom a fixed chair or step may not fit.
/// </summary>
internal static class PoseCheck
{
    private const double Degree = Math.PI / 180;

    private static readonly (Physique Physique, double MostChange, double MostGapM)[] Builds =
    [
        (new(Sex.Female, 40, 1.65, 65), 12 * Degree, Settling.Refused),
        (new(Sex.Female, 40, 1.50, 52), 25 * Degree, 0.03),
        (new(Sex.Male, 40, 1.90, 92), 25 * Degree, 0.03),
    ];

    internal static void Check(BodyContent body, IReadOnlyList<Exercise> exercises, FaultList faults)
    {
        foreach (var (physique, mostChange, mostGap) in Builds)
        {
            var model = body.Build(physique);
            var settler = new Settler(model, body.Points);
            foreach (var exercise in exercises)
            {
                foreach (var frame in exercise.Movement.Frames)
                    CheckFrame(model, exercise, frame, settler.Settle(frame, Side.Right), mostChange, mostGap, faults);
                CheckPulls(model, body.Points, exercise, faults);
            }
        }
    }

    private static void CheckFrame(
        BodyModel model, Exercise exercise, PosedFrame frame, PlacedBody settled, double mostChange, double mostGap, FaultList faults)
    {
        var file = $"exercises/{exercise.Id}.json";
        var place = FormattableString.Invariant($"poses.{frame.Name} at {model.StatureM:0.00} m");
        if (Settling.Refusal(model, settled, mostGap) is { } reason)
        {
            faults.Add(file, null, place, reason, "Change joint angles or contacts until all contacts can meet at once and the body stands.");
        }
        else if (settled.Changes.FirstOrDefault() is { } change && change.Size > mostChange)
        {
            faults.Add(
                file, null, place,
                FormattableString.Invariant(
                    $"Settling had to change {change.Motion} from {change.From / Degree:0} to {change.To / Degree:0} degrees (model sign), {change.Side?.ToString() ?? "midline"}."),
                "Write angles nearer to what the contacts need.");
        }
    }

    /// <summary>Every band must be usable from the first pose to the last, for every build.</summary>
    private static void CheckPulls(BodyModel model, SurfacePoints points, Exercise exercise, FaultList faults)
    {
        var movement = exercise.Movement;
        if (movement.Pulls.IsEmpty)
            return;
        var setting = PullSetting.For(model, points, movement, Side.Right, 0);
        var state = new BodyState(model);
        foreach (var frame in movement.Frames)
        {
            state.Update(Settling.Settle(model, points, frame, Side.Right).Pose);
            var pulls = Pulls.On(model, points, movement, Side.Right, state, setting);
            var place = FormattableString.Invariant($"pulls at {model.StatureM:0.00} m, {frame.Name}");
            foreach (var problem in pulls.Warnings.Append(pulls.Refusal).OfType<string>())
                faults.Add($"exercises/{exercise.Id}.json", null, place, problem, "Change the pull or the poses.");
            if (setting.Refusal is not null)
                return;
        }
    }
}
