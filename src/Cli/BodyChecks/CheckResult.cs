using System.Collections.Immutable;
using MomentArm.Content;

namespace MomentArm.Cli;

/// <summary>What became of a check.</summary>
internal enum Verdict
{
    /// <summary>A gated check that agrees.</summary>
    Pass,

    /// <summary>A gated check that does not agree.</summary>
    Miss,

    /// <summary>Not gated: shown for the reader.</summary>
    ReportedOnly,

    /// <summary>Cannot be calculated yet.</summary>
    NotComputed,
}

/// <summary>A check and its result.</summary>
/// <param name="Check">The check.</param>
/// <param name="Agrees">Whether the calculated value agrees with the expected one; null when it could not be calculated.</param>
/// <param name="Got">The calculated number; of a table the one farthest off; null for an order.</param>
/// <param name="GotFor">The row of a table that <paramref name="Got"/> belongs to.</param>
/// <param name="Expected">The expected number beside <paramref name="Got"/>, for a number or table.</param>
/// <param name="Spread">Least and largest value over the variations that can be held; null when not varied.</param>
/// <param name="Varied">How many variations could be held.</param>
/// <param name="Agreeing">In how many of these it agrees as well.</param>
/// <param name="Values">The values of an order by name.</param>
/// <param name="Fault">The first pair out of order, or why nothing was calculated.</param>
/// <param name="Awaited">Whether nothing was calculated only because joint forces or muscle effort are not calculated yet.</param>
internal sealed record CheckResult(
    CheckFile Check,
    bool? Agrees,
    double? Got,
    string? GotFor,
    double? Expected,
    (double Low, double High)? Spread,
    int Varied,
    int Agreeing,
    ImmutableArray<(string Name, double Value)> Values,
    string? Fault,
    bool Awaited = false)
{
    /// <summary>What became of it; a gated check that cannot be calculated is a miss, unless it is awaited.</summary>
    internal Verdict Verdict =>
        Agrees is null && (!Check.Gate || Awaited) ? Verdict.NotComputed
        : !Check.Gate ? Verdict.ReportedOnly
        : Agrees == true ? Verdict.Pass
        : Verdict.Miss;
}
