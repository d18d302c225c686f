using Microsoft.Extensions.DependencyInjection;
using MomentArm.Body;
using MomentArm.Prescribing;
using MomentArm.Web.Pages.Program;

namespace MomentArm.Web;

public sealed class ProgramBenchTests
{
    [Fact]
    public async Task A_draft_acts_on_the_weak_hip_on_its_side_and_the_finding_counts_as_covered()
    {
        await using var app = new ClinicApp();
        var (made, bench) = await BenchAsync(app);
        Assert.True(bench.StartFromDraft() > 0);
        var item = bench.Plan.Items[0].Item;
        Assert.Equal(Side.Left, item.WorkingSide);
        var patientCase = (await made.Desk.LoadAsync(made.Who, made.Patient.Id))!;
        Assert.NotEmpty(bench.Covers(patientCase.Accepted[0]));
        bench.Undo();
        Assert.Empty(bench.Plan.Items);
        Assert.Equal(["No exercise chosen yet."], bench.Hints);
    }

    [Fact]
    public async Task A_heavier_weight_asks_more_and_the_weaker_side_is_asked_more_of_its_capacity()
    {
        await using var app = new ClinicApp();
        var (_, bench) = await BenchAsync(app);
        var entry = bench.Add(bench.Candidates.First(c => c.Exercise.Id == "seated-knee-extension"));
        LoadShare With(double kilograms) => bench.ShareOf(entry.Item with { Dose = entry.Item.Dose with { WeightKg = kilograms } }, Side.Left)!;
        var (light, heavy) = (With(0), With(4));

        // By hand: 4 kg at the ankle, some 0.4 m below the knee axis, adds about 4 * 9.81 * 0.4 = 16 N m with the shank level.
        Assert.InRange(heavy.Demand - light.Demand, 12, 20);
        var clam = bench.Add(bench.Candidates.First(c => c.Exercise.Id == "clam")).Item;
        Assert.True(bench.ShareOf(clam, Side.Left)!.Middle > bench.ShareOf(clam with { WorkingSide = Side.Right }, Side.Right)!.Middle);
        Assert.Equal([Side.Left], bench.SidesOf(clam));
        Assert.Equal([Side.Right, Side.Left], bench.SidesOf(clam.With(WorkChoice.RightThenLeft)));
    }

    [Fact]
    public async Task Both_sides_take_longer_and_the_stored_share_is_that_of_the_side_asked_most()
    {
        await using var app = new ClinicApp();
        var (_, bench) = await BenchAsync(app);
        var entry = bench.Add(bench.Candidates.First(c => c.Exercise.Id == "clam"));
        var one = bench.Minutes;
        bench.Take(bench.Plan.Changed(entry.Key, item => item.With(WorkChoice.RightThenLeft)));
        Assert.True(bench.Minutes > 1.7 * one);
        var item = bench.Plan.Items[0].Item;
        var most = new[] { Side.Left, Side.Right }.Max(side => bench.ShareOf(item, side)!.Middle);
        Assert.Equal(most, bench.ToProgram().Items[0].LoadShare!.Middle);
    }

    [Fact]
    public async Task The_hint_about_numbers_begins_at_five_and_blocks_nothing()
    {
        await using var app = new ClinicApp();
        var (_, bench) = await BenchAsync(app);
        foreach (var candidate in bench.Candidates.Take(4))
            bench.Add(candidate);
        Assert.DoesNotContain(bench.Hints, h => h.Contains("Two to four", StringComparison.Ordinal));
        bench.Add(bench.Candidates[4]);
        Assert.Contains(bench.Hints, h => h.StartsWith("5 exercises. Two to four", StringComparison.Ordinal));
        bench.Add(bench.Candidates[5]);
        Assert.Equal(6, bench.Plan.Items.Length);
    }

    [Fact]
    public async Task What_is_not_at_home_counts_against_an_exercise_but_hides_none()
    {
        await using var app = new ClinicApp();
        var (_, bench) = await BenchAsync(app);
        Assert.All(bench.Candidates, c => Assert.Empty(c.Obstacles));
        bench.Take(bench.Plan with { Agreed = bench.Plan.Agreed with { Owned = [Equipment.Mat] } });
        var step = bench.Candidates.First(c => c.Exercise.Id == "lateral-step-down");
        Assert.Contains("Needs a step.", step.Obstacles);
        Assert.Equal(app.Services.GetRequiredService<Content.ContentLibrary>().Exercises.Count, bench.Candidates.Length);
    }

    [Fact]
    public async Task Moving_and_the_usual_order_keep_every_item()
    {
        await using var app = new ClinicApp();
        var (_, bench) = await BenchAsync(app);
        var keys = new[] { "sit-to-stand", "clam", "hamstring-strap-stretch" }
            .Select(id => bench.Add(bench.Candidates.First(c => c.Exercise.Id == id)).Key).ToArray();
        bench.Take(bench.Plan.Moved(keys[2], -1));
        Assert.Equal([keys[0], keys[2], keys[1]], bench.Plan.Items.Select(i => i.Key));
        Assert.Same(bench.Plan, bench.Plan.Moved(keys[0], -1));
        bench.Sort();
        Assert.Equal([keys[2], keys[1], keys[0]], bench.Plan.Items.Select(i => i.Key));
    }

    [Fact]
    public async Task A_draft_is_read_back_as_it_was_kept_and_damage_reads_as_nothing()
    {
        await using var app = new ClinicApp();
        var made = await ProgramCase.CreateAsync(app);
        var draft = new ProgramDraft { BasedOn = Guid.NewGuid(), Reason = "why", Program = made.Program() };
        var read = ProgramDraft.Read(draft.Write())!;
        Assert.Equal((draft.BasedOn, draft.Reason), (read.BasedOn, read.Reason));
        Assert.True(ProgramDraft.Same(draft.Program, read.Program));
        Assert.False(ProgramDraft.Same(draft.Program, made.Program(6)));
        Assert.Null(ProgramDraft.Read("{\"basedOn\":"));
        Assert.Null(ProgramDraft.Read("[]"));
    }

    [Theory]
    [InlineData(0, 10, null, "sets")]
    [InlineData(3, 201, null, "repetitions")]
    [InlineData(3, 10, 10, "upper repetitions")]
    [InlineData(3, 10, 12, null)]
    public void A_dose_out_of_range_is_named(int sets, int repetitions, int? to, string? named)
    {
        var fault = DoseFaults.Of(new Dose { Sets = sets, Repetitions = repetitions, RepetitionsTo = to, DaysPerWeek = 3 });
        if (named is null)
            Assert.Null(fault);
        else
            Assert.Contains(named, fault, StringComparison.Ordinal);
    }

    private static async Task<(ProgramCase Made, ProgramBench Bench)> BenchAsync(ClinicApp app)
    {
        var made = await ProgramCase.CreateAsync(app);
        var patientCase = (await made.Desk.LoadAsync(made.Who, made.Patient.Id))!;
        return (made, new ProgramBench(patientCase, made.Desk, Plan.From(null)));
    }
}
