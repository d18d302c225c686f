using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Web.Pages.Designer;
using MomentArm.Web.Pages.Library;

namespace MomentArm.Web.Designer;

/// <summary>Measured alone: what others do at the same time would count as well.</summary>
[CollectionDefinition(nameof(MeasuredAlone), DisableParallelization = true)]
public sealed class MeasuredAlone;

[Collection(nameof(MeasuredAlone))]
public sealed class DesignSpeedTests
{
    private const double MostMilliseconds = 100;

    [Fact]
    public void Every_shipped_form_is_computed_within_a_tenth_of_a_second_of_one_core()
    {
        var folder = Path.Combine(House.Root, "content");
        var content = ContentLibrary.Read(folder);
        var (reference, figure) = (new ReferenceLoads(content), content.Body.Build(new Physique()));
        foreach (var exercise in content.Exercises)
        {
            var form = ShippedForms.Read(content, folder, exercise.Id)!;

            // The core's own time, so that other programs on the machine don't count; the first tries still compile the code.
            var best = double.PositiveInfinity;
            for (var tries = 0; tries < 8 && best > MostMilliseconds; tries++)
            {
                var before = Environment.CpuUsage.TotalTime;
                DesignFigures.Of(form, form.Exercise.Poses.Count - 1, content, reference, figure);
                best = Math.Min(best, (Environment.CpuUsage.TotalTime - before).TotalMilliseconds);
            }

            TestContext.Current.SendDiagnosticMessage(FormattableString.Invariant($"{exercise.Id} {best:0.0} ms"));
            Assert.True(best <= MostMilliseconds, FormattableString.Invariant($"{exercise.Id}: {best:0.0} ms"));
        }
    }
}
