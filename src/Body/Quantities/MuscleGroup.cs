namespace MomentArm.Body;

/// <summary>A muscle group that a length test measures and a stretch lengthens.</summary>
public enum MuscleGroup
{
    /// <summary>Back of the thigh, over hip and knee.</summary>
    Hamstrings,

    /// <summary>Front of the hip (iliacus and psoas).</summary>
    HipFlexors,

    /// <summary>Front of the thigh over hip and knee.</summary>
    RectusFemoris,

    /// <summary>Outer hip: tensor fasciae latae, gluteus medius and minimus, and the tissue around them.</summary>
    LateralHip,

    /// <summary>Inner thigh.</summary>
    Adductors,

    /// <summary>Buttock.</summary>
    GluteusMaximus,

    /// <summary>Deep rotators of the hip.</summary>
    DeepRotators,

    /// <summary>Front of the thigh over the knee only.</summary>
    Vasti,

    /// <summary>Calf over knee and ankle.</summary>
    Gastrocnemius,

    /// <summary>Calf over the ankle only.</summary>
    Soleus,
}
