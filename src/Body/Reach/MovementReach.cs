using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>How far a movement lengthens every group, against a person's limits.</summary>
/// <param name="Fractions">Where in the movement the poses of the curves lie, 0 start to 1 end.</param>
/// <param name="Groups">Both sides; groups that the movement really lengthens first, each part by peak reach, largest first.</param>
/// <param name="Muscles">Every line with a limit, by peak reach, largest first.</param>
/// <param name="Problems">What makes the numbers doubtful, in sentences for the screen.</param>
public sealed record MovementReach(
    ImmutableArray<double> Fractions, ImmutableArray<GroupReach> Groups, ImmutableArray<MuscleReach> Muscles,
    ImmutableArray<string> Problems)
{
    /// <summary>A group that grows by less than this over its neutral length is not called lengthened, metres (our choice).</summary>
    public const double LengthenedFromM = 0.002;

    /// <summary>The groups that the movement really lengthens, by peak reach, largest first.</summary>
    public IEnumerable<GroupReach> Lengthened => Groups.Where(g => g.Lengthens);

    /// <summary>The reach of one group.</summary>
    /// <param name="group">The group.</param>
    /// <param name="side">The side.</param>
    /// <returns>The reach.</returns>
    public GroupReach Of(MuscleGroup group, Side side) => Groups.First(g => g.Group == group && g.Side == side);
}

/// <summary>The reach of a group along a movement.</summary>
/// <param name="Group">The group.</param>
/// <param name="Side">The side.</param>
/// <param name="Curve">Reach at each pose.</param>
/// <param name="ChangeM">Change of length from the neutral pose at each pose, metres; force-weighted mean of the lines.</param>
/// <param name="PeakAt">Index of the pose with the largest reach.</param>
/// <param name="Leading">Name of the line with the largest reach there.</param>
/// <param name="LeadingReach">Its reach there.</param>
/// <param name="Basis">What the limit rests on.</param>
/// <param name="Tests">Names of the tests or norms behind the limit.</param>
/// <param name="Extrapolated">Whether the peak or the limit lies beyond the trusted range of the paths.</param>
public sealed record GroupReach(
    MuscleGroup Group, Side Side, ImmutableArray<Reach> Curve, ImmutableArray<double> ChangeM, int PeakAt, string Leading,
    Reach LeadingReach, LimitBasis Basis, ImmutableArray<string> Tests, bool Extrapolated)
{
    /// <summary>The largest reach.</summary>
    public Reach Peak => Curve[PeakAt];

    /// <summary>Change of length at the largest reach, metres.</summary>
    public double PeakChangeM => ChangeM[PeakAt];

    /// <summary>Whether the movement brings the group beyond its neutral length.</summary>
    public bool Lengthens => PeakChangeM >= MovementReach.LengthenedFromM;

    /// <summary>What the peak means, in a sentence for the screen; null up to 100 %.</summary>
    public string? Verdict => Peak.Middle <= 1 + 1e-9
        ? null
        : Basis switch
        {
            LimitBasis.Tested => Peak.Low > 1
                ? "Cannot be held: reduce the angle."
                : "Cannot be held, though by no more than the error of the test: reduce the angle.",
            LimitBasis.TestedPainLimited => "Beyond where pain stopped the test: reduce the angle.",
            LimitBasis.OtherSide => "Cannot be held if this side is like the other: reduce the angle, or test this side.",
            LimitBasis.Norm => "Beyond the usual length in that test: most cannot hold it; reduce the angle, or test this person.",
            LimitBasis.UsualRange => "Beyond the end of the usual joint range: most cannot hold it; reduce the angle.",
        };
}

/// <summary>The largest reach of one line along a movement.</summary>
/// <param name="Id">Short name of the line.</param>
/// <param name="Name">Name for the screen.</param>
/// <param name="Group">Its group.</param>
/// <param name="Side">Its side.</param>
/// <param name="Peak">Largest reach.</param>
/// <param name="AtFraction">Where in the movement, 0 start to 1 end.</param>
/// <param name="ChangeM">Change of length from the neutral pose there, metres.</param>
/// <param name="Basis">What the limit rests on.</param>
public sealed record MuscleReach(
    string Id, string Name, MuscleGroup Group, Side Side, Reach Peak, double AtFraction, double ChangeM, LimitBasis Basis);
