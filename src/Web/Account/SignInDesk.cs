using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;
using MomentArm.Records;

namespace MomentArm.Web.Account;

/// <summary>Lets clinicians in. A stranger learns nothing about who has an account: same words, same work, every time.</summary>
public sealed class SignInDesk(
    UserManager<Clinician> users, SignInManager<Clinician> door, RecordsContext records, TimeProvider clock)
{
    /// <summary>Said for an unknown address, a wrong password and a locked account alike.</summary>
    public const string Refusal =
        "E-mail and password don't match, or there were too many tries. After five wrong tries, wait 15 minutes.";

    /// <summary>When the session began, kept in the cookie: it ends after <see cref="LongestSession"/>, whatever is done.</summary>
    public const string StartedKey = "momentarm:started";

    public static readonly TimeSpan LongestSession = TimeSpan.FromHours(12);
    public static readonly TimeSpan LongestRest = TimeSpan.FromMinutes(30);

    private static readonly Clinician Nobody = new();
    private static string? nobodysHash;

    /// <summary>Signs in; false for any reason not to.</summary>
    public async Task<bool> TryAsync(string email, string password)
    {
        var clinician = await users.FindByEmailAsync(email.Trim());
        if (clinician is null || await users.IsLockedOutAsync(clinician))
        {
            SpendTheSameTime(password);
            return false;
        }

        if (!await users.CheckPasswordAsync(clinician, password))
        {
            await users.AccessFailedAsync(clinician);
            return false;
        }

        await users.ResetAccessFailedCountAsync(clinician);
        await LetInAsync(clinician);
        return true;
    }

    /// <summary>Signs in without a question. For the owner who has just set up the clinic, and for the demo clinic.</summary>
    public async Task LetInAsync(Clinician clinician)
    {
        var properties = new Microsoft.AspNetCore.Authentication.AuthenticationProperties { IsPersistent = false };
        properties.Items[StartedKey] = clock.GetUtcNow().ToString("O", System.Globalization.CultureInfo.InvariantCulture);
        await door.SignInAsync(clinician, properties);
    }

    public Task LeaveAsync() => door.SignOutAsync();

    /// <summary>The clinician of the demo clinic; null when this is not a demo.</summary>
    public async Task<Clinician?> FindDemoClinicianAsync()
    {
        var demo = await records.Clinics.IgnoreQueryFilters([RecordsContext.ClinicFilter])
            .Where(clinic => clinic.IsDemo).Select(clinic => (Guid?)clinic.Id).FirstOrDefaultAsync();
        return demo is not { } id
            ? null
            : await users.Users.Where(user => user.ClinicId == id && user.Role == ClinicianRole.Owner)
                .OrderBy(user => user.Id).FirstOrDefaultAsync();
    }

    private void SpendTheSameTime(string password)
    {
        nobodysHash ??= users.PasswordHasher.HashPassword(Nobody, Guid.NewGuid().ToString());
        users.PasswordHasher.VerifyHashedPassword(Nobody, nobodysHash, password);
    }
}
