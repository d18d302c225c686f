using MomentArm.Body;
using MomentArm.Content;

namespace MomentArm.Drawing.Tests;

/// <summary>The shipped body content, read once.</summary>
internal static class TestBody
{
    internal static BodyContent Content { get; } = Read();

    internal static BodyModel Model { get; } = Content.Build(new Physique(Sex.Female, 40, 1.68, 65));

    internal static SurfacePoints Points => Content.Points;

    private static BodyContent Read()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "MomentArm.slnx")))
            folder = folder.Parent;
        var root = folder?.FullName ?? throw new InvalidOperationException("MomentArm.slnx not found above the tests.");
        var faults = new FaultList();
        var content = BodyContent.Read(Path.Combine(root, "content"), faults);
        faults.ThrowIfAny();
        return content!;
    }
}
