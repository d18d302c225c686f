using System.ComponentModel.DataAnnotations;

namespace MomentArm.Web.Account;

/// <summary>What the first set-up asks.</summary>
public sealed class SetUpForm
{
    [Required(ErrorMessage = "Type the set-up code from the console.")]
    public string? Code { get; set; }

    [Required(ErrorMessage = "Give the clinic a name.")]
    [StringLength(120, ErrorMessage = "The clinic's name may have 120 characters at most.")]
    public string? ClinicName { get; set; }

    [StringLength(40, ErrorMessage = "A phone number may have 40 characters at most.")]
    public string? Phone { get; set; }

    [Required(ErrorMessage = "Choose the clinic's time zone.")]
    public string? TimeZone { get; set; }

    [Required(ErrorMessage = "Type your name as colleagues should see it.")]
    [StringLength(120, ErrorMessage = "A name may have 120 characters at most.")]
    public string? YourName { get; set; }

    [Required(ErrorMessage = "Type your e-mail address.")]
    [EmailAddress(ErrorMessage = "This does not look like an e-mail address.")]
    [StringLength(254, ErrorMessage = "An e-mail address may have 254 characters at most.")]
    public string? Email { get; set; }

    [Required(ErrorMessage = "Choose a password.")]
    public string? Password { get; set; }

    [Compare(nameof(Password), ErrorMessage = "The two passwords differ.")]
    public string? PasswordAgain { get; set; }
}
