using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>Changes since earlier visits.</summary>
internal static class ChangeMath
{
    public static ImmutableArray<ChangeOverTime> All(InterpretationInput input, ImmutableArray<SideReading> readings)
    {
        var changes = ImmutableArray.CreateBuilder<ChangeOverTime>();
        foreach (var reading in readings)
        {
            var key = Key(reading.Measurement);
            var earlier = input.Earlier
                .OrderBy(v => v.Order)
                .Select(v => (Visit: v, Reading: v.Measurements.LastOrDefault(m => m.MeasureId == input.Measure.Id && Key(m) == key)))
                .Where(v => v.Reading is not null)
                .ToList();
            foreach (var (visit, first) in FirstAndLast(earlier.Select(e => e.Visit).ToList()))
            {
                var before = earlier.Single(e => e.Visit == visit).Reading!;
                changes.Add(Between(input, visit, first, ReadingFacts.Of(input.Measure, before, input.Person, null), reading));
            }
        }

        if (input.Measure.Kind == MeasureKind.PatientSpecific)
            AddMeans(input, readings, changes);
        return changes.ToImmutable();
    }

    /// <summary>Mean over the activities of a visit; null without any.</summary>
    public static double? Mean(Measure measure, IEnumerable<Measurement> measurements)
    {
        var values = measurements.Where(m => m.MeasureId == measure.Id).Select(m => measure.Combine(m.Trials)).ToList();
        return values.Count > 0 ? values.Average() : null;
    }

    private static (Side? Side, string Activity) Key(Measurement measurement) =>
        (measurement.Side, (measurement.Activity ?? "").Trim().ToLowerInvariant());

    private static IEnumerable<(EarlierVisit Visit, bool First)> FirstAndLast(List<EarlierVisit> visits)
    {
        if (visits.Count > 0)
            yield return (visits[0], true);
        if (visits.Count > 1)
            yield return (visits[^1], false);
    }

    private static ChangeOverTime Between(
        InterpretationInput input, EarlierVisit visit, bool first, SideReading before, SideReading after)
    {
        var measure = input.Measure;
        var pair = ComparablePair.Of(measure, before, after);
        // The published error of patient-specific function is that of the mean of the activities, not of one.
        var detectable = measure.Kind == MeasureKind.PatientSpecific ? null : pair.Detectable(measure.Error);
        var mcid = pair.ByTorque || measure.Kind == MeasureKind.PatientSpecific ? null : measure.Mcid?.Needed(pair.First);
        return Judge(measure, visit, first, pair, detectable, mcid) with
        {
            Side = after.Measurement.Side,
            Activity = after.Measurement.Activity,
        };
    }

    private static void AddMeans(
        InterpretationInput input, ImmutableArray<SideReading> readings, ImmutableArray<ChangeOverTime>.Builder changes)
    {
        var activities = Activities(readings.Select(r => r.Measurement), input.Measure);
        if (Mean(input.Measure, readings.Select(r => r.Measurement)) is not { } now)
            return;
        var visits = input.Earlier.OrderBy(v => v.Order).Where(v => Mean(input.Measure, v.Measurements) is not null).ToList();
        foreach (var (visit, first) in FirstAndLast(visits))
        {
            var same = Activities(visit.Measurements, input.Measure).SequenceEqual(activities);
            var before = Mean(input.Measure, visit.Measurements)!.Value;
            var pair = new ComparablePair(before, now, false, null, same ? null : "the activities are not the same");
            changes.Add(Judge(input.Measure, visit, first, pair, pair.Detectable(input.Measure.Error), input.Measure.Mcid?.Needed(before)));
        }
    }

    private static List<string> Activities(IEnumerable<Measurement> measurements, Measure measure) =>
        [.. measurements.Where(m => m.MeasureId == measure.Id).Select(m => Key(m).Activity).Order(StringComparer.Ordinal)];

    private static ChangeOverTime Judge(
        Measure measure, EarlierVisit visit, bool first, ComparablePair pair, double? detectable, double? mcid)
    {
        var gain = measure.Gain(pair.First, pair.Second);
        return new ChangeOverTime
        {
            SinceVisit = visit.Order,
            SinceDay = visit.Day,
            SinceFirst = first,
            Before = pair.First,
            After = pair.Second,
            ByTorque = pair.ByTorque,
            Detectable = pair.WhyNot is null ? detectable : null,
            Mcid = pair.WhyNot is null ? mcid : null,
            Better = pair.WhyNot is not null || measure.Direction == Direction.Neither || gain == 0 ? null : gain > 0,
            Verdict = Verdict(pair, detectable, mcid),
        };
    }

    private static ChangeVerdict Verdict(ComparablePair pair, double? detectable, double? mcid)
    {
        if (pair.WhyNot is not null)
            return ChangeVerdict.NotComparable;
        if (detectable is not { } limit)
            return ChangeVerdict.NoErrorKnown;
        var change = Math.Abs(pair.Second - pair.First);
        if (change <= limit)
            return ChangeVerdict.WithinError;
        return mcid is { } needed && change >= needed - 1e-9 ? ChangeVerdict.RealAndWorthwhile : ChangeVerdict.Real;
    }
}
