using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>
/// Lays a posed body on its surfaces as one rigid piece: height, pitch and roll are found by least squares so that the
/// contact points lie on floor, seat or step. Joint angles are kept as the author gave them; what does not meet is told.
/// </summary>
public static class Placing
{
    /// <summary>Weight of staying near the author's orientation, metres per radian: small against real contacts.</summary>
    private const double OrientationPull = 0.002;

    /// <summary>
    /// The same against rolling over of a body on its side, whose contacts lie nearly in one row: without it a centimetre of
    /// misfit would roll the body onto its front or back.
    /// </summary>
    private const double SideLyingRollPull = 0.05;

    /// <summary>Places a frame.</summary>
    /// <param name="model">The body.</param>
    /// <param name="points">The named surface points.</param>
    /// <param name="frame">The frame.</param>
    /// <param name="working">The side that works.</param>
    /// <returns>The placed body; the first contact lies at x = z = 0 so that frames of one movement fit together.</returns>
    public static PlacedBody Place(BodyModel model, SurfacePoints points, PosedFrame frame, Side working)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(points);
        ArgumentNullException.ThrowIfNull(frame);
        var pose = ClinicalPose.Of(model, frame, working);
        var state = new BodyState(model);
        state.Update(pose);
        var contacts = ContactsOf(model, points, frame, working, state);
        var level = contacts.Where(c => c.Contact.Surface != SurfaceKind.Wall).ToArray();
        if (level.Length > 0)
        {
            var onSide = frame.Orientation is Orientation.SideLyingOnWorking or Orientation.SideLyingOnOther;
            Settle(pose, level, onSide ? SideLyingRollPull : OrientationPull);
        }

        state.Update(pose);
        MoveAnchorToOrigin(pose, contacts, state);
        state.Update(pose);

        var placed = contacts.Select(c => c with { Point = state.Point(c.Segment, c.Local) }).ToImmutableArray();
        return new PlacedBody(pose, placed, placed.Select(c => Math.Abs(c.Gap)).DefaultIfEmpty(0).Max(), []);
    }

    private static ImmutableArray<PlacedContact> ContactsOf(
        BodyModel model, SurfacePoints points, PosedFrame frame, Side working, BodyState state)
    {
        var contacts = ImmutableArray.CreateBuilder<PlacedContact>();
        foreach (var contact in frame.Contacts)
        {
            var side = contact.Limb?.On(working);
            foreach (var point in points.Resolve(contact.Point))
            {
                var (segment, local) = point.On(model, side);
                contacts.Add(new PlacedContact(contact, segment, local, state.Point(segment, local)));
            }
        }

        return contacts.ToImmutable();
    }

    /// <summary>Gauss-Newton on height, pitch (about room z) and roll (about room x).</summary>
    private static void Settle(BodyPose pose, PlacedContact[] contacts, double rollPull)
    {
        // Contact points relative to the pelvis origin, turned with the body in each step.
        var arms = contacts.Select(c => c.Point - pose.PelvisPosition).ToArray();
        var height = 0.0;
        var pitchTurned = 0.0;
        var rollTurned = 0.0;
        var turn = Mat3.Identity;
        for (var step = 0; step < 30; step++)
        {
            // Normal equations of: height + arm.y - surface = 0, and a weak pull toward no turn.
            double a00 = 0, a01 = 0, a02 = 0, a11 = 0, a12 = 0, a22 = 0, b0 = 0, b1 = 0, b2 = 0;
            for (var i = 0; i < arms.Length; i++)
            {
                var arm = turn * arms[i];
                var residual = height + arm.Y - contacts[i].Contact.HeightM;
                var dPitch = arm.X;
                var dRoll = -arm.Z;
                a00 += 1;
                a01 += dPitch;
                a02 += dRoll;
                a11 += dPitch * dPitch;
                a12 += dPitch * dRoll;
                a22 += dRoll * dRoll;
                b0 -= residual;
                b1 -= residual * dPitch;
                b2 -= residual * dRoll;
            }

            const double pitch = OrientationPull * OrientationPull;
            var roll = rollPull * rollPull;
            a11 += pitch;
            a22 += roll;
            b1 -= pitch * pitchTurned;
            b2 -= roll * rollTurned;
            var (dh, dp, dr) = Small.SolveSymmetric(a00, a01, a02, a11, a12, a22, b0, b1, b2);
            dp = Math.Clamp(dp, -0.3, 0.3);
            dr = Math.Clamp(dr, -0.3, 0.3);
            height += dh;
            pitchTurned += dp;
            rollTurned += dr;
            turn = Mat3.Rotation(Vec3.UnitZ, dp) * Mat3.Rotation(Vec3.UnitX, dr) * turn;
            if (Math.Abs(dh) + Math.Abs(dp) + Math.Abs(dr) < 1e-13)
                break;
        }

        pose.PelvisRotation = turn * pose.PelvisRotation;
        pose.PelvisPosition = new Vec3(0, height, 0);
    }

    private static void MoveAnchorToOrigin(BodyPose pose, ImmutableArray<PlacedContact> contacts, BodyState state)
    {
        if (contacts.IsEmpty)
            return;
        var anchor = state.Point(contacts[0].Segment, contacts[0].Local);
        pose.PelvisPosition -= new Vec3(anchor.X, 0, anchor.Z);
    }
}
