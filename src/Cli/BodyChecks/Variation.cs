using MomentArm.Body;
using MomentArm.Content;

namespace MomentArm.Cli;

/// <summary>A pose made a little otherwise, since one pose is not a test.</summary>
/// <param name="TrunkRad">How much farther the trunk leans forward, by both hips.</param>
/// <param name="ShankRad">How much farther both shanks lean forward, by ankle and knee; thigh and trunk keep their lean.</param>
/// <param name="CenterShiftM">How far the center of pressure lies ahead of where balance puts it, metres.</param>
internal sealed record Variation(double TrunkRad = 0, double ShankRad = 0, double CenterShiftM = 0)
{
    private const double Degree = Math.PI / 180;

    /// <summary>The pose as it was given.</summary>
    internal static Variation None { get; } = new();

    /// <summary>Trunk 10 degrees, shank 5 degrees, center of pressure 2 cm, either way (our choice).</summary>
    internal static Variation[] All { get; } =
    [
        new(TrunkRad: 10 * Degree), new(TrunkRad: -10 * Degree), new(ShankRad: 5 * Degree), new(ShankRad: -5 * Degree),
        new(CenterShiftM: 0.02), new(CenterShiftM: -0.02),
    ];

    internal PoseInput Of(PoseInput input) => input with
    {
        Frame = input.Frame with
        {
            PitchHint = input.Frame.PitchHint + TrunkRad,
            Working = Of(input.Frame.Working),
            Other = Of(input.Frame.Other),
        },
    };

    private LimbAngles Of(LimbAngles limb) => limb with
    {
        HipFlexion = limb.HipFlexion + TrunkRad,
        KneeFlexion = limb.KneeFlexion + ShankRad,
        AnkleDorsiflexion = limb.AnkleDorsiflexion + ShankRad,
    };
}
