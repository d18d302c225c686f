using MomentArm.Body;
using MomentArm.Content;

namespace MomentArm.Cli;

/// <summary>Bodies, muscles, strength and held poses of the checks, each made once.</summary>
internal sealed class CheckPeople(ContentLibrary library, HoldPose hold)
{
    private readonly Dictionary<string, BodyModel> models = [];
    private readonly Dictionary<string, MuscleSet> muscles = [];
    private readonly Dictionary<string, PersonBody> persons = [];
    private readonly Dictionary<(string, PoseInput, Variation), HeldBody> held = [];

    internal BodyChecks Checks => library.BodyChecks;

    internal BodyModel Model(string person) =>
        models.TryGetValue(person, out var known) ? known : models[person] = Checks.Persons[person] is { } physique
            ? library.Body.Build(physique)
            : BodyModelBuilder.Unscaled(library.Body.Skeleton);

    internal MuscleSet Muscles(string person) =>
        muscles.TryGetValue(person, out var known) ? known : muscles[person] = library.Body.MusclesOf(Model(person));

    /// <summary>The published body is followed as published; a person's paths are trusted only where the program trusts them.</summary>
    internal PathUse Use(string person) => Checks.Persons[person] is null ? PathUse.AsPublished : PathUse.Trusted;

    internal double? Capacity(string person, JointAction action, double clinicalRad) =>
        Checks.Persons[person] is { } physique
            ? new PatientCapacity(library.Body.Capacities, physique, Model(person), []).Published(action, clinicalRad)
            : null;

    internal HeldBody Hold(string person, PoseInput input, Variation variation)
    {
        if (held.TryGetValue((person, input, variation), out var known))
            return known;
        return held[(person, input, variation)] =
            hold(Person(person), variation.Of(input), Side.Right, variation.CenterShiftM);
    }

    private PersonBody Person(string person) =>
        persons.TryGetValue(person, out var known) ? known : persons[person] = new PersonBody(
            Model(person), library.Body.Points, Muscles(person),
            new PatientCapacity(library.Body.Capacities, Checks.Persons[person] ?? new Physique(), Model(person), []));
}
