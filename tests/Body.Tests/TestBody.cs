using MomentArm.Content;

namespace MomentArm.Body.Tests;

/// <summary>The shipped body content, read once.</summary>
internal static class TestBody
{
    internal static BodyContent Content { get; } = Read();

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

    private static BodyContent Read()
    {
        var faults = new FaultList();
        var content = BodyContent.Read(ContentFolder, faults);
        faults.ThrowIfAny();
        return content!;
    }
}
