using MomentArm.Body.Tests.Movements;
using Xunit;

namespace MomentArm.Body.Tests.Balancing;

/// <summary>The lines of a joint give together what the person's joint can hold.</summary>
public sealed class BodyBalanceStrengthTests
{
    /// <summary>
    /// A leg held out to the side and pushed down at the knee, from a third of the hip's strength to all of it. Effort is not the share: it is
    /// the force-weighted mean over lines that are not equally well placed.
    /// </summary>
    [Theory]
    [InlineData(0)]
    [InlineData(20)]
    public void Up_to_the_strength_of_a_hip_effort_rises_with_the_load_and_nothing_is_left_unexplained(int abduction)
    {
        var (before, most) = (0.0, 0.0);
        for (var newton = 0; newton <= 180; newton += 20)
        {
            var held = Held.Frame(TestBody.Man, Frames.SideLyingRaise(abduction), forces: state =>
            {
                var shank = state.Model.IndexOf(SegmentKind.Shank, Side.Right);
                return [new PointForce(shank, state.Point(shank, Vec3.Zero), new Vec3(0, -newton, 0))];
            });
            var model = held.Model;
            var strength = new JointStrength(model, new PatientCapacity(TestBody.Content.Capacities, new Physique(Sex.Male, 30, model.StatureM, model.MassKg), model, []));
            var (index, sign) = JointAction.HipAbduction.On(model, Side.Right);
            var share = held.Demand(JointAction.HipAbduction, Side.Right) / strength.TorqueAt(index, sign, held.Pose.Angles[index]);
            var effort = held.Balance.Effort(MuscleFunction.HipAbductor, Side.Right);
            Assert.True(Enumerable.Range(0, model.Coordinates.Length).Max(k => Math.Abs(held.Balance.Reserve(k))) < 1, $"{newton} N");
            most = share;
            if (share > 0.95)
                continue;
            Assert.InRange(effort, Math.Max(before, 0.95 * share), 1.2 * share);
            before = effort;
        }

        Assert.InRange(most, 0.95, 1);
    }

    /// <summary>How many lines a muscle is drawn as must not matter.</summary>
    [Fact]
    public void A_muscle_drawn_as_two_lines_shares_like_the_same_muscle_drawn_as_one()
    {
        var content = TestBody.Content;
        var table = content.Muscles;
        var cut = table with
        {
            Paths =
            [
                .. table.Paths.SelectMany(path => path.Id == "semimembranosus"
                    ? [path with { MaximalForceN = path.MaximalForceN / 2 }, path with { Id = "semimembranosus-again", MaximalForceN = path.MaximalForceN / 2 }]
                    : (MusclePath[])[path]),
            ],
        };
        var model = TestBody.Man;
        var strength = new JointStrength(model, new PatientCapacity(content.Capacities, new Physique(Sex.Male, 30, model.StatureM, model.MassKg), model, []));
        double[] Forces(MuscleTable paths)
        {
            var muscles = MuscleSet.Build(paths, content.Skeleton, model);
            var balance = new BodyBalance(muscles, strength);
            var placed = Settling.Settle(model, content.Points, Frames.SideLyingRaise(20), Side.Right);
            Held.Posed(balance, TestBody.Posed(model, placed.Pose), placed.Pose, SupportPoints.Of(model, placed), []);
            double Of(string id) => Enumerable.Range(0, muscles.Muscles.Length).Where(i => muscles.Muscles[i].Id.StartsWith(id, StringComparison.Ordinal)).Sum(balance.MuscleForce);
            return [.. table.Paths.Select(path => Of(path.Id))];
        }

        Assert.All(Forces(table).Zip(Forces(cut)), pair => Assert.Equal(pair.First, pair.Second, 1e-3));
    }
}
