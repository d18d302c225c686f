using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Content;

/// <summary>Every shipped pose must meet its contacts and stand on them, for both sides.</summary>
internal static class PoseCheck
{
    private const double LargestGapM = 0.03;

    internal static void Check(BodyContent body, IReadOnlyList<Exercise> exercises, FaultList faults)
    {
        var model = body.Build(new Physique(Sex.Female, 40));
        var state = new BodyState(model);
        foreach (var exercise in exercises)
        {
            foreach (var frame in exercise.Movement.Frames)
            {
                var placed = Placing.Place(model, body.Points, frame, Side.Right);
                if (placed.LargestGapM > LargestGapM)
                {
                    faults.Add(
                        $"exercises/{exercise.Id}.json", null, $"poses.{frame.Name}",
                        FormattableString.Invariant($"A contact misses its surface by {placed.LargestGapM * 100:0.0} cm."),
                        "Change joint angles or contacts until all contacts can meet at once.");
                }

                state.Update(placed.Pose);
                var bearing = placed.Contacts.Where(c => c.Contact.BearsWeight && c.Contact.Surface != SurfaceKind.Wall);
                var support = VerticalSupport.Solve(
                    [.. bearing.Select(c => c.Point)], [], state.MassCenter(), model.MassKg * BodyModel.Gravity,
                    state.Rotations[0] * Vec3.UnitX);
                if (!support.Stands)
                    faults.Add($"exercises/{exercise.Id}.json", null, $"poses.{frame.Name}", support.Reason!, "Change the pose or its contacts.");
            }
        }
    }
}
