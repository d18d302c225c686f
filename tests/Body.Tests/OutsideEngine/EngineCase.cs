using MomentArm.Body.Tests.Muscles;

namespace MomentArm.Body.Tests.OutsideEngine;

/// <summary>A pose of a fixture on a body of the Body room, with indexes from names.</summary>
internal sealed class EngineCase
{
    private static readonly Lazy<MuscleSet> Woman = new(() => Built(EngineFixture.Woman.Person));
    private static readonly Lazy<MuscleSet> Man = new(() => Built(EngineFixture.Man.Person));

    private readonly EngineFixture fixture;
    private readonly int[] segments;
    private readonly int[] coordinates;
    private readonly int[] muscles;

    private EngineCase(EngineFixture fixture, EnginePose expected)
    {
        this.fixture = fixture;
        Expected = expected;
        Muscles = BodyOf(fixture.Person);
        segments = [.. fixture.Segments.Select(Segment)];
        coordinates = [.. fixture.Coordinates.Select(Coordinate)];
        muscles = [.. fixture.Muscles.Select(name => Muscles.IndexOf(name.Split(' ')[0], SideOf(name)!.Value))];
        Pose = new BodyPose(Model) { PelvisPosition = Vector(expected.PelvisAtM) };
        foreach (var turn in expected.PelvisTurns)
            Pose.PelvisRotation = Mat3.Rotation(new Vec3(turn[0], turn[1], turn[2]).Normalized(), turn[3]) * Pose.PelvisRotation;
        for (var k = 0; k < coordinates.Length; k++)
            Pose.Angles[coordinates[k]] = expected.AnglesRad[k];
        State = TestBody.Posed(Model, Pose);
    }

    internal EnginePose Expected { get; }

    internal MuscleSet Muscles { get; }

    internal BodyModel Model => Muscles.Model;

    internal BodyPose Pose { get; }

    internal BodyState State { get; }

    internal PointForce[] Pushes => [.. Expected.Pushes.Select(p =>
        new PointForce(Segment(p.Segment), State.Point(Segment(p.Segment), Vector(p.AtM)), Vector(p.ForceN)))];

    /// <summary>Segments with the engine's index and ours.</summary>
    internal IEnumerable<(int Theirs, int Ours)> Segments => segments.Select((ours, theirs) => (theirs, ours));

    internal IEnumerable<(int Theirs, int Ours)> Coordinates => coordinates.Select((ours, theirs) => (theirs, ours));

    internal IEnumerable<(int Theirs, int Ours)> Lines => muscles.Select((ours, theirs) => (theirs, ours));

    internal static EngineCase Of(string person, string pose)
    {
        var fixture = person == "woman" ? EngineFixture.Woman : EngineFixture.Man;
        return new EngineCase(fixture, fixture.Poses.Single(p => p.Name == pose));
    }

    internal static Vec3 Vector(double[] v) => new(v[0], v[1], v[2]);

    /// <summary>The engine's arms of a line, beside our coordinate indexes.</summary>
    internal IEnumerable<(int Coordinate, double ArmM)> ArmsOf(int line) =>
        fixture.ArmCoordinates[line].Select((k, i) => (coordinates[k], Expected.ArmsM[line][i]));

    private static MuscleSet BodyOf(EnginePerson person) => person.Sex == "female" ? Woman.Value : Man.Value;

    private static MuscleSet Built(EnginePerson person) => MusclesOf.Built(TestBody.Content.Build(
        new Physique(Enum.Parse<Sex>(person.Sex, true), 30, person.StatureM, person.MassKg)));

    private int Segment(string name) => Model.IndexOf(Enum.Parse<SegmentKind>(name.Split(' ')[0], true), SideOf(name));

    private int Coordinate(string name) => Model.IndexOf(Enum.Parse<Motion>(name.Split(' ')[0], true), SideOf(name));

    private static Side? SideOf(string name) => name.Split(' ') is [_, var side] ? Enum.Parse<Side>(side, true) : null;
}
