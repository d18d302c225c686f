using System.Diagnostics;
using MomentArm.Body;
using MomentArm.Exam;
using MomentArm.Records;

namespace MomentArm.Web;

/// <summary>How long the exam page takes on the server.</summary>
public sealed class ExamSpeedTests(ITestOutputHelper told)
{
    /// <summary>Aim: the page of an episode with fifty visits in a tenth of a second.</summary>
    private const double MostMilliseconds = 100;

    [Fact]
    public async Task The_exam_page_of_fifty_visits_takes_a_tenth_of_a_second_at_most()
    {
        await using var made = await ExamCase.CreateAsync();
        var latest = await AddLaterVisitsAsync(made, 49);
        var browser = await made.App.SignedInBrowserAsync();
        var path = $"/patients/{made.Patient.Id}/exam?visit={latest.Id}&correct=true";
        Assert.Contains("Exam, visit 50", await browser.GetStringAsync(path), StringComparison.Ordinal);
        var best = double.MaxValue;
        for (var i = 0; i < 12; i++)
        {
            var watch = Stopwatch.StartNew();
            await browser.GetStringAsync(path);
            best = Math.Min(best, watch.Elapsed.TotalMilliseconds);
        }

        told.WriteLine(FormattableString.Invariant($"Exam page, 50 visits: {best:0} ms."));
        Assert.True(best <= MostMilliseconds, FormattableString.Invariant($"{best:0} ms"));
    }

    /// <summary>Visits after the first with eight readings each.</summary>
    private static async Task<Visit> AddLaterVisitsAsync(ExamCase made, int count)
    {
        var (visits, latest) = (made.Desk.Stores.Visits, made.Visit);
        var measures = made.Desk.Content.Exam.Measures.Where(m => m.Sided && m.Strength is null).Take(4).ToArray();
        for (var n = 1; n <= count; n++)
        {
            latest = (await visits.OpenAsync(made.Ada, made.Episode.Id, made.Visit.Day.AddDays(n))).Require();
            foreach (var measure in measures)
            {
                foreach (var side in Enum.GetValues<Side>())
                {
                    var one = new Measurement { MeasureId = measure.Id, Side = side, Trials = [(measure.SoftRange.Low + measure.SoftRange.High) / 2] };
                    (await visits.SaveMeasurementAsync(made.Ada, latest.Id, one, null)).Require();
                }
            }
        }

        return latest;
    }
}
