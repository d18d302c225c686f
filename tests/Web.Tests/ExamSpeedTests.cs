using System.Diagnostics;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
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
        await AddEarlierVisitsAsync(made, 49);
        var browser = await made.App.SignedInBrowserAsync();
        var path = $"/patients/{made.Patient.Id}/exam";
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

    /// <summary>Visits before today's with twenty readings each.</summary>
    private static async Task AddEarlierVisitsAsync(ExamCase made, int count)
    {
        var contexts = made.App.Services.GetRequiredService<IDbContextFactory<RecordsContext>>();
        await using var db = (await contexts.CreateDbContextAsync()).ActAs(made.Ada);
        await using var transaction = await db.Database.BeginTransactionAsync();
        await db.Visits.Where(v => v.Id == made.Visit.Id).ExecuteUpdateAsync(v => v.SetProperty(row => row.Number, count + 1));
        var measures = made.Desk.Content.Exam.Measures.Where(m => m.Sided).Take(10).ToArray();
        for (var n = 1; n <= count; n++)
        {
            var visit = new Visit
            {
                ClinicId = made.Ada.ClinicId, Id = Guid.CreateVersion7(), EpisodeId = made.Episode.Id, Day = made.Visit.Day.AddDays(n - count - 1), Number = n,
            };
            db.Visits.Add(visit);
            foreach (var measure in measures)
            {
                foreach (var side in Enum.GetValues<Side>())
                    db.Measurements.Add(MeasurementRow.From(
                        new Measurement { MeasureId = measure.Id, Side = side, Trials = [(measure.SoftRange.Low + measure.SoftRange.High) / 2] },
                        made.Ada.ClinicId, visit.Id, Guid.CreateVersion7(), DateTime.UnixEpoch));
            }
        }

        await db.SaveChangesAsync();
        await transaction.CommitAsync();
    }
}
