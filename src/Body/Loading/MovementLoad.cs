using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>The share of a capacity that a movement asks, as an interval; 1 = 100 %. Shares over 1 are shown as they are.</summary>
/// <param name="Action">The joint action asked.</param>
/// <param name="Side">The side asked.</param>
/// <param name="Low">Lower end: demand over the upper end of the capacity.</param>
/// <param name="Middle">Best estimate.</param>
/// <param name="High">Upper end: demand over the lower end of the capacity.</param>
/// <param name="Demand">Torque asked, N m.</param>
/// <param name="Capacity">The capacity it was held against.</param>
/// <param name="AtFraction">Where in the movement it peaks, 0 start, 1 end.</param>
public sealed record LoadShare(
    JointAction Action, Side Side, double Low, double Middle, double High, double Demand, Capacity Capacity, double AtFraction);

/// <summary>What a movement asks of a person.</summary>
/// <param name="Shares">The peak share of each joint action with a capacity, largest first; shares under 1 % are left out.</param>
/// <param name="Problems">What kept numbers from being computed or makes them doubtful, in sentences for the screen.</param>
/// <param name="Computed">Whether shares could be computed at all.</param>
public sealed record MovementLoad(ImmutableArray<LoadShare> Shares, ImmutableArray<string> Problems, bool Computed)
{
    /// <summary>The share of one action on one side, if it is asked.</summary>
    /// <param name="action">The action.</param>
    /// <param name="side">The side.</param>
    /// <returns>The share, or null when it is under 1 % or could not be computed.</returns>
    public LoadShare? Of(JointAction action, Side side) =>
        Shares.FirstOrDefault(s => s.Action == action && (s.Side == side || action.IsMidline()));
}
