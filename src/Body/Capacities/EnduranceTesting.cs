using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>What a task without a device asks of one action, found by statics of the task's own poses.</summary>
/// <param name="DemandNm">Torque at the hardest place, N m; 0 when it could not be computed or the task does not ask the action.</param>
/// <param name="ClinicalAngle">Joint angle there, clinical sign, radians.</param>
/// <param name="Problems">What kept it from being computed or makes it doubtful, in sentences for the screen.</param>
public sealed record TaskDemand(double DemandNm, double ClinicalAngle, ImmutableArray<string> Problems)
{
    /// <summary>Whether a test can be made of it.</summary>
    public bool Usable => DemandNm > 0;
}

/// <summary>Makes tests without a device from tasks that were posed.</summary>
public static class EnduranceTesting
{
    /// <summary>The demand of a task on one action, at the place where it is the largest part of the published strength.</summary>
    /// <param name="person">The person, with capacities without tests.</param>
    /// <param name="task">The task as a movement, or as one pose for a hold.</param>
    /// <param name="working">The side that works.</param>
    /// <param name="action">The action that ended the task.</param>
    /// <param name="addedKg">Mass of an added load, kg; 0 for none.</param>
    /// <returns>The demand, or why there is none.</returns>
    public static TaskDemand DemandOf(PersonBody person, Movement task, Side working, JointAction action, double addedKg)
    {
        ArgumentNullException.ThrowIfNull(person);
        ArgumentNullException.ThrowIfNull(task);
        var settled = SettledMovement.Of(person.Model, person.Points, task, working);
        var load = Loading.Of(person, task, settled, addedKg);
        if (load.Of(action, working) is not { } share)
        {
            return new TaskDemand(
                0, 0, load.Computed ? [$"The task asks nothing of {action} on the working side, so it cannot test it."] : load.Problems);
        }

        var (index, _) = action.On(person.Model, working);
        var angle = settled.Frames[settled.Fractions.IndexOf(share.AtFraction)].Pose.Angles[index];
        return new TaskDemand(share.Demand, action.ClinicalAngle(angle), load.Problems);
    }
}
