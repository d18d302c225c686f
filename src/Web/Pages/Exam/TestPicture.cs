using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Drawing;
using MomentArm.Exam;
using MomentArm.Prescribing;

namespace MomentArm.Web.Pages.Exam;

/// <summary>Draws how a strength test is lain or sat in, on this person's body. What the body rests on is for the picture only.</summary>
public static class TestPicture
{
    private const double SeatM = 0.43;

    /// <summary>The test pose with the tested side colored.</summary>
    public static Picture Of(PersonalLoads loads, StrengthSetUp test, Side side)
    {
        ArgumentNullException.ThrowIfNull(loads);
        ArgumentNullException.ThrowIfNull(test);
        var movement = new Movement
        {
            Frames = [test.Pose with { Contacts = RestsOn(test.Orientation) }],
            Props = [test.Orientation == Orientation.Upright ? new Prop(PropKind.Chair, null, null, SeatM) : new Prop(PropKind.Mat, null, null, 0)],
            Loads = [],
            View = ViewKind.Side,
        };
        return Pictures.Still(loads.Model, loads.Points, movement, side, 0, PictureOptions.Usual);
    }

    /// <summary>The pose of a muscle length test near a usual reading, with the tested side colored; null where no figure can be drawn.</summary>
    public static Picture? Of(PersonalLoads loads, Measure measure, Side side)
    {
        ArgumentNullException.ThrowIfNull(loads);
        ArgumentNullException.ThrowIfNull(measure);
        if (measure.Strength is { } strength)
            return Of(loads, strength, side);
        if (measure.Length is not { } length)
            return null;
        var usual = (measure.SoftRange.Low + measure.SoftRange.High) / 2;
        var movement = new Movement
        {
            Frames = [length.Pose with { Working = At(length.Tested, length.Measured, usual), Contacts = RestsOn(length.Orientation) }],
            Props = [length.Orientation == Orientation.Upright ? new Prop(PropKind.Chair, null, null, SeatM) : new Prop(PropKind.Mat, null, null, 0)],
            Loads = [],
            View = ViewKind.Side,
        };
        return Pictures.Still(loads.Model, loads.Points, movement, side, 0, PictureOptions.Usual);
    }

    private static LimbAngles At(LimbAngles limb, JointAction measured, double reading) => measured switch
    {
        JointAction.HipFlexion => limb with { HipFlexion = reading },
        JointAction.HipExtension => limb with { HipFlexion = -reading },
        JointAction.HipAbduction => limb with { HipAbduction = reading },
        JointAction.HipAdduction => limb with { HipAbduction = -reading },
        JointAction.KneeFlexion => limb with { KneeFlexion = reading },
        JointAction.AnkleDorsiflexion => limb with { AnkleDorsiflexion = reading },
        _ => limb,
    };

    private static ImmutableArray<SurfaceContact> RestsOn(Orientation orientation) => orientation switch
    {
        Orientation.Upright => [Seat("sitBone", Limb.Working), Seat("sitBone", Limb.Other), Seat("thighBack", Limb.Working), Seat("thighBack", Limb.Other)],
        Orientation.SideLyingOnOther => [Floor("trochanter", Limb.Other), Floor("shoulderOuter", Limb.Other), Floor("kneeOuter", Limb.Other)],
        Orientation.SideLyingOnWorking => [Floor("trochanter", Limb.Working), Floor("shoulderOuter", Limb.Working)],
        Orientation.Supine or Orientation.Prone => [],
    };

    private static SurfaceContact Seat(string point, Limb limb) => new(point, limb, SurfaceKind.Seat, SeatM, true);

    private static SurfaceContact Floor(string point, Limb limb) => new(point, limb, SurfaceKind.Floor, 0, true);
}
