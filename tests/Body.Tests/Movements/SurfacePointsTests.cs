using static MomentArm.Body.Tests.SettlingFrames;

namespace MomentArm.Body.Tests.Movements;

/// <summary>Every part of the body that can touch something has a point, and it lies where its name says.</summary>
public class SurfacePointsTests
{
    private static Vec3 FromJoint(string name, Side side)
    {
        var point = TestBody.Content.Points.Resolve(name)[0];
        var (segment, local) = point.On(Woman, side);
        var state = TestBody.Posed(Woman, new BodyPose(Woman));
        return state.Point(segment, local) - state.Origins[segment];
    }

    /// <summary>Named points by part and direction; the axis of a limb runs down its bone, forward is where an upright person looks.</summary>
    [Theory]
    [InlineData("kneeFront", SegmentKind.Shank, "front")]
    [InlineData("kneeBack", SegmentKind.Shank, "back")]
    [InlineData("kneeOuter", SegmentKind.Thigh, "outer")]
    [InlineData("kneeInner", SegmentKind.Thigh, "inner")]
    [InlineData("shinFront", SegmentKind.Shank, "front")]
    [InlineData("calfBack", SegmentKind.Shank, "back")]
    [InlineData("ankleFront", SegmentKind.Shank, "front")]
    [InlineData("ankleOuter", SegmentKind.Shank, "outer")]
    [InlineData("thighFront", SegmentKind.Thigh, "front")]
    [InlineData("thighFrontLower", SegmentKind.Thigh, "front")]
    [InlineData("thighBack", SegmentKind.Thigh, "back")]
    [InlineData("thighOuter", SegmentKind.Thigh, "outer")]
    [InlineData("pelvisFront", SegmentKind.Pelvis, "front")]
    [InlineData("pelvisBack", SegmentKind.Pelvis, "back")]
    [InlineData("sacrum", SegmentKind.Pelvis, "back")]
    [InlineData("pelvisSide", SegmentKind.Pelvis, "outer")]
    [InlineData("trochanter", SegmentKind.Pelvis, "outer")]
    [InlineData("chestFront", SegmentKind.Torso, "front")]
    [InlineData("belly", SegmentKind.Torso, "front")]
    [InlineData("upperBack", SegmentKind.Torso, "back")]
    [InlineData("lowerBack", SegmentKind.Torso, "back")]
    [InlineData("ribOuter", SegmentKind.Torso, "outer")]
    [InlineData("shoulderOuter", SegmentKind.Torso, "outer")]
    [InlineData("forehead", SegmentKind.Head, "front")]
    [InlineData("headBack", SegmentKind.Head, "back")]
    [InlineData("headSide", SegmentKind.Head, "outer")]
    [InlineData("elbow", SegmentKind.UpperArm, "back")]
    [InlineData("forearmBelow", SegmentKind.Ulna, "outer")]
    [InlineData("palm", SegmentKind.Hand, "front")]
    [InlineData("handHeel", SegmentKind.Hand, "front")]
    [InlineData("handBack", SegmentKind.Hand, "back")]
    [InlineData("heel", SegmentKind.Foot, "below")]
    [InlineData("forefootSole", SegmentKind.Foot, "below")]
    [InlineData("instep", SegmentKind.Foot, "above")]
    [InlineData("heelBack", SegmentKind.Foot, "back")]
    [InlineData("toeTip", SegmentKind.Toes, "front")]
    [InlineData("toeTop", SegmentKind.Toes, "above")]
    public void A_point_is_on_its_part_and_on_the_side_its_name_says(string name, SegmentKind segment, string facing)
    {
        Assert.Equal(segment, TestBody.Content.Points.Resolve(name)[0].Segment);
        var from = FromJoint(name, Side.Right);
        var toward = facing switch
        {
            "front" => from.X,
            "back" => -from.X,
            "outer" => from.Z,
            "inner" => -from.Z,
            "above" => from.Y,
            "below" => -from.Y,
            _ => throw new ArgumentException(facing, nameof(facing)),
        };
        Assert.InRange(toward, 0.008, 0.25);

        // No skin is farther from its bone than a broad pelvis is deep.
        Assert.InRange(new Vec3(from.X, 0, from.Z).Length, 0, 0.26);
    }

    [Theory]
    [InlineData("foot")]
    [InlineData("hand")]
    [InlineData("forearm")]
    [InlineData("knee")]
    [InlineData("shin")]
    [InlineData("elbow")]
    public void The_parts_that_therapists_name_can_be_touched(string name) => Assert.True(TestBody.Content.Points.Has(name));

    [Fact]
    public void Left_points_mirror_right_ones()
    {
        foreach (var point in TestBody.Content.Points.Points.Values.Where(p => p.BothSides))
        {
            var (right, left) = (FromJoint(point.Name, Side.Right), FromJoint(point.Name, Side.Left));
            Assert.Equal(0, (right.Mirrored - left).Length, 1e-12);
        }
    }

    [Fact]
    public void Standing_puts_no_point_below_the_soles()
    {
        var settled = Settle(Upright(LimbAngles.Neutral, BothFeet));
        foreach (var point in TestBody.Content.Points.Points.Values)
            Assert.True(At(settled, point.Name, Side.Right).Y > -0.005, $"{point.Name} is under the floor.");
    }
}
