namespace MomentArm.Exam;

/// <summary>The position the patient is in; the exam goes through them in this order, so nobody lies down twice.</summary>
public enum ExamPosition
{
    /// <summary>Talking, before anything is touched.</summary>
    Interview,

    /// <summary>On the feet.</summary>
    Standing,

    /// <summary>On the edge of the table.</summary>
    Sitting,

    /// <summary>On the back.</summary>
    Supine,

    /// <summary>On the side.</summary>
    SideLying,

    /// <summary>On the front.</summary>
    Prone,
}
