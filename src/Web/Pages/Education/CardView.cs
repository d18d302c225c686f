namespace MomentArm.Web.Pages.Education;

/// <summary>Words around education cards.</summary>
public static class CardView
{
    /// <summary>Name of a language for clinicians.</summary>
    public static string Name(string language) => language switch
    {
        "en" => "English",
        "es" => "Spanish",
        _ => language,
    };

    /// <summary>What the list of help is called, in a language.</summary>
    public static string HelpTitle(string language) => language == "es" ? "Lo que ayuda" : "What helps";
}
