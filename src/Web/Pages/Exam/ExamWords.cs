using System.Globalization;
using System.Text.RegularExpressions;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Web.Pages.Exam;

/// <summary>Words of the visit's pages.</summary>
public static partial class ExamWords
{
    /// <summary>A position as the heading of its rows.</summary>
    public static string Position(ExamPosition position) => position switch
    {
        ExamPosition.Interview => "Interview",
        ExamPosition.Standing => "Standing",
        ExamPosition.Sitting => "Sitting",
        ExamPosition.Supine => "Supine",
        ExamPosition.SideLying => "Side-lying",
        ExamPosition.Prone => "Prone",
    };

    /// <summary>What is typed into a measure's cell.</summary>
    public static string Unit(Measure measure, UnitChoice units = UnitChoice.Metric)
    {
        ArgumentNullException.ThrowIfNull(measure);
        if (units == UnitChoice.Us && measure.Unit == MeasureUnit.Newtons)
            return "lb, N or kgf, at lever arm";
        return measure.Unit switch
        {
            MeasureUnit.Radians => "degrees",
            MeasureUnit.Newtons => "N, lb or kgf, at lever arm",
            MeasureUnit.Points => $"{Say.Number(measure.HardRange.Low)} to {Say.Number(measure.HardRange.High)}",
            MeasureUnit.Count => "how many",
            _ => UsUnits.Shown(measure.Shown, units).Word,
        };
    }

    /// <summary>An example in an empty cell.</summary>
    public static string? Hint(Measure measure, UnitChoice units = UnitChoice.Metric)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return measure.Kind switch
        {
            MeasureKind.Strength => units == UnitChoice.Us ? "lb at in pain 0-10" : "N at cm pain 0-10",
            MeasureKind.RangeOfMotion or MeasureKind.MuscleLength => "°",
            MeasureKind.PatientSpecific => "activity and 0 to 10, such as stairs 4",
            MeasureKind.PainRating => "0 to 10, or a task and 0 to 10",
            _ => Unit(measure, units),
        };
    }

    /// <summary>How fast a danger sign must be acted on.</summary>
    public static string Urgency(Urgency urgency) => urgency switch
    {
        MomentArm.Exam.Urgency.EmergencyNow => "Emergency now",
        MomentArm.Exam.Urgency.SameDay => "Medical contact today",
        MomentArm.Exam.Urgency.ReferBeforeExercise => "Refer before exercise",
        MomentArm.Exam.Urgency.ProceedWithCare => "Go on with care",
    };

    /// <summary>A tone in a word, for those who don't see its shape.</summary>
    public static string Spoken(Tone tone) => tone switch
    {
        Tone.Good => "Good: ",
        Tone.Watch => "Look: ",
        Tone.Stop => "Stop: ",
        Tone.Neutral => "",
    };

    /// <summary>A load window in percent of capacity.</summary>
    public static string Window(LoadWindow window)
    {
        ArgumentNullException.ThrowIfNull(window);
        return window.Low <= 0
            ? $"up to {Say.Percent(window.High)} of capacity"
            : $"{Say.Number(window.Low * 100, 0)} to {Say.Percent(window.High)} of capacity";
    }

    /// <summary>A day as it is written on these pages.</summary>
    public static string Day(DateOnly day) => day.ToString("MMMM d, yyyy", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>A part of the body on a chip.</summary>
    public static string Region(BodyRegion region) => region switch
    {
        BodyRegion.Hip => "Hip",
        BodyRegion.Knee => "Knee",
        BodyRegion.AnkleFoot => "Ankle and foot",
        BodyRegion.Trunk => "Back",
        BodyRegion.Shoulder => "Shoulder",
        BodyRegion.ElbowWrist => "Elbow and wrist",
        BodyRegion.Neck => "Neck",
        BodyRegion.WholeBody => "Walking and standing",
    };

    /// <summary>A group of measures on a chip.</summary>
    public static string Group(ExamGroup group) => group switch
    {
        ExamGroup.Performance => "Performance tests",
        ExamGroup.Questionnaires => "Questionnaires",
        ExamGroup.Details => "More on pain and load",
    };

    /// <summary>A sentence of the exam with its forces, lengths and speeds in the user's units. Torques stay in N m.</summary>
    public static string InUnits(string sentence, UnitChoice units)
    {
        ArgumentNullException.ThrowIfNull(sentence);
        return units == UnitChoice.Metric ? sentence : NumberWithUnit().Replace(sentence, match =>
        {
            var metric = ShownUnit.Of(match.Groups["unit"].Value)!;
            var us = UsUnits.Shown(metric, units);
            var value = double.Parse(match.Groups["number"].Value, CultureInfo.InvariantCulture);
            return Say.Number(value * metric.StoredPerShown / us.StoredPerShown) + us.Suffix;
        });
    }

    [GeneratedRegex(@"(?<number>-?\d+(?:\.\d+)?) (?<unit>N|cm|km|m/s)(?![\w/])(?! m\b)")]
    private static partial Regex NumberWithUnit();
}
