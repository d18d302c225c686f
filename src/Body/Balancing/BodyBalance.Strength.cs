namespace MomentArm.Body;

/// <summary>Scaling the published lines to what the person's joints can hold.</summary>
public sealed partial class BodyBalance
{
    // Arms near zero must not make giants of lines (our choice).
    private const double LeastFactor = 0.25;
    private const double MostFactor = 4;

    // Lines of two groups change what a third can give: once more settles that to about a hundredth.
    private const int Rounds = 2;

    private readonly double[] raisingFactor;
    private readonly double[] loweringFactor;
    private readonly double[] hipMoments;

    /// <summary>
    /// Knee, ankle and foot: strength by the sum of the lines' moments. Hip: strength by the largest moment the lines give about one
    /// axis with none about the other two, since about a ball joint nothing else holds against them (<see cref="PureMoment"/>).
    /// </summary>
    private void ScaleLines()
    {
        SumMoments();
        for (var k = 0; k < angles.Length; k++)
        {
            if (!layout.Driven[k])
                continue;
            raisingFactor[k] = Factor(k, 1, raisingFactor[k]);
            loweringFactor[k] = Factor(k, -1, loweringFactor[k]);
        }

        ScaleForces();
        for (var round = 0; round < Rounds; round++)
        {
            foreach (var hip in layout.Hips)
                ScaleHip(hip);
            ScaleForces();
        }
    }

    private void SumMoments()
    {
        var arms = muscleState.Arms;
        raisingFactor.AsSpan().Clear();
        loweringFactor.AsSpan().Clear();
        foreach (var line in layout.Lines)
        {
            foreach (var (_, arm, coordinate) in line.Entries)
            {
                var moment = arms[arm] * line.ForceN;
                if (moment > 0)
                    raisingFactor[coordinate] += moment;
                else
                    loweringFactor[coordinate] -= moment;
            }
        }
    }

    private void ScaleHip(HipLines hip)
    {
        var arms = muscleState.Arms;
        var count = hip.Lines.Length;
        Span<double> Axis(int axis) => hipMoments.AsSpan(axis * count, count);
        var size = Axis(4);
        for (var i = 0; i < count; i++)
        {
            var line = hip.Lines[i];
            size[i] = layout.Lines[line.Line].ForceN;
            for (var axis = 0; axis < 3; axis++)
                Axis(axis)[i] = arms[line.Arms[axis]] * forceN[line.Line];
        }

        var along = Axis(3);
        foreach (var (coordinate, sign) in hip.Actions)
        {
            var axis = hip.Axes.IndexOf(coordinate);
            var moments = Axis(axis);
            for (var i = 0; i < count; i++)
                along[i] = sign * moments[i];
            var pure = PureMoment.Largest(along, Axis((axis + 1) % 3), Axis((axis + 2) % 3), size);
            var factors = sign > 0 ? raisingFactor : loweringFactor;
            factors[coordinate] = Math.Clamp(
                factors[coordinate] * strength.TorqueAt(coordinate, sign, angles[coordinate]) / Math.Max(pure, 1e-3), LeastFactor, MostFactor);
        }
    }

    private void ScaleForces()
    {
        for (var i = 0; i < forceN.Length; i++)
        {
            var line = layout.Lines[i];
            var factor = FactorOf(line.First);
            if (line.Second is { } second)
                factor = Math.Sqrt(factor * FactorOf(second));
            forceN[i] = factor * line.ForceN;
        }
    }

    private double FactorOf((int Coordinate, int Sign) on) =>
        on.Sign > 0 ? raisingFactor[on.Coordinate] : loweringFactor[on.Coordinate];

    private double Factor(int coordinate, int sign, double published) =>
        Math.Clamp(strength.TorqueAt(coordinate, sign, angles[coordinate]) / Math.Max(published, 1e-3), LeastFactor, MostFactor);
}
