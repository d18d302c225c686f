using MomentArm.Exam;
using MomentArm.Prescribing;
using MomentArm.Records;
using MomentArm.Web.Pages.People;
using MomentArm.Web.Parts;

namespace MomentArm.Web.Pages.Program;

/// <summary>States of the program's pages in words.</summary>
public static class ProgramWords
{
    public static Tone ToneOf(LoadFit fit) => fit switch
    {
        LoadFit.Inside => Tone.Good,
        LoadFit.TooHeavy => Tone.Stop,
        LoadFit.TooLight or LoadFit.MaybeLight or LoadFit.MaybeHeavy => Tone.Watch,
        LoadFit.NotJudged => Tone.Neutral,
    };

    public static string Of(LoadFit fit) => fit switch
    {
        LoadFit.TooLight => "too light",
        LoadFit.MaybeLight => "on the light side",
        LoadFit.Inside => "in the window",
        LoadFit.MaybeHeavy => "on the heavy side",
        LoadFit.TooHeavy => "too heavy",
        LoadFit.NotJudged => "load not judged",
    };

    public static string Of(ProgramVersion version, Records.Clinic clinic)
    {
        ArgumentNullException.ThrowIfNull(version);
        var given = version.HandedOverAtUtc is { } at ? new ClinicTime(clinic).Stamp(at) : null;
        return version.State switch
        {
            ProgramState.Draft => "not taught yet",
            ProgramState.HandedOver => $"handed over {given}",
            ProgramState.Replaced => given is null ? "replaced" : $"handed over {given}, replaced",
        };
    }
}
