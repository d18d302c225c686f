using System.Globalization;

namespace MomentArm.Body.Tests.Balancing;

/// <summary>
/// Any body in any pose on any contacts, straps and forces: an outcome, never a crash, and no number that is none in what is called held.
/// <c>MOMENTARM_FUZZ</c> in the environment raises the number of poses, to a million for example.
/// </summary>
public sealed class BalanceFuzzTests(ITestOutputHelper output)
{
    private const int EverydayPoses = 1500;
    private const int Seed = 20_261_125;

    private static int Poses =>
        int.TryParse(Environment.GetEnvironmentVariable("MOMENTARM_FUZZ"), NumberStyles.None, CultureInfo.InvariantCulture, out var poses) && poses > 0
            ? poses
            : EverydayPoses;

    [Fact]
    public void Whatever_is_posed_comes_out_optimal_with_numbers_or_is_said_not_to()
    {
        var bodies = new[] { (Sex.Female, 1.3, 35.0), (Sex.Male, 2.1, 160.0), (Sex.Female, 1.65, 62.0) }
            .Select(b => TestBody.Content.Build(new Physique(b.Item1, 40, b.Item2, b.Item3)))
            .Select(model => (Model: model, State: new BodyState(model), Balance: Held.BalanceOf(model))).ToArray();
        var random = new Random(Seed);
        int held = 0, open = 0, most = 0;
        for (var i = 0; i < Poses; i++)
        {
            var (model, state, balance) = bodies[i % bodies.Length];
            var (pose, contacts, ties, forces) = Any(random, model, state);
            var outcome = balance.Solve(state, pose, contacts, forces, ties, [], new EffortRule(Cubes: i % 5 == 0));
            most = Math.Max(most, outcome.Steps);
            var (force, moment) = balance.Unbalanced;
            if (outcome.Status != SolutionStatus.Optimal)
                open++;
            else if (Standing.Stands(model, force, moment))
                held++;
            if (outcome.Status == SolutionStatus.Optimal)
                AssertNumbers(balance, model, contacts.Length, i);
        }

        output.WriteLine($"{Poses} poses: {held} held, {open} without an optimum, at most {most} steps");
        Assert.True(held > Poses / 20, $"only {held} of {Poses} were held");
        Assert.True(open <= Poses / 1000, $"{open} of {Poses} found no optimum");
    }

    private static void AssertNumbers(BodyBalance balance, BodyModel model, int contacts, int pose)
    {
        for (var c = 0; c < contacts; c++)
            Assert.True(double.IsFinite(balance.ContactForce(c).Length), $"pose {pose}, contact {c}");
        for (var k = 0; k < model.Coordinates.Length; k++)
        {
            Assert.True(
                double.IsFinite(balance.Demand(k)) && double.IsFinite(balance.Reserve(k)) && double.IsFinite(balance.EndStop(k)), $"pose {pose}, {model.Coordinates[k].Motion}");
        }

        Assert.True(double.IsFinite(balance.JointForce(model.IndexOf(SegmentKind.Thigh, Side.Right)).Length), $"pose {pose}, hip");
        Assert.InRange(balance.Effort(MuscleFunction.HipExtensor, Side.Left), 0, 1);
    }

    private static (BodyPose Pose, ContactPoint[] Contacts, BodyTie[] Ties, PointForce[] Forces) Any(Random random, BodyModel model, BodyState state)
    {
        double Within(double least, double most) => least + (most - least) * random.NextDouble();
        Vec3 Direction() => new Vec3(Within(-1, 1), Within(-1, 1), Within(0.05, 1)).Normalized();
        int Segment() => random.Next(model.Segments.Length);
        var pose = new BodyPose(model) { PelvisRotation = Mat3.Rotation(Direction(), Within(-3, 3)) };
        for (var k = 0; k < pose.Angles.Length; k++)
        {
            var coordinate = model.Coordinates[k];
            pose.Angles[k] = random.Next(6) == 0 ? coordinate.NormalMost : random.Next(5) == 0 ? 0 : Within(coordinate.NormalLeast, coordinate.NormalMost);
        }

        state.Update(pose);
        var center = state.MassCenter();
        var contacts = new ContactPoint[random.Next(0, 20)];
        for (var i = 0; i < contacts.Length; i++)
        {
            var normal = new Vec3(Within(-0.3, 0.3), 1, Within(-0.3, 0.3)).Normalized();
            contacts[i] = new ContactPoint(
                Segment(), center + new Vec3(Within(-0.8, 0.8), Within(-0.9, 0), Within(-0.8, 0.8)), random.Next(8) == 0 ? Direction() : normal,
                random.Next(4) == 0 ? 0 : Within(0, 0.9), Within(0, 300));
        }

        var ties = new BodyTie[random.Next(0, 3)];
        for (var i = 0; i < ties.Length; i++)
        {
            var (a, b) = (Segment(), Segment());
            ties[i] = new BodyTie(a, state.Origins[a], b, random.Next(6) == 0 ? state.Origins[a] : state.Origins[b]);
        }

        var forces = new PointForce[random.Next(0, 3)];
        for (var i = 0; i < forces.Length; i++)
            forces[i] = new PointForce(Segment(), center, Within(0, 400) * Direction());
        return (pose, contacts, ties, forces);
    }
}
