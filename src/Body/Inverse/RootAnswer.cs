namespace MomentArm.Body;

/// <summary>What a search for f(x) = target found: <see cref="RootFound"/>, <see cref="RootNotReachable"/> or <see cref="RootNotComputed"/>.</summary>
public abstract record RootAnswer
{
    private protected RootAnswer()
    {
    }
}

/// <summary>There is such an x.</summary>
/// <param name="X">The smallest x found, or the one nearest the preferred value.</param>
/// <param name="Achieved">f there, within the tolerance of the target.</param>
public sealed record RootFound(double X, double Achieved) : RootAnswer;

/// <summary>No x in the range gives the target.</summary>
/// <param name="Largest">The largest f found.</param>
/// <param name="LargestAt">Where.</param>
/// <param name="Smallest">The smallest f found.</param>
/// <param name="SmallestAt">Where.</param>
/// <param name="Jump">Where f leaps over the target without taking it; null when the target lies outside everything found.</param>
public sealed record RootNotReachable(double Largest, double LargestAt, double Smallest, double SmallestAt, RootJump? Jump) : RootAnswer;

/// <summary>A leap of f over the target.</summary>
/// <param name="At">Where, to the tolerance in x.</param>
/// <param name="Before">f just before.</param>
/// <param name="After">f just after.</param>
public sealed record RootJump(double At, double Before, double After);

/// <summary>f could be computed nowhere in the range.</summary>
/// <param name="Reason">Why, in words.</param>
public sealed record RootNotComputed(string Reason) : RootAnswer;
