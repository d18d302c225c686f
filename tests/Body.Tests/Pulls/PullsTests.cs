using System.Collections.Immutable;
using CsCheck;
using MomentArm.Body.Tests.Movements;
using Acting = MomentArm.Body.Pulls;

namespace MomentArm.Body.Tests.Pulls;

/// <summary>Bands, ropes and helping hands on posed bodies.</summary>
public class PullsTests
{
    private static readonly BodyPlace MiddleOfThigh = new("kneeOuter", Limb.Working, "kneeInner", 0.5);

    [Fact]
    public void A_tied_band_turns_two_links_as_worked_by_hand()
    {
        // Thigh 0.40 m hanging from the hip at the origin, turned 0.5 rad forward; shank 0.40 m, turned back 0.9 rad at the knee.
        // The band runs from the end of the shank to a point 0.80 m in front of where it hangs at the start (both angles 0), on its height.
        var points = new SurfacePoints(
            ImmutableDictionary<string, SurfacePoint>.Empty.Add("end", new SurfacePoint("end", SegmentKind.Shank, true, new Vec3(0, -0.40, 0))), ImmutableDictionary<string, ImmutableArray<string>>.Empty);
        var model = TwoLinks();
        var start = new BodyPose(model) { PelvisPosition = new Vec3(0, 1, 0) };
        var movement = With(new AnchorPull(new BodyPlace("end", Limb.Working), new RoomAnchor(BodyDirection.Forward, 0.80, 0.2), Band(22.2, rest: 0.5)));
        var setting = PullSetting.From(points, movement, Side.Right, TestBody.Posed(model, start), 0);
        var pose = start.Copy();
        (pose.Angles[0], pose.Angles[1]) = (0.5, -0.9);
        var state = TestBody.Posed(model, pose);
        var forces = Acting.On(model, points, movement, Side.Right, state, setting).All.ToArray();
        var moments = TestBody.Moments(state, forces);

        // By hand: R(t)(0, -y) = (y sin t, -y cos t); the links weigh nothing.
        var (kneeX, kneeY) = (0.40 * Math.Sin(0.5), 1 - 0.40 * Math.Cos(0.5));
        var (endX, endY) = (kneeX + 0.40 * Math.Sin(-0.4), kneeY - 0.40 * Math.Cos(-0.4));
        var (wayX, wayY) = (0.80 - endX, 0.2 - endY);
        var length = Math.Sqrt(wayX * wayX + wayY * wayY);
        var tension = ElasticBand.FromF100(22.2, 0.5).At(length).ForceN;
        var (forceX, forceY) = (tension * wayX / length, tension * wayY / length);
        Assert.Equal(-(endX * forceY - (endY - 1) * forceX), moments[0], 1e-12);
        Assert.Equal(-((endX - kneeX) * forceY - (endY - kneeY) * forceX), moments[1], 1e-12);

        // The band pulls forward and the muscles must hold back.
        Assert.True(moments[0] < -3 && moments[1] < -3, string.Join(", ", moments));
    }

    [Fact]
    public void Both_ends_of_a_band_between_segments_pull_equally_and_against_each_other() => RandomBodies.Case.Sample(
        c =>
        {
            foreach (var pull in Inner(60))
            {
                var part = Assert.Single(Resolve(c, pull).Parts);
                Assert.False(part.FromOutside);
                Assert.Equal(2, part.Forces.Length);
                Assert.Equal(0, (part.Forces[0].Force + part.Forces[1].Force).Length, 1e-9);
                Assert.Equal(0, (part.Forces[1].Point - part.Forces[0].Point).Cross(part.Forces[0].Force).Length, 1e-9);

                // So nothing is asked of the surroundings but the weight.
                var (force, moment) = Surroundings(c.State, [.. part.Forces]);
                var (bare, bareMoment) = Surroundings(c.State, []);
                Assert.Equal(0, (force - bare).Length, Tolerances.Balance);
                Assert.Equal(0, (moment - bareMoment).Length, Tolerances.Balance);
            }
        },
        iter: 200);

    [Fact]
    public void What_a_band_asks_of_each_joint_is_the_slope_of_its_energy() => RandomBodies.Case.Sample(
        c =>
        {
            foreach (var pull in Inner(100).Append(new AnchorPull(new BodyPlace("ankle", Limb.Working), new RoomAnchor(BodyDirection.Up, 0, 2.5), Band(40, stretch: 0.3))))
            {
                var movement = With(pull);
                var setting = PullSetting.From(TestBody.Content.Points, movement, Side.Right, c.State, 0);
                var state = new BodyState(c.Model);
                double Energy(int k, double change)
                {
                    var pose = c.Pose.Copy();
                    pose.Angles[k] += change;
                    state.Update(pose);
                    return Resolved(state, movement, setting).Parts[0].Band!.Value.EnergyJ;
                }

                const double step = 1e-5;
                var with = TestBody.Moments(c.State, [.. Resolved(c.State, movement, setting).All]);
                var without = TestBody.Moments(c.State);
                for (var k = 0; k < with.Length; k++)
                    Assert.Equal((Energy(k, step) - Energy(k, -step)) / (2 * step), with[k] - without[k], 1e-4);
            }
        },
        iter: 40);

    [Fact]
    public void In_a_mirror_every_pull_is_its_mirror_image() => RandomBodies.Case.Sample(
        c =>
        {
            var mirrored = TestBody.Posed(c.Model, c.Pose.Mirrored(c.Model));
            Pull[] pulls =
            [
                .. Inner(60), new HelpPull(new BodyPlace("palm", Limb.Other), 30, BodyDirection.TowardWorking),
                new HelpPull(new BodyPlace("ankle", Limb.Working), 20, BodyDirection.Up, By: new BodyPlace("palm", Limb.Other)),
                new AnchorPull(new BodyPlace("ankle", Limb.Working), new RoomAnchor(BodyDirection.Up, 0, 2.5), Band(40, stretch: 0.3)),
            ];
            var movement = With(pulls) with { Loads = [new AddedLoad(LoadKind.Weight, "ankle", Limb.Working, 2)] };
            var here = Resolved(c.State, movement, PullSetting.From(TestBody.Content.Points, movement, Side.Right, c.State, 0));
            var there = Resolved(mirrored, movement, PullSetting.From(TestBody.Content.Points, movement, Side.Left, mirrored, 0), Side.Left);
            foreach (var (one, other) in here.All.Zip(there.All))
            {
                Assert.Equal(0, (one.Point.Mirrored - other.Point).Length, 1e-9);
                Assert.Equal(0, (one.Force.Mirrored - other.Force).Length, 1e-6);
                Assert.Equal(c.Model.Segments[one.Segment].Kind, c.Model.Segments[other.Segment].Kind);
                Assert.Equal(c.Model.Segments[one.Segment].Side?.Other(), c.Model.Segments[other.Segment].Side);
            }

            Assert.Equal(here.All.Count(), there.All.Count());
        },
        iter: 100);

    [Fact]
    public void A_loop_draws_the_limbs_together_with_two_strands_as_in_the_worked_example()
    {
        // Thin limbs, way round 0.60 m at rest, limbs 0.45 m apart: elongation 0.5; F100 = 20.5 N of one-parameter rubber: 24.7 N.
        Assert.Equal(0.90, Acting.WayRound(0.45, 0), 1e-12);
        var tension = ElasticBandTests.NeoHookean(20.5, 0.60).At(Acting.WayRound(0.45, 0));
        Assert.Equal(0.5, tension.Elongation, 1e-12);
        Assert.Equal(24.7, 2 * tension.ForceN, 0.05);

        // And on a body: the part's size is twice the tension, toward the other limb.
        var state = TestBody.Posed(TestBody.Woman, Apart(20));
        var part = Resolve(state, new LoopPull(MiddleOfThigh, 0.06, Band(30, rest: 0.60))).Parts[0];
        var distance = (part.Forces[1].Point - part.Forces[0].Point).Length;
        Assert.Equal(2 * ElasticBand.FromF100(30, 0.60).At(2 * distance + 2 * Math.PI * 0.06).ForceN, part.SizeN, 1e-9);
        Assert.Equal(-part.SizeN, part.Forces[0].Force.Z, 1e-9);
    }

    [Fact]
    public void The_stretch_at_the_start_sets_the_rest_length()
    {
        var state = TestBody.Posed(TestBody.Woman, Apart(5));
        foreach (var pull in Inner(30, stretch: 0.4))
            Assert.Equal(0.4, Resolve(state, pull).Parts[0].Band!.Value.Elongation, 1e-9);
    }

    [Fact]
    public void An_anchor_lies_where_it_was_told_and_stays_there_while_the_body_moves()
    {
        var movement = With(new AnchorPull(new BodyPlace("ankle", Limb.Working), new RoomAnchor(BodyDirection.TowardOther, 1.0, 0.1), Band(22, rest: 0.8)));
        foreach (var (side, sign) in new[] { (Side.Right, 1), (Side.Left, -1) })
        {
            var start = TestBody.Posed(TestBody.Woman, Apart(0));
            var setting = PullSetting.From(TestBody.Content.Points, movement, side, start, 0);
            var (segment, local) = new BodyPlace("ankle", Limb.Working).On(TestBody.Woman, TestBody.Content.Points, side);
            var ankle = start.Point(segment, local);
            var fixedAt = setting.Starts[0].Fixed!.Value;
            Assert.Equal(0, (new Vec3(ankle.X, 0.1, ankle.Z - sign) - fixedAt).Length, 1e-12);

            // Abducted, the force still points at that very place.
            var force = Resolved(TestBody.Posed(TestBody.Woman, Apart(25)), movement, setting, side).All.Single();
            Assert.Equal(0, (fixedAt - force.Point).Cross(force.Force).Length, 1e-9);
            Assert.True((fixedAt - force.Point).Dot(force.Force) > 0);
        }
    }

    [Fact]
    public void Helping_up_with_30_newtons_takes_30_newtons_times_their_lever_off_the_hip()
    {
        var model = TestBody.Man;
        var pose = new BodyPose(model) { PelvisRotation = Mat3.Rotation(Vec3.UnitZ, Math.PI / 2) };
        var state = TestBody.Posed(model, pose);
        var part = Resolve(state, new HelpPull(new BodyPlace("ankle", Limb.Working), 30, BodyDirection.Up)).Parts[0];
        Assert.True(part.FromOutside);
        Assert.Equal(0, (new Vec3(0, 30, 0) - part.Forces[0].Force).Length, 1e-12);
        var hip = model.IndexOf(Motion.HipFlexion, Side.Right);
        var lever = part.Forces[0].Point - state.Origins[model.IndexOf(SegmentKind.Thigh, Side.Right)];
        Assert.Equal(-30 * Math.Abs(lever.X), TestBody.Moments(state, [.. part.Forces])[hip] - TestBody.Moments(state)[hip], 1e-9);
    }

    [Fact]
    public void The_persons_own_hand_bears_the_opposite_of_what_it_gives_and_one_too_far_off_is_told()
    {
        var pulls = Resolve(TestBody.Posed(TestBody.Woman, Apart(0)), new HelpPull(new BodyPlace("ankle", Limb.Working), 30, BodyDirection.Up, By: new BodyPlace("palm", Limb.Other)));
        var part = pulls.Parts[0];
        Assert.False(part.FromOutside);
        Assert.Equal(part.Forces[0].Point, part.Forces[1].Point);
        Assert.Equal(Vec3.Zero, part.Forces[0].Force + part.Forces[1].Force);
        Assert.Contains("palm is more than 10 cm", Assert.Single(pulls.Warnings), StringComparison.Ordinal);
    }

    [Fact]
    public void A_slack_band_pulls_nothing_a_long_one_is_told_and_a_torn_one_is_refused_in_words()
    {
        var (start, wide) = (TestBody.Posed(TestBody.Woman, Apart(0)), TestBody.Posed(TestBody.Woman, Apart(30)));
        PullForces Spread(double rest)
        {
            var movement = With(new LinkPull(new BodyPlace("ankle", Limb.Working), new BodyPlace("ankle", Limb.Other), Band(30, rest)));
            return Resolved(wide, movement, PullSetting.From(TestBody.Content.Points, movement, Side.Right, start, 0));
        }

        // The ankles are some 0.98 m apart.
        Assert.All(Spread(1.2).All, f => Assert.Equal(Vec3.Zero, f.Force));
        Assert.Empty(Spread(0.5).Warnings);
        Assert.Contains("more than 200 %", Assert.Single(Spread(0.31).Warnings), StringComparison.Ordinal);
        var refused = Spread(0.2);
        Assert.Empty(refused.All);
        Assert.Matches("^Band from ankle to ankle would be stretched to 3[0-9]{2} %, beyond 250 %, where it may tear", refused.Refusal);
    }

    [Fact]
    public void Figures_that_are_no_pull_are_refused_in_words_that_name_the_pull()
    {
        var state = TestBody.Posed(TestBody.Woman, Apart(5));
        (Pull Pull, string Told)[] bad =
        [
            (new LoopPull(MiddleOfThigh, 0.06, Band(0, rest: 0.6)), "Loop band at kneeOuter: 0 N is not usable"),
            (new LoopPull(MiddleOfThigh, 0.06, Band(30, rest: double.NaN)), "NaN m is not usable"),
            (new LoopPull(MiddleOfThigh, -0.06, Band(30, rest: 0.6)), "-0.06 m is not usable"),
            (new LoopPull(new BodyPlace("kneeOuter", Limb.Working, "ankle", 0.5), 0.06, Band(30, rest: 0.6)), "lie on different parts"),
            (new AnchorPull(new BodyPlace("ankle", Limb.Working), new RoomAnchor(BodyDirection.Headward, 1, 0), Band(30, rest: 0.6)), "\"toward the head\" does not point along the floor"),
            (new AnchorPull(new BodyPlace("ankel", Limb.Working), new RoomAnchor(BodyDirection.Forward, 1, 0), Band(30, rest: 0.6)), "no surface point \"ankel\""),
        ];
        foreach (var (pull, told) in bad)
        {
            var resolved = Resolve(state, pull);
            Assert.Empty(resolved.All);
            Assert.Contains(told, resolved.Refusal, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void An_anchor_in_a_movement_whose_first_contact_changes_is_told()
    {
        var movement = Frames.Of(
            Frames.Standing([.. Frames.Both("foot", SurfaceKind.Floor, 0)]),
            Frames.Standing(new SurfaceContact("foot", Limb.Other, SurfaceKind.Floor, 0, true))) with
        {
            Pulls = [new AnchorPull(new BodyPlace("ankle", Limb.Working), new RoomAnchor(BodyDirection.Forward, 1, 0.1), Band(20, rest: 0.9))],
        };
        var setting = PullSetting.For(TestBody.Woman, TestBody.Content.Points, movement, Side.Right, 0);
        Assert.Contains("not sure to stay in place", Assert.Single(setting.Warnings), StringComparison.Ordinal);
    }

    [Fact]
    public void A_weight_between_two_points_hangs_between_them()
    {
        var state = TestBody.Posed(TestBody.Woman, Apart(20));
        Vec3 At(double fraction)
        {
            var movement = With() with { Loads = [new AddedLoad(LoadKind.Weight, "kneeFront", Limb.Working, 2) { Toward = "ankle", Fraction = fraction }] };
            var force = Resolved(state, movement, PullSetting.From(TestBody.Content.Points, movement, Side.Right, state, 0)).All.Single();
            Assert.Equal(-2 * 9.81, force.Force.Y, 1e-12);
            return force.Point;
        }

        Assert.Equal(0, (At(0).Toward(At(1), 0.3) - At(0.3)).Length, 1e-12);
        Assert.True((At(0) - At(1)).Length > 0.3);
    }

    internal static BandDose Band(double f100, double? rest = null, double stretch = 0) => new() { F100N = f100, RestLengthM = rest, PreStretch = stretch };

    internal static Movement With(params Pull[] pulls) => Frames.Of(Frames.Standing([.. Frames.Both("foot", SurfaceKind.Floor, 0)])) with { Pulls = [.. pulls] };

    /// <summary>A loop and a band between two segments.</summary>
    private static Pull[] Inner(double f100, double stretch = 0.2) =>
    [
        new LoopPull(MiddleOfThigh, 0.06, Band(f100, stretch: stretch)),
        new LinkPull(new BodyPlace("palm", Limb.Working), new BodyPlace("ballInner", Limb.Other), Band(f100, stretch: stretch)),
    ];

    private static PullForces Resolve(PosedCase c, Pull pull) => Resolve(c.State, pull);

    private static PullForces Resolve(BodyState state, Pull pull)
    {
        var movement = With(pull);
        return Resolved(state, movement, PullSetting.From(TestBody.Content.Points, movement, Side.Right, state, 0));
    }

    private static PullForces Resolved(BodyState state, Movement movement, PullSetting setting, Side working = Side.Right) =>
        Acting.On(state.Model, TestBody.Content.Points, movement, working, state, setting);

    private static (Vec3 Force, Vec3 Moment) Surroundings(BodyState state, PointForce[] forces) =>
        JointMoments.Required(state, forces, new double[state.Model.Coordinates.Length]);

    /// <summary>Standing with both legs spread by an angle, degrees.</summary>
    private static BodyPose Apart(double degrees)
    {
        var pose = new BodyPose(TestBody.Woman) { PelvisPosition = new Vec3(0, 0.9, 0) };
        foreach (var side in new[] { Side.Left, Side.Right })
            pose.Angles[TestBody.Woman.IndexOf(Motion.HipAdduction, side)] = -TestBody.Radians(degrees);
        return pose;
    }

    private static BodyModel TwoLinks() => new(
        [
            new Segment(SegmentKind.Pelvis, null, -1, Vec3.Zero, 0, 0, 0, Vec3.Zero, 1, null, null, 1),
            new Segment(SegmentKind.Thigh, Side.Right, 0, Vec3.Zero, 0, 1, 0, Vec3.Zero, 1, null, null, 1),
            new Segment(SegmentKind.Shank, Side.Right, 1, new Vec3(0, -0.40, 0), 1, 1, 0, Vec3.Zero, 1, null, null, 1),
        ],
        [
            new JointCoordinate(Motion.HipFlexion, Side.Right, 1, Vec3.UnitZ, -1, 1),
            new JointCoordinate(Motion.KneeExtension, Side.Right, 2, Vec3.UnitZ, -1, 1),
        ],
        14, 1.7, []);
}
