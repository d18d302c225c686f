namespace MomentArm.Web.Account;

/// <summary>What the sign-in cookie says about a clinician beside the id.</summary>
public static class SignInClaims
{
    public const string ClinicId = "momentarm:clinic";
    public const string ClinicName = "momentarm:clinic-name";
    public const string DisplayName = "momentarm:name";
    public const string Role = "momentarm:role";
}
