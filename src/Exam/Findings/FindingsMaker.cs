using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>
/// Makes ranked findings from the interpretations of a visit. A difference becomes something to act on only when it is
/// larger than measurement error, or than a stated default limit where no error is published.
/// </summary>
public static class FindingsMaker
{
    /// <summary>Makes the findings of a visit.</summary>
    /// <param name="interpretations">Interpretations of this visit, in any order.</param>
    /// <param name="affectedSide">The affected side, if one is named.</param>
    /// <param name="observations">Words and manual grades of this visit.</param>
    /// <param name="measures">Measures that the observations may belong to.</param>
    /// <param name="relevance">What matters to this person beyond the numbers; null when nothing is known.</param>
    /// <returns>
    /// Findings, heaviest first; equal weights by id. One per measure, side and kind. What became worse beyond error is a finding
    /// of its own, what became better another; all that stayed within error is told in one.
    /// </returns>
    public static ImmutableArray<Finding> From(
        IReadOnlyList<Interpretation> interpretations,
        Side? affectedSide,
        IReadOnlyList<Observation>? observations = null,
        IReadOnlyList<Measure>? measures = null,
        FindingRelevance? relevance = null)
    {
        ArgumentNullException.ThrowIfNull(interpretations);
        var all = new List<Finding>();
        foreach (var found in interpretations)
        {
            if (SideFinding(found, affectedSide) is { } side)
                all.Add(side);
            all.AddRange(NormFindings(found, affectedSide));
            all.AddRange(ShownFindings(found, affectedSide));
            all.AddRange(PainFindings(found, affectedSide));
            all.AddRange(ActivityFindings(found));
            all.AddRange(ChangeFindings.Of(found, affectedSide));
        }

        if (ChangeFindings.Unchanged(interpretations) is { } unchanged)
            all.Add(unchanged);

        var numbered = all.Select(f => f.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var observation in observations ?? [])
        {
            var measure = measures?.FirstOrDefault(m => m.Id == observation.MeasureId);
            if (measure is not null && WordFindings.Of(measure, observation, affectedSide) is { } words && !numbered.Contains(words.Id))
                all.Add(words);
        }

        return [.. all
            .GroupBy(f => f.Id, StringComparer.Ordinal)
            .Select(g => (relevance ?? FindingRelevance.None).Weigh(g.OrderByDescending(f => f.Weight).First()))
            .OrderByDescending(f => f.Weight)
            .ThenBy(f => f.Id, StringComparer.Ordinal)];
    }

    /// <summary>
    /// The kind of lack a measure shows; null for what is told without one. Tasks show one only where the measure itself names it;
    /// questionnaires, ratings, girth and the patient's own judgment never do.
    /// </summary>
    internal static ImpairmentKind? KindOf(Measure measure) => measure.Kind switch
    {
        MeasureKind.Strength => ImpairmentKind.Weak,
        MeasureKind.MuscleLength => ImpairmentKind.Short,
        MeasureKind.RangeOfMotion => ImpairmentKind.Stiff,
        MeasureKind.PatientSpecific => ImpairmentKind.Activity,
        MeasureKind.Endurance => ImpairmentKind.Tires,
        MeasureKind.Performance or MeasureKind.LoadHistory => measure.Shows?.Kind,
        MeasureKind.PainRating or MeasureKind.Questionnaire or MeasureKind.GlobalChange or MeasureKind.Girth => null,
    };

    internal static string IdOf(Measure measure, Side? side, ImpairmentKind? kind, string? extra = null)
    {
        var parts = new[] { measure.Id, Say.Side(side), kind?.ToString().ToLowerInvariant() ?? "told", extra };
        return string.Join(':', parts.Where(p => !string.IsNullOrEmpty(p)));
    }

    private static Finding? SideFinding(Interpretation found, Side? affected)
    {
        if (found.Sides is not { } sides || sides.Verdict == ErrorVerdict.NotComparable || (sides.WorseSide ?? Thicker(found)) is not { } worse)
            return null;
        var (measure, kind) = (found.Measure, KindOf(found.Measure));
        var amount = Sentences.Amount(measure, sides.ByTorque, sides.Difference);
        var numbers = $"{Both(found)}; difference {amount}";
        if (sides.Verdict == ErrorVerdict.WithinError)
            return Within(measure, worse, kind, sides, numbers);
        var detail = sides.Detectable is { } mdc
            ? $"{numbers}, error {Sentences.Amount(measure, sides.ByTorque, mdc)} ({measure.Error!.LevelText})."
            : $"{numbers}. No error of measurement is published; our default limit is {DefaultText(measure)}.";
        if (sides.Verdict == ErrorVerdict.NoErrorKnown && !BeyondDefault(found, sides))
            return null;
        bool? beyond = sides.Verdict == ErrorVerdict.BeyondError ? true : null;
        if (found.Of(worse) is { PainLimited: true })
            detail += " Pain held the effort back: the lack may be pain and not weakness.";
        var headline = kind == ImpairmentKind.Weak
            ? $"{Thing(measure, worse)}: {Say.Percent(sides.Deficit)} weaker than the {Say.Side(worse.Other())}"
            : $"{Thing(measure, worse)}: {amount} {Lack(measure)} than the {Say.Side(worse.Other())}";
        return Make(measure, worse, kind, headline, detail, sides.Deficit, affected, beyond);
    }

    // A distance that grows as range shrinks is more, not less.
    private static string Lack(Measure measure) =>
        measure is { Kind: MeasureKind.RangeOfMotion, Direction: Direction.LowerBetter } ? "more" : Sentences.Worse(measure);

    // Where neither direction is better only the thicker limb is told: swelling on one side looks like loss on the other.
    private static Side? Thicker(Interpretation found)
    {
        if (found.Measure.Kind != MeasureKind.Girth || found.Of(Side.Left) is not { } left || found.Of(Side.Right) is not { } right)
            return null;
        return left.Value.CompareTo(right.Value) switch { > 0 => Side.Left, < 0 => Side.Right, _ => null };
    }

    private static Finding? Within(Measure measure, Side worse, ImpairmentKind? kind, SideComparison sides, string numbers)
    {
        if (sides.Detectable is not { } mdc || sides.Difference < mdc / 2)
            return null;
        var error = Sentences.Amount(measure, sides.ByTorque, mdc);
        return new Finding(
            IdOf(measure, worse, kind), $"{Thing(measure, worse)}: difference within error", $"{numbers}, error {error}: not acted on.",
            FindingRules.WithinErrorWeight, false, null, [measure.Id]);
    }

    private static bool BeyondDefault(Interpretation found, SideComparison sides)
    {
        var (left, right) = (found.Of(Side.Left)!, found.Of(Side.Right)!);
        var (a, b) = sides.ByTorque ? (left.TorqueNm!.Value, right.TorqueNm!.Value) : (left.Value, right.Value);
        return sides.Difference > FindingRules.DefaultLimit(found.Measure, a, b);
    }

    private static IEnumerable<Finding> NormFindings(Interpretation found, Side? affected)
    {
        var kind = KindOf(found.Measure);
        foreach (var norm in found.Norms.Where(n => n.Low == true))
        {
            var usual = norm.Norm.Mean ?? norm.Norm.Limit ?? 0;
            var deficit = usual > 0 ? Math.Clamp(Math.Abs(usual - norm.Value) / usual, 0, 1) : 0;
            var headline = $"{Thing(found.Measure, norm.Side)}: {(norm.Norm.Limit is null ? "low for age and sex" : "past the published limit")}";
            var detail = norm is { ZScore: { } z, Percentile: { } percentile }
                ? $"z {Say.Number(z, 2)}, percentile {Say.Number(percentile)}, in {norm.Norm.Population}."
                : $"Limit {Say.Number(norm.Norm.Limit!.Value / found.Measure.Shown.StoredPerShown)}{found.Measure.Shown.Suffix}, in {norm.Norm.Population}.";
            yield return Make(found.Measure, norm.Side, kind, headline, detail, deficit, affected, true);
        }
    }

    // What the measure itself calls a lack from a value on, and what the patient judges worse.
    private static IEnumerable<Finding> ShownFindings(Interpretation found, Side? affected)
    {
        var measure = found.Measure;
        var span = measure.HardRange.High - measure.HardRange.Low;
        foreach (var reading in found.Readings)
        {
            var side = reading.Measurement.Side;
            if (measure.Shows is { From: { } from } shows && measure.Gain(from, reading.Value) <= 0)
            {
                var detail = $"{shows.Words} ({(measure.Direction == Direction.LowerBetter ? "from" : "up to")} {Say.Shown(measure, from)}). "
                    + $"{string.Join(' ', measure.Cautions)}";
                var deficit = Math.Clamp((Math.Abs(reading.Value - from) / span) + FindingRules.DeficitOfWords, 0, 1);
                yield return Make(measure, side, shows.Kind, $"{Thing(measure, side)}: {reading.Shown}", detail.TrimEnd(), deficit, affected, null);
            }

            if (measure.Kind == MeasureKind.GlobalChange && reading.Value < 0)
                yield return Make(
                    measure, side, null, $"{Thing(measure, side)}: {reading.Shown}, worse than at the start",
                    "The patient's own judgment; below 0 is worse.", Math.Abs(reading.Value) / span, affected, null);
        }
    }

    private static IEnumerable<Finding> PainFindings(Interpretation found, Side? affected)
    {
        foreach (var reading in found.Readings.Where(r => r.Measurement.PainDuring >= FindingRules.PainUnderLoadFrom))
        {
            if (found.Measure.Kind != MeasureKind.Strength)
                continue;
            var (side, pain) = (reading.Measurement.Side, reading.Measurement.PainDuring!.Value);
            var headline = $"Pain {pain}/10 on {found.Measure.Name.ToLowerInvariant()}{OnSide(side)}";
            var detail = $"{reading.Shown} with pain {pain}/10 during the test. "
                + $"Pain during a test has no published error here; our limit is {FindingRules.PainUnderLoadFrom}/10.";
            yield return Make(found.Measure, side, ImpairmentKind.PainUnderLoad, headline, detail, pain / 10.0, affected, null);
        }
    }

    private static IEnumerable<Finding> ActivityFindings(Interpretation found)
    {
        if (found.Measure.Kind != MeasureKind.PatientSpecific)
            yield break;
        foreach (var reading in found.Readings.Where(r => r.Value <= FindingRules.ActivityAtMost))
        {
            var name = reading.Measurement.Activity ?? "named activity";
            var deficit = Math.Clamp((10 - reading.Value) / 10, 0, 1);
            var impairment = new Impairment(ImpairmentKind.Activity, null, null, null, deficit);
            yield return new Finding(
                IdOf(found.Measure, null, ImpairmentKind.Activity, name.Trim().ToLowerInvariant()),
                $"{Sentences.Start(null, name)}{reading.Shown}",
                $"0 cannot do it, 10 as before. Our limit is {Say.Number(FindingRules.ActivityAtMost)}/10.",
                FindingRules.Weight(deficit, true, null), null, impairment, [found.Measure.Id]);
        }
    }

    internal static Finding Make(
        Measure measure, Side? side, ImpairmentKind? kind, string headline, string detail, double deficit, Side? affected,
        bool? beyond)
    {
        var impairment = kind is { } lack ? new Impairment(lack, side, measure.Action ?? measure.Shows?.Action, measure.Group, deficit) : null;
        return new Finding(
            IdOf(measure, side, kind), headline, detail, FindingRules.Weight(deficit, OnAffected(side, affected), beyond),
            beyond, impairment, [measure.Id]);
    }

    internal static bool? OnAffected(Side? side, Side? affected) => affected is null || side is null ? null : side == affected;

    internal static string Thing(Measure measure, Side? side) => measure.Name + OnSide(side);

    private static string OnSide(Side? side) => side is null ? "" : ", " + Say.Side(side);

    private static string Both(Interpretation found)
    {
        var parts = found.Readings.Where(r => r.Measurement.Side is not null)
            .Select(r => $"{Say.Side(r.Measurement.Side)} {r.Shown}{(r.TorqueNm is { } t ? $" ({Say.Torque(t)})" : "")}");
        return string.Join(", ", parts);
    }

    internal static string DefaultText(Measure measure) => measure.Unit switch
    {
        MeasureUnit.Radians => Say.Number(Say.Degrees(FindingRules.AngleLimitRad)) + "°",
        MeasureUnit.Newtons => Say.Percent(FindingRules.ForceLimitFraction),
        MeasureUnit.Points => Say.Percent(FindingRules.PointLimitFraction) + " of the scale",
        _ => Say.Percent(FindingRules.OtherLimitFraction),
    };
}
