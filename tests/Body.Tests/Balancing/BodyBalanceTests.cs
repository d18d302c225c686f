using CsCheck;
using MomentArm.Body.Tests.Movements;
using Xunit;

namespace MomentArm.Body.Tests.Balancing;

/// <summary>The balance of the whole body: laws that need no reference.</summary>
public class BodyBalanceTests
{
    private const int Cases = 60;

    // Points carried by any segment, anywhere under and around the body, some surfaces tilted: about half of these bodies can be held.
    private static readonly Gen<(PosedCase Case, ContactPoint[] Contacts)> Random = RandomBodies.Case.SelectMany(c =>
        Gen.Select(Gen.Int[0, c.Model.Segments.Length - 1], Gen.Double[-0.7, 0.7].Array[3], Gen.Double[-0.3, 0.3].Array[2], Gen.Double[0.2, 0.8], Gen.Double[0, 300])
            .Array[3, 14].Select(points => (c with { Forces = [.. c.Forces.Select(f => f with { Force = 0.1 * f.Force })] }, points.Select(p => Contact(c, p)).ToArray())));

    [Fact]
    public void Contacts_ties_effort_and_reserves_together_hold_every_joint_and_the_whole_body()
    {
        Random.Sample(
            r =>
            {
                var held = Solve(r.Case, r.Contacts);
                PointForce[] all = [.. r.Case.Forces, .. r.Contacts.Select((c, i) => new PointForce(c.Segment, c.Point, held.Balance.ContactForce(i)))];
                var moments = new double[held.Model.Coordinates.Length];
                var (force, moment) = JointMoments.Required(held.State, all, moments);
                var lacking = held.Balance.Unbalanced;
                var tolerance = IsHeld(held) ? Tolerances.Balance : 5e4 * Tolerances.Balance; // large multipliers of a body that falls leave fewer digits
                Assert.True((force - lacking.Force).Length < tolerance, $"force {(force - lacking.Force).Length}");
                Assert.True((moment - lacking.Moment).Length < tolerance, $"moment {(moment - lacking.Moment).Length}");
                for (var k = 0; k < moments.Length; k++)
                {
                    if (held.Model.Coordinates[k].Motion == Motion.ToeExtension)
                        continue;
                    Assert.Equal(moments[k], held.Balance.NetMoment(k), tolerance);
                    Assert.Equal(moments[k] - held.Balance.EndStop(k) - held.Balance.Reserve(k), Explained(held, k), tolerance);
                }
            },
            iter: Cases);
    }

    [Fact]
    public void Many_of_these_random_bodies_can_be_held_and_then_nothing_of_the_balance_is_missing()
    {
        var held = 0;
        Random.Sample(
            r =>
            {
                var lacking = Solve(r.Case, r.Contacts).Balance.Unbalanced;
                if (lacking.Force.Length < 1e-6 && lacking.Moment.Length < 1e-6)
                    Interlocked.Increment(ref held);
                else
                    Assert.True(lacking.Force.Length > 1e-3 || lacking.Moment.Length > 1e-4, $"neither held nor clearly not: {lacking}");
            },
            iter: Cases);
        Assert.InRange(held, Cases / 5, Cases);
    }

    [Fact]
    public void No_contact_pulls_or_rubs_beyond_its_friction_and_no_muscle_leaves_0_to_1()
    {
        Random.Sample(
            r =>
            {
                var held = Solve(r.Case, r.Contacts);
                for (var i = 0; i < r.Contacts.Length; i++)
                {
                    var f = held.Balance.ContactForce(i);
                    var normal = f.Dot(r.Contacts[i].Normal);
                    Assert.True(normal >= 0);
                    Assert.True((f - normal * r.Contacts[i].Normal).Length <= r.Contacts[i].Friction * normal + 1e-9);
                }

                for (var m = 0; m < held.Balance.Muscles.Muscles.Length; m++)
                    Assert.InRange(held.Balance.Activation(m), 0, 1);
            },
            iter: Cases);
    }

    [Fact]
    public void The_mirrored_body_costs_the_same()
    {
        Random.Sample(
            r =>
            {
                var held = Solve(r.Case, r.Contacts);
                var model = held.Model;
                var pose = r.Case.Pose.Mirrored(model);
                int Mirror(int segment) => model.IndexOf(model.Segments[segment].Kind, model.Segments[segment].Side?.Other());
                ContactPoint[] contacts = [.. r.Contacts.Select(c => c with { Segment = Mirror(c.Segment), Point = c.Point.Mirrored, Normal = c.Normal.Mirrored })];
                PointForce[] forces = [.. r.Case.Forces.Select(f => new PointForce(Mirror(f.Segment), f.Point.Mirrored, f.Force.Mirrored))];
                var mirrored = Held.Posed(Held.BalanceOf(model), TestBody.Posed(model, pose), pose, contacts, forces);
                Assert.Equal(held.Balance.Outcome.Objective, mirrored.Balance.Outcome.Objective, 1e-8 * held.Balance.Outcome.Objective + 1e-9);
            },
            iter: Cases);
    }

    [Fact]
    public void Turned_in_the_room_about_the_vertical_it_costs_the_same()
    {
        Random.Sample(
            r =>
            {
                var held = Solve(r.Case, r.Contacts);
                var turn = Mat3.Rotation(Vec3.UnitY, 1.1);
                var pose = r.Case.Pose.Copy();
                pose.PelvisRotation = turn * pose.PelvisRotation;
                pose.PelvisPosition = turn * pose.PelvisPosition;
                ContactPoint[] contacts = [.. r.Contacts.Select(c => c with { Point = turn * c.Point, Normal = turn * c.Normal })];
                PointForce[] forces = [.. r.Case.Forces.Select(f => new PointForce(f.Segment, turn * f.Point, turn * f.Force))];
                var turned = Held.Posed(Held.BalanceOf(held.Model), TestBody.Posed(held.Model, pose), pose, contacts, forces);
                Assert.Equal(held.Balance.Outcome.Objective, turned.Balance.Outcome.Objective, 1e-8 * held.Balance.Outcome.Objective + 1e-9);
            },
            iter: Cases);
    }

    [Theory]
    [MemberData(nameof(Balanced.All), MemberType = typeof(Balanced))]
    public void Working_the_left_is_the_mirror_image_of_working_the_right(string name)
    {
        var right = Held.Frame(TestBody.Man, Balanced.Named(name), Side.Right);
        var left = Held.Frame(TestBody.Man, Balanced.Named(name), Side.Left);
        Assert.True(Standing.Stands(right.Model, right.Balance.Unbalanced.Force, right.Balance.Unbalanced.Moment), $"{right.Balance.Unbalanced}");
        var tolerance = IsHeld(right) ? 1e-9 : 1e-7;
        for (var i = 0; i < right.Contacts.Length; i++)
            Assert.True((right.Balance.ContactForce(i).Mirrored - left.Balance.ContactForce(i)).Length <= tolerance * right.Weight);
        for (var m = 0; m < right.Balance.Muscles.Muscles.Length; m++)
            Assert.Equal(right.Balance.Activation(m), left.Balance.Activation(right.Balance.Muscles.Mirror(m)), tolerance);
    }

    [Fact]
    public void Another_support_never_raises_the_cost()
    {
        var compared = 0;
        Random.Sample(
            r =>
            {
                // Preferred shares would make an unused contact cost something; without them zero force is free.
                ContactPoint[] contacts = [.. r.Contacts.Select(c => c with { RestingN = 0 })];
                var rule = new EffortRule(EndStops: false);
                var before = Solve(r.Case, contacts[..^1], rule);
                if (!IsHeld(before))
                    return;
                Interlocked.Increment(ref compared);
                var all = Solve(r.Case, contacts, rule).Balance.Outcome.Objective;
                var fewer = before.Balance.Outcome.Objective;
                Assert.True(all <= fewer * (1 + 1e-7) + 1e-9, $"{all:R} > {fewer:R}");
            },
            iter: Cases);
        Assert.True(compared > Cases / 5);
    }

    [Fact]
    public void A_body_a_tenth_heavier_and_stronger_is_held_with_a_tenth_more_force_and_the_same_effort()
    {
        var one = TestBody.Content.Build(new Physique(Sex.Female, 40, 1.68, 60));
        var two = TestBody.Content.Build(new Physique(Sex.Female, 40, 1.68, 66));
        foreach (var frame in (PosedFrame[])[Frames.SideLyingRaise(20), Frames.Seated(30), Balanced.Supine])
        {
            var light = Held.Frame(one, frame);
            var heavy = Held.Frame(two, frame);
            for (var k = 0; k < one.Coordinates.Length; k++)
                Assert.True(Math.Abs(1.1 * light.Balance.Demand(k) - heavy.Balance.Demand(k)) < 0.01 + 1e-4 * light.Weight, $"{frame.Name} {one.Coordinates[k].Motion} {one.Coordinates[k].Side} {light.Balance.Demand(k)} {heavy.Balance.Demand(k)}");
            for (var m = 0; m < light.Balance.Muscles.Muscles.Length; m++)
                Assert.True(Math.Abs(light.Balance.Activation(m) - heavy.Balance.Activation(m)) < 0.01, $"{frame.Name} {light.Balance.Muscles.Muscles[m].Id} {light.Balance.Activation(m)} {heavy.Balance.Activation(m)}");
        }
    }

    [Fact]
    public void A_relaxed_body_on_its_back_asks_next_to_nothing_of_its_legs()
    {
        var held = Held.Frame(TestBody.Man, Balanced.Supine);
        foreach (var function in Enum.GetValues<MuscleFunction>())
            Assert.True(held.Balance.Effort(function, Side.Right) < 0.02, $"{function} {held.Balance.Effort(function, Side.Right)}");
    }

    [Fact]
    public void An_author_can_say_how_much_a_contact_carries_where_statics_leaves_it_open()
    {
        var held = Held.Frame(TestBody.Man, Balanced.Supine);
        held.Balance.Solve(held.State, held.Pose, held.Contacts, [], [], [new WeightSplit(0, 2, 0.25)], EffortRule.Usual);
        Assert.Equal(0.25 * held.Weight, held.Balance.ContactForce(0).Y + held.Balance.ContactForce(1).Y, 0.01 * held.Weight);
        Assert.True(held.Balance.Unbalanced.Force.Length < Tolerances.Balance);
    }

    [Fact]
    public void A_share_written_at_a_contact_is_kept_along_a_movement_and_cannot_outdo_gravity()
    {
        PosedFrame With(double share) => Balanced.Supine with
        {
            Contacts = [.. Balanced.Supine.Contacts.Select(c => c.Point == "pelvisBack" ? c with { ShareOfWeight = share } : c)],
        };
        var person = TestBody.Content.PersonOf(new Physique(Sex.Male, 30, 1.741, 73.0));
        var load = MomentArm.Body.Loading.Of(person, Frames.Of(With(0.1), With(0.2)), Side.Right, 0);
        Assert.True(load.Computed, string.Join(' ', load.Problems));
        foreach (var pelvis in load.Supports.Where(r => r.Point == "pelvisBack"))
        {
            Assert.Equal(7.3, pelvis.LeastKg, 0.8);
            Assert.Equal(14.6, pelvis.MostKg, 0.8);
        }

        // Standing on both feet, nobody can put nine tenths on one of them without leaning: no more than the breadth of the soles allows.
        var standing = Balanced.TwoLegs with
        {
            Contacts = [.. Balanced.TwoLegs.Contacts.Select(c => c.Limb == Limb.Working ? c with { ShareOfWeight = 0.9 } : c)],
        };
        var stands = MomentArm.Body.Loading.Of(person, Frames.Of(standing), Side.Right, 0);
        Assert.All(stands.Supports, s => Assert.InRange(s.MostKg, 28, 45));
    }

    [Fact]
    public void A_strap_from_hand_to_foot_pulls_both_alike_and_leaves_the_whole_body_alone()
    {
        var held = Held.Frame(TestBody.Man, Balanced.Supine);
        var model = held.Model;
        var (hand, foot) = (model.IndexOf(SegmentKind.Hand, Side.Right), model.IndexOf(SegmentKind.Foot, Side.Right));
        var strap = new BodyTie(hand, held.State.Origins[hand], foot, held.State.Origins[foot]);
        var before = held.Balance.Outcome.Objective;
        held.Balance.Solve(held.State, held.Pose, held.Contacts, [], [strap], [], EffortRule.Usual);
        Assert.True(held.Balance.Tension(0) >= 0);
        Assert.True(held.Balance.Outcome.Objective <= before + 1e-9);
        Assert.True(held.Balance.Unbalanced.Force.Length < Tolerances.Balance);
    }

    [Fact]
    public void Solving_allocates_nothing()
    {
        var held = Held.Frame(TestBody.Man, Frames.SideLyingRaise(20));
        held.Balance.Solve(held.State, held.Pose, held.Contacts, [], [], [], EffortRule.Usual);
        var before = GC.GetAllocatedBytesForCurrentThread();
        held.Balance.Solve(held.State, held.Pose, held.Contacts, [], [], [], EffortRule.Usual);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static Held Solve(PosedCase c, ContactPoint[] contacts, EffortRule? rule = null) =>
        Held.Posed(Held.BalanceOf(c.Model), c.State, c.Pose, contacts, c.Forces, rule);

    private static bool IsHeld(Held held) => held.Balance.Unbalanced.Force.Length < 1e-6 && held.Balance.Unbalanced.Moment.Length < 1e-6;

    /// <summary>What muscles and actuators give, from their forces and arms.</summary>
    private static double Explained(Held held, int coordinate)
    {
        var sum = 0.0;
        for (var m = 0; m < held.Balance.Muscles.Muscles.Length; m++)
            sum += held.Balance.MuscleForce(m) * held.Balance.MuscleState.Arm(m, coordinate);
        return sum + held.Balance.ActuatorTorque(coordinate);
    }

    private static ContactPoint Contact(PosedCase c, (int Segment, double[] At, double[] Tilt, double Friction, double Resting) p) => new(
        p.Segment, c.State.MassCenter() + new Vec3(p.At[0], p.At[1], p.At[2]), new Vec3(p.Tilt[0], 1, p.Tilt[1]).Normalized(), p.Friction, p.Resting);
}
