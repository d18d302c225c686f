using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>What kind of lack an impairment is.</summary>
public enum ImpairmentKind
{
    /// <summary>A joint action with less torque than the other side or the norm, beyond error.</summary>
    Weak,

    /// <summary>A muscle group shorter than the other side or the norm, beyond error.</summary>
    Short,

    /// <summary>A joint with less range than the other side or the norm, beyond error.</summary>
    Stiff,

    /// <summary>Muscles that give out sooner than on the other side or than the norm, beyond error.</summary>
    Tires,

    /// <summary>A movement that is not kept in line, although strength and range allow it.</summary>
    PoorControl,

    /// <summary>Less daily load borne than the activity asks for.</summary>
    LowLoadTolerance,

    /// <summary>Pain under load, whatever the strength.</summary>
    PainUnderLoad,

    /// <summary>An activity the patient names and cannot do well.</summary>
    Activity,
}

/// <summary>A lack that exercise can act on: what a finding hands to prescribing.</summary>
/// <param name="Kind">What is lacking.</param>
/// <param name="Side">The side that lacks it; null where there is none.</param>
/// <param name="Action">The weak or stiff joint action, if any.</param>
/// <param name="Group">The short muscle group, if any.</param>
/// <param name="Deficit">Size of the lack as a fraction of the reference, 0 to 1.</param>
public sealed record Impairment(ImpairmentKind Kind, Side? Side, JointAction? Action, MuscleGroup? Group, double Deficit);
