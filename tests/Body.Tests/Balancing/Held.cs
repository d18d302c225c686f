namespace MomentArm.Body.Tests.Balancing;

/// <summary>A body held in a pose: what the balance found, with the inputs beside.</summary>
internal sealed record Held(BodyBalance Balance, BodyState State, BodyPose Pose, ContactPoint[] Contacts)
{
    internal BodyModel Model => State.Model;

    internal double Weight => Model.MassKg * BodyModel.Gravity;

    internal double Demand(JointAction action, Side side)
    {
        var (index, sign) = action.On(Model, side);
        return sign * Balance.Demand(index);
    }

    /// <summary>Joint contact force over body weight.</summary>
    internal double Contact(SegmentKind joint, Side side) => Balance.JointForce(Model.IndexOf(joint, side)).Length / Weight;

    internal static BodyBalance BalanceOf(BodyModel model, Physique? physique = null)
    {
        var capacity = new PatientCapacity(
            TestBody.Content.Capacities, physique ?? new Physique(Sex.Male, 30, model.StatureM, model.MassKg), model, []);
        return new BodyBalance(TestBody.Content.MusclesOf(model), new JointStrength(model, capacity));
    }

    internal static Held Frame(
        BodyModel model, PosedFrame frame, Side side = Side.Right, EffortRule? rule = null, Func<BodyState, PointForce[]>? forces = null)
    {
        var placed = Settling.Settle(model, TestBody.Content.Points, frame, side);
        var state = TestBody.Posed(model, placed.Pose);
        var contacts = SupportPoints.Of(model, placed);
        return Posed(BalanceOf(model), state, placed.Pose, contacts, forces?.Invoke(state) ?? [], rule);
    }

    internal static Held Posed(
        BodyBalance balance, BodyState state, BodyPose pose, ContactPoint[] contacts, PointForce[] forces, EffortRule? rule = null)
    {
        balance.Solve(state, pose, contacts, forces, [], [], rule ?? EffortRule.Usual);
        return new Held(balance, state, pose, contacts);
    }
}
