namespace MomentArm.Body;

/// <summary>Which published relation of repetitions to load fits a task.</summary>
public enum RepetitionTask
{
    /// <summary>Mostly one joint: leg raise, heel raise, curl.</summary>
    OneJoint,

    /// <summary>Hip and knee together: sit to stand, squat, step.</summary>
    LegPush,

    /// <summary>Shoulder and elbow together: push-up, press.</summary>
    ArmPush,
}

/// <summary>
/// A test without a device: repetitions or seconds to a stated effort in a task whose demand was computed by statics. Made by
/// <see cref="OfRepetitions"/> or <see cref="OfHold"/>, which check it; so every test at hand is usable.
/// </summary>
public sealed record EnduranceTest
{
    private EnduranceTest()
    {
    }

    /// <summary>The action that ended the task.</summary>
    public JointAction Action { get; private init; }

    /// <summary>The side.</summary>
    public Side Side { get; private init; }

    /// <summary>Torque that the task asks of the action at its hardest, N m, above 0.</summary>
    public double DemandNm { get; private init; }

    /// <summary>Joint angle at that place, clinical sign, radians.</summary>
    public double ClinicalAngle { get; private init; }

    /// <summary>Repetitions done, or null for a hold.</summary>
    public double? Repetitions { get; private init; }

    /// <summary>Seconds held, or null for repetitions.</summary>
    public double? HoldSeconds { get; private init; }

    /// <summary>Effort stated at the end.</summary>
    public StatedEffort Effort { get; private init; }

    /// <summary>Which relation of repetitions to load is used.</summary>
    public RepetitionTask Task { get; private init; }

    /// <summary>Whether pain, not effort, ended it: then it is a lower bound.</summary>
    public bool PainLimited { get; private init; }

    /// <summary>Repetitions to a stated effort.</summary>
    /// <param name="action">The action that ended the task.</param>
    /// <param name="side">The side.</param>
    /// <param name="demandNm">Torque asked at the hardest place, N m, above 0 up to 2000.</param>
    /// <param name="clinicalAngle">Joint angle at that place, clinical sign, radians.</param>
    /// <param name="repetitions">Whole repetitions done at ordinary tempo, 1 to 200.</param>
    /// <param name="effort">Effort stated after the last.</param>
    /// <param name="task">Which relation of repetitions to load fits.</param>
    /// <param name="painLimited">Whether pain, not effort, ended it.</param>
    /// <returns>The test.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number that cannot be used; the message says how to mend it.</exception>
    public static EnduranceTest OfRepetitions(
        JointAction action, Side side, double demandNm, double clinicalAngle, double repetitions, StatedEffort effort,
        RepetitionTask task = RepetitionTask.OneJoint, bool painLimited = false)
    {
        if (!(double.IsFinite(repetitions) && repetitions is >= 1 and <= 200))
        {
            throw new ArgumentOutOfRangeException(
                nameof(repetitions),
                FormattableString.Invariant(
                    $"{repetitions} repetitions say nothing about capacity: give 1 to 200. If not one succeeded, choose an easier task."));
        }

        return Checked(action, side, demandNm, clinicalAngle, effort, painLimited) with { Repetitions = repetitions, Task = task };
    }

    /// <summary>Seconds held to a stated effort.</summary>
    /// <param name="action">The action that ended the hold.</param>
    /// <param name="side">The side.</param>
    /// <param name="demandNm">Torque asked, N m, above 0 up to 2000.</param>
    /// <param name="clinicalAngle">Joint angle, clinical sign, radians.</param>
    /// <param name="seconds">Seconds held, 1 to 1800.</param>
    /// <param name="effort">Effort stated at the end.</param>
    /// <param name="painLimited">Whether pain, not effort, ended it.</param>
    /// <returns>The test.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number that cannot be used; the message says how to mend it.</exception>
    public static EnduranceTest OfHold(
        JointAction action, Side side, double demandNm, double clinicalAngle, double seconds, StatedEffort effort,
        bool painLimited = false)
    {
        if (!(double.IsFinite(seconds) && seconds is >= 1 and <= 1800))
        {
            throw new ArgumentOutOfRangeException(
                nameof(seconds),
                FormattableString.Invariant(
                    $"A hold of {seconds} s says nothing about capacity: give 1 to 1800 s. If it could not be held for a second, choose an easier task."));
        }

        return Checked(action, side, demandNm, clinicalAngle, effort, painLimited) with { HoldSeconds = seconds };
    }

    private static EnduranceTest Checked(
        JointAction action, Side side, double demandNm, double clinicalAngle, StatedEffort effort, bool painLimited)
    {
        if (!(double.IsFinite(demandNm) && demandNm is > 0 and <= 2000))
        {
            throw new ArgumentOutOfRangeException(
                nameof(demandNm),
                FormattableString.Invariant(
                    $"A task that asks {demandNm} N m of {action} cannot test it: give a pose that asks more than 0 and at most 2000 N m."));
        }

        if (!effort.IsGiven)
            throw new ArgumentOutOfRangeException(nameof(effort), "No effort was stated: give 5 to 10 of 10, or repetitions left in reserve.");
        return new EnduranceTest
        {
            Action = action,
            Side = side,
            DemandNm = demandNm,
            ClinicalAngle = Quantity.Within(clinicalAngle, -Math.PI, Math.PI, "rad"),
            Effort = effort,
            PainLimited = painLimited,
        };
    }
}
