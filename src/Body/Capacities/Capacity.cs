namespace MomentArm.Body;

/// <summary>On what a capacity rests.</summary>
public enum CapacityBasis
{
    /// <summary>This action was tested with a force reader on this side.</summary>
    Tested,

    /// <summary>Tested with a force reader, but pain stopped it: the true capacity is at least this.</summary>
    TestedPainLimited,

    /// <summary>Not tested: published figure times the mean factor of what was tested on this person.</summary>
    ScaledFromTested,

    /// <summary>Not tested: published figure for sex and age only.</summary>
    PublishedOnly,

    /// <summary>No force reader: repetitions or seconds to a stated effort, drawn toward the published figure.</summary>
    FromEndurance,

    /// <summary>Repetitions or seconds that pain stopped: the true capacity is at least this.</summary>
    EndurancePainLimited,

    /// <summary>Force tests and repetitions or seconds, weighted by their uncertainty.</summary>
    Combined,
}

/// <summary>A torque that a person can hold, as an 80 % interval.</summary>
/// <param name="Low">Lower end, N m, above 0.</param>
/// <param name="Middle">Best estimate, N m.</param>
/// <param name="High">Upper end, N m.</param>
/// <param name="Basis">On what it rests.</param>
/// <param name="BeyondCurve">Whether the joint angle lies beyond the published curve, whose end value then counts.</param>
/// <param name="WeakSource">Whether it rests on a published figure that is weak itself: few people, another contraction, or recalled.</param>
public readonly record struct Capacity(
    double Low, double Middle, double High, CapacityBasis Basis, bool BeyondCurve, bool WeakSource = false);
