using Microsoft.AspNetCore.Antiforgery;
using MomentArm.Web.Security;

namespace MomentArm.Web.Account;

/// <summary>The two account actions that are no pages.</summary>
public static class AccountEndpoints
{
    public static void MapAccount(this IEndpointRouteBuilder app)
    {
        app.MapPost("/sign-out", SignOutAsync).AddEndpointFilter(OnlyFromOurPages);
        app.MapPost("/enter-demo", EnterDemoAsync).AddEndpointFilter(OnlyFromOurPages).Add(OpenEndpoints.Open);
    }

    private static async Task<IResult> SignOutAsync(SignInDesk desk, HttpContext context)
    {
        await desk.LeaveAsync();
        context.Response.Headers["Clear-Site-Data"] = "\"cache\"";
        return Results.Redirect("/sign-in");
    }

    private static async Task<IResult> EnterDemoAsync(SignInDesk desk, HttpContext context)
    {
        if (await desk.FindDemoClinicianAsync() is not { } clinician)
        {
            return Results.NotFound();
        }

        await desk.LetInAsync(clinician);
        var form = await context.Request.ReadFormAsync();
        return Results.Redirect(LocalPath.Or(form["returnUrl"]));
    }

    private static async ValueTask<object?> OnlyFromOurPages(
        EndpointFilterInvocationContext call, EndpointFilterDelegate next)
    {
        var antiforgery = call.HttpContext.RequestServices.GetRequiredService<IAntiforgery>();
        return await antiforgery.IsRequestValidAsync(call.HttpContext)
            ? await next(call)
            : Results.BadRequest("This form is out of date. Go back, load the page again and repeat.");
    }
}
