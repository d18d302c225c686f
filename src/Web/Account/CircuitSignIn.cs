using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.AspNetCore.Components.Server;
using Microsoft.AspNetCore.Identity;
using MomentArm.Records;

namespace MomentArm.Web.Account;

/// <summary>
/// Live parts of a page stay open longer than one request: once a minute they ask whether the account still stands as it was
/// at sign-in, and are signed out when it does not.
/// </summary>
public sealed class CircuitSignIn(ILoggerFactory logs, IServiceScopeFactory scopes)
    : RevalidatingServerAuthenticationStateProvider(logs)
{
    protected override TimeSpan RevalidationInterval => TimeSpan.FromMinutes(1);

    protected override async Task<bool> ValidateAuthenticationStateAsync(
        AuthenticationState authenticationState, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(authenticationState);
        await using var scope = scopes.CreateAsyncScope();
        var door = scope.ServiceProvider.GetRequiredService<SignInManager<Clinician>>();
        return await door.ValidateSecurityStampAsync(authenticationState.User) is not null;
    }
}
