using System.Text;
using MomentArm.Documents;

namespace MomentArm.Web.Pages.Program;

/// <summary>What the program's pages work with.</summary>
public static class ProgramEndpoints
{
    /// <summary>Where the handout's style sheet is.</summary>
    public const string HandoutSheet = "/documents/handout.css";

    public static IServiceCollection AddProgramWork(this IServiceCollection services)
    {
        services.AddSingleton<ProgramDesk>();
        services.AddSingleton<FreshLink>();
        services.AddSingleton<HandoutMaker>();
        return services;
    }

    public static void MapProgramWork(this IEndpointRouteBuilder app) =>
        app.MapGet(HandoutSheet, static () => Results.Text(Handout.StyleSheet, "text/css", Encoding.UTF8));
}
