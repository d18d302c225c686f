using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>
/// Loads a movement: held poses along it, each balanced as a whole body, and what they ask held against a person's capacities.
/// See docs/models/body.md, sections 5 and 7.
/// </summary>
public static class Loading
{
    /// <summary>Poses along the movement at which it is loaded, ends included.</summary>
    public const int PosesPerMovement = 21;

    /// <summary>A contact this far from its surface makes the numbers doubtful, metres.</summary>
    public const double DoubtfulGapM = 0.01;

    /// <summary>Computes the load of a movement, with its added loads and pulls.</summary>
    /// <param name="person">The person.</param>
    /// <param name="movement">The movement.</param>
    /// <param name="working">The side that works.</param>
    /// <param name="addedKg">Mass used for added loads whose mass the dose sets, 0 to 240 kg; 0 for none.</param>
    /// <param name="rule">How effort is shared out; null for the usual rule.</param>
    /// <returns>Peak shares, curves, supports, effort and joint forces, or why they could not be computed.</returns>
    public static MovementLoad Of(PersonBody person, Movement movement, Side working, double addedKg, EffortRule? rule = null)
    {
        ArgumentNullException.ThrowIfNull(person);
        ArgumentNullException.ThrowIfNull(movement);
        Quantity.Within(addedKg, 0, 240, "kg");
        var loader = new PoseLoader(person);
        var settler = new Settler(person.Model, person.Points);
        var setting = PullSetting.For(person.Model, person.Points, movement, working, addedKg);
        var gathering = new LoadGathering(person);
        var steps = movement.Frames.Length == 1 ? 1 : PosesPerMovement;
        PlacedBody? before = null;
        for (var step = 0; step < steps; step++)
        {
            var fraction = steps == 1 ? 0 : (double)step / (steps - 1);
            var placed = settler.Settle(FrameBetween.At(movement, fraction), working, before);
            if (Settling.Missing(placed, DoubtfulGapM) is { } missing)
                gathering.Note(missing + " The numbers are doubtful.");
            loader.State.Update(placed.Pose);
            var pulls = Pulls.On(person.Model, person.Points, movement, working, loader.State, setting);
            foreach (var warning in pulls.Warnings)
                gathering.Note(warning);
            if (pulls.Refusal is { } pullRefusal)
                return gathering.Refused(pullRefusal);
            var held = loader.Hold(placed, [.. pulls.All], rule, warmStart: before is not null);
            if (held.Refusal is { } refusal)
                return gathering.Refused(refusal);
            gathering.Add(fraction, held);
            before = placed;
        }

        return gathering.Whole();
    }
}
