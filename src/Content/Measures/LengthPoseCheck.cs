using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Content;

/// <summary>Replays every muscle length test on a body of no one in particular, so that one that cannot be replayed is told at once.</summary>
internal static class LengthPoseCheck
{
    internal static void Check(BodyContent body, IEnumerable<Measure> measures, FaultList faults)
    {
        var muscles = body.MusclesOf(body.Build(new Physique()));
        foreach (var measure in measures)
        {
            if (measure.Length is not { } length)
                continue;
            try
            {
                var middle = (measure.SoftRange.Low + measure.SoftRange.High) / 2;
                LengthLimits.For(muscles, [length.Replay(measure, Side.Right, middle, 0, LimitBasis.Tested)]);
            }
            catch (ArgumentException error)
            {
                faults.Add(
                    $"measures/{measure.Id}.json", null, "length.measured", error.Message.Split(" (Parameter", 2)[0],
                    "Name a joint that the group crosses.");
            }
        }
    }
}
