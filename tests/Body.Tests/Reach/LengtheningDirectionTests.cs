using System.Collections.Immutable;
using CsCheck;
using MomentArm.Body.Tests.Muscles;
using static MomentArm.Body.Tests.Reaches.LengthTests;

namespace MomentArm.Body.Tests.Reaches;

public class LengtheningDirectionTests
{
    private static readonly MuscleSet Set = MusclesOf.Man;
    private static readonly LengthLimits Limits = LengthLimits.For(Set, []);

    [Theory]
    [InlineData(MuscleGroup.Hamstrings, "more hip flexion")]
    [InlineData(MuscleGroup.LateralHip, "more hip adduction")]
    [InlineData(MuscleGroup.Adductors, "more hip abduction")]
    [InlineData(MuscleGroup.HipFlexors, "more hip extension")]
    [InlineData(MuscleGroup.RectusFemoris, "more knee bend")]
    [InlineData(MuscleGroup.Vasti, "more knee bend")]
    [InlineData(MuscleGroup.Soleus, "more ankle dorsiflexion")]
    [InlineData(MuscleGroup.Gastrocnemius, "more ankle dorsiflexion")]
    public void The_first_motion_from_standing_is_the_one_that_is_taught(MuscleGroup group, string words) =>
        Assert.Equal(words, Steps(group, new BodyPose(Set.Model))[0].Words);

    [Fact]
    public void The_gain_is_what_ten_degrees_give_and_the_two_sides_agree()
    {
        // Published neutral arms of the soleus: 45.35 mm about the ankle, so 10 degrees give 7.9 mm; scaled to this man's shank.
        var step = LengtheningDirection.Of(new MuscleState(Set), new BodyPose(Set.Model), JointRanges.Usual(Set.Model), Set.IndexOf("soleus", Side.Right))[0];
        Assert.InRange(step.MmPer10Deg, 7.4, 8.4);
        Assert.Equal(20 * Degree, step.Room, 1e-9);
        Assert.Equal(
            Steps(MuscleGroup.LateralHip, new BodyPose(Set.Model)).Select(s => s.MmPer10Deg),
            Steps(MuscleGroup.LateralHip, new BodyPose(Set.Model), Side.Left).Select(s => s.MmPer10Deg), (a, b) => Math.Abs(a - b) < 1e-9);
    }

    [Fact]
    public void A_small_step_that_way_lengthens_the_group_by_the_gain() => Gen.Select(Gen.Double[-0.3, 1.4], Gen.Double[-0.6, 0.4], Gen.Double[-0.5, 0.5], Gen.Double[-1.6, -0.1]).Sample(
        (flexion, adduction, rotation, knee) =>
        {
            var pose = new BodyPose(Set.Model);
            (Motion, double)[] angles = [(Motion.HipFlexion, flexion), (Motion.HipAdduction, adduction), (Motion.HipRotation, rotation), (Motion.KneeExtension, knee)];
            foreach (var (motion, angle) in angles)
                pose.Angles[Set.Model.IndexOf(motion, Side.Right)] = angle;
            foreach (var step in Steps(MuscleGroup.Hamstrings, pose))
            {
                const double h = 1e-5;
                var moved = pose.Copy();
                moved.Angles[Set.Model.IndexOf(step.Motion, step.Side)] += step.Sign * h;
                var (before, after) = (MusclesOf.State(Set, pose, PathUse.Trusted), MusclesOf.State(Set, moved, PathUse.Trusted));
                var gain = Limits.ChangeM(MuscleGroup.Hamstrings, Side.Right, after) - Limits.ChangeM(MuscleGroup.Hamstrings, Side.Right, before);
                Assert.Equal(step.MetresPerRadian, gain / h, 1e-4);
            }
        },
        iter: 50);

    [Fact]
    public void A_joint_at_the_end_of_the_persons_range_is_not_offered()
    {
        var pose = new BodyPose(Set.Model);
        pose.Angles[Set.Model.IndexOf(Motion.HipFlexion, Side.Right)] = 60 * Degree;
        Assert.Contains(Steps(MuscleGroup.Hamstrings, pose), s => s.Words == "more hip flexion");
        var stiff = JointRanges.Usual(Set.Model).With(JointAction.HipFlexion, Side.Right, 60 * Degree);
        var state = MusclesOf.State(Set, pose, PathUse.Trusted);
        Assert.DoesNotContain(LengtheningDirection.Of(Limits, state, pose, stiff, MuscleGroup.Hamstrings, Side.Right), s => s.Motion == Motion.HipFlexion);
        Assert.Equal(30 * Degree, stiff.With(JointAction.KneeFlexion, Side.Left, 90 * Degree).Room(Set.Model.IndexOf(Motion.KneeExtension, Side.Left), -60 * Degree, -1), 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => stiff.With(JointAction.HipFlexion, Side.Right, double.NaN));
    }

    private static ImmutableArray<LengtheningStep> Steps(MuscleGroup group, BodyPose pose, Side side = Side.Right) =>
        LengtheningDirection.Of(Limits, MusclesOf.State(Set, pose, PathUse.Trusted), pose, JointRanges.Usual(Set.Model), group, side);
}
