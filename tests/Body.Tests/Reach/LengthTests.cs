namespace MomentArm.Body.Tests.Reaches;

/// <summary>The three shipped muscle length tests in engine form, and small helpers.</summary>
internal static class LengthTests
{
    internal const double Degree = Math.PI / 180;

    internal static LengthTest LegRaise(double degrees, Side side = Side.Right, double semDeg = 2.6) =>
        Test("Straight-leg raise", MuscleGroup.Hamstrings, new LimbAngles(), JointAction.HipFlexion, degrees, 0, 135, side, semDeg);

    internal static LengthTest KneeExtension(double degreesShort, Side side = Side.Right, double semDeg = 2.9) =>
        Test("Active knee extension", MuscleGroup.Hamstrings, new LimbAngles { HipFlexion = 90 * Degree }, JointAction.KneeFlexion, degreesShort, -15, 90, side, semDeg);

    internal static LengthTest Ober(double degrees, Side side = Side.Right, double semDeg = 4.3) =>
        Test("Modified Ober", MuscleGroup.LateralHip, new LimbAngles(), JointAction.HipAdduction, degrees, -45, 70, side, semDeg);

    internal static LengthTest Test(
        string name, MuscleGroup group, LimbAngles tested, JointAction measured, double degrees, double least, double most, Side side, double semDeg) => new()
        {
            Name = name,
            Group = group,
            Side = side,
            Pose = Frame(tested),
            Measured = measured,
            Reading = degrees * Degree,
            Least = least * Degree,
            Most = most * Degree,
            Error = semDeg * Degree,
        };

    internal static PosedFrame Frame(LimbAngles working, LimbAngles? other = null) => new()
    {
        Name = "pose",
        Orientation = Orientation.Supine,
        Working = working,
        Other = other ?? LimbAngles.Neutral,
        Axial = AxialAngles.Neutral,
        Contacts = [],
    };

    /// <summary>The muscles of a body with the working limb posed.</summary>
    internal static MuscleState Posed(MuscleSet set, LimbAngles working, Side side = Side.Right)
    {
        var pose = ClinicalPose.Of(set.Model, Frame(working), side);
        var muscles = new MuscleState(set);
        muscles.Update(TestBody.Posed(set.Model, pose), pose);
        return muscles;
    }
}
