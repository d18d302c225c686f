using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>Strength and architecture of every line of a person, from the published figures and the neutral path lengths.</summary>
internal static class MuscleFigures
{
    internal static ImmutableArray<Muscle> For(MuscleTable table, PathAssembly paths, double[] publishedM, double[] personM)
    {
        var muscles = ImmutableArray.CreateBuilder<Muscle>();
        foreach (var side in new[] { Side.Right, Side.Left })
        {
            foreach (var path in table.Paths)
            {
                var taken = table.BandParts.Where(b => b.From.Contains(path.Id)).Sum(b => b.Share);
                var i = muscles.Count;
                var ratio = personM[i] / publishedM[i];
                muscles.Add(new Muscle(
                    path.Id, path.Name, side, path.Function, path.LengthGroup, false, path.MaximalForceN,
                    (1 - taken) * path.MaximalForceN, ratio * path.OptimalFiberM, ratio * path.TendonSlackM, path.PennationRad,
                    personM[i], paths.FirstArm[i], paths.ArmCount(i), path.Caution));
            }

            foreach (var part in table.BandParts)
                muscles.Add(OfBand(table, part, side, muscles.Count, paths, publishedM, personM));
        }

        return muscles.ToImmutable();
    }

    /// <summary>The force-weighted mean of the muscles that pull; the tendon takes up the difference in path length.</summary>
    private static Muscle OfBand(
        MuscleTable table, BandPart part, Side side, int i, PathAssembly paths, double[] publishedM, double[] personM)
    {
        var parents = part.From.Select(id => table.Paths.Single(p => p.Id == id)).ToArray();
        var force = parents.Sum(p => p.MaximalForceN);
        double Mean(Func<MusclePath, double> figure) => parents.Sum(p => p.MaximalForceN / force * figure(p));
        var ratio = personM[i] / publishedM[i];
        var beside = Mean(p => publishedM[table.Paths.IndexOf(p)] - p.TendonSlackM);
        return new Muscle(
            part.Id, part.Name, side, part.Function, part.LengthGroup, true, part.Share * force, part.Share * force,
            ratio * Mean(p => p.OptimalFiberM), ratio * (publishedM[i] - beside), Mean(p => p.PennationRad),
            personM[i], paths.FirstArm[i], paths.ArmCount(i), part.Caution);
    }
}
