using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>
/// Lays a posed body on its surfaces as one rigid piece: height, pitch and roll are found by least squares so that the
/// contact points lie on floor, seat, bench, step or board. Joint angles are kept as the author gave them; what does not meet is told.
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
    /// <exception cref="ArgumentException">The body has no such point.</exception>
    public static PlacedBody Place(BodyModel model, SurfacePoints points, PosedFrame frame, Side working)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(points);
        ArgumentNullException.ThrowIfNull(frame);
        var state = new BodyState(model);
        var laid = Laid.Of(state, points, frame, working);
        LayDown(laid, state, frame.Orientation);
        laid.MoveAnchorToOrigin(state);
        return laid.Body(state, []);
    }

    /// <summary>Finds height, pitch and roll; state and contact points are current afterward.</summary>
    internal static void LayDown(Laid laid, BodyState state, Orientation orientation)
    {
        var onSide = orientation is Orientation.SideLyingOnWorking or Orientation.SideLyingOnOther;
        if (laid.Planes.Length > laid.WallContacts)
            Turn(laid, state, onSide ? SideLyingRollPull : OrientationPull);
        state.Update(laid.Pose);
        laid.UpdatePoints(state);
        laid.UpdateWalls();
    }

    /// <summary>Gauss-Newton on height, pitch (about room z) and roll (about room x).</summary>
    private static void Turn(Laid laid, BodyState state, double rollPull)
    {
        // Contact points relative to the pelvis origin, turned with the body in each step.
        Span<Vec3> arms = laid.Points.Length <= 32 ? stackalloc Vec3[laid.Points.Length] : new Vec3[laid.Points.Length];
        for (var i = 0; i < arms.Length; i++)
            arms[i] = laid.Points[i] - state.Origins[0];
        var height = 0.0;
        var pitchTurned = 0.0;
        var rollTurned = 0.0;
        var turn = Mat3.Identity;
        for (var step = 0; step < 30; step++)
        {
            // Normal equations of: n . (height up + arm - reference) - offset = 0, and a weak pull toward no turn.
            double a00 = 0, a01 = 0, a02 = 0, a11 = 0, a12 = 0, a22 = 0, b0 = 0, b1 = 0, b2 = 0;
            for (var i = 0; i < arms.Length; i++)
            {
                var plane = laid.Planes[i];
                if (plane.Wall >= 0)
                    continue;
                var arm = turn * (plane.Reference < 0 ? arms[i] : arms[i] - arms[plane.Reference]);
                var rise = plane.Reference < 0 ? 1.0 : 0;
                var residual = rise * height + plane.Normal.Dot(arm) - plane.Offset;
                var dPitch = plane.Normal.Dot(new Vec3(-arm.Y, arm.X, 0));
                var dRoll = plane.Normal.Dot(new Vec3(0, -arm.Z, arm.Y));
                a00 += rise;
                a01 += rise * dPitch;
                a02 += rise * dRoll;
                a11 += dPitch * dPitch;
                a12 += dPitch * dRoll;
                a22 += dRoll * dRoll;
                b0 -= rise * residual;
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

        laid.Pose.PelvisRotation = turn * laid.Pose.PelvisRotation;
        laid.Pose.PelvisPosition = new Vec3(0, height, 0);
    }
}
