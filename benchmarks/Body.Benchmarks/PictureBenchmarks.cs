using BenchmarkDotNet.Attributes;
using MomentArm.Content;
using MomentArm.Drawing;
using MomentArm.Prescribing;

namespace MomentArm.Body.Benchmarks;

/// <summary>Pictures of a real exercise, settled and drawn anew each time. Figures and machine are kept in docs/benchmarks.md.</summary>
[MemoryDiagnoser]
public class PictureBenchmarks
{
    private BodyModel model = null!;
    private SurfacePoints points = null!;
    private Exercise exercise = null!;
    private PictureOptions tinted = null!;

    /// <summary>The exercise, named as in the library.</summary>
    [Params("single-leg-bridge", "hamstring-strap-stretch", "seated-knee-extension", "outer-thigh-roll")]
    public string Id { get; set; } = "";

    [GlobalSetup]
    public void SetUp()
    {
        var library = ContentLibrary.Read(Path.Combine(EngineBenchmarks.Root(), "content"));
        (model, points) = (library.Body.Build(new Physique(Sex.Female, 40)), library.Body.Points);
        exercise = library.Exercise(Id)!;
        tinted = PictureOptions.Usual with
        {
            Tints = [Tint.Work(JointAction.HipExtension, Limb.Working, "buttock"), Tint.Stretch(MuscleGroup.Hamstrings, Limb.Working, "back of thigh")],
        };
    }

    [Benchmark]
    public Picture One_pose() => Pictures.Still(model, points, exercise.Movement, Side.Right, 1, PictureOptions.Usual);

    [Benchmark]
    public Picture Start_and_end_in_one() => Pictures.Combined(model, points, exercise.Movement, Side.Right, PictureOptions.Usual);

    [Benchmark]
    public Picture Start_and_end_with_tints_and_names() => Pictures.Combined(model, points, exercise.Movement, Side.Right, tinted);

    [Benchmark]
    public MovingPicture Nine_moving_frames() => Pictures.Moving(model, points, exercise.Movement, Side.Right, PictureOptions.Usual);
}
