using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>
/// The muscles of a person, both sides: constant and shareable. Points are scaled with the segment that carries them, fiber and
/// tendon lengths with the path. What is computed for a pose lives in <see cref="MuscleState"/>.
/// </summary>
public sealed class MuscleSet
{
    private readonly int[] armCoordinates;
    private readonly ImmutableDictionary<(string Id, Side Side), int> index;
    private readonly Lazy<ImmutableArray<PathRange>> ranges;
    private readonly Lazy<ImmutableArray<UsualLength>> usual;

    private MuscleSet(BodyModel model, PathAssembly paths, ImmutableArray<Muscle> muscles)
    {
        Model = model;
        Muscles = muscles;
        Points = [.. paths.Points];
        Travels = [.. paths.Travels];
        Crossings = [.. paths.Crossings];
        Spans = [.. paths.Spans];
        Obstacles = [.. paths.Obstacles];
        Trusted = [.. paths.Trusted];
        armCoordinates = [.. paths.ArmCoordinates];
        index = muscles.Select((m, i) => (m, i)).ToImmutableDictionary(m => (m.m.Id, m.m.Side), m => m.i);
        ranges = new(() => PathRanges.Sweep(this));
        usual = new(() => UsualLength.Sweep(this));
    }

    /// <summary>The body the muscles lie on.</summary>
    public BodyModel Model { get; }

    /// <summary>All lines: those of the right side, then those of the left in the same order.</summary>
    public ImmutableArray<Muscle> Muscles { get; }

    /// <summary>
    /// The coordinate of each arm, for all muscles one after the other: muscle m has the arms from <see cref="Muscle.FirstArm"/>
    /// on, <see cref="Muscle.ArmCount"/> of them. Indexes into <see cref="BodyModel.Coordinates"/>.
    /// </summary>
    public ReadOnlySpan<int> ArmCoordinates => armCoordinates;

    /// <summary>Shortest and longest path of each muscle over the usual joint ranges. Swept once, when first asked for.</summary>
    public ImmutableArray<PathRange> Ranges => ranges.Value;

    /// <summary>The same by the trusted rule, for lines with a length group; swept once.</summary>
    internal ImmutableArray<UsualLength> UsualLengths => usual.Value;

    internal ScaledPoint[] Points { get; }

    internal ScaledTravel[] Travels { get; }

    internal Crossing[] Crossings { get; }

    internal PathSpan[] Spans { get; }

    internal ScaledObstacle[] Obstacles { get; }

    internal TrustedCoordinate[] Trusted { get; }

    /// <summary>The muscles of a body.</summary>
    /// <param name="table">The published paths.</param>
    /// <param name="skeleton">The published skeleton, to whose size the fiber lengths belong.</param>
    /// <param name="model">The person's body.</param>
    /// <returns>The scaled muscles.</returns>
    /// <exception cref="ArgumentException">A path that does not run outward along one limb, or names what is not there.</exception>
    public static MuscleSet Build(MuscleTable table, SkeletonData skeleton, BodyModel model)
    {
        ArgumentNullException.ThrowIfNull(table);
        ArgumentNullException.ThrowIfNull(skeleton);
        ArgumentNullException.ThrowIfNull(model);
        var paths = new PathAssembly(table, model);
        var published = NeutralLengths(BodyModelBuilder.Unscaled(skeleton), table);
        return new MuscleSet(model, paths, MuscleFigures.For(table, paths, published, NeutralLengths(model, table)));
    }

    /// <summary>Index of a muscle.</summary>
    /// <param name="id">Its short name.</param>
    /// <param name="side">Its side.</param>
    /// <returns>Index into <see cref="Muscles"/>.</returns>
    /// <exception cref="ArgumentException">There is no such muscle.</exception>
    public int IndexOf(string id, Side side) =>
        index.TryGetValue((id, side), out var found) ? found : throw new ArgumentException($"There is no muscle \"{id}\".", nameof(id));

    /// <summary>Whether a line runs round bone where the published one would cut through it; see <see cref="PathUse.Trusted"/>.</summary>
    /// <param name="muscle">Index of a muscle.</param>
    /// <returns>True when it has an obstacle.</returns>
    public bool HasObstacle(int muscle) => Spans[muscle].Obstacle >= 0;

    /// <summary>The same muscle of the other side.</summary>
    /// <param name="muscle">Index of a muscle.</param>
    /// <returns>Index of its mirror image.</returns>
    public int Mirror(int muscle) => muscle < Muscles.Length / 2 ? muscle + Muscles.Length / 2 : muscle - Muscles.Length / 2;

    private static double[] NeutralLengths(BodyModel model, MuscleTable table)
    {
        var bare = new MuscleSet(model, new PathAssembly(table, model), []);
        return [.. new MuscleState(bare, PathUse.AsPublished).Lengths];
    }
}
