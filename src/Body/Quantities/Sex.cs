namespace MomentArm.Body;

/// <summary>Sex as used by the published tables of segment masses and strength, which know these two only.</summary>
public enum Sex
{
    /// <summary>Female tables.</summary>
    Female,

    /// <summary>Male tables.</summary>
    Male,
}
