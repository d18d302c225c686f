namespace MomentArm.Content;

/// <summary>What each kind of quantity must be given.</summary>
internal static class QuantityNeeds
{
    internal static bool Muscle(QuantityFile q) =>
        q.Kind is QuantityKind.PathLength or QuantityKind.PathChange or QuantityKind.ShortestPath or QuantityKind.LongestPath
            or QuantityKind.MomentArm
        || q is { Kind: QuantityKind.TendonForce, ArmMm: null };

    internal static bool Pose(QuantityFile q) =>
        q.Of.Count == 0
        && q.Kind is not (QuantityKind.ShortestPath or QuantityKind.LongestPath or QuantityKind.Capacity or QuantityKind.Lever);

    /// <summary>The keys that are not there, besides muscle, angle, person and pose.</summary>
    internal static IEnumerable<string> Missing(QuantityFile q)
    {
        (bool There, string Key)[] needs = q.Kind switch
        {
            QuantityKind.Moment or QuantityKind.TendonForce or QuantityKind.Capacity or QuantityKind.ActionShare => [(q.Action is not null, "an action")],
            QuantityKind.MomentArm or QuantityKind.Angle => [(q.Motion is not null, "a motion")],
            QuantityKind.GroupArm => [(q.Motion is not null, "a motion"), (q.Muscles is { Count: > 0 }, "muscles")],
            QuantityKind.JointPlace => [(q.Segment is not null, "a segment"), (q.Axis is "x" or "y" or "z", "an axis x, y or z")],
            QuantityKind.Lean => [(q.Segment is not null, "a segment")],
            QuantityKind.SupportShare => [(q.Contacts is { Count: > 0 }, "contacts")],
            QuantityKind.JointForce => [(q.Joint is not null, "a joint")],
            QuantityKind.Effort => [(q.Function is null == q.Muscles is { Count: > 0 }, "either a function or muscles")],
            QuantityKind.Lever => [(q.Lever is { Known.Count: > 0 } && q.Lever.Known.Append(q.Lever.Unknown).All(f => f.AtM.Length == 2), "a lever with forces at [across, up]")],
            QuantityKind.Sum => [(q.Of.Count >= 2, "two operands or more")],
            QuantityKind.Difference or QuantityKind.Ratio or QuantityKind.Largest => [(q.Of.Count == 2, "two operands")],
            QuantityKind.Crossing => [(q.Of.Count == 3, "three operands")],
            QuantityKind.PathLength or QuantityKind.PathChange or QuantityKind.ShortestPath or QuantityKind.LongestPath or QuantityKind.FreeBody => [],
        };
        return needs.Where(n => !n.There).Select(n => n.Key);
    }
}
