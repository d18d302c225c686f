using MomentArm.Content;

namespace MomentArm.Body.Tests;

/// <summary>The shipped body content, read once, and bodies made from it.</summary>
internal static class TestBody
{
    internal static BodyContent Content { get; } = Read();

    /// <summary>A man of the size of the published sample (de Leva 1996).</summary>
    internal static BodyModel Man { get; } = Content.Build(new Physique(Sex.Male, 30, 1.741, 73.0));

    /// <summary>A woman of the size of the published sample (de Leva 1996).</summary>
    internal static BodyModel Woman { get; } = Content.Build(new Physique(Sex.Female, 30, 1.735, 61.9));

    internal static string ContentFolder
    {
        get
        {
            var folder = new DirectoryInfo(AppContext.BaseDirectory);
            while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "MomentArm.slnx")))
                folder = folder.Parent;
            return Path.Combine(folder?.FullName ?? throw new InvalidOperationException("MomentArm.slnx not found above the tests."), "content");
        }
    }

    internal static double Radians(double degrees) => degrees * Math.PI / 180;

    /// <summary>Required moments of a posed body under gravity and the given forces.</summary>
    internal static double[] Moments(BodyState state, params PointForce[] forces)
    {
        var moments = new double[state.Model.Coordinates.Length];
        JointMoments.Required(state, forces, moments);
        return moments;
    }

    internal static BodyState Posed(BodyModel model, BodyPose pose)
    {
        var state = new BodyState(model);
        state.Update(pose);
        return state;
    }

    private static BodyContent Read()
    {
        var faults = new FaultList();
        var content = BodyContent.Read(ContentFolder, faults);
        faults.ThrowIfAny();
        return content!;
    }
}
