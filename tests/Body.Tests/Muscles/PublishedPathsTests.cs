namespace MomentArm.Body.Tests.Muscles;

/// <summary>
/// Lengths and arms of every published line at the published size.
/// Source: the paths of Delp et al. 1990 (doi:10.1109/10.102791) as distributed in the public generic gait model 2392, computed
/// by an independent program and by a general physics engine that agree to 1e-15 m in length and 1e-11 m in arm.
/// Tolerance: 0.01 mm, of which 0.005 mm is the rounding of the printed figure.
/// </summary>
public class PublishedPathsTests
{
    private const double HundredthMm = 0.01;

    /// <summary>Angles in degrees: hip flexion, adduction, rotation; knee extension; ankle; subtalar; toes; trunk extension, bending, rotation.</summary>
    private static readonly double[] PoseA = [37, 12, -18, -62, 11, 7, -5, -20, 8, 5];
    private static readonly double[] PoseB = [88, -25, 22, -101, -23, -9, 14, 15, -12, -10];

    [Theory]
    [InlineData("gluteus-medius-front", 121.275, 144.232, 107.455, -14.46, -47.77, 20.41, 0, 0, 0)]
    [InlineData("gluteus-medius-middle", 131.233, 154.288, 130.133, -22.40, -44.11, -7.30, 0, 0, 0)]
    [InlineData("gluteus-medius-back", 109.583, 129.504, 117.244, -23.81, -35.41, -29.66, 0, 0, 0)]
    [InlineData("gluteus-minimus-front", 82.552, 97.818, 65.335, -2.04, -42.20, 18.21, 0, 0, 0)]
    [InlineData("gluteus-minimus-middle", 82.590, 98.530, 64.683, -6.00, -42.38, 6.83, 0, 0, 0)]
    [InlineData("gluteus-minimus-back", 86.236, 101.873, 73.161, -10.58, -38.34, -7.77, 0, 0, 0)]
    [InlineData("semimembranosus", 414.572, 407.006, 429.959, -49.20, 11.44, 1.12, -31.51, 0, 0)]
    [InlineData("semitendinosus", 463.234, 452.985, 490.112, -56.68, 23.14, 0.50, -38.61, 0, 0)]
    [InlineData("biceps-femoris-long", 420.197, 420.872, 459.094, -56.75, 17.94, -5.30, -27.52, 0, 0)]
    [InlineData("biceps-femoris-short", 246.251, 213.065, 194.925, 0, 0, 0, -20.36, 0, 0)]
    [InlineData("sartorius", 569.221, 523.778, 421.383, 45.14, -27.20, -5.10, 1.53, 0, 0)]
    [InlineData("adductor-longus", 216.203, 181.392, 227.143, 37.77, 66.92, 5.77, 0, 0, 0)]
    [InlineData("adductor-brevis", 135.311, 118.228, 169.148, 10.44, 64.83, 3.05, 0, 0, 0)]
    [InlineData("adductor-magnus-upper", 115.419, 107.659, 179.629, -0.62, 75.92, -3.00, 0, 0, 0)]
    [InlineData("adductor-magnus-middle", 191.748, 199.453, 275.943, -16.27, 69.09, 0.016, 0, 0, 0)] // rotation printed as 0; (0.0754 x 0.0054 - 0.0178 x 0.0227) / 0.191748 m by hand
    [InlineData("adductor-magnus-lower", 339.094, 370.706, 436.010, -46.68, 35.47, 3.88, 0, 0, 0)]
    [InlineData("tensor-fasciae-latae", 535.791, 532.313, 428.115, 34.60, -49.21, 6.22, 13.97, 0, 0)]
    [InlineData("pectineus", 103.701, 80.355, 104.769, 23.14, 33.05, 2.22, 0, 0, 0)]
    [InlineData("gracilis", 440.490, 405.335, 457.452, 0.58, 57.84, -4.25, -20.59, 0, 0)]
    [InlineData("gluteus-maximus-upper", 199.938, 229.418, 224.207, -45.68, -27.92, -20.76, 0, 0, 0)]
    [InlineData("gluteus-maximus-middle", 209.507, 241.621, 253.044, -55.65, -11.16, -21.79, 0, 0, 0)]
    [InlineData("gluteus-maximus-lower", 234.936, 269.805, 332.674, -73.24, 49.82, -23.81, 0, 0, 0)]
    [InlineData("iliacus", 206.963, 180.569, 155.144, 39.38, 3.24, 4.24, 0, 0, 0)]
    [InlineData("psoas", 260.945, 234.828, 214.396, 38.53, 2.77, 2.98, 0, 0, 0)]
    [InlineData("quadratus-femoris", 69.566, 56.384, 109.170, 4.34, 42.04, -40.19, 0, 0, 0)]
    [InlineData("gemelli", 64.392, 56.406, 64.522, 1.32, 11.56, -31.98, 0, 0, 0)]
    [InlineData("piriformis", 136.346, 144.212, 132.167, -9.10, -19.78, -29.17, 0, 0, 0)]
    [InlineData("rectus-femoris", 410.324, 432.154, 404.997, 42.52, -12.27, -1.72, 49.72, 0, 0)]
    [InlineData("vastus-medialis", 172.264, 218.068, 239.054, 0, 0, 0, 46.30, 0, 0)]
    [InlineData("vastus-intermedius", 182.045, 228.859, 249.481, 0, 0, 0, 48.72, 0, 0)]
    [InlineData("vastus-lateralis", 200.185, 246.255, 266.604, 0, 0, 0, 42.78, 0, 0)]
    [InlineData("gastrocnemius-medial", 450.707, 436.589, 399.367, 0, 0, 0, -21.42, -46.28, 2.60)]
    [InlineData("gastrocnemius-lateral", 447.062, 432.868, 396.884, 0, 0, 0, -21.46, -47.20, 5.57)]
    [InlineData("soleus", 291.398, 299.291, 273.144, 0, 0, 0, 0, -45.35, 4.58)]
    [InlineData("tibialis-posterior", 345.379, 345.222, 343.727, 0, 0, 0, 0, -11.40, 19.79)]
    [InlineData("flexor-digitorum-longus", 433.282, 432.361, 433.250, 0, 0, 0, 0, -10.70, 19.73)]
    [InlineData("flexor-hallucis-longus", 420.103, 420.628, 417.414, 0, 0, 0, 0, -15.84, 16.38)]
    [InlineData("tibialis-anterior", 303.785, 294.041, 321.656, 0, 0, 0, 0, 42.00, 12.77)]
    [InlineData("fibularis-brevis", 210.803, 215.107, 204.395, 0, 0, 0, 0, -4.70, -28.56)]
    [InlineData("fibularis-longus", 395.814, 400.724, 387.760, 0, 0, 0, 0, -8.81, -27.33)]
    [InlineData("fibularis-tertius", 178.206, 175.040, 184.736, 0, 0, 0, 0, 27.00, -19.79)]
    [InlineData("extensor-digitorum-longus", 441.671, 435.921, 453.026, 0, 0, 0, 0, 38.71, -11.56)]
    [InlineData("extensor-hallucis-longus", 409.872, 402.097, 424.242, 0, 0, 0, 0, 40.36, 4.27)]
    [InlineData("erector-spinae", 149.708, 156.337, 146.850, 42.69, 38.09, 9.69, 0, 0, 0)]
    [InlineData("internal-oblique", 199.096, 170.166, 225.482, -52.82, 93.85, -36.11, 0, 0, 0)]
    [InlineData("external-oblique", 274.059, 236.959, 303.173, -62.79, 62.25, 26.01, 0, 0, 0)]
    public void A_line_has_the_published_lengths_in_three_poses_and_the_published_arms_standing(
        string id, double neutral, double poseA, double poseB, double first, double second, double third, double knee, double ankle, double subtalar)
    {
        var standing = MusclesOf.Right(id, new double[10]);
        Near(neutral, standing.LengthMm);
        Near(poseA, MusclesOf.Right(id, PoseA).LengthMm);
        Near(poseB, MusclesOf.Right(id, PoseB).LengthMm);
        var trunk = id is "erector-spinae" or "internal-oblique" or "external-oblique";
        Near(first, standing.ArmMm(trunk ? Motion.TrunkExtension : Motion.HipFlexion));
        Near(second, standing.ArmMm(trunk ? Motion.TrunkBending : Motion.HipAdduction));
        Near(third, standing.ArmMm(trunk ? Motion.TrunkRotation : Motion.HipRotation));
        Near(knee, standing.ArmMm(Motion.KneeExtension));
        Near(ankle, standing.ArmMm(Motion.AnkleDorsiflexion));
        Near(subtalar, standing.ArmMm(Motion.SubtalarInversion));
    }

    [Theory]
    [InlineData("gluteus-medius-front", 71.5, 156.0, 84.4, 59)]
    [InlineData("gluteus-medius-middle", 90.0, 167.8, 77.9, 53)]
    [InlineData("gluteus-medius-back", 61.7, 152.5, 90.8, 53)]
    [InlineData("gluteus-minimus-front", 35.8, 110.1, 74.3, 63)]
    [InlineData("gluteus-minimus-middle", 39.9, 108.8, 68.9, 62)]
    [InlineData("gluteus-minimus-back", 47.8, 112.5, 64.7, 59)]
    [InlineData("semimembranosus", 327.8, 497.5, 169.7, 51)]
    [InlineData("semitendinosus", 359.9, 569.3, 209.5, 49)]
    [InlineData("biceps-femoris-long", 345.8, 513.1, 167.3, 44)]
    [InlineData("biceps-femoris-short", 191.2, 246.3, 55.0, 100)]
    [InlineData("sartorius", 399.8, 587.0, 187.1, 91)]
    [InlineData("adductor-longus", 156.3, 267.6, 111.3, 54)]
    [InlineData("adductor-brevis", 99.7, 179.6, 79.9, 45)]
    [InlineData("adductor-magnus-upper", 78.0, 188.5, 110.6, 34)]
    [InlineData("adductor-magnus-middle", 162.6, 284.9, 122.3, 24)]
    [InlineData("adductor-magnus-lower", 316.4, 442.7, 126.2, 18)]
    [InlineData("tensor-fasciae-latae", 404.5, 577.1, 172.5, 76)]
    [InlineData("pectineus", 56.8, 127.1, 70.3, 67)]
    [InlineData("gracilis", 352.7, 532.5, 179.8, 49)]
    [InlineData("gluteus-maximus-upper", 164.0, 253.4, 89.4, 40)]
    [InlineData("gluteus-maximus-middle", 178.6, 274.8, 96.3, 32)]
    [InlineData("gluteus-maximus-lower", 176.1, 335.6, 159.5, 37)]
    [InlineData("iliacus", 137.1, 222.8, 85.7, 82)]
    [InlineData("psoas", 188.8, 275.9, 87.1, 83)]
    [InlineData("quadratus-femoris", 28.4, 123.0, 94.7, 44)]
    [InlineData("gemelli", 36.7, 88.1, 51.4, 54)]
    [InlineData("piriformis", 101.1, 161.4, 60.3, 58)]
    [InlineData("rectus-femoris", 332.3, 503.1, 170.8, 46)]
    [InlineData("vastus-medialis", 172.3, 247.4, 75.1, 0)]
    [InlineData("vastus-intermedius", 182.0, 257.0, 75.0, 0)]
    [InlineData("vastus-lateralis", 200.2, 274.2, 74.0, 0)]
    [InlineData("gastrocnemius-medial", 382.0, 467.2, 85.2, 81)]
    [InlineData("gastrocnemius-lateral", 379.6, 464.5, 85.0, 79)]
    [InlineData("soleus", 258.4, 307.7, 49.3, 67)]
    [InlineData("tibialis-posterior", 329.7, 353.5, 23.8, 66)]
    [InlineData("flexor-digitorum-longus", 414.8, 444.9, 30.1, 61)]
    [InlineData("flexor-hallucis-longus", 399.7, 433.0, 33.3, 61)]
    [InlineData("tibialis-anterior", 284.8, 333.0, 48.2, 39)]
    [InlineData("fibularis-brevis", 200.8, 221.9, 21.1, 47)]
    [InlineData("fibularis-longus", 382.6, 407.8, 25.2, 52)]
    [InlineData("fibularis-tertius", 166.6, 203.8, 37.2, 31)]
    [InlineData("extensor-digitorum-longus", 421.0, 470.8, 49.8, 42)]
    [InlineData("extensor-hallucis-longus", 389.2, 438.5, 49.3, 42)]
    public void A_line_has_the_published_range_over_the_usual_joint_angles(
        string id, double shortestMm, double longestMm, double rangeMm, double neutralPercent)
    {
        // Printed to 0.1 mm and 1 %.
        var set = MusclesOf.Published;
        var muscle = set.IndexOf(id, Side.Right);
        var range = set.Ranges[muscle];
        Assert.Equal(shortestMm, 1000 * range.ShortestM, 0.0501);
        Assert.Equal(longestMm, 1000 * range.LongestM, 0.0501);
        Assert.Equal(rangeMm, 1000 * (range.LongestM - range.ShortestM), 0.1001);
        Assert.Equal(neutralPercent, new MuscleState(set).Lengthening(muscle).PercentOfRange, 0.501);
        Assert.Equal(range, set.Ranges[set.Mirror(muscle)]);
    }

    [Fact]
    public void All_forty_six_lines_are_there_on_both_sides_with_two_parts_of_the_band()
    {
        Assert.Equal(2 * (46 + 2), MusclesOf.Published.Muscles.Length);
        Assert.Equal(46, TestBody.Content.Muscles.Paths.Length);
    }

    [Theory]
    [InlineData("vastus-intermedius", 48.7, 44.7, 37.3, 27.7, 44.2, 35.2, 23.2, 20.0)]
    [InlineData("rectus-femoris", 49.7, 49.6, 39.8, 26.9, 45.5, 40.3, 25.4, 20.4)]
    [InlineData("semimembranosus", -31.5, -38.5, -39.9, -30.5, -35.6, -47.6, -54.8, -48.0)]
    [InlineData("biceps-femoris-long", -27.5, -34.8, -30.6, -17.4, -31.7, -44.1, -45.8, -34.3)]
    [InlineData("gastrocnemius-medial", -21.4, -20.9, -17.8, -14.1, -25.1, -17.5, -8.7, -1.4)]
    public void The_sliding_knee_has_its_own_arms_and_a_plain_hinge_others(
        string id, double at0, double at30, double at60, double at90, double hinge0, double hinge30, double hinge60, double hinge90)
    {
        // Printed to 0.1 mm. The hinge stands where the sliding joint stands in the neutral pose.
        var hinged = MusclesOf.Built(Hinged(MusclesOf.Published.Model));
        double[] sliding = [at0, at30, at60, at90];
        double[] hinge = [hinge0, hinge30, hinge60, hinge90];
        for (var i = 0; i < 4; i++)
        {
            double[] pose = [0, 0, 0, -30 * i];
            Assert.Equal(sliding[i], MusclesOf.Right(id, pose).ArmMm(Motion.KneeExtension), 0.0501);
            Assert.Equal(hinge[i], MusclesOf.Right(id, pose, hinged).ArmMm(Motion.KneeExtension), 0.0501);
        }
    }

    private static void Near(double expectedMm, double actualMm) => Assert.Equal(expectedMm, actualMm, HundredthMm);

    private static BodyModel Hinged(BodyModel model) => new(
        [.. model.Segments.Select(s => s.SlideX is null
            ? s
            : s with { Offset = s.Offset + new Vec3(s.SlideX.At(0).Value, s.SlideY!.At(0).Value, 0), SlideX = null, SlideY = null })],
        model.Coordinates, 0, 0, []);
}
