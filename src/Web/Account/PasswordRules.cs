using Microsoft.AspNetCore.Identity;
using MomentArm.Records;

namespace MomentArm.Web.Account;

/// <summary>
/// Long instead of complicated: at least 15 characters while a password is the only factor (NIST SP 800-63B-4), any
/// characters, and neither one's own name or address nor the same few characters over and over.
/// </summary>
public sealed class PasswordRules : IPasswordValidator<Clinician>
{
    public const int Shortest = 15;
    public const int Longest = 128;
    private const int FewestDifferent = 6;

    public Task<IdentityResult> ValidateAsync(UserManager<Clinician> manager, Clinician user, string? password)
    {
        ArgumentNullException.ThrowIfNull(user);
        return Task.FromResult(Faults(user, password ?? "") is { Length: > 0 } faults
            ? IdentityResult.Failed(faults)
            : IdentityResult.Success);
    }

    private static IdentityError[] Faults(Clinician user, string password)
    {
        var faults = new List<string>();
        if (password.Length > Longest)
        {
            faults.Add(FormattableString.Invariant($"The password may have {Longest} characters at most."));
        }

        if (password.Distinct().Count() < FewestDifferent && password.Length >= Shortest)
        {
            faults.Add(FormattableString.Invariant($"The password needs at least {FewestDifferent} different characters."));
        }

        var own = new[] { user.Email, user.Email?.Split('@')[0], user.DisplayName, "momentarm" };
        if (own.Any(word => word is { Length: >= 4 } && IsMostly(password, word)))
        {
            faults.Add("The password is too close to your name, your address or this program's name.");
        }

        return [.. faults.Select(text => new IdentityError { Code = "Password", Description = text })];
    }

    /// <summary>Whether a word makes up more than half of a password.</summary>
    private static bool IsMostly(string password, string word)
    {
        var rest = password.Replace(word, "", StringComparison.OrdinalIgnoreCase);
        return rest.Length < password.Length && rest.Length <= password.Length / 2;
    }
}
