using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>How a statement is meant to be taken.</summary>
public enum Tone
{
    /// <summary>Information.</summary>
    Neutral,

    /// <summary>Good news.</summary>
    Good,

    /// <summary>Worth attention.</summary>
    Watch,

    /// <summary>Stop and decide.</summary>
    Stop,
}

/// <summary>What a statement is about.</summary>
public enum StatementTopic
{
    /// <summary>The value itself, torque included.</summary>
    Value,

    /// <summary>Pain during the test.</summary>
    Pain,

    /// <summary>The other side.</summary>
    OtherSide,

    /// <summary>People of the same age and sex.</summary>
    Norm,

    /// <summary>Change since the first visit.</summary>
    SinceFirst,

    /// <summary>Change since the visit before.</summary>
    SinceLast,

    /// <summary>How far the figure can be trusted.</summary>
    Quality,
}

/// <summary>One short sentence of an interpretation.</summary>
/// <param name="Topic">What it is about.</param>
/// <param name="Side">The side it is about; null for both or none.</param>
/// <param name="Text">The sentence, with numbers and units.</param>
/// <param name="Tone">How it is meant.</param>
public sealed record Statement(StatementTopic Topic, Side? Side, string Text, Tone Tone);
