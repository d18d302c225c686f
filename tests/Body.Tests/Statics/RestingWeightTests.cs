namespace MomentArm.Body.Tests;

public class RestingWeightTests
{
    private static readonly BodyModel Woman = TestBody.Content.Build(new Physique(Sex.Female, 40, 1.65, 65));

    [Fact]
    public void The_weights_add_up_to_the_bodys_weight()
    {
        int[] contacts = [Woman.IndexOf(SegmentKind.Foot, Side.Left), Woman.IndexOf(SegmentKind.Torso, null), Woman.IndexOf(SegmentKind.Torso, null)];
        var weight = Woman.Segments.Sum(s => s.MassKg) * BodyModel.Gravity;
        Assert.Equal(weight, RestingWeight.On(Woman, contacts).Sum(), 1e-9);
    }

    [Fact]
    public void A_leg_resting_on_its_own_contact_rests_its_own_weight_there()
    {
        // By hand: thigh, shank and foot of the left go to the left thigh; all else is nearer to the torso.
        int[] contacts = [Woman.IndexOf(SegmentKind.Thigh, Side.Left), Woman.IndexOf(SegmentKind.Torso, null)];
        var leg = Woman.Segments
            .Where(s => s.Side == Side.Left && s.Kind is SegmentKind.Thigh or SegmentKind.Shank or SegmentKind.Foot)
            .Where(s => s.Side == Side.Left)
            .Sum(s => s.MassKg) * BodyModel.Gravity;
        var pelvis = Woman.Segments[0].MassKg * BodyModel.Gravity;
        var resting = RestingWeight.On(Woman, contacts);

        // The pelvis lies one joint from both and is shared; the other leg hangs two joints from the thigh and two from the torso.
        var other = Woman.Segments.Where(s => s.Side == Side.Right && s.Kind is SegmentKind.Thigh or SegmentKind.Shank or SegmentKind.Foot)
            .Where(s => s.Side == Side.Right).Sum(s => s.MassKg) * BodyModel.Gravity;
        Assert.Equal(leg + pelvis / 2 + other / 2, resting[0], 1e-9);
    }

    [Fact]
    public void A_relaxed_leg_on_the_floor_asks_almost_nothing_of_its_hip()
    {
        // A leg carried by its own contact under its mass center needs no hip moment: nothing to work out.
        var frame = new PosedFrame
        {
            Name = "supine",
            Orientation = Orientation.Supine,
            Working = LimbAngles.Neutral,
            Other = LimbAngles.Neutral,
            Axial = AxialAngles.Neutral,
            Contacts =
            [
                new SurfaceContact("pelvisBack", Limb.Working, SurfaceKind.Floor, 0, true),
                new SurfaceContact("pelvisBack", Limb.Other, SurfaceKind.Floor, 0, true),
                new SurfaceContact("upperBack", Limb.Working, SurfaceKind.Floor, 0, true),
                new SurfaceContact("upperBack", Limb.Other, SurfaceKind.Floor, 0, true),
                new SurfaceContact("thighBack", Limb.Working, SurfaceKind.Floor, 0, true),
                new SurfaceContact("thighBack", Limb.Other, SurfaceKind.Floor, 0, true),
                new SurfaceContact("heelBack", Limb.Working, SurfaceKind.Floor, 0, true),
                new SurfaceContact("heelBack", Limb.Other, SurfaceKind.Floor, 0, true),
            ],
        };
        var movement = new Movement { Frames = [frame], Props = [], Loads = [], View = ViewKind.Side };
        var physique = new Physique(Sex.Female, 40, 1.65, 65);
        var load = global::MomentArm.Body.Loading.Of(TestBody.Content.PersonOf(physique), movement, Side.Right, 0);
        Assert.True(load.Computed);
        foreach (var share in load.Shares.Where(s => s.Action is JointAction.HipFlexion or JointAction.HipExtension))
            Assert.True(share.Demand < 15, $"{share.Action} asks {share.Demand} N m of a leg at rest.");
    }
}
