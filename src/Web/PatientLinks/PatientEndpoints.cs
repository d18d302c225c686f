using MomentArm.Records;
using MomentArm.Web.Security;

namespace MomentArm.Web.PatientLinks;

/// <summary>
/// The patient's endpoints: no account, no cookie; the link's token in the request body is the only key. They take JSON with a
/// header of our own, which no page of another origin can send without being asked first.
/// </summary>
public static class PatientEndpoints
{
    private const string Header = "X-Requested-With";
    private const string HeaderValue = "momentarm";

    private static readonly Trouble Closed = new(
        "This link does not open a program",
        "It may be mistyped, or your clinic has given you a newer one. Scan the code on your newest sheet, or call the clinic.");

    private static readonly Trouble NotYet = new(
        "Your program is not ready yet", "Your therapist has not handed it over. Ask at the clinic.");

    private static readonly Trouble Busy = new("Too many tries", "Wait a while, then try once more.");

    private static readonly Trouble Damaged = new("This can't be read", "The message was damaged on its way.");

    public static IServiceCollection AddPatientLinks(this IServiceCollection services)
    {
        services.AddSingleton<PatientLimits>();
        services.AddSingleton<OpenedItems>();
        services.AddSingleton<PatientDesk>();
        return services;
    }

    public static void MapPatientLinks(this IEndpointRouteBuilder app)
    {
        ArgumentNullException.ThrowIfNull(app);
        app.MapMethods("/p", [HttpMethods.Get, HttpMethods.Head], PatientPage.Show)
            .WithMetadata(new MayBeKeptAttribute()).Add(OpenEndpoints.Open);
        app.MapPost("/api/patient/open", (Delegate)OpenAsync).Add(OpenEndpoints.Open);
        app.MapPost("/api/patient/session", (Delegate)SessionAsync).Add(OpenEndpoints.Open);
        app.MapPost("/api/patient/morning", (Delegate)MorningAsync).Add(OpenEndpoints.Open);
    }

    private static Task<IResult> OpenAsync(HttpContext context) =>
        HandleAsync<OpenRequest>(context, (limits, request) => limits.MayOpen(context, request.Token), static _ => null, async (desk, request) =>
        {
            if (await desk.OpenAsync(request.Token, context.RequestAborted) is not { } access)
                return Answer(Closed, StatusCodes.Status404NotFound);
            return await desk.ProgramAsync(access, context.RequestAborted) is { } program
                ? new PackedJson<OpenedProgram>(program)
                : Answer(NotYet, StatusCodes.Status404NotFound);
        });

    private static Task<IResult> SessionAsync(HttpContext context) => ReportAsync<SessionRequest>(
        context,
        static request => SentFaults.Of(request.Session),
        static request => request.Session.Day,
        (desk, access, request) => desk.TakeSessionAsync(access, request.Session.ToLog(), context.RequestAborted));

    private static Task<IResult> MorningAsync(HttpContext context) => ReportAsync<MorningRequest>(
        context,
        static request => SentFaults.Of(request.Morning),
        static request => request.Morning.Day,
        (desk, access, request) => desk.TakeMorningAsync(access, request.Morning.ToLog(), context.RequestAborted));

    private static Task<IResult> ReportAsync<T>(
        HttpContext context, Func<T, string?> fault, Func<T, DateOnly> day,
        Func<PatientDesk, LinkAccess, T, Task<LogOutcome>> take)
        where T : class, IWithToken =>
        HandleAsync<T>(context, (limits, request) => limits.MayReport(context, request.Token), fault, async (desk, request) =>
        {
            if (await desk.FindAsync(request.Token, context.RequestAborted) is not { } access)
                return Answer(Closed, StatusCodes.Status404NotFound);
            var today = await desk.TodayAsync(access, context.RequestAborted);
            if (SentFaults.OfDay(day(request), today) is { } wrong)
                return Refused(wrong);
            return await take(desk, access, request) switch
            {
                LogOutcome.Saved => Results.Json(new Taken("saved"), PatientRequests.Json),
                LogOutcome.AlreadySaved => Results.Json(new Taken("already"), PatientRequests.Json),
                LogOutcome.Conflicting => Answer(
                    new("Another report is here already", "A report with this id was saved before and says something else. That one stays."),
                    StatusCodes.Status409Conflict),
                LogOutcome.Refused => Refused("A number in this report can't be right."),
            };
        });

    /// <summary>Header, length, shape, limits, in this order; then the work.</summary>
    private static async Task<IResult> HandleAsync<T>(
        HttpContext context, Func<PatientLimits, T, bool> within, Func<T, string?> fault, Func<PatientDesk, T, Task<IResult>> work)
        where T : class, IWithToken
    {
        var request = context.Request;
        if (request.Headers[Header] != HeaderValue || !request.HasJsonContentType())
            return Refused("This address only takes what the patient page sends.");
        if (await PatientRequests.BodyAsync(request, context.RequestAborted) is not { } body)
            return Refused("The message is too long.");
        if (PatientRequests.Read<T>(body) is not { } read)
            return Answer(Damaged, StatusCodes.Status400BadRequest);
        if (!within(context.RequestServices.GetRequiredService<PatientLimits>(), read))
        {
            context.Response.Headers.RetryAfter = "600";
            return Answer(Busy, StatusCodes.Status429TooManyRequests);
        }

        return fault(read) is { } wrong
            ? Refused(wrong)
            : await work(context.RequestServices.GetRequiredService<PatientDesk>(), read);
    }

    private static IResult Refused(string detail) =>
        Answer(new Trouble("This could not be saved", detail), StatusCodes.Status400BadRequest);

    private static IResult Answer(Trouble trouble, int status) => Results.Json(trouble, PatientRequests.Json, statusCode: status);
}
