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

/// <summary>The load share of one action along a movement.</summary>
/// <param name="Action">The joint action.</param>
/// <param name="Side">The side.</param>
/// <param name="Points">Evenly spaced from start to end; a share of 0 where the action is not asked.</param>
/// <param name="WorkJ">
/// Work of the action one way through the movement, joules: torque times change of angle, both directions counted positive.
/// </param>
public sealed record LoadCurve(JointAction Action, Side Side, ImmutableArray<LoadPoint> Points, double WorkJ)
{
    /// <summary>
    /// Mean share over time when the movement is eased from start to end (slow at the ends): what a slow repetition asks on the whole.
    /// </summary>
    public double MeanShare
    {
        get
        {
            // Time between poses follows from x = t^2 (3 - 2t), the ease of the moving picture.
            double sum = 0, before = 0;
            for (var i = 1; i < Points.Length; i++)
            {
                var time = TimeAt(Points[i].Fraction);
                sum += (time - before) * (Points[i].Middle + Points[i - 1].Middle) / 2;
                before = time;
            }

            return Points.Length == 1 ? Points[0].Middle : sum;
        }
    }

    /// <summary>The inverse of x = t^2 (3 - 2t) in closed form.</summary>
    private static double TimeAt(double fraction) => 0.5 - Math.Sin(Math.Asin(1 - 2 * Math.Clamp(fraction, 0, 1)) / 3);
}

/// <summary>The load share at one pose of a movement.</summary>
/// <param name="Fraction">0 start, 1 end.</param>
/// <param name="Demand">Torque asked, N m; 0 where the opposite is asked.</param>
/// <param name="Low">Lower end of the share.</param>
/// <param name="Middle">Best estimate.</param>
/// <param name="High">Upper end.</param>
public readonly record struct LoadPoint(double Fraction, double Demand, double Low, double Middle, double High);

/// <summary>A figure that peaks somewhere in a movement.</summary>
/// <param name="Value">The largest value.</param>
/// <param name="AtFraction">Where, 0 start, 1 end.</param>
public readonly record struct Peak(double Value, double AtFraction);

/// <summary>What a contact carries over a movement.</summary>
/// <param name="Point">Name of the contact point.</param>
/// <param name="Limb">The limb it belongs to; null for the midline.</param>
/// <param name="Surface">What it touches.</param>
/// <param name="LeastKg">Least load among the poses in which it bears, kilograms.</param>
/// <param name="MostKg">Largest load, kilograms.</param>
public sealed record SupportRange(string Point, Limb? Limb, SurfaceKind Surface, double LeastKg, double MostKg);

/// <summary>Peak effort of a muscle group in a movement: an estimate.</summary>
/// <param name="Function">The group.</param>
/// <param name="Side">Its side.</param>
/// <param name="Peak">0 to 1.</param>
public sealed record EffortPeak(MuscleFunction Function, Side Side, Peak Peak);

/// <summary>Peak contact force of a joint in a movement.</summary>
/// <param name="Joint">The segment that the joint turns.</param>
/// <param name="Side">Its side.</param>
/// <param name="Peak">Body weights.</param>
public sealed record JointForcePeak(SegmentKind Joint, Side Side, Peak Peak);

/// <summary>What a movement asks of a person.</summary>
/// <param name="Shares">The peak share of each joint action with a capacity, largest first; shares under 1 % are left out.</param>
/// <param name="Problems">What kept numbers from being computed or makes them doubtful, in sentences for the screen.</param>
/// <param name="Computed">Whether shares could be computed at all.</param>
public sealed record MovementLoad(ImmutableArray<LoadShare> Shares, ImmutableArray<string> Problems, bool Computed)
{
    /// <summary>What the figures leave out or stretch, in sentences for the screen.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>The curves of the shares, in their order.</summary>
    public ImmutableArray<LoadCurve> Curves { get; init; } = [];

    /// <summary>What each weight-bearing contact carries.</summary>
    public ImmutableArray<SupportRange> Supports { get; init; } = [];

    /// <summary>Peak effort of each muscle group of 5 % and more, largest first. An estimate, second to the shares.</summary>
    public ImmutableArray<EffortPeak> Efforts { get; init; } = [];

    /// <summary>Peak contact force of hips, knees and ankles.</summary>
    public ImmutableArray<JointForcePeak> JointForces { get; init; } = [];

    /// <summary>The share of one action on one side, if it is asked.</summary>
    /// <param name="action">The action.</param>
    /// <param name="side">The side.</param>
    /// <returns>The share, or null when it is under 1 % or could not be computed.</returns>
    public LoadShare? Of(JointAction action, Side side) =>
        Shares.FirstOrDefault(s => s.Action == action && (s.Side == side || !action.HasSides()));
}
