using MomentArm.Body;

namespace MomentArm.Content;

/// <summary>Everything the Body room needs from content/body.</summary>
/// <param name="Skeleton">The published skeleton.</param>
/// <param name="Tables">Mass tables.</param>
/// <param name="Points">Named surface points.</param>
/// <param name="Capacities">Published strength.</param>
/// <param name="Muscles">Muscle paths.</param>
public sealed record BodyContent(
    SkeletonData Skeleton, IReadOnlyList<SegmentTable> Tables, SurfacePoints Points, CapacityTables Capacities, MuscleTable Muscles)
{
    /// <summary>Reads content/body.</summary>
    /// <param name="contentFolder">The content folder.</param>
    /// <param name="faults">Gathers every fault.</param>
    /// <returns>The content, or null when a fault makes it unusable.</returns>
    public static BodyContent? Read(string contentFolder, FaultList faults)
    {
        T? File<T>(string name)
            where T : class =>
            StrictJson.ReadFile<T>(Path.Combine(contentFolder, "body", name), $"body/{name}", faults);
        var before = faults.Faults.Count;
        var skeleton = File<SkeletonFile>("skeleton.json")?.ToSkeleton(faults);
        var tables = File<SegmentsFile>("segments.json")?.ToTables(faults);
        var points = File<SurfacePointsFile>("surface-points.json")?.ToPoints(faults);
        var capacities = File<CapacityFile>("capacity.json")?.ToTables(faults);
        var muscles = File<MusclesFile>("muscles.json")?.ToTable(skeleton, faults);
        return faults.Faults.Count == before
            ? new BodyContent(skeleton!, tables!, points!, capacities!, muscles!)
            : null;
    }

    /// <summary>The body of a person.</summary>
    /// <param name="physique">What is known of the person.</param>
    /// <returns>The scaled body.</returns>
    public BodyModel Build(Physique physique) => BodyModelBuilder.Build(Skeleton, Tables, physique);

    /// <summary>The muscles of a body.</summary>
    /// <param name="model">The body.</param>
    /// <returns>The scaled muscles, both sides.</returns>
    public MuscleSet MusclesOf(BodyModel model) => MuscleSet.Build(Muscles, Skeleton, model);

    /// <summary>A person's whole body, with capacities that rest on published values alone.</summary>
    /// <param name="physique">What is known of the person.</param>
    /// <returns>The person.</returns>
    public PersonBody PersonOf(Physique physique)
    {
        var model = Build(physique);
        return new PersonBody(model, Points, MusclesOf(model), new PatientCapacity(Capacities, physique, model, []));
    }
}
