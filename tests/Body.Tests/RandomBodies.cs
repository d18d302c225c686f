using CsCheck;

namespace MomentArm.Body.Tests;

/// <summary>A random body in a random pose under random forces.</summary>
internal sealed record PosedCase(BodyModel Model, BodyPose Pose, PointForce[] Forces)
{
    internal BodyState State { get; } = TestBody.Posed(Model, Pose);

    public override string ToString() =>
        FormattableString.Invariant($"{Model.StatureM:R} m, {Model.MassKg:R} kg, angles [{string.Join(", ", Pose.Angles)}], pelvis {Pose.PelvisRotation} at {Pose.PelvisPosition}, forces [{string.Join("; ", Forces)}]");
}

/// <summary>Generators of bodies, poses and forces.</summary>
internal static class RandomBodies
{
    private static readonly Gen<Vec3> Direction = Gen.Select(
        Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[0.1, 1], (x, y, z) => new Vec3(x, y, z).Normalized());

    internal static Gen<BodyModel> Body { get; } = Gen.Select(
        Gen.Int[0, 2], Gen.Double[1.3, 2.1], Gen.Double[35, 160],
        (sex, stature, mass) => TestBody.Content.Build(new Physique(sex == 2 ? null : (Sex)sex, 40, stature, mass)));

    internal static Gen<PosedCase> Case { get; } = Body.SelectMany(model =>
        Gen.Select(Pose(model), Force(model).Array[0, 4], (pose, forces) => OnBody(model, pose, forces)));

    /// <summary>Any joint angles up to 115 degrees either way (inside the knots of the knee's slide), any turn of the pelvis.</summary>
    internal static Gen<BodyPose> Pose(BodyModel model) => Gen.Select(
        Gen.Double[-2, 2].Array[model.Coordinates.Length], Direction, Gen.Double[-3, 3], Gen.Double[-1, 1].Array[3],
        (angles, axis, turn, at) =>
        {
            var pose = new BodyPose(model)
            {
                PelvisRotation = Mat3.Rotation(axis, turn),
                PelvisPosition = new Vec3(at[0], at[1], at[2]),
            };
            angles.CopyTo(pose.Angles, 0);
            return pose;
        });

    private static Gen<(int Segment, Vec3 Local, Vec3 Force)> Force(BodyModel model) => Gen.Select(
        Gen.Int[0, model.Segments.Length - 1], Gen.Double[-0.4, 0.4].Array[3], Gen.Double[-500, 500].Array[3],
        (segment, at, f) => (segment, new Vec3(at[0], at[1], at[2]), new Vec3(f[0], f[1], f[2])));

    private static PosedCase OnBody(BodyModel model, BodyPose pose, (int Segment, Vec3 Local, Vec3 Force)[] forces)
    {
        var state = TestBody.Posed(model, pose);
        return new PosedCase(model, pose, [.. forces.Select(f => new PointForce(f.Segment, state.Point(f.Segment, f.Local), f.Force))]);
    }
}
