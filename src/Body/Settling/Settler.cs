namespace MomentArm.Body;

/// <summary>
/// Settles many frames of one body: keeps the work space between calls, and starts each frame from a neighbor when given one.
/// Results are the same as those of <see cref="Settling.Settle(BodyModel, SurfacePoints, PosedFrame, Side)"/>. Not for two threads at once.
/// </summary>
public sealed class Settler
{
    private const int MostSteps = 30;

    // A step this small (radians and metres) changes nothing that is shown.
    private const double StepsEnd = 1e-6;

    private readonly BodyModel model;
    private readonly SurfacePoints points;
    private readonly BodyState state;
    private readonly SettlingProblem problem;

    /// <summary>Makes the work space.</summary>
    /// <param name="model">The body.</param>
    /// <param name="points">The named surface points.</param>
    public Settler(BodyModel model, SurfacePoints points)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(points);
        this.model = model;
        this.points = points;
        state = new BodyState(model);
        problem = new SettlingProblem(state, points);
    }

    /// <summary>Settles a frame.</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="working">The side that works.</param>
    /// <param name="near">A settled neighbor of the same movement to start from; null to start from the author's angles.</param>
    /// <returns>The settled body; the first contact lies at x = z = 0 so that frames of one movement fit together.</returns>
    /// <exception cref="ArgumentException">The frame has faults: angles no joint has, unknown points, absurd heights; all are listed.</exception>
    public PlacedBody Settle(PosedFrame frame, Side working, PlacedBody? near = null)
    {
        FrameCheck.Require(frame, points);

        // The left is the right in a mirror, to the last digit: pictures and loads of both sides then agree exactly.
        var right = SettleRight(frame, near?.Start);
        return working == Side.Left ? right.Mirrored(model) : right;
    }

    private PlacedBody SettleRight(PosedFrame frame, SettledStart? start)
    {
        var laid = Laid.Of(state, points, frame, Side.Right);
        Placing.LayDown(laid, state, frame.Orientation);
        problem.Begin(laid);
        if (Meets(laid) && (laid.Points.Length == 0 || !problem.Sinking()))
        {
            Anchor(laid);
            return laid.Body(state, []);
        }

        if (start is not null)
            problem.StartFrom(start);
        for (var step = 0; step < MostSteps; step++)
        {
            if (problem.Step() < StepsEnd)
                break;
        }

        Anchor(laid);
        return laid.Body(state, problem.Changes()) with { Ends = problem.Ends(), Start = problem.End() };
    }

    /// <summary>Moves the anchor to the room's origin; a body that touches nothing rests with its lowest point on the floor.</summary>
    private void Anchor(Laid laid)
    {
        if (laid.Points.Length == 0)
        {
            laid.Pose.PelvisPosition -= new Vec3(0, problem.Lowest(), 0);
            state.Update(laid.Pose);
        }

        laid.MoveAnchorToOrigin(state);
    }

    private static bool Meets(Laid laid)
    {
        for (var i = 0; i < laid.Points.Length; i++)
        {
            if (Math.Abs(laid.Gap(i)) > Settling.Meets / 10)
                return false;
        }

        foreach (var tie in laid.Ties)
        {
            if (tie.Kind == TieKind.Hold || tie.LengthM is not null)
                return false;
        }

        return true;
    }
}
