using CsCheck;

namespace MomentArm.Body.Tests.Muscles;

/// <summary>
/// The band lies in front of the knee axis when the knee is straight and behind it when bent (common practice, no source). The angle
/// is tied to the zone of 20-30 degrees in which runners' outer-knee pain arises (Ferber 2010, doi:10.4085/1062-6050-45.4.344,
/// quoting Orchard 1996). Asked here: a change of sign between 20 and 40 degrees.
/// </summary>
public class IliotibialBandTests
{
    private static readonly string[] Parts = ["iliotibial-band-tensor", "iliotibial-band-gluteus"];

    [Fact]
    public void Its_knee_arm_straightens_until_20_degrees_and_bends_from_40_degrees_in_every_body() => RandomBodies.Body.Sample(
        model =>
        {
            var set = MusclesOf.Built(model);
            foreach (var id in Parts)
            {
                for (var flexion = 0; flexion <= 100; flexion += 5)
                {
                    var arm = MusclesOf.Right(id, [0, 0, 0, -flexion], set).ArmMm(Motion.KneeExtension);
                    if (flexion <= 20)
                        Assert.True(arm > 0, FormattableString.Invariant($"{id} {flexion} deg: {arm} mm"));
                    if (flexion >= 40)
                        Assert.True(arm < 0, FormattableString.Invariant($"{id} {flexion} deg: {arm} mm"));
                }
            }
        },
        iter: 40);

    [Fact]
    public void The_published_tensor_line_never_becomes_a_knee_flexor()
    {
        // Published line, from a sweep: 14 mm at 0, 10 at 30, 3 at 90, 0 at 120 degrees, printed to 1 mm.
        foreach (var (flexion, arm) in new[] { (0, 14), (30, 10), (90, 3), (120, 0) })
            Assert.Equal(arm, MusclesOf.Right("tensor-fasciae-latae", [0, 0, 0, -flexion]).ArmMm(Motion.KneeExtension), 0.501);
    }

    [Fact]
    public void The_tensor_part_abducts_and_flexes_the_hip_and_the_gluteus_part_abducts_and_extends_it()
    {
        // Anatomy of the two muscles in front of and behind the hip: common practice, no source.
        var front = MusclesOf.Right(Parts[0], []);
        var back = MusclesOf.Right(Parts[1], []);
        Assert.InRange(front.ArmMm(Motion.HipAdduction), -60, -35);
        Assert.InRange(back.ArmMm(Motion.HipAdduction), -75, -15);
        Assert.True(front.ArmMm(Motion.HipFlexion) > 10);
        Assert.True(back.ArmMm(Motion.HipFlexion) < -10);
    }

    [Fact]
    public void The_band_takes_its_share_and_no_force_is_gained_or_lost()
    {
        var set = MusclesOf.Published;
        double Force(string id) => set.Muscles[set.IndexOf(id, Side.Left)].ForceN;
        Assert.Equal(233, Force(Parts[0]), 1e-9);
        Assert.Equal(0, Force("tensor-fasciae-latae"), 1e-9);
        Assert.Equal(0.5 * (573 + 819), Force(Parts[1]), 1e-9);
        Assert.Equal(0.5 * 573, Force("gluteus-maximus-upper"), 1e-9);
        Assert.Equal(552, Force("gluteus-maximus-lower"), 1e-9);
        Assert.Equal(
            set.Muscles.Where(m => !m.IsBand).Sum(m => m.PublishedForceN), set.Muscles.Sum(m => m.ForceN), 1e-6);
    }

    [Fact]
    public void The_share_is_what_the_content_says()
    {
        var table = TestBody.Content.Muscles;
        var other = table with { BandParts = [.. table.BandParts.Select(b => b with { Share = 0.2 })] };
        var set = MuscleSet.Build(other, TestBody.Content.Skeleton, TestBody.Man);
        Assert.Equal(0.2 * (573 + 819), set.Muscles[set.IndexOf(Parts[1], Side.Right)].ForceN, 1e-9);
        Assert.Equal(0.8 * 233, set.Muscles[set.IndexOf("tensor-fasciae-latae", Side.Right)].ForceN, 1e-9);
    }
}
