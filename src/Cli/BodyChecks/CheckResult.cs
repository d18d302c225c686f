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
/// <param name="Values">The values of an order by name.</param>
/// <param name="Fault">The first pair out of order, or why nothing was calculated.</param>
internal sealed record CheckResult(
    CheckFile Check,
    bool? Agrees,
    double? Got,
    string? GotFor,
    double? Expected,
    (double Low, double High)? Spread,
    int Varied,
    ImmutableArray<(string Name, double Value)> Values,
    string? Fault)
{
    /// <summary>
    /// A gated check that cannot be calculated is a miss, but for joint forces and muscle effort, which no one calculates yet.
    /// </summary>
    internal Verdict Verdict =>
        Agrees is null && (!Check.Gate || Awaited(Check)) ? Verdict.NotComputed
        : !Check.Gate ? Verdict.ReportedOnly
        : Agrees == true ? Verdict.Pass
        : Verdict.Miss;

    private static bool Awaited(CheckFile check) =>
        (check.Quantity is { } one ? [one] : check.Values!.Values).Any(Awaited);

    private static bool Awaited(QuantityFile q) => q.Kind is QuantityKind.JointForce or QuantityKind.Effort || q.Of.Any(Awaited);
}
