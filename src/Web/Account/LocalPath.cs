namespace MomentArm.Web.Account;

/// <summary>Where to go after sign-in: only ever a place in this app.</summary>
public static class LocalPath
{
    /// <summary>The wanted path when it lies in this app, else the front page.</summary>
    public static string Or(string? wanted, string otherwise = "/")
    {
        if (string.IsNullOrEmpty(wanted) || wanted[0] != '/' || wanted.Any(char.IsControl))
        {
            return otherwise;
        }

        return wanted.Length > 1 && wanted[1] is '/' or '\\' ? otherwise : wanted;
    }
}
