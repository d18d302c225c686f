using MomentArm.Exam;
using MomentArm.FollowUp;

namespace MomentArm.Web.Pages.People;

/// <summary>How the bands of the pain rule are said and drawn.</summary>
public static class Pain
{
    /// <summary>The tone of a band; neutral when pain was not answered.</summary>
    public static Tone ToneOf(PainLight? light) => light switch
    {
        PainLight.Green => Tone.Good,
        PainLight.Amber => Tone.Watch,
        PainLight.Red => Tone.Stop,
        null => Tone.Neutral,
    };

    /// <summary>What the band asks for.</summary>
    public static string RuleOf(PainLight light) => light switch
    {
        PainLight.Green => "session, green: go on",
        PainLight.Amber => "amber: same dose, no step up",
        PainLight.Red => "red: a step back",
    };

    /// <summary>The band in a word.</summary>
    public static string WordOf(PainLight? light) => light switch
    {
        PainLight.Green => "green",
        PainLight.Amber => "amber",
        PainLight.Red => "red",
        null => "pain not answered",
    };
}
