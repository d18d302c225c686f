namespace MomentArm.Body;

/// <summary>Simulates a strength test in its own test pose: what the muscles gave, with the limb's weight accounted for.</summary>
public static class StrengthTesting
{
    /// <summary>
    /// Muscle torque of a test: pad force times lever arm, plus what the muscles held of the limb's own weight in the test
    /// pose (negative when weight helped them).
    /// </summary>
    /// <param name="model">The person's body.</param>
    /// <param name="points">Named surface points.</param>
    /// <param name="testPose">The test pose, with the tested side as working side.</param>
    /// <param name="action">The action tested.</param>
    /// <param name="side">The side tested.</param>
    /// <param name="padForce">Force on the pad, newtons, above 0.</param>
    /// <param name="leverArm">From the joint centre to the pad, metres, above 0.</param>
    /// <param name="painLimited">Whether pain stopped the test.</param>
    /// <returns>The test as a muscle torque, and the part of it that held the limb, N m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Force or lever arm not above 0, or beyond what a person can give.</exception>
    public static (StrengthTest Test, double GravityTorque) Simulate(
        BodyModel model, SurfacePoints points, PosedFrame testPose, JointAction action, Side side, double padForce,
        double leverArm, bool painLimited)
    {
        Quantity.Within(padForce, 1, 3000, "N");
        Quantity.Within(leverArm, 0.03, 1.2, "m");
        var placed = Placing.Place(model, points, testPose, side);
        var state = new BodyState(model);
        state.Update(placed.Pose);
        var (index, sign) = action.On(model, side);
        var moments = new double[model.Coordinates.Length];
        JointMoments.Required(state, [], moments);
        var gravity = sign * moments[index];
        var torque = padForce * leverArm + gravity;
        return (
            new StrengthTest(action, side, Math.Max(0.01, torque), action.ClinicalAngle(placed.Pose.Angles[index]), painLimited),
            gravity);
    }
}
