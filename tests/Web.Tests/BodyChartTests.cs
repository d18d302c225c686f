using Microsoft.Extensions.DependencyInjection;
using MomentArm.Records;
using MomentArm.Web.Pages.BodyChart;

namespace MomentArm.Web;

public sealed class BodyChartTests
{
    [Fact]
    public async Task A_click_on_a_figure_is_a_mark_with_the_nearest_place_and_the_persons_own_side()
    {
        await using var made = await ExamCase.CreateAsync();
        var browser = await made.App.SignedInBrowserAsync();
        var figures = made.App.Services.GetRequiredService<ChartFigures>();
        var knee = figures.Places(ChartView.Front).Single(p => p.Key == "kneeFront/Right");
        // Facing us, the person's right is on our left.
        Assert.True(knee.X < figures.Places(ChartView.Front).Single(p => p.Key == "kneeFront/Left").X);
        Assert.True(
            figures.Places(ChartView.Back).Single(p => p.Key == "kneeBack/Right").X
            > figures.Places(ChartView.Back).Single(p => p.Key == "kneeBack/Left").X);
        await ClinicApp.SubmitAsync(browser, Path(made), "chart-mark", new()
        {
            ["feeling"] = "Pain", ["level"] = "6",
            ["Front.x"] = Px(knee.X * ChartFigures.Width), ["Front.y"] = Px(knee.Y * ChartFigures.Height),
        });
        var mark = Assert.Single(ChartMark.Of(await made.RecordAsync()));
        Assert.Equal("pain 6/10, front of the knee, right", mark.Words);
        var svg = await browser.GetStringAsync(ChartEndpoints.Path(made.Visit.Id, ChartView.Front));
        Assert.Contains("pain 6/10, front of the knee, right", svg, StringComparison.Ordinal);
        Assert.Contains("Body chart: pain 6/10", await browser.GetStringAsync($"/patients/{made.Patient.Id}/note"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_place_chosen_by_name_is_marked_and_removed_again_and_a_signed_visit_takes_none()
    {
        await using var made = await ExamCase.CreateAsync();
        var browser = await made.App.SignedInBrowserAsync();
        var byName = new Dictionary<string, string> { ["feeling"] = "Tingling", ["place"] = "Right/trochanter/Right" };
        await ClinicApp.SubmitAsync(browser, Path(made), "chart-mark", new(byName));
        var mark = Assert.Single(ChartMark.Of(await made.RecordAsync()));
        Assert.Equal("tingling, side of the hip, right", mark.Words);
        await ClinicApp.SubmitAsync(browser, Path(made), $"remove-{mark.Item}", new() { ["item"] = mark.Item, ["version"] = $"{mark.Version}" });
        Assert.Empty(ChartMark.Of(await made.RecordAsync()));

        var nowhere = await ClinicApp.SubmitAsync(browser, Path(made), "chart-mark", new() { ["feeling"] = "Pain", ["place"] = "Front/nowhere/Left" });
        Assert.Contains("nothing was marked", await nowhere.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_chart_of_another_clinic_is_not_found()
    {
        await using var made = await ExamCase.CreateAsync();
        var (patient, _, visit) = await made.AddVisitAsync(made.Stranger);
        var browser = await made.App.SignedInBrowserAsync();
        foreach (var path in (string[])[ChartEndpoints.Path(visit.Id, ChartView.Front), $"/patients/{patient.Id}/chart", "/visits/not-one/chart/front.svg"])
            Assert.Equal(System.Net.HttpStatusCode.NotFound, (await browser.GetAsync(path)).StatusCode);
    }

    private static string Path(ExamCase made) => $"/patients/{made.Patient.Id}/chart";

    private static string Px(double value) => ((int)Math.Round(value)).ToString(System.Globalization.CultureInfo.InvariantCulture);
}
