namespace MomentArm.Web;

/// <summary>Where the source tree is: the folder that holds the solution.</summary>
internal static class House
{
    public static string Root { get; } = Find();

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "MomentArm.slnx")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException("MomentArm.slnx was not found above the tests.");
        }

        return folder.FullName;
    }
}
