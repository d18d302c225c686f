namespace MomentArm.Web.Hosting;

/// <summary>What a person sees when a page is missing or broken: plain words, and a reference that means something in the log.</summary>
public static class ErrorPages
{
    public static void UseHouseErrors(this WebApplication app)
    {
        ArgumentNullException.ThrowIfNull(app);
        if (!app.Environment.IsDevelopment())
        {
            app.UseExceptionHandler("/error", createScopeForErrors: true);
        }

        app.UseWhen(
            static context => !context.Request.Path.StartsWithSegments("/api", StringComparison.Ordinal),
            static pages => pages.UseStatusCodePagesWithReExecute("/not-found", createScopeForStatusCodePages: true));
    }
}
