using System.ComponentModel.DataAnnotations;

namespace MomentArm.Web.Account;

/// <summary>What sign-in asks.</summary>
public sealed class SignInForm
{
    [Required(ErrorMessage = "Type your e-mail address.")]
    public string? Email { get; set; }

    [Required(ErrorMessage = "Type your password.")]
    public string? Password { get; set; }
}
