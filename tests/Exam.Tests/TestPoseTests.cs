using MomentArm.Body;
using MomentArm.Content;

namespace MomentArm.Exam.Tests;

public class TestPoseTests
{
    [Fact]
    public void The_weight_of_the_leg_in_side_lying_abduction_is_what_hand_work_gives()
    {
        // Hand-worked: leg 0.161 of 70 kg, mass centre 0.447 of 0.90 m from the hip: 44.5 N m (segment ratios after Winter,
        // from memory). The engine uses other segment tables, so a tenth either way is accepted.
        Assert.InRange(Gravity("hip-abduction-strength"), 40, 49);
    }

    [Fact]
    public void A_hanging_shank_adds_nothing_to_knee_extension() =>
        // Elementary mechanics: at 90 degrees of knee bend the shank hangs straight down but for its own mass line and the foot.
        Assert.InRange(Math.Abs(Gravity("knee-extension-strength")), 0, 3);

    [Theory]
    // Hand-worked for 70 kg and 1.70 m with segment ratios after Winter (from memory): mass share x 70 x 9.80665 x distance of the
    // mass center from the joint. The engine uses other segment tables, so an eighth either way is accepted, at the small
    // forearm a fifth, and at the thigh, which is 0.142 of the mass there, 15 %.
    // Thigh 0.100, 0.433 of 0.245 stature: 12.4; shank with foot 0.061 hanging at the knee: 17.4; together 29.8 N m.
    [InlineData("hip-flexion-strength", 29.8, 0.15)]
    // Straight leg level: as in side-lying abduction, 44.5 N m.
    [InlineData("hip-extension-strength", 44.5, 0.125)]
    [InlineData("hip-adduction-strength-side", 44.5, 0.125)]
    // Arm 0.050, 0.530 of 0.332 stature: 10.3 N m.
    [InlineData("shoulder-abduction-strength", 10.3, 0.125)]
    [InlineData("shoulder-flexion-strength", 10.3, 0.125)]
    // Shank with foot 0.061, 0.606 of 0.246 stature, 30 degrees above level: 10.6 x cos 30 = 9.2 N m.
    [InlineData("knee-flexion-strength-prone", 9.2, 0.125)]
    // Forearm with hand 0.022, 0.682 of 0.146 stature: 2.56 N m, held by the flexors and helping the extensors.
    [InlineData("elbow-flexion-strength", 2.56, 0.2)]
    [InlineData("elbow-extension-strength", -2.56, 0.2)]
    public void The_weight_of_the_limb_is_what_hand_work_gives(string id, double expected, double share)
    {
        var gravity = Gravity(id);
        Assert.True(Math.Abs(gravity - expected) <= share * Math.Abs(expected), FormattableString.Invariant($"{id}: {gravity:0.00} N m, by hand {expected:0.00}."));
    }

    [Theory]
    // Elementary mechanics: a limb that hangs, or moves level on the table, has no weight along the movement; the feet and the mass
    // lines of the segments leave a little.
    [InlineData("hip-abduction-strength-supine")]
    [InlineData("hip-adduction-strength")]
    [InlineData("hip-internal-rotation-strength")]
    [InlineData("hip-external-rotation-strength")]
    [InlineData("hip-internal-rotation-strength-prone")]
    [InlineData("hip-external-rotation-strength-prone")]
    [InlineData("knee-flexion-strength")]
    [InlineData("shoulder-external-rotation-strength")]
    public void A_hanging_or_lying_limb_adds_next_to_nothing(string id) => Assert.InRange(Math.Abs(Gravity(id)), 0, 3);

    [Fact]
    public void Every_strength_test_is_alike_on_both_sides_and_gives_a_torque_at_its_usual_place()
    {
        foreach (var measure in Shipped.Exam.Measures.Where(m => m.Strength is not null))
        {
            var setUp = measure.Strength!;
            double On(Side side) => StrengthTesting.LimbTorque(Model, Body.Points, setUp.Pose, measure.Action!.Value, side);
            Assert.Equal(On(Side.Left), On(Side.Right), 1e-6);
            var force = (measure.SoftRange.Low + measure.SoftRange.High) / 2;
            var (test, gravity) = StrengthTesting.Simulate(Model, Body.Points, setUp.Pose, measure.Action!.Value, Side.Left, force, setUp.LeverArmHintM, false);
            Assert.Equal(force * setUp.LeverArmHintM + gravity, test.MuscleTorque, 1e-9);
        }
    }

    private static BodyContent Body { get; } = BodyContent.Read(Shipped.ContentFolder, new FaultList())!;

    private static BodyModel Model { get; } = Body.Build(new Physique(Sex.Male, 34, 1.70, 70));

    private static double Gravity(string id)
    {
        var measure = Shipped.Measure(id);
        return StrengthTesting.LimbTorque(Model, Body.Points, measure.Strength!.Pose, measure.Action!.Value, Side.Right);
    }
}
