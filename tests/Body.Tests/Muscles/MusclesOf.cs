namespace MomentArm.Body.Tests.Muscles;

/// <summary>Muscles of the published body and of people, and one muscle in one pose.</summary>
internal static class MusclesOf
{
    private static readonly Motion[] Order =
    [
        Motion.HipFlexion, Motion.HipAdduction, Motion.HipRotation, Motion.KneeExtension, Motion.AnkleDorsiflexion,
        Motion.SubtalarInversion, Motion.ToeExtension, Motion.TrunkExtension, Motion.TrunkBending, Motion.TrunkRotation,
    ];

    internal static MuscleSet Published { get; } = Built(BodyModelBuilder.Unscaled(TestBody.Content.Skeleton));

    internal static MuscleSet Man { get; } = Built(TestBody.Man);

    internal static MuscleSet Built(BodyModel model) => TestBody.Content.MusclesOf(model);

    /// <summary>The pose of the right leg and trunk with angles in degrees in the order above, the rest 0.</summary>
    internal static BodyPose Posed(BodyModel model, double[] degrees)
    {
        var pose = new BodyPose(model);
        for (var i = 0; i < degrees.Length; i++)
            pose.Angles[model.IndexOf(Order[i], i < 7 ? Side.Right : null)] = TestBody.Radians(degrees[i]);
        return pose;
    }

    internal static MuscleState State(MuscleSet set, BodyPose pose, PathUse use)
    {
        var state = new MuscleState(set, use);
        state.Update(TestBody.Posed(set.Model, pose), pose);
        return state;
    }

    /// <summary>A right muscle by the published geometry.</summary>
    internal static OneMuscle Right(string id, double[] degrees, MuscleSet? set = null) => One(id, degrees, PathUse.AsPublished, set);

    internal static OneMuscle One(string id, double[] degrees, PathUse use, MuscleSet? set = null)
    {
        set ??= Published;
        return new OneMuscle(State(set, Posed(set.Model, degrees), use), set.IndexOf(id, Side.Right));
    }
}

/// <summary>One muscle in one pose.</summary>
internal sealed record OneMuscle(MuscleState State, int Index)
{
    internal double LengthMm => 1000 * State.Lengths[Index];

    internal double ChangeMm => 1000 * State.Lengthening(Index).ChangeM;

    internal double ArmMm(Motion motion)
    {
        var model = State.Set.Model;
        var midline = motion is Motion.TrunkExtension or Motion.TrunkBending or Motion.TrunkRotation;
        return 1000 * State.Arm(Index, model.IndexOf(motion, midline ? null : Side.Right));
    }
}
