using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Prescribing;

/// <summary>From the length and range tests of a case to limits of length and joint ranges. Untested groups take norms, marked so.</summary>
internal static class CaseLengths
{
    /// <summary>Standard error of a length test for which none is published, radians (5 degrees: our choice).</summary>
    internal const double DefaultError = 5 * Math.PI / 180;

    /// <summary>Spread between people where a norm states none, radians (10 degrees: our choice).</summary>
    private const double DefaultSpread = 10 * Math.PI / 180;

    // As for capacities.
    private const double YoungAdult = 21.5;

    /// <summary>The person's reach, with a sentence in the notes for everything that could not be used.</summary>
    internal static PersonalReach Read(
        CaseBasis basis, Physique person, IEnumerable<CaseVisit> visits, MuscleSet muscles, ImmutableArray<string>.Builder notes)
    {
        var readings = visits.SelectMany(v => v.Measurements).Where(m => m.Side is not null).ToArray();
        // Where one norm of a group was read in its source, those from memory stay out.
        var norms = Norms(basis, person).GroupBy(n => n.Test.Group).SelectMany(g => g.Where(n => n.Verified || !g.Any(o => o.Verified)));
        LengthTest[] tests = [.. Tests(basis, readings, notes), .. norms.Select(n => n.Test)];
        return new PersonalReach(basis.Points, Ranges(basis, readings, muscles.Model), () => LengthLimits.For(muscles, tests));
    }

    /// <summary>The latest reading of each length test and side.</summary>
    private static LengthTest[] Tests(CaseBasis basis, Measurement[] readings, ImmutableArray<string>.Builder notes)
    {
        var tests = new Dictionary<(string, Side), LengthTest>();
        foreach (var reading in readings)
        {
            if (basis.Measures.FirstOrDefault(m => m.Id == reading.MeasureId) is not { Length: { } length } measure)
                continue;
            var value = measure.Combine(reading.Trials);
            if (!measure.HardRange.Holds(value))
            {
                var note = $"{measure.Name}, {Say.Side(reading.Side)}: {Say.Shown(measure, value)} cannot be true, so it limits no reach.";
                if (!notes.Contains(note))
                    notes.Add(note);
                continue;
            }

            var basisOf = reading.PainDuring >= FindingRules.PainUnderLoadFrom ? LimitBasis.TestedPainLimited : LimitBasis.Tested;
            tests[(measure.Id, reading.Side!.Value)] = length.Replay(measure, reading.Side.Value, value, StandardError(measure, value), basisOf);
        }

        return [.. tests.Values];
    }

    /// <summary>Standard error of one reading, radians.</summary>
    private static double StandardError(Measure measure, double value) => measure.Error switch
    {
        null => DefaultError,
        { Form: ErrorForm.Sem } error => error.Value,
        { Form: ErrorForm.RelativeSem } error => error.Value * Math.Abs(value),
        { } error => error.Detectable(value, value) / (ErrorMath.Z95 * Math.Sqrt(2)),
    };

    /// <summary>
    /// For each length test the best norm for the person: of their sex and age, read in its source first. Without a sex the mean of
    /// both, without an age that of young adults.
    /// </summary>
    private static IEnumerable<(LengthTest Test, bool Verified)> Norms(CaseBasis basis, Physique person)
    {
        foreach (var measure in basis.Measures.Where(m => m.Length is { NormStandsIn: true }))
        {
            var rows = basis.Norms
                .Where(n => n.MeasureId == measure.Id && n.Unit == NormUnit.Measure && n.Mean is not null && n.CoversAge(person.AgeYears ?? YoungAdult))
                .OrderByDescending(n => n.Verified)
                .ThenByDescending(n => n.Spread is not null)
                .ThenBy(n => n.Source, StringComparer.Ordinal)
                .ToArray();
            if (rows.Length == 0)
                continue;
            var chosen = rows.Where(n => n.Source == rows[0].Source && (n.Sex is null || person.Sex is null || n.Sex == person.Sex)).ToArray();
            if (chosen.Length == 0)
                continue;
            var mean = chosen.Average(n => n.Mean!.Value);
            var between = chosen.Average(n => (n.Mean!.Value - mean) * (n.Mean.Value - mean));
            var spread = Math.Sqrt(between + chosen.Average(n => Math.Pow(n.Spread ?? DefaultSpread, 2)));
            foreach (var side in new[] { Side.Left, Side.Right })
            {
                var test = measure.Length!.Replay(measure, side, mean, spread, LimitBasis.Norm);
                var verified = chosen.All(n => n.Verified);
                yield return (test with { Name = $"{measure.Name}, {(verified ? "published mean" : "published mean, not verified")}" }, verified);
            }
        }
    }

    /// <summary>The usual ranges with the latest measured ends.</summary>
    private static JointRanges Ranges(CaseBasis basis, Measurement[] readings, BodyModel model)
    {
        var ranges = JointRanges.Usual(model);
        foreach (var reading in readings)
        {
            if (basis.Measures.FirstOrDefault(m => m.Id == reading.MeasureId) is { Kind: MeasureKind.RangeOfMotion, Action: { } action } measure
                && measure.Combine(reading.Trials) is var angle && measure.HardRange.Holds(angle))
                ranges = ranges.With(action, reading.Side!.Value, angle);
        }

        return ranges;
    }
}
