using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>Answers inverse questions about load: which weight, band, lever, height or range gives a wished share.</summary>
public static class Inverse
{
    /// <summary>A share within this of the wish counts as the wish: a hundredth of a percent.</summary>
    private const double ShareTolerance = 1e-4;

    /// <summary>Solves a question whose load is given as the share itself.</summary>
    /// <param name="question">The question.</param>
    /// <param name="share">The share of the question's action and side with the knob at a value; null where it cannot be computed.</param>
    /// <returns>The answer, also in words.</returns>
    /// <exception cref="ArgumentException">The question is none: range or share not usable.</exception>
    public static LoadAnswer Solve(LoadQuestion question, Func<double, LoadShare?> share)
    {
        ArgumentNullException.ThrowIfNull(share);
        return Solve(question, x => share(x) is { } s ? new Seen(s.Middle, s, [], null) : new Seen(double.NaN, null, [], null));
    }

    /// <summary>Solves a question whose load is given whole: a share that is too small to be listed counts as none asked.</summary>
    /// <param name="question">The question.</param>
    /// <param name="load">The load of the movement with the knob at a value.</param>
    /// <returns>The answer, also in words, with the problems of the load at the answer.</returns>
    /// <exception cref="ArgumentException">The question is none: range or share not usable.</exception>
    public static LoadAnswer Solve(LoadQuestion question, Func<double, MovementLoad> load)
    {
        ArgumentNullException.ThrowIfNull(load);
        return Solve(question, x =>
        {
            var whole = load(x);

            // What kept a load from being computed is its last problem; warnings come before.
            var share = whole.Computed ? whole.Of(question.Action, question.Side) : null;
            return new Seen(
                !whole.Computed ? double.NaN : share?.Middle ?? 0, share, whole.Problems,
                whole.Computed ? null : whole.Problems.LastOrDefault());
        });
    }

    private static LoadAnswer Solve(LoadQuestion question, Func<double, Seen> see)
    {
        ArgumentNullException.ThrowIfNull(question);
        Quantity.Within(question.WishedShare, 0.02, 3, "of the capacity", nameof(question));
        var (usualLow, usualHigh) = question.Knob.UsualRange;
        var (low, high) = (question.Low ?? usualLow, question.High ?? usualHigh);
        string? reason = null;
        var root = RootSearch.Find(
            x =>
            {
                var seen = see(x);
                reason ??= seen.Reason;
                return seen.Middle;
            },
            low, high, question.WishedShare, RootOptions.Usual with { ToleranceF = ShareTolerance, Near = question.Near });
        return root switch
        {
            RootFound found => Found(question.Knob, found, low, high, see),
            RootNotReachable not => new LoadAnswer(root, null, null, NotReachable(question, not), reason is null ? [] : ["Part of the range could not be computed: " + reason]),
            _ => new LoadAnswer(
                root is RootNotComputed && reason is not null ? new RootNotComputed(reason) : root, null, null,
                FormattableString.Invariant($"Not computed from {question.Knob.Told(low)} to {question.Knob.Told(high)}: {reason ?? "no share of this action can be computed."}"), []),
        };
    }

    /// <summary>The answer is told for a value one can set: rounded, with the share at the rounded value.</summary>
    private static LoadAnswer Found(Knob knob, RootFound found, double low, double high, Func<double, Seen> see)
    {
        var value = Math.Clamp(Math.Round(found.X / knob.Step) * knob.Step, low, high);
        var seen = see(value);
        if (seen.Share is null)
            (value, seen) = (found.X, see(found.X));
        var share = seen.Share ?? throw new InvalidOperationException("The same value gave a share once and none the next time.");
        return new LoadAnswer(
            found, value, share,
            FormattableString.Invariant($"{Capital(knob.Told(value))} gives {share.Middle * 100:0} % (interval {share.Low * 100:0}-{share.High * 100:0} %)."),
            seen.Notes);
    }

    private static string NotReachable(LoadQuestion question, RootNotReachable not)
    {
        var knob = question.Knob;
        string At(double value) => knob.Told(Math.Round(value / knob.Step) * knob.Step);
        if (not.Jump is { } jump)
        {
            return FormattableString.Invariant(
                $"Not reachable: at {At(jump.At)} it leaps from {jump.Before * 100:0} % to {jump.After * 100:0} %.");
        }

        return question.WishedShare > not.Largest
            ? $"Not reachable: at most {Beside(not.Largest)} % at {At(not.LargestAt)}."
            : $"Not reachable: at least {Beside(not.Smallest)} % at {At(not.SmallestAt)}.";

        // Whole percents, but never the wish itself.
        string Beside(double share) => Math.Round(share * 100) == Math.Round(question.WishedShare * 100)
            ? FormattableString.Invariant($"{share * 100:0.00}")
            : FormattableString.Invariant($"{share * 100:0}");
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>The load at one value of the knob.</summary>
    private sealed record Seen(double Middle, LoadShare? Share, ImmutableArray<string> Notes, string? Reason);
}
