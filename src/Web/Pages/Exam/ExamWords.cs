using MomentArm.Exam;

namespace MomentArm.Web.Pages.Exam;

/// <summary>Words of the visit's pages.</summary>
public static class ExamWords
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
    public static string Unit(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return measure.Unit switch
        {
            MeasureUnit.Radians => "degrees",
            MeasureUnit.Newtons => "N, lb or kgf, at lever arm",
            MeasureUnit.Points => $"{Say.Number(measure.HardRange.Low)} to {Say.Number(measure.HardRange.High)}",
            MeasureUnit.Count => "how many",
            _ => measure.Shown.Word,
        };
    }

    /// <summary>An example in an empty cell.</summary>
    public static string? Hint(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return measure.Kind switch
        {
            MeasureKind.Strength => "N at cm pain 0-10",
            MeasureKind.RangeOfMotion or MeasureKind.MuscleLength => "°",
            MeasureKind.PatientSpecific => "activity and 0 to 10, such as stairs 4",
            MeasureKind.PainRating => "0 to 10, or a task and 0 to 10",
            _ => Unit(measure),
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
}
