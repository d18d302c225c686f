namespace MomentArm.Web.Hosting;

/// <summary>Where the shipped files are. A published app keeps them beside itself, from whatever folder it is started.</summary>
public static class AppHome
{
    public static WebApplicationOptions Options(string[] args) => new()
    {
        Args = args,
        ContentRootPath = Directory.Exists(Path.Combine(AppContext.BaseDirectory, "wwwroot")) ? AppContext.BaseDirectory : null,
    };
}
