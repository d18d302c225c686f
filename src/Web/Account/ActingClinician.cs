using System.Security.Claims;
using MomentArm.Records;

namespace MomentArm.Web.Account;

/// <summary>From the sign-in cookie to the person every store asks for.</summary>
public static class ActingClinician
{
    /// <summary>Who acts. Throws when nobody is signed in: pages that call it are never open.</summary>
    public static Acting Acting(this ClaimsPrincipal user)
    {
        ArgumentNullException.ThrowIfNull(user);
        return new Acting(
            Guid.Parse(Claim(user, SignInClaims.ClinicId)),
            Guid.Parse(Claim(user, ClaimTypes.NameIdentifier)),
            Claim(user, SignInClaims.DisplayName));
    }

    private static string Claim(ClaimsPrincipal user, string type) => user.FindFirst(type)?.Value
        ?? throw new InvalidOperationException("Nobody is signed in here.");
}
