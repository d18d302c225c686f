using System.Security.Claims;
using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Options;
using MomentArm.Records;

namespace MomentArm.Web.Account;

/// <summary>Writes clinic, name and role into the sign-in cookie, so that pages needn't ask the database who is there.</summary>
public sealed class ClinicianClaims(
    UserManager<Clinician> users, RecordsContext records, IOptions<IdentityOptions> options)
    : UserClaimsPrincipalFactory<Clinician>(users, options)
{
    protected override async Task<ClaimsIdentity> GenerateClaimsAsync(Clinician user)
    {
        ArgumentNullException.ThrowIfNull(user);
        var identity = await base.GenerateClaimsAsync(user);
        var clinic = await records.Clinics.IgnoreQueryFilters([RecordsContext.ClinicFilter]).AsNoTracking()
            .Where(row => row.Id == user.ClinicId).Select(row => row.Name).SingleAsync();
        identity.AddClaim(new Claim(SignInClaims.ClinicId, user.ClinicId.ToString()));
        identity.AddClaim(new Claim(SignInClaims.ClinicName, clinic));
        identity.AddClaim(new Claim(SignInClaims.DisplayName, user.DisplayName));
        identity.AddClaim(new Claim(SignInClaims.Role, user.Role.ToString()));
        return identity;
    }
}
