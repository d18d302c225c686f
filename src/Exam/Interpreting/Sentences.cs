using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>Writes the sentences of an interpretation about values, pain, sides and quality.</summary>
internal static class Sentences
{
    /// <summary>Pain during a test above which that test is stopped for the day (docs/models/exam.md section 7).</summary>
    public const int StopAbovePain = 5;

    public static ImmutableArray<Statement> Of(Interpretation found, InterpretationInput input)
    {
        var list = new List<Statement>();
        foreach (var reading in found.Readings)
        {
            list.Add(Value(found.Measure, reading, input));
            if (reading.Measurement.PainDuring is { } pain)
                list.Add(Pain(reading, pain));
        }

        if (found.MeanOfActivities is { } mean && found.Readings.Length > 1)
        {
            var text = $"Mean of {found.Readings.Length} activities: {Say.Number(mean)}/10.";
            list.Add(new Statement(StatementTopic.Value, null, text, Tone.Neutral));
        }

        if (found.Sides is { } sides)
            list.Add(OtherSide(found.Measure, sides, input.AffectedSide));
        list.AddRange(NormSentences.Of(found, input));
        list.AddRange(ChangeSentences.Of(found));
        if (Quality(found.Measure) is { } quality)
            list.Add(new Statement(StatementTopic.Quality, null, quality, Tone.Neutral));
        return [.. list];
    }

    /// <summary>"Left: " at the start of a sentence about one side, or the named activity.</summary>
    public static string Start(Side? side, string? activity = null)
    {
        var name = activity is { Length: > 0 } ? activity : Say.Side(side);
        return name.Length == 0 ? "" : char.ToUpperInvariant(name[0]) + name[1..] + ": ";
    }

    /// <summary>A difference in N m or in the shown unit of the measure.</summary>
    public static string Amount(Measure measure, bool byTorque, double difference) =>
        byTorque ? Say.Torque(difference) : Say.Difference(measure, difference);

    private static Statement Value(Measure measure, SideReading reading, InterpretationInput input)
    {
        var trials = reading.Measurement.Trials;
        var text = Start(reading.Measurement.Side, reading.Measurement.Activity) + reading.Shown;
        if (trials.Length > 1)
            text += $" ({(measure.TrialRule == TrialRule.Mean ? "mean" : "best")} of {trials.Length})";
        if (reading.TorqueNm is { } torque)
        {
            text += $" at {Say.Centimetres(reading.Measurement.LeverArmM!.Value)} = {Say.Torque(torque)}";
            if (reading.TorquePerKg is { } perKg)
                text += $", {Say.Number(perKg, 2)} N m/kg";
            if (reading.TotalTorqueNm is { } total)
                text += $"; with the limb's own weight {Say.Torque(total)}";
        }
        else if (measure.Kind == MeasureKind.Strength)
        {
            text += "; no lever arm, so no torque and no load share";
        }

        if (reading.TorqueNm is not null && input.Person.MassKg is null)
            text += " (body mass not known)";
        return new Statement(StatementTopic.Value, reading.Measurement.Side, text + ".", Tone.Neutral);
    }

    private static Statement Pain(SideReading reading, int pain)
    {
        var side = reading.Measurement.Side;
        var text = $"{Start(side)}pain {pain}/10 during the test";
        if (reading.PainLimited)
            text += "; what the muscles can do may be more than this";
        var tone = pain > StopAbovePain ? Tone.Stop : pain >= ReadingFacts.PainLimitsFrom ? Tone.Watch : Tone.Neutral;
        return new Statement(StatementTopic.Pain, side, text + (tone == Tone.Stop ? ". Do not repeat it today." : "."), tone);
    }

    private static Statement OtherSide(Measure measure, SideComparison sides, Side? affected)
    {
        if (sides.Verdict == ErrorVerdict.NotComparable)
            return new Statement(
                StatementTopic.OtherSide, null, "Left and right are not compared: only one of them has a lever arm.", Tone.Watch);
        var text = sides.WorseSide is { } worse
            ? $"{Start(worse)}{Amount(measure, sides.ByTorque, sides.Difference)} {Worse(measure)} than the {Say.Side(worse.Other())}"
            : $"Left and right differ by {Amount(measure, sides.ByTorque, sides.Difference)}";
        text += sides.Verdict switch
        {
            ErrorVerdict.BeyondError => $"; beyond error ({Error(measure, sides)})",
            ErrorVerdict.WithinError => $"; within error ({Error(measure, sides)})",
            ErrorVerdict.NoErrorKnown => "; no error of measurement is published for this test",
            ErrorVerdict.NotComparable => "",
        };
        if (sides.Index is { } index)
            text += $". Symmetry index {Say.Number(index, 0)} % ({Convention(measure, affected)})";
        return new Statement(StatementTopic.OtherSide, sides.WorseSide, text + ".", ToneOf(measure, sides));
    }

    private static Tone ToneOf(Measure measure, SideComparison sides)
    {
        if (sides.Verdict == ErrorVerdict.BeyondError)
            return measure.SymmetryLimit is { } limit && sides.Deficit <= 1 - limit ? Tone.Neutral : Tone.Watch;
        return Tone.Neutral;
    }

    internal static string Worse(Measure measure) => measure.Kind switch
    {
        MeasureKind.Strength => "weaker",
        MeasureKind.MuscleLength => "shorter",
        // A distance that shrinks as range grows.
        MeasureKind.RangeOfMotion when measure.Direction == Direction.LowerBetter => "more",
        MeasureKind.RangeOfMotion or MeasureKind.Endurance => "less",
        MeasureKind.Girth => "thicker",
        MeasureKind.PainRating or MeasureKind.PatientSpecific or MeasureKind.Performance or MeasureKind.Questionnaire
            or MeasureKind.GlobalChange or MeasureKind.LoadHistory => "worse",
    };

    private static string Error(Measure measure, SideComparison sides) =>
        $"{Amount(measure, sides.ByTorque, sides.Detectable!.Value)}, {measure.Error!.LevelText}";

    private static string Convention(Measure measure, Side? affected)
    {
        var (over, under) = affected is { } side ? (Say.Side(side), Say.Side(side.Other())) : ("worse", "better");
        return measure.Direction == Direction.LowerBetter ? $"{under} / {over}" : $"{over} / {under}";
    }

    private static string? Quality(Measure measure)
    {
        if (!measure.Verified)
            return "Some figures of this measure are not verified; see its page.";
        return measure.Error is { } error ? $"Error from: {error.Population}." : null;
    }
}
