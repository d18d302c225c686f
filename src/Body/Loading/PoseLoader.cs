using System.Collections.Immutable;

namespace MomentArm.Body;

/// <summary>
/// Loads poses of one person: balance of the whole body, joint demands, muscle effort, joint contact. Keeps its work space; not for two threads at once.
/// </summary>
public sealed class PoseLoader
{
    private static readonly SegmentKind[] ForceJoints = [SegmentKind.Thigh, SegmentKind.Shank, SegmentKind.Talus];
    private static readonly Side[] Sides = [Side.Right, Side.Left];
    private static readonly MuscleFunction[] Functions = Enum.GetValues<MuscleFunction>();

    private readonly PersonBody person;
    private readonly BodyState state;
    private readonly BodyBalance balance;

    /// <summary>Makes the work space.</summary>
    /// <param name="person">The person.</param>
    public PoseLoader(PersonBody person)
    {
        ArgumentNullException.ThrowIfNull(person);
        this.person = person;
        state = new BodyState(person.Model);
        balance = new BodyBalance(person.Muscles, new JointStrength(person.Model, person.Capacity));
    }

    /// <summary>The balance last solved, for figures of single muscles.</summary>
    public BodyBalance Balance => balance;

    /// <summary>The posed body last loaded.</summary>
    public BodyState State => state;

    /// <summary>Loads a settled pose.</summary>
    /// <param name="placed">The settled pose.</param>
    /// <param name="forces">Given forces besides gravity, on this pose.</param>
    /// <param name="rule">How effort is shared out; null for the usual rule.</param>
    /// <param name="warmStart">Begin from the pose before, along a movement.</param>
    /// <returns>The held pose, or why it cannot be held.</returns>
    public HeldPose Hold(PlacedBody placed, ReadOnlySpan<PointForce> forces, EffortRule? rule = null, bool warmStart = false)
    {
        ArgumentNullException.ThrowIfNull(placed);
        state.Update(placed.Pose);
        var contacts = SupportPoints.Of(person.Model, placed);
        if (contacts.Length > BodyBalance.MostContacts || placed.Ties.Length > BodyBalance.MostTies)
            return HeldPose.Refused($"The pose has more than {BodyBalance.MostContacts} contact points or {BodyBalance.MostTies} ties. Leave some out.");
        BodyTie[] ties = [.. placed.Ties.Select(t => new BodyTie(t.FromSegment, t.From, t.ToSegment, t.To))];
        var solution = balance.Solve(state, placed.Pose, contacts, forces, ties, Splits(placed), rule ?? EffortRule.Usual, warmStart);
        var (force, moment) = balance.Unbalanced;
        if (solution.Status != SolutionStatus.Optimal)
            return HeldPose.Refused("The balance could not be computed: the numbers of this pose are out of all proportion. Check its angles, heights and loads.");
        if (!Standing.Stands(person.Model, force, moment))
        {
            return HeldPose.Refused(Standing.Refusal(state, contacts, forces)
                ?? "Cannot be held: no contact forces and muscles balance it. It needs another contact or a change of pose.");
        }

        return new HeldPose(
            null, Supports(placed), [.. ties.Select((_, i) => balance.Tension(i))], Joints(placed.Pose), Efforts(), JointForces(),
            moment.Length / (person.Model.MassKg * BodyModel.Gravity), Extrapolated());
    }

    /// <summary>The shares of the weight that the author gave, contact by contact; a named group of points shares one.</summary>
    private static WeightSplit[] Splits(PlacedBody placed)
    {
        var bearing = placed.Contacts.Where(c => c.Contact.BearsWeight).Select(c => c.Contact).ToArray();
        var splits = new List<WeightSplit>();
        for (var i = 0; i < bearing.Length; i++)
        {
            if (bearing[i].ShareOfWeight is not { } share || (i > 0 && bearing[i - 1] == bearing[i]))
                continue;
            var count = bearing.Skip(i).TakeWhile(c => c == bearing[i]).Count();
            splits.Add(new WeightSplit(i, count, share));
        }

        return [.. splits.Take(BodyBalance.MostSplits)];
    }

    private ImmutableArray<SupportLoad> Supports(PlacedBody placed)
    {
        var loads = ImmutableArray.CreateBuilder<SupportLoad>();
        var index = 0;
        foreach (var contact in placed.Contacts.Where(c => c.Contact.BearsWeight))
        {
            var force = balance.ContactForce(index++);
            var normal = force.Dot(contact.Normal);
            if (loads.Count > 0 && loads[^1].Contact == contact.Contact)
                loads[^1] = new SupportLoad(contact.Contact, loads[^1].Force + force, loads[^1].NormalN + normal);
            else
                loads.Add(new SupportLoad(contact.Contact, force, normal));
        }

        return loads.ToImmutable();
    }

    private ImmutableArray<JointLoad> Joints(BodyPose pose)
    {
        var joints = ImmutableArray.CreateBuilder<JointLoad>(pose.Angles.Length);
        for (var k = 0; k < pose.Angles.Length; k++)
        {
            var coordinate = person.Model.Coordinates[k];
            joints.Add(new JointLoad(
                coordinate.Motion, coordinate.Side, pose.Angles[k], balance.NetMoment(k), balance.Demand(k), balance.EndStop(k), balance.Reserve(k)));
        }

        return joints.MoveToImmutable();
    }

    private ImmutableArray<GroupEffort> Efforts()
    {
        var efforts = ImmutableArray.CreateBuilder<GroupEffort>();
        foreach (var function in Functions)
        {
            foreach (var side in Sides)
            {
                var (effort, force) = balance.Group(function, side);
                if (effort > 0)
                    efforts.Add(new GroupEffort(function, side, effort, force));
            }
        }

        return efforts.ToImmutable();
    }

    private ImmutableArray<JointForce> JointForces()
    {
        var forces = ImmutableArray.CreateBuilder<JointForce>(ForceJoints.Length * Sides.Length);
        foreach (var joint in ForceJoints)
        {
            foreach (var side in Sides)
            {
                var force = balance.JointForce(person.Model.IndexOf(joint, side));
                forces.Add(new JointForce(joint, side, force, force.Length / (person.Model.MassKg * BodyModel.Gravity)));
            }
        }

        return forces.MoveToImmutable();
    }

    /// <summary>Whether a muscle that works counts on a path beyond its trusted angles.</summary>
    private bool Extrapolated()
    {
        const double works = 0.05;
        for (var m = 0; m < person.Muscles.Muscles.Length; m++)
        {
            if (balance.MuscleState.Extrapolated[m] && balance.Activation(m) > works)
                return true;
        }

        return false;
    }
}
