namespace MomentArm.Body;

/// <summary>Contacts and ties of the balance.</summary>
public sealed partial class BodyBalance
{
    private readonly int[] splitOf = new int[MostContacts];

    /// <summary>
    /// The normal n, and four edges of a pyramid inside the cone of friction, n + mu t and n - mu t for two tangents t; the force is the sum
    /// of these times unknowns from 0 up. The edges are dear: people push sideways where they must, not to spare a muscle (our choice).
    /// </summary>
    private void AddContacts(BodyState state)
    {
        for (var i = 0; i < contacts; i++)
        {
            ref readonly var at = ref contact[i];
            firstEdge[i] = program.Unknowns;
            program.AddUnknown(ContactCurvature, -ContactCurvature * at.RestingN / weight, 0, double.PositiveInfinity);
            FillEdge(state, at, at.Normal, splitOf[i]);
            if (at.Friction <= 0)
                continue;
            var (ahead, aside) = FrictionPyramid.Tangents(state, at.Normal);
            AddEdge(state, at, at.Normal + at.Friction * ahead, splitOf[i]);
            AddEdge(state, at, at.Normal - at.Friction * ahead, splitOf[i]);
            AddEdge(state, at, at.Normal + at.Friction * aside, splitOf[i]);
            AddEdge(state, at, at.Normal - at.Friction * aside, splitOf[i]);
        }

        firstEdge[contacts] = program.Unknowns;
    }

    private void AddEdge(BodyState state, in ContactPoint at, Vec3 edge, int split)
    {
        program.AddUnknown(FrictionCurvature, 0, 0, double.PositiveInfinity);
        FillEdge(state, at, edge, split);
    }

    private void FillEdge(BodyState state, in ContactPoint at, Vec3 edge, int split)
    {
        foreach (var (row, coordinate) in layout.Chains[at.Segment])
            program.AddEntry(row, weight / momentUnit * edge.Dot(Velocity(state, coordinate, at.Point)));
        FrictionPyramid.AddRoot(program, layout.JointRows, at.Point - state.Origins[0], edge, weight / momentUnit);
        if (split >= 0)
            program.AddEntry(layout.Rows + split, edge.Dot(at.Normal));
    }

    private Vec3 Velocity(BodyState state, int coordinate, Vec3 point) =>
        state.Axes[coordinate].Cross(point - state.Origins[model.Coordinates[coordinate].Segment]) + state.Slides[coordinate];

    /// <summary>A tension from 0 up on both ends; inside the body it leaves the whole body's balance alone.</summary>
    private void AddTies(BodyState state)
    {
        firstTie = program.Unknowns;
        for (var i = 0; i < ties; i++)
        {
            ref readonly var t = ref tie[i];
            program.AddUnknown(TieCurvature, 0, 0, double.PositiveInfinity);
            var along = t.PointB - t.PointA;
            if (along.Length < 1e-9)
                continue;
            along = (weight / momentUnit / along.Length) * along;
            var a = layout.Chains[t.SegmentA];
            var b = layout.Chains[t.SegmentB];
            int p = 0, q = 0;
            while (p < a.Length || q < b.Length)
            {
                // The two chains are merged by equation; coordinates common to both cancel only where the ends move alike.
                var row = Math.Min(p < a.Length ? a[p].Row : int.MaxValue, q < b.Length ? b[q].Row : int.MaxValue);
                double entry = 0;
                if (p < a.Length && a[p].Row == row)
                    entry += along.Dot(Velocity(state, a[p++].Coordinate, t.PointA));
                if (q < b.Length && b[q].Row == row)
                    entry -= along.Dot(Velocity(state, b[q++].Coordinate, t.PointB));
                program.AddEntry(row, entry);
            }
        }
    }
}
