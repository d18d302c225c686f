using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Web.Pages.Library;

/// <summary>A muscle group along a movement as the page shows it: both sides as one where nothing tells them apart.</summary>
/// <param name="Group">The group and its reach.</param>
/// <param name="BothSides">Whether the other side is lengthened the same and stands in this line too.</param>
public sealed record ReachLine(GroupReach Group, bool BothSides)
{
    /// <summary>Reaches that differ by less than this read alike.</summary>
    private const double Alike = 0.005;

    /// <summary>Such as "Hamstrings, right" or "Soleus, both sides".</summary>
    public string Name => BothSides ? ExerciseText.Title(Group.Group) + ", both sides" : ReachText.Name(Group);

    /// <summary>The lines of some groups, in their order.</summary>
    public static ImmutableArray<ReachLine> Of(IEnumerable<GroupReach> groups)
    {
        ArgumentNullException.ThrowIfNull(groups);
        var lines = new List<ReachLine>();
        foreach (var group in groups)
        {
            var same = lines.FindIndex(l => AreAlike(l.Group, group));
            if (same >= 0)
                lines[same] = lines[same] with { BothSides = true };
            else
                lines.Add(new ReachLine(group, false));
        }

        return [.. lines];
    }

    private static bool AreAlike(GroupReach a, GroupReach b) =>
        (a.Group, a.Basis, a.Leading, a.PeakAt, a.Extrapolated) == (b.Group, b.Basis, b.Leading, b.PeakAt, b.Extrapolated)
        && a.Tests.SequenceEqual(b.Tests)
        && Say.Number(1000 * a.PeakChangeM, 0) == Say.Number(1000 * b.PeakChangeM, 0)
        && a.Curve.Zip(b.Curve).All(p =>
            Math.Abs(p.First.Middle - p.Second.Middle) < Alike && Math.Abs(p.First.Low - p.Second.Low) < Alike
            && Math.Abs(p.First.High - p.Second.High) < Alike);
}
