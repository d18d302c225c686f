namespace MomentArm.Web.Hosting;

/// <summary>What whoever runs the app may set: in appsettings.json, by environment (MomentArm__Database), or on the command line.</summary>
public sealed class HouseSettings
{
    /// <summary>The section of the configuration.</summary>
    public const string Section = "MomentArm";

    /// <summary>The database file. Its folder also keeps the keys of the sign-in cookies.</summary>
    public string Database { get; set; } = Path.Combine("data", "momentarm.db");

    /// <summary>The folder of content; null: beside the app, else the nearest one above it.</summary>
    public string? Content { get; set; }

    /// <summary>Fill an empty database with the invented demo clinic, and offer to enter it.</summary>
    public bool Demo { get; set; }

    /// <summary>Everyone reaches the app by https, directly or through a proxy: cookies are then bound to that.</summary>
    public bool Https { get; set; }

    public string DatabasePath => Path.GetFullPath(Database);

    public string KeysPath => Path.Combine(Path.GetDirectoryName(DatabasePath)!, "keys");

    public string ContentPath => Content is { } set ? Path.GetFullPath(set) : FindContent();

    public static HouseSettings Read(IConfiguration configuration)
    {
        ArgumentNullException.ThrowIfNull(configuration);
        return configuration.GetSection(Section).Get<HouseSettings>() ?? new HouseSettings();
    }

    private static string FindContent()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            var candidate = Path.Combine(folder.FullName, "content");
            if (Directory.Exists(Path.Combine(candidate, "exercises")))
            {
                return candidate;
            }
        }

        throw new DirectoryNotFoundException(
            "No folder 'content' was found beside the app or above it. Set MomentArm:Content to where it is.");
    }
}
