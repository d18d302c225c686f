using MomentArm.Body;
using MomentArm.Drawing;
using MomentArm.Exam;
using MomentArm.Prescribing;

namespace MomentArm.Web.Pages.Exam;

/// <summary>Draws how a strength test is lain or sat in, on this person's body.</summary>
public static class TestPicture
{
    /// <summary>The test pose with the tested side colored.</summary>
    public static Picture Of(PersonalLoads loads, Measure measure, StrengthSetUp test, Side side)
    {
        ArgumentNullException.ThrowIfNull(loads);
        ArgumentNullException.ThrowIfNull(measure);
        ArgumentNullException.ThrowIfNull(test);
        var movement = new Movement
        {
            Frames = [test.Pose],
            Props = measure.Position == ExamPosition.Sitting ? [] : [new Prop(PropKind.Mat, null, null, 0)],
            Loads = [],
            View = ViewKind.Side,
        };
        return Pictures.Still(loads.Model, loads.Points, movement, side, 0, PictureOptions.Usual);
    }
}
