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
    /// <param name="padForce">Force on the pad at a right angle to the limb, newtons, 1 to 3000; any reader will do.</param>
    /// <param name="leverArm">From the joint centre to the pad or strap, metres, 0.03 to 1.2.</param>
    /// <param name="painLimited">Whether pain stopped the test.</param>
    /// <param name="reader">What read the force.</param>
    /// <returns>The test as a muscle torque, and the part of it that held the limb, N m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// Force or lever arm missing or beyond what a person can give, or a force smaller than the limb's own weight gives in that
    /// pose; the message says how to mend it.
    /// </exception>
    public static (StrengthTest Test, double GravityTorque) Simulate(
        BodyModel model, SurfacePoints points, PosedFrame testPose, JointAction action, Side side, double padForce,
        double leverArm, bool painLimited, ForceReader reader = ForceReader.HandHeld)
    {
        Quantity.Within(padForce, 1, 3000, "N");
        Quantity.Within(leverArm, 0.03, 1.2, "m");
        var gravity = LimbTorque(model, points, testPose, action, side);
        var (index, _) = action.On(model, side);
        var angle = ClinicalPose.Of(model, testPose, side).Angles[index];
        var torque = padForce * leverArm + gravity;
        if (torque <= 0)
        {
            throw new ArgumentOutOfRangeException(
                nameof(padForce),
                FormattableString.Invariant(
                    $"The limb's weight alone gives {-gravity:0.0} N m toward {action} in this pose, more than {padForce:0} N at {leverArm:0.00} m: check force, lever arm and position."));
        }

        return (new StrengthTest(action, side, torque, action.ClinicalAngle(angle), painLimited, reader), gravity);
    }

    /// <summary>What the muscles hold of the limb's own weight in a test pose.</summary>
    /// <param name="model">The person's body.</param>
    /// <param name="points">Named surface points.</param>
    /// <param name="testPose">The test pose, with the tested side as working side; the table carries the rest of the body.</param>
    /// <param name="action">The action tested.</param>
    /// <param name="side">The side tested.</param>
    /// <returns>Torque in the direction of the action, N m; negative when the limb's weight helps.</returns>
    public static double LimbTorque(BodyModel model, SurfacePoints points, PosedFrame testPose, JointAction action, Side side)
    {
        ArgumentNullException.ThrowIfNull(model);
        var state = new BodyState(model);
        state.Update(Placing.Place(model, points, testPose, side).Pose);
        var (index, sign) = action.On(model, side);
        var moments = new double[model.Coordinates.Length];
        JointMoments.Required(state, [], moments);
        return sign * moments[index];
    }
}
