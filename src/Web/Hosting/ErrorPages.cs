using Microsoft.AspNetCore.Diagnostics;

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
            static pages => pages.UseStatusCodePagesWithReExecute("/not-found", "?status={0}", createScopeForStatusCodePages: true));
        app.Use(ShowInsteadOfSubmit);
    }

    /// <summary>The page that explains a refused form is only shown; it isn't sent the form once more.</summary>
    private static Task ShowInsteadOfSubmit(HttpContext context, RequestDelegate next)
    {
        if (context.Features.Get<IStatusCodeReExecuteFeature>() is not null
            || context.Features.Get<IExceptionHandlerFeature>() is not null)
        {
            context.Request.Method = HttpMethods.Get;
        }

        return next(context);
    }
}
