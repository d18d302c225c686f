using System.Collections.Immutable;
using System.Diagnostics;
using MomentArm.Body;

namespace MomentArm.Exam.Tests;

/// <summary>How long a whole exam takes to interpret while it is typed.</summary>
public class InterpretingSpeedTests(ITestOutputHelper told)
{
    /// <summary>Aim: sixty measures, both sides, ten earlier visits, in five milliseconds.</summary>
    private const double MostMilliseconds = 5;

    [Fact]
    public void Sixty_measures_with_ten_earlier_visits_are_interpreted_in_five_milliseconds()
    {
        var measures = TypedEntry.InExamOrder(Shipped.Exam.Measures).Take(60).ToImmutableArray();
        Assert.Equal(60, measures.Length);
        var earlier = Enumerable.Range(1, 10).Select(n => new EarlierVisit(n, new DateOnly(2026, 1, 5).AddDays(7 * n), Visit(measures, n))).ToImmutableArray();
        var now = Visit(measures, 11);
        var best = double.MaxValue;
        for (var i = 0; i < 40; i++)
        {
            var watch = Stopwatch.StartNew();
            var said = measures.Select(measure => Interpreter.Interpret(new InterpretationInput
            {
                Measure = measure, Now = now, Earlier = earlier, Person = new Physique(Sex.Female, 41, 1.68, 66), AffectedSide = Side.Left,
                Norms = Shipped.Exam.Norms, Predictions = Shipped.Exam.Predictions,
            })).ToList();
            best = Math.Min(best, watch.Elapsed.TotalMilliseconds);
            Assert.All(said, one => Assert.NotEmpty(one.Statements));
        }

        told.WriteLine(FormattableString.Invariant($"60 measures, {now.Length} readings, 10 earlier visits: {best:0.00} ms."));
        Assert.True(best <= MostMilliseconds, FormattableString.Invariant($"{best:0.00} ms"));
    }

    /// <summary>A visit with values inside the usual range of each measure, a little different from visit to visit and side to side.</summary>
    private static ImmutableArray<Measurement> Visit(IEnumerable<Measure> measures, int number)
    {
        var readings = ImmutableArray.CreateBuilder<Measurement>();
        foreach (var measure in measures)
        {
            Side?[] sides = measure.Sided ? [Side.Left, Side.Right] : [null];
            foreach (var side in sides)
            {
                var share = 0.3 + 0.02 * number + (side == Side.Left ? 0.1 : 0);
                readings.Add(new Measurement
                {
                    MeasureId = measure.Id, Side = side, LeverArmM = measure.Strength?.LeverArmHintM,
                    Trials = [measure.SoftRange.Low + share * (measure.SoftRange.High - measure.SoftRange.Low)],
                });
            }
        }

        return readings.ToImmutable();
    }
}
