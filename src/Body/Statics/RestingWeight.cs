namespace MomentArm.Body;

/// <summary>
/// What each contact would carry of the body parts that rest on it: every part's weight goes to the contacts fewest joints
/// away, shared evenly. A guess at how a relaxed body lies, used only to choose among splits that all balance (our choice).
/// </summary>
public static class RestingWeight
{
    /// <summary>Computes the weights.</summary>
    /// <param name="model">The body.</param>
    /// <param name="contactSegments">Segment of each weight-bearing contact point.</param>
    /// <returns>Newtons for each contact point; they add up to the body's weight.</returns>
    public static double[] On(BodyModel model, ReadOnlySpan<int> contactSegments)
    {
        ArgumentNullException.ThrowIfNull(model);
        var weights = new double[contactSegments.Length];
        if (weights.Length == 0)
            return weights;
        var distance = new int[contactSegments.Length];
        for (var i = 0; i < model.Segments.Length; i++)
        {
            var weight = model.Segments[i].MassKg * BodyModel.Gravity;
            if (weight <= 0)
                continue;
            var nearest = int.MaxValue;
            for (var c = 0; c < distance.Length; c++)
            {
                distance[c] = Joints(model, i, contactSegments[c]);
                nearest = Math.Min(nearest, distance[c]);
            }

            var sharing = distance.Count(d => d == nearest);
            for (var c = 0; c < distance.Length; c++)
            {
                if (distance[c] == nearest)
                    weights[c] += weight / sharing;
            }
        }

        return weights;
    }

    /// <summary>Joints between two segments: parents come before children, so the larger index is always the one to climb from.</summary>
    private static int Joints(BodyModel model, int a, int b)
    {
        var steps = 0;
        while (a != b)
        {
            if (a > b)
                a = model.Segments[a].Parent;
            else
                b = model.Segments[b].Parent;
            steps++;
        }

        return steps;
    }
}
