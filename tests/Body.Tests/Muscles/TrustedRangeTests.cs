namespace MomentArm.Body.Tests.Muscles;

/// <summary>
/// Beyond hip flexion -20 to 90 and knee flexion 0 to 100 degrees arms are those of the last trusted angle and lengths follow them.
/// The rule is our choice (docs/models/body.md, section 6); the reversals it guards against were found by sweeping the paths.
/// </summary>
public class TrustedRangeTests
{
    [Theory]
    [InlineData(Motion.HipFlexion, 0, 90, 115)]
    [InlineData(Motion.HipFlexion, 0, -20, -35)]
    [InlineData(Motion.KneeExtension, 3, -100, -140)]
    [InlineData(Motion.KneeExtension, 3, 0, 8)]
    public void Arms_freeze_and_lengths_follow_them(Motion motion, int angle, double lastDeg, double beyondDeg)
    {
        double[] last = [20, -10, 5, -30, 5, 3, 2, -10, 5, 5];
        var beyond = last.ToArray();
        last[angle] = lastDeg;
        beyond[angle] = beyondDeg;
        var set = MusclesOf.Man;
        var held = MusclesOf.State(set, MusclesOf.Posed(set.Model, last), PathUse.Trusted);
        var further = MusclesOf.State(set, MusclesOf.Posed(set.Model, beyond), PathUse.Trusted);
        var coordinate = set.Model.IndexOf(motion, Side.Right);
        for (var m = 0; m < set.Muscles.Length; m++)
        {
            var crosses = held.ArmCoordinatesOf(m).Contains(coordinate);
            Assert.False(held.Extrapolated[m]);
            Assert.Equal(crosses, further.Extrapolated[m]);
            Assert.Equal(
                held.Lengths[m] - held.Arm(m, coordinate) * TestBody.Radians(beyondDeg - lastDeg), further.Lengths[m], Tolerances.Position);
            for (var a = 0; a < set.Muscles[m].ArmCount; a++)
                Assert.Equal(held.ArmsOf(m)[a], further.ArmsOf(m)[a], Tolerances.Position);
        }
    }

    [Fact]
    public void Inside_the_ranges_the_published_geometry_is_followed()
    {
        foreach (var hip in new[] { -20.0, 0, 45, 90 })
        {
            foreach (var knee in new[] { 0.0, -50, -100 })
            {
                var pose = MusclesOf.Posed(MusclesOf.Man.Model, [hip, 10, -10, knee, 10, 5, 5, -20, 5, 5]);
                var trusted = MusclesOf.State(MusclesOf.Man, pose, PathUse.Trusted);
                var published = MusclesOf.State(MusclesOf.Man, pose, PathUse.AsPublished);
                foreach (var m in Enumerable.Range(0, MusclesOf.Man.Muscles.Length).Where(m => !MusclesOf.Man.HasObstacle(m)))
                {
                    Assert.Equal(published.Lengths[m], trusted.Lengths[m]);
                    Assert.Equal(published.ArmsOf(m).ToArray(), trusted.ArmsOf(m).ToArray());
                }
            }
        }
    }

    [Theory]
    [InlineData("psoas", Motion.HipFlexion, 0, 97, 101)]
    [InlineData("iliacus", Motion.HipFlexion, 0, 100, 104)]
    [InlineData("gluteus-maximus-upper", Motion.HipFlexion, 0, 101, 105)]
    [InlineData("gluteus-maximus-middle", Motion.HipFlexion, 0, 115, 119)]
    [InlineData("biceps-femoris-long", Motion.KneeExtension, 3, -115, -120)]
    public void The_published_line_reverses_where_the_sweep_found_it_and_the_trusted_one_does_not(
        string id, Motion motion, int angle, double beforeDeg, double afterDeg)
    {
        var before = new double[10];
        var after = new double[10];
        before[angle] = beforeDeg;
        after[angle] = afterDeg;
        var sign = Math.Sign(MusclesOf.Right(id, new double[10]).ArmMm(motion));
        Assert.Equal(sign, Math.Sign(MusclesOf.Right(id, before).ArmMm(motion)));
        Assert.Equal(-sign, Math.Sign(MusclesOf.Right(id, after).ArmMm(motion)));
        Assert.Equal(sign, Math.Sign(MusclesOf.One(id, after, PathUse.Trusted).ArmMm(motion)));
    }

    [Fact]
    public void Inside_the_ranges_an_arm_changes_its_sagittal_sign_only_where_the_content_says_so()
    {
        var set = MusclesOf.Published;
        for (var m = 0; m < set.Muscles.Length / 2; m++)
        {
            var id = set.Muscles[m].Id;
            double[] hip = [.. Enumerable.Range(-20, 111).Select(f => MusclesOf.Right(id, [f]).ArmMm(Motion.HipFlexion))];
            double[] knee = [.. Enumerable.Range(0, 101).Select(f => MusclesOf.Right(id, [0, 0, 0, -f]).ArmMm(Motion.KneeExtension))];
            var turns = hip.Max() * hip.Min() < 0 || knee.Max() * knee.Min() < 0;
            Assert.True(!turns || set.Muscles[m].Caution?.Contains("changes sign", StringComparison.Ordinal) == true, id);
        }
    }
}
