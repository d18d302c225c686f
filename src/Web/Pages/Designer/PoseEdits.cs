using System.Globalization;
using MomentArm.Content;

namespace MomentArm.Web.Pages.Designer;

/// <summary>Adding, ordering and taking out poses. The first is always the start, the last the end.</summary>
public static class PoseEdits
{
    /// <summary>The most poses a form has.</summary>
    public const int Most = 9;

    private const string Start = "start";
    private const string End = "end";

    /// <summary>With a pose halfway between one and the next; after the last it stands before it.</summary>
    public static (ExerciseFile File, int At) Added(ExerciseFile file, int after)
    {
        ArgumentNullException.ThrowIfNull(file);
        var poses = file.Poses.ToList();
        if (poses.Count == 1)
            return (file with { Poses = Named([poses[0], poses[0]]) }, 1);
        var before = Math.Clamp(after, 0, poses.Count - 2);
        poses.Insert(before + 1, Halfway(poses[before], poses[before + 1]));
        return (file with { Poses = Named(poses) }, before + 1);
    }

    /// <summary>Without a pose; the last one stays.</summary>
    public static ExerciseFile Without(ExerciseFile file, int at)
    {
        ArgumentNullException.ThrowIfNull(file);
        return file.Poses.Count < 2 ? file : file with { Poses = Named([.. file.Poses.Where((_, i) => i != at)]) };
    }

    /// <summary>With a pose one place earlier (-1) or later (+1).</summary>
    public static ExerciseFile Moved(ExerciseFile file, int at, int by)
    {
        ArgumentNullException.ThrowIfNull(file);
        var to = at + by;
        if (to < 0 || to >= file.Poses.Count)
            return file;
        var poses = file.Poses.ToList();
        (poses[at], poses[to]) = (poses[to], poses[at]);
        return file with { Poses = Named(poses) };
    }

    /// <summary>The pose halfway: every angle in the middle, what touches as where the movement comes from.</summary>
    public static PoseFile Halfway(PoseFile first, PoseFile next)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(next);
        var pose = first with
        {
            Name = "",
            PitchHintDeg = (first.PitchHintDeg + next.PitchHintDeg) / 2,
            Contacts = [.. first.Contacts.Select(c => next.Contacts.FirstOrDefault(o => (o.Point, o.Limb, o.Surface) == (c.Point, c.Limb, c.Surface)) is { } there
                ? c with { HeightM = (c.HeightM + there.HeightM) / 2 } : c)],
        };
        return JointAngle.All.Aggregate(pose, (made, angle) => angle.With(made, Math.Round((angle.Get(first) + angle.Get(next)) / 2, 1)));
    }

    /// <summary>First start, last end, what lies between a name of its own.</summary>
    private static IReadOnlyList<PoseFile> Named(List<PoseFile> poses)
    {
        var taken = poses.Skip(1).SkipLast(1).Select(p => p.Name).Where(n => n is not ("" or Start or End)).ToHashSet();
        var next = 1;
        string Fresh()
        {
            string name;
            do
            {
                name = next == 1 ? "middle" : "middle " + next.ToString(CultureInfo.InvariantCulture);
                next++;
            }
            while (!taken.Add(name));
            return name;
        }

        return
        [
            .. poses.Select((pose, i) => i == 0 ? pose with { Name = Start }
                : i == poses.Count - 1 ? pose with { Name = End }
                : pose.Name is "" or Start or End ? pose with { Name = Fresh() } : pose),
        ];
    }
}
