using MomentArm.Content;
using MomentArm.Web.Demo;
using MomentArm.Web.Hosting;

namespace MomentArm.Web.Clinic;

/// <summary>What the clinic's pages work with.</summary>
public static class ClinicWork
{
    /// <summary>Reads the content once (a fault in shipped content stops the start) and offers the desk.</summary>
    public static IServiceCollection AddClinicWork(this IServiceCollection services, HouseSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        services.AddSingleton(_ => ContentLibrary.Read(settings.ContentPath));
        services.AddSingleton<ClinicLibraries>();
        services.AddSingleton<CaseDesk>();
        services.AddScoped<DemoClinic>();
        return services;
    }
}
