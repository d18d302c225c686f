namespace MomentArm.Body;

/// <summary>
/// Combines evidence of one action and side: mean of the logarithms of the factors, weighted by the inverse of their
/// variances. The published figure counts as evidence too, with the spread between people, unless a strength test that
/// pain did not stop is there (our choice: what was measured with a force reader is not drawn toward strangers). Pain-limited evidence
/// only ever raises the estimate. See docs/models/body.md, section 5.
/// </summary>
/// <param name="LogFactor">Logarithm of the factor on the published figure.</param>
/// <param name="Spread">Its standard deviation.</param>
/// <param name="Basis">What it rests on.</param>
/// <param name="WithoutPain">The same from what pain did not stop, which is what other muscles are scaled by; null when there is none.</param>
internal readonly record struct CombinedEvidence(
    double LogFactor, double Spread, CapacityBasis Basis, (double LogFactor, double Spread)? WithoutPain)
{
    internal static CombinedEvidence? Of(List<CapacityEvidence> all, double publishedSpread)
    {
        var (weights, weighted) = (0.0, 0.0);
        var (force, endurance) = (false, false);
        CapacityEvidence? bound = null;
        foreach (var one in all)
        {
            if (one.PainLimited)
            {
                if (bound is null || one.Factor > bound.Value.Factor)
                    bound = one;
                continue;
            }

            var weight = 1 / (one.Spread * one.Spread);
            weights += weight;
            weighted += weight * Math.Log(one.Factor);
            force |= one.Kind == CapacityEvidenceKind.Force;
            endurance |= one.Kind != CapacityEvidenceKind.Force;
        }

        if (weights == 0)
            return bound is { } only ? Bound(only, null) : null;
        if (!force)
            weights += 1 / (publishedSpread * publishedSpread);
        var middle = weighted / weights;
        var spread = Math.Sqrt(1 / weights);
        if (bound is { } least && Math.Log(least.Factor) > middle)
            return Bound(least, (middle, spread));
        var basis = (force, endurance) switch
        {
            (true, true) => CapacityBasis.Combined,
            (true, false) => CapacityBasis.Tested,
            _ => CapacityBasis.FromEndurance,
        };
        return new CombinedEvidence(middle, spread, basis, (middle, spread));
    }

    private static CombinedEvidence Bound(CapacityEvidence least, (double LogFactor, double Spread)? withoutPain) => new(
        Math.Log(least.Factor),
        least.Spread,
        least.Kind == CapacityEvidenceKind.Force ? CapacityBasis.TestedPainLimited : CapacityBasis.EndurancePainLimited,
        withoutPain);
}
