using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>
/// From an author's joint angles and named contacts to a body whose contacts meet their surfaces. First the body is laid down
/// as one rigid piece (<see cref="Placing"/>); what still misses is closed by the smallest weighted change of joint angles
/// inside their usual ranges (damped least squares with the analytic Jacobian). It says what it changed and refuses what cannot be.
/// See docs/models/body.md, section 4.
/// </summary>
public static class Settling
{
    /// <summary>A contact this near its surface counts as meeting it, metres.</summary>
    public const double Meets = 0.001;

    /// <summary>A contact farther than this from its surface after settling is refused, metres.</summary>
    public const double Refused = 0.005;

    /// <summary>Changes smaller than this are not told, radians (half a degree).</summary>
    public const double Told = 0.5 * Math.PI / 180;

    private const int MostSteps = 30;

    // A step this small (radians and metres) changes nothing that is shown.
    private const double StepsEnd = 1e-6;

    /// <summary>Settles a frame.</summary>
    /// <param name="model">The body.</param>
    /// <param name="points">The named surface points.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="working">The side that works.</param>
    /// <returns>The settled body; the first contact lies at x = z = 0 so that frames of one movement fit together.</returns>
    public static PlacedBody Settle(BodyModel model, SurfacePoints points, PosedFrame frame, Side working)
    {
        // The left is the right in a mirror, to the last digit: pictures and loads of both sides then agree exactly.
        if (working == Side.Left)
            return Settle(model, points, frame, Side.Right).Mirrored(model);
        var placed = Placing.Place(model, points, frame, working);

        // A pose that touches nothing (a test on a table that is not drawn) has no floor to settle on.
        if (placed.Contacts.IsEmpty)
            return placed;
        var state = new BodyState(model);
        state.Update(placed.Pose);
        var problem = new SettlingProblem(model, points, placed);
        if (placed.LargestGapM <= Meets / 10 && !problem.SinksIntoFloor(state))
            return placed;
        for (var step = 0; step < MostSteps; step++)
        {
            state.Update(placed.Pose);
            if (problem.Step(state, placed.Pose) < StepsEnd)
                break;
        }

        state.Update(placed.Pose);
        var anchor = state.Point(placed.Contacts[0].Segment, placed.Contacts[0].Local);
        placed.Pose.PelvisPosition -= new Vec3(anchor.X, 0, anchor.Z);
        state.Update(placed.Pose);
        var contacts = placed.Contacts.Select(c => c with { Point = state.Point(c.Segment, c.Local) }).ToImmutableArray();
        return new PlacedBody(
            placed.Pose, contacts, contacts.Max(c => Math.Abs(c.Gap)), problem.Changes(placed.Pose));
    }

    /// <summary>Why a settled pose can't be, in words; null when it can. Contacts first, then standing.</summary>
    /// <param name="model">The body.</param>
    /// <param name="settled">The settled body.</param>
    /// <param name="mostGapM">Gap from which a contact counts as not met, metres.</param>
    /// <returns>A sentence that says what is wrong and what would help.</returns>
    public static string? Refusal(BodyModel model, PlacedBody settled, double mostGapM = Refused)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(settled);
        if (Missing(settled, mostGapM) is { } missing)
            return missing;
        var state = new BodyState(model);
        state.Update(settled.Pose);
        var bearing = settled.Contacts.Where(c => c.Contact.BearsWeight && c.Contact.Surface != SurfaceKind.Wall);
        return VerticalSupport.Solve(
            [.. bearing.Select(c => c.Point)], [], state.MassCenter(), model.MassKg * BodyModel.Gravity,
            state.Rotations[0] * Vec3.UnitX).Reason;
    }

    /// <summary>Which contact does not meet its surface, in words; null when all do.</summary>
    /// <param name="settled">The settled body.</param>
    /// <param name="mostGapM">Gap from which a contact counts as not met, metres.</param>
    /// <returns>A sentence about the worst contact.</returns>
    public static string? Missing(PlacedBody settled, double mostGapM = Refused)
    {
        ArgumentNullException.ThrowIfNull(settled);
        var worst = settled.Contacts.MaxBy(c => Math.Abs(c.Gap));
        return worst is null || Math.Abs(worst.Gap) <= mostGapM
            ? null
            : FormattableString.Invariant(
                $"{worst.Contact.Point}{Whose(worst.Contact.Limb)} cannot reach the {Name(worst.Contact.Surface)}: it stays {Math.Abs(worst.Gap) * 100:0.0} cm {(worst.Gap > 0 ? "above" : "below")}. Change the pose, the height or the contact.");
    }

    private static string Whose(Limb? limb) =>
        limb is null ? "" : limb == Limb.Working ? " of the working limb" : " of the other limb";

    private static string Name(SurfaceKind surface) => surface switch
    {
        SurfaceKind.Floor => "floor",
        SurfaceKind.Seat => "seat",
        SurfaceKind.Step => "step",
        SurfaceKind.Wall => "wall",
        SurfaceKind.Roller => "roller",
    };
}
