using System.Net;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Routing;
using Microsoft.AspNetCore.Routing.Patterns;
using Microsoft.Extensions.DependencyInjection;

namespace MomentArm.Web.Security;

public sealed class OpenEndpointsTests
{
    [Fact]
    public async Task Every_endpoint_not_on_the_list_asks_for_sign_in()
    {
        await using var app = new ClinicApp();
        await app.SetUpAsync();
        var stranger = app.Browser();
        var closed = Endpoints(app).Where(endpoint => !OpenEndpoints.Holds(endpoint.RoutePattern.RawText)).ToList();
        Assert.Contains(closed, endpoint => endpoint.RoutePattern.RawText == "/sign-out");
        Assert.Contains(closed, endpoint => endpoint.RoutePattern.RawText == "/look");
        foreach (var endpoint in closed)
        {
            foreach (var method in Methods(endpoint))
            {
                using var request = new HttpRequestMessage(new HttpMethod(method), Address(endpoint.RoutePattern));
                var answer = await stranger.SendAsync(request);
                var sentAway = answer.StatusCode is HttpStatusCode.Unauthorized
                    || (answer.StatusCode == HttpStatusCode.Found
                        && answer.Headers.Location!.ToString().Contains("/sign-in?", StringComparison.Ordinal));
                Assert.True(sentAway, $"{method} {endpoint.RoutePattern.RawText} answered {answer.StatusCode}");
            }
        }
    }

    [Fact]
    public async Task Nothing_is_opened_anywhere_but_on_the_list()
    {
        await using var app = new ClinicApp();
        var opened = Endpoints(app).Where(endpoint => endpoint.Metadata.GetMetadata<IAllowAnonymous>() is not null).ToList();
        Assert.Contains(opened, endpoint => endpoint.RoutePattern.RawText == "/sign-in");
        Assert.All(opened, endpoint => Assert.True(OpenEndpoints.Holds(endpoint.RoutePattern.RawText), endpoint.DisplayName));
    }

    [Theory]
    [InlineData("/patients/{id:guid}")]
    [InlineData("/pain")]
    [InlineData("/api/patients")]
    [InlineData("/_blazor")]
    [InlineData("")]
    [InlineData(null)]
    public void Clinic_pages_are_not_on_the_list(string? pattern) => Assert.False(OpenEndpoints.Holds(pattern));

    [Fact]
    public async Task An_address_that_leads_nowhere_tells_a_stranger_nothing()
    {
        await using var app = new ClinicApp();
        await app.SetUpAsync();
        Assert.Equal(HttpStatusCode.Found, (await app.Browser().GetAsync("/nowhere")).StatusCode);
        var known = await (await app.SignedInBrowserAsync()).GetAsync("/nowhere");
        Assert.Equal(HttpStatusCode.NotFound, known.StatusCode);
        Assert.Contains("There is no such page", await known.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_review_page_is_only_there_while_developing()
    {
        await using var clinic = new ClinicApp();
        await clinic.SetUpAsync();
        Assert.Equal(HttpStatusCode.NotFound, (await (await clinic.SignedInBrowserAsync()).GetAsync("/look")).StatusCode);
        await using var desk = new ClinicApp { Environment = "Development" };
        await desk.SetUpAsync();
        Assert.Equal(HttpStatusCode.OK, (await (await desk.SignedInBrowserAsync()).GetAsync("/look")).StatusCode);
    }

    private static IEnumerable<RouteEndpoint> Endpoints(ClinicApp app)
    {
        _ = app.Server;
        return app.Services.GetServices<EndpointDataSource>().SelectMany(source => source.Endpoints).OfType<RouteEndpoint>()
            .Where(endpoint => endpoint.Metadata.GetMetadata<MayBeKeptAttribute>() is null);
    }

    private static IReadOnlyList<string> Methods(RouteEndpoint endpoint) =>
        endpoint.Metadata.GetMetadata<IHttpMethodMetadata>()?.HttpMethods is { Count: > 0 } methods ? methods : ["GET"];

    /// <summary>An address that a pattern takes: ids where it wants ids, a word elsewhere.</summary>
    private static string Address(RoutePattern pattern) => "/" + string.Join('/', pattern.PathSegments.Select(segment =>
        string.Concat(segment.Parts.Select(part => part switch
        {
            RoutePatternLiteralPart literal => literal.Content,
            RoutePatternSeparatorPart separator => separator.Content,
            RoutePatternParameterPart parameter when parameter.ParameterPolicies.Any(rule => rule.Content == "guid") =>
                "0198c0de-0000-7000-8000-000000000001",
            RoutePatternParameterPart { ParameterPolicies.Count: > 0 } => "1",
            _ => "word",
        }))));
}
