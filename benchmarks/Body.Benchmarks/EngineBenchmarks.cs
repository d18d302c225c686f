using BenchmarkDotNet.Attributes;
using MomentArm.Content;
using MomentArm.Prescribing;

namespace MomentArm.Body.Benchmarks;

/// <summary>The engine's parts on a real exercise. Figures and machine are kept in docs/benchmarks.md.</summary>
[MemoryDiagnoser]
public class EngineBenchmarks
{
    private PersonBody person = null!;
    private Exercise exercise = null!;
    private PlacedBody placed = null!;
    private BodyState state = null!;
    private MuscleState muscles = null!;
    private BodyBalance balance = null!;
    private ContactPoint[] contacts = null!;
    private double[] moments = null!;

    /// <summary>The exercise, named as in the library.</summary>
    [Params("single-leg-bridge", "lateral-step-down", "side-lying-leg-raise", "outer-thigh-roll")]
    public string Id { get; set; } = "";

    [GlobalSetup]
    public void SetUp()
    {
        var library = ContentLibrary.Read(Path.Combine(Root(), "content"));
        person = library.Body.PersonOf(new Physique(Sex.Female, 40, 1.68, 64));
        exercise = library.Exercise(Id)!;
        placed = Settling.Settle(person.Model, person.Points, FrameBetween.At(exercise.Movement, 1), Side.Right);
        state = new BodyState(person.Model);
        state.Update(placed.Pose);
        muscles = new MuscleState(person.Muscles);
        moments = new double[person.Model.Coordinates.Length];
        balance = new BodyBalance(person.Muscles, new JointStrength(person.Model, person.Capacity));
        contacts = SupportPoints.Of(person.Model, placed);
    }

    [Benchmark]
    public void Kinematics_and_all_joint_moments()
    {
        state.Update(placed.Pose);
        JointMoments.Required(state, [], moments);
    }

    [Benchmark]
    public void All_muscle_lengths_and_arms() => muscles.Update(state, placed.Pose);

    [Benchmark]
    public Solution Full_solution_of_a_pose() => balance.Solve(state, placed.Pose, contacts, [], [], [], EffortRule.Usual);

    [Benchmark]
    public MovementLoad Repetition_of_21_poses_settled_and_loaded() => Loading.Of(person, exercise.Movement, Side.Right, 2);

    internal static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "MomentArm.slnx")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new InvalidOperationException("MomentArm.slnx was not found above the benchmarks.");
    }
}
