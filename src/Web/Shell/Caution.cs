namespace MomentArm.Web.Shell;

/// <summary>The sentence that stands on every page and every sheet.</summary>
public static class Caution
{
    public const string Standing =
        "Estimates support, never replace, a licensed clinician's judgment and local rules.";
}
