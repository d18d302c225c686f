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
        return Of(person, movement, SettledMovement.Of(person.Model, person.Points, movement, working), addedKg, rule);
    }

    /// <summary>The same for a movement already settled, so that load, reach and picture can share the poses.</summary>
    /// <param name="person">The person.</param>
    /// <param name="movement">The movement.</param>
    /// <param name="settled">Its settled poses for this person's body.</param>
    /// <param name="addedKg">Mass used for added loads whose mass the dose sets, 0 to 240 kg; 0 for none.</param>
    /// <param name="rule">How effort is shared out; null for the usual rule.</param>
    /// <returns>The load.</returns>
    public static MovementLoad Of(PersonBody person, Movement movement, SettledMovement settled, double addedKg, EffortRule? rule = null)
    {
        ArgumentNullException.ThrowIfNull(person);
        ArgumentNullException.ThrowIfNull(movement);
        ArgumentNullException.ThrowIfNull(settled);
        Quantity.Within(addedKg, 0, 240, "kg");
        var loader = new PoseLoader(person);
        loader.State.Update(settled.Frames[0].Pose);
        var setting = PullSetting.From(person.Points, movement, settled.Working, loader.State, addedKg);
        var gathering = new LoadGathering(person);
        for (var step = 0; step < settled.Frames.Length; step++)
        {
            var placed = settled.Frames[step];
            if ((Settling.Missing(placed, DoubtfulGapM) ?? Settling.Untied(placed, DoubtfulGapM)) is { } missing)
                gathering.Note(missing + " The numbers are doubtful.");
            loader.State.Update(placed.Pose);
            var pulls = Pulls.On(person.Model, person.Points, movement, settled.Working, loader.State, setting);
            foreach (var warning in pulls.Warnings)
                gathering.Note(warning);
            if (pulls.Refusal is { } pullRefusal)
                return gathering.Refused(pullRefusal);
            var held = loader.Hold(placed, [.. pulls.All], rule, warmStart: step > 0);
            if (held.Refusal is { } refusal)
                return gathering.Refused(refusal);
            gathering.Add(settled.Fractions[step], held);
        }

        return gathering.Whole();
    }
}
