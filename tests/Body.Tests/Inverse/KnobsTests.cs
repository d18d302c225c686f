using MomentArm.Body.Tests.Movements;

namespace MomentArm.Body.Tests.Inverse;

/// <summary>A movement with one thing changed.</summary>
public class KnobsTests
{
    private static readonly BandDose Band = new() { F100N = 20, F200N = 30, RestLengthM = 0.5, Readings = [new BandReading(0.5, 10), new BandReading(1, 18)] };

    private static readonly Movement Full = Frames.Of(Frames.Seated(90), Frames.Seated(60) with { Name = "middle" }, Frames.Seated(0) with { Name = "end" }) with
    {
        Loads = [new AddedLoad(LoadKind.Weight, "ankle", Limb.Working, 2), new AddedLoad(LoadKind.Weight, "kneeFront", Limb.Working, 0) { Toward = "ankle", Fraction = 0.9 }],
        Pulls =
        [
            new HelpPull(new BodyPlace("ankle", Limb.Working), 30, BodyDirection.Up),
            new LoopPull(new BodyPlace("ankle", Limb.Working), 0.04, Band), new LinkPull(new BodyPlace("ankle", Limb.Working), new BodyPlace("ankle", Limb.Other), Band),
        ],
        Props = [new Prop(PropKind.Chair, null, null, 0.45), new Prop(PropKind.Mat, null, null, 0)],
    };

    [Fact]
    public void Each_knob_changes_its_own_thing_and_nothing_else()
    {
        Assert.Equal([3.5, 0], Knobs.Apply(Full, new Knob(KnobKind.Weight), 3.5).Loads.Select(l => l.MassKg));
        Assert.Equal([2, 3.5], Knobs.Apply(Full, new Knob(KnobKind.Weight, 1), 3.5).Loads.Select(l => l.MassKg));
        Assert.Equal(0.25, Knobs.Apply(Full, new Knob(KnobKind.Lever, 1), 0.25).Loads[1].Fraction);
        var lever = Knobs.Apply(Full, new Knob(KnobKind.Lever, 0, "kneeFront", "ankle"), 0.25).Loads[0];
        Assert.Equal(("kneeFront", "ankle", 0.25, 2), (lever.At, lever.Toward, lever.Fraction, lever.MassKg));
        Assert.Equal(-12, ((HelpPull)Knobs.Apply(Full, new Knob(KnobKind.HelpForce), -12).Pulls[0]).ForceN);

        var other = BandOf(Knobs.Apply(Full, new Knob(KnobKind.BandF100), 40), 1);
        Assert.Equal((40, null, 0, 0.5), (other.F100N, other.F200N, other.Readings.Length, other.RestLengthM));
        Assert.Equal(0.7, BandOf(Knobs.Apply(Full, new Knob(KnobKind.BandRestLength, 1), 0.7), 2).RestLengthM);
        Assert.Equal(Band, BandOf(Knobs.Apply(Full, new Knob(KnobKind.BandRestLength, 1), 0.7), 1));
        var stretched = BandOf(Knobs.Apply(Full, new Knob(KnobKind.BandPreStretch), 0.3), 1);
        Assert.Equal((null, 0.3), (stretched.RestLengthM, stretched.PreStretch));
    }

    [Fact]
    public void The_seat_is_raised_for_all_its_contacts_and_for_the_picture()
    {
        var raised = Knobs.Apply(Full, new Knob(KnobKind.SurfaceHeight), 0.55);
        Assert.All(raised.Frames.SelectMany(f => f.Contacts), c => Assert.Equal(0.55, c.HeightM, 1e-12));
        Assert.Equal([0.55, 0], raised.Props.Select(p => Math.Round(p.HeightM, 9)));
        Assert.Equal(Full.Loads, raised.Loads);
    }

    [Theory]
    [InlineData(0, 1, 90)]
    [InlineData(0.25, 2, 75)]
    [InlineData(0.5, 2, 60)]
    [InlineData(0.75, 3, 30)]
    [InlineData(1, 3, 0)]
    public void A_movement_part_of_the_way_ends_there(double fraction, int poses, double kneeFlexionDeg)
    {
        var shorter = Knobs.Apply(Full, new Knob(KnobKind.Depth), fraction);
        Assert.Equal(poses, shorter.Frames.Length);
        Assert.Equal(TestBody.Radians(kneeFlexionDeg), shorter.Frames[^1].Working.KneeFlexion, 1e-12);
        Assert.Equal(Full.Frames[0], shorter.Frames[0]);
    }

    [Fact]
    public void The_present_value_is_the_one_the_movement_has()
    {
        (Knob Knob, double? Value)[] present =
        [
            (new(KnobKind.Weight), 2), (new(KnobKind.Weight, 1), null), (new(KnobKind.Weight, 2), null), (new(KnobKind.Lever, 1), 0.9), (new(KnobKind.HelpForce), 30),
            (new(KnobKind.BandF100), 20), (new(KnobKind.BandRestLength, 1), 0.5), (new(KnobKind.BandPreStretch), null), (new(KnobKind.SurfaceHeight), 0.45), (new(KnobKind.Depth), 1),
        ];
        foreach (var (knob, value) in present)
        {
            Assert.Equal(value, Knobs.Present(Full, knob));
            if (value is { } same)
                Assert.Equal(value, Knobs.Present(Knobs.Apply(Full, knob, same), knob));
        }
    }

    [Fact]
    public void A_knob_the_movement_lacks_is_refused_in_words()
    {
        var hold = Frames.Of(Frames.Standing([.. Frames.Both("foot", SurfaceKind.Floor, 0)]));
        foreach (var kind in Enum.GetValues<KnobKind>())
        {
            var missing = Knobs.Missing(hold, new Knob(kind));
            Assert.EndsWith(".", missing, StringComparison.Ordinal);
            Assert.Contains(missing!, Assert.Throws<ArgumentException>(() => Knobs.Apply(hold, new Knob(kind), 0.5)).Message, StringComparison.Ordinal);
        }

        Assert.Null(Knobs.Missing(Full, new Knob(KnobKind.Lever, 1)));
        Assert.Contains("no second point", Knobs.Missing(Full, new Knob(KnobKind.Lever)), StringComparison.Ordinal);
        Assert.Contains("no band", Knobs.Missing(Full, new Knob(KnobKind.BandF100, 2)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(KnobKind.Weight, -1)]
    [InlineData(KnobKind.BandF100, 0)]
    [InlineData(KnobKind.BandRestLength, double.NaN)]
    [InlineData(KnobKind.BandPreStretch, 2.6)]
    [InlineData(KnobKind.SurfaceHeight, 2)]
    [InlineData(KnobKind.Depth, 1.1)]
    public void A_value_that_cannot_be_is_refused(KnobKind kind, double value) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Knobs.Apply(Full, new Knob(kind), value));

    [Fact]
    public void A_height_the_poses_do_not_fit_is_told()
    {
        Assert.Null(Knobs.Misfit(TestBody.Woman, TestBody.Content.Points, Full, Side.Right));
        var floating = Full with
        {
            Frames = [.. Full.Frames.Select(f => f with { Contacts = [.. f.Contacts, new SurfaceContact("foot", Limb.Other, SurfaceKind.Floor, 0, false)] })],
        };
        Assert.Contains(
            "cannot reach the floor",
            Knobs.Misfit(TestBody.Woman, TestBody.Content.Points, Knobs.Apply(floating, new Knob(KnobKind.SurfaceHeight), 0.8), Side.Right), StringComparison.Ordinal);
    }

    private static BandDose BandOf(Movement movement, int pull) => ((BandPull)movement.Pulls[pull]).Band;
}
