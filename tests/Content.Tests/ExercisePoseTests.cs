using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Content.Tests;

/// <summary>The poses are real: nothing sinks into the floor, contacts meet, the body stands, and left mirrors right.</summary>
public sealed class ExercisePoseTests
{
    private const int Between = 5;

    /// <summary>How far a point of the skin may lie under the floor: mats and flesh give way.</summary>
    private const double DeepestM = 0.02;

    /// <summary>For other builds the author's angles fit a little less well.</summary>
    private const double DeepestForOthersM = 0.03;

    public static TheoryData<string> Ids => Shipped.Ids;

    [Theory]
    [MemberData(nameof(Ids))]
    public void No_part_of_the_body_sinks_into_the_floor_on_either_side(string id)
    {
        foreach (var side in Enum.GetValues<Side>())
            AssertAboveFloor(id, Shipped.Woman, side, DeepestM);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Short_and_tall_people_stay_above_the_floor_too(string id)
    {
        AssertAboveFloor(id, new Physique(Sex.Female, 60, 1.50, 52), Side.Right, DeepestForOthersM);
        AssertAboveFloor(id, new Physique(Sex.Male, 30, 1.90, 90), Side.Right, DeepestForOthersM);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_contact_meets_its_surface(string id)
    {
        var model = Shipped.Library.Body.Build(Shipped.Woman);
        foreach (var side in Enum.GetValues<Side>())
        {
            foreach (var frame in Shipped.Exercise(id).Movement.Frames)
                Assert.InRange(Settling.Settle(model, Shipped.Library.Body.Points, frame, side).LargestGapM, 0, Settling.Refused);
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_body_stands_on_its_contacts_all_the_way(string id)
    {
        var model = Shipped.Library.Body.Build(Shipped.Woman);
        var state = new BodyState(model);

        // A hop or a step off a box flies between its poses: nothing carries it there.
        var frames = Shipped.Exercise(id).Movement.Frames;
        if (frames.Zip(frames.Skip(1)).Any(pair => !pair.First.Contacts.Any(pair.Second.Contacts.Contains)))
        {
            Assert.Equal(Purpose.Power, Shipped.Exercise(id).Purpose);
            return;
        }

        foreach (var side in Enum.GetValues<Side>())
        {
            var movement = Shipped.Exercise(id).Movement;
            PullSetting? setting = null;
            foreach (var placed in Along(id, model, side))
            {
                // Helping hands hold too: a partner on the heels.
                state.Update(placed.Pose);
                setting ??= PullSetting.From(Shipped.Library.Body.Points, movement, side, state, 0);
                var pulls = Pulls.On(model, Shipped.Library.Body.Points, movement, side, state, setting);
                var refusal = Standing.Refusal(state, SupportPoints.Of(model, placed), movement.Pulls.OfType<HelpPull>().Any() ? [.. pulls.All] : []);
                Assert.True(refusal is null, $"{id}, {side}: {refusal}");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_left_pose_is_the_mirror_image_of_the_right(string id)
    {
        var model = Shipped.Library.Body.Build(Shipped.Woman);
        var right = new BodyState(model);
        var left = new BodyState(model);
        foreach (var (onRight, onLeft) in Along(id, model, Side.Right).Zip(Along(id, model, Side.Left)))
        {
            right.Update(onRight.Pose.Mirrored(model));
            left.Update(onLeft.Pose);
            for (var segment = 0; segment < model.Segments.Length; segment++)
            {
                Assert.True((right.Origins[segment] - left.Origins[segment]).Length < 1e-9, $"{id}: {model.Segments[segment].Kind}");
                foreach (var axis in new[] { Vec3.UnitX, Vec3.UnitY, Vec3.UnitZ })
                {
                    var apart = right.Rotations[segment] * axis - left.Rotations[segment] * axis;
                    Assert.True(apart.Length < 1e-9, $"{id}: {model.Segments[segment].Kind} is turned");
                }
            }
        }
    }

    [Theory]
    [InlineData("hip-flexor-half-kneeling")]
    [InlineData("seated-knee-extension")]
    public void Upright_forms_keep_the_trunk_upright(string id)
    {
        var model = Shipped.Library.Body.Build(Shipped.Woman);
        var state = new BodyState(model);
        foreach (var placed in Along(id, model, Side.Right))
        {
            state.Update(placed.Pose);
            var up = state.Rotations[model.IndexOf(SegmentKind.Torso, null)] * Vec3.UnitY;
            Assert.True(up.Y > Math.Cos(Angle.FromDegrees(8).Radians), id);
        }
    }

    private static IEnumerable<PlacedBody> Along(string id, BodyModel model, Side side)
    {
        var movement = Shipped.Exercise(id).Movement;
        var last = (movement.Frames.Length - 1) * (Between + 1);
        return Enumerable.Range(0, last + 1).Select(i => Settling.Settle(
            model, Shipped.Library.Body.Points, FrameBetween.At(movement, (double)i / last), side));
    }

    private static void AssertAboveFloor(string id, Physique physique, Side working, double deepest)
    {
        var model = Shipped.Library.Body.Build(physique);
        var state = new BodyState(model);
        foreach (var placed in Along(id, model, working))
        {
            state.Update(placed.Pose);
            foreach (var point in Shipped.Library.Body.Points.Points.Values)
            {
                foreach (var side in point.BothSides ? Enum.GetValues<Side>() : [Side.Right])
                {
                    var (segment, local) = point.On(model, side);
                    var height = state.Point(segment, local).Y;
                    Assert.True(
                        height > -deepest,
                        FormattableString.Invariant($"{id}, working {working}: {side} {point.Name} is {-height * 100:0.0} cm under the floor."));
                }
            }
        }
    }
}
