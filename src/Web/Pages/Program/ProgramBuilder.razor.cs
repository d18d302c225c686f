using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Authorization;
using MomentArm.Exam;
using MomentArm.Prescribing;
using MomentArm.Records;
using MomentArm.Web.Account;
using MomentArm.Web.Clinic;
using MomentArm.Web.Pages.People;
using MomentArm.Web.Parts;

namespace MomentArm.Web.Pages.Program;

/// <summary>The live program builder: keeps what is changed as a draft, and saves it as a new version.</summary>
public sealed partial class ProgramBuilder : ComponentBase, IAsyncDisposable
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(700);

    private readonly HashSet<string> faults = [];
    private readonly Dictionary<Guid, ProgramItemCard> cards = [];
    private CancellationTokenSource keeping = new();
    private Acting who = null!;
    private PatientCase? patientCase;
    private ProgramBench? bench;
    private HomeProgram? saved;
    private Guid? basedOn;
    private string? reason;
    private string? restored;
    private string? stopped;
    private string? said;
    private bool busy;
    private bool unkept;
    private SaveOutcome<ProgramVersion>.Conflict? conflict;
    private (Tone Tone, string Title, string Text)? message;
    private ElementReference title;
    private Func<ValueTask>? focus;

    [Parameter, EditorRequired]
    public Guid PatientId { get; set; }

    [CascadingParameter]
    private Task<AuthenticationState> SignedIn { get; set; } = null!;

    [Inject]
    private CaseDesk Desk { get; set; } = null!;

    [Inject]
    private ProgramDesk Programs { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    private ProgramItemCard Card
    {
        set
        {
            if (value is not null)
                cards[value.Entry.Key] = value;
        }
    }

    private bool Dirty => bench is not null && !ProgramDraft.Same(saved, bench.ToProgram());

    private string Summary => bench!.Plan.Items.Length switch
    {
        0 => "Program, no exercise yet",
        1 => $"Program, 1 exercise, {MinutesText}",
        var many => FormattableString.Invariant($"Program, {many} exercises, {MinutesText}"),
    };

    private string MinutesText
    {
        get
        {
            var limit = bench!.Plan.Agreed.Minutes is { } minutes ? FormattableString.Invariant($" of {minutes}") : "";
            return FormattableString.Invariant($"{bench.Minutes:0}{limit} min, {bench.Plan.DaysPerWeek} days a week");
        }
    }

    private string State => !Dirty
        ? basedOn is null ? "" : "Saved."
        : unkept ? "Changed." : "Changed; kept as your draft.";

    public async ValueTask DisposeAsync()
    {
        await keeping.CancelAsync();
        keeping.Dispose();
        if (unkept)
            await KeepAsync();
    }

    protected override async Task OnInitializedAsync()
    {
        who = (await SignedIn).User.Acting();
        await LoadAsync();
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (focus is { } then)
        {
            focus = null;
            await then();
        }
    }

    private async Task LoadAsync()
    {
        patientCase = await Desk.LoadAsync(who, PatientId);
        if (patientCase is null || patientCase.Gate.PrescribingStopped)
        {
            (bench, stopped) = (null, patientCase is null ? "This clinic has no such patient." : ProgramDesk.StoppedSentence);
            return;
        }

        var latest = patientCase.Latest;
        (saved, basedOn) = (latest?.ToProgram(), latest?.Id);
        bench = new ProgramBench(patientCase, Desk, Plan.From(saved));
        await RestoreAsync(latest);
    }

    private async Task RestoreAsync(ProgramVersion? latest)
    {
        var row = await Desk.Stores.Drafts.GetAsync(who, ProgramDraft.Key(patientCase!.Episode.Id));
        if (row is null || ProgramDraft.Read(row.Text) is not { } draft || ProgramDraft.Same(saved, draft.Program))
            return;
        bench = new ProgramBench(patientCase, Desk, Plan.From(draft.Program));
        (reason, restored) = (draft.Reason, new ClinicTime(patientCase.Clinic).Stamp(row.UpdatedAtUtc));
        if (draft.BasedOn != latest?.Id && latest is not null)
            conflict = new SaveOutcome<ProgramVersion>.Conflict(latest, latest.CreatedByName, latest.CreatedAtUtc);
    }

    private void Change(Func<Plan, Plan> change)
    {
        bench!.Take(change(bench.Plan));
        message = null;
        KeepSoon();
    }

    private void TakeReason(string? typed)
    {
        reason = typed;
        KeepSoon();
    }

    private void TakeFault((string Field, bool Faulty) fault)
    {
        if (fault.Faulty)
            faults.Add(fault.Field);
        else
            faults.Remove(fault.Field);
    }

    private void Add(Candidate candidate)
    {
        bench!.Add(candidate);
        said = FormattableString.Invariant($"{candidate.Exercise.Name} added. {MinutesText}.");
        message = null;
        KeepSoon();
    }

    private void Move(Guid key, int by)
    {
        Change(plan => plan.Moved(key, by));
        focus = () => cards.TryGetValue(key, out var card) ? card.FocusAfterMoveAsync(by) : title.FocusAsync();
    }

    private void Remove(PlanItem entry)
    {
        Change(plan => plan.Without(entry.Key));
        faults.RemoveWhere(field => field.StartsWith(entry.Key.ToString(), StringComparison.Ordinal));
        said = bench!.NameOf(entry.Item) + " removed.";
        focus = () => title.FocusAsync();
    }

    private void StartFromDraft()
    {
        var count = bench!.StartFromDraft();
        said = count == 0
            ? "No exercise acts on the accepted findings under these limits; choose by hand."
            : FormattableString.Invariant($"Draft of {count}: for each finding the first that fits. Change what you like.");
        KeepSoon();
    }

    private void Sort()
    {
        bench!.Sort();
        said = "In the usual order.";
        KeepSoon();
    }

    private void Undo()
    {
        bench!.Undo();
        faults.Clear();
        said = "Taken back.";
        KeepSoon();
    }

    private async Task SaveAsync(bool teach)
    {
        if (busy)
            return;
        if (faults.Count > 0)
        {
            message = (Tone.Stop, "Not saved", "A field holds a number out of range. Mend the marked fields first.");
            return;
        }

        busy = true;
        try
        {
            var outcome = Dirty ? await Programs.SaveAsync(who, PatientId, bench!.ToProgram(), reason, basedOn) : null;
            if (outcome is null or SaveOutcome<ProgramVersion>.Saved)
                TakeSaved((outcome as SaveOutcome<ProgramVersion>.Saved)?.Value, teach);
            else
                await TurnedAwayAsync(outcome);
        }
        finally
        {
            busy = false;
        }
    }

    private void TakeSaved(ProgramVersion? version, bool teach)
    {
        if (version is not null)
        {
            (saved, basedOn, reason, restored, conflict) = (version.ToProgram(), version.Id, null, null, null);
            message = (Tone.Good, FormattableString.Invariant($"Saved as version {version.Number}"), "Teach it, then hand it over.");
        }

        keeping.Cancel();
        unkept = false;
        if (!teach)
            return;
        if (basedOn is null)
            message = (Tone.Watch, "Nothing to teach yet", "Choose at least one exercise.");
        else
            Navigation.NavigateTo($"/patients/{PatientId}/teach");
    }

    private async Task TurnedAwayAsync(SaveOutcome<ProgramVersion> outcome)
    {
        if (outcome is SaveOutcome<ProgramVersion>.Conflict theirs)
        {
            conflict = theirs;
            message = (Tone.Stop, "Not saved", theirs.Sentence);
        }
        else if (outcome is SaveOutcome<ProgramVersion>.Refused refused)
        {
            message = (Tone.Stop, "Not saved", refused.Sentence);
        }

        await KeepAsync();
    }

    private async Task TakeTheirsAsync()
    {
        await DropDraftAsync();
        message = null;
    }

    private async Task KeepMineAsync()
    {
        (basedOn, saved) = (conflict!.Theirs?.Id, conflict.Theirs?.ToProgram());
        conflict = null;
        message = (Tone.Watch, "Yours goes on top", "Saving makes a new version after theirs. Say why.");
        await KeepAsync();
    }

    private async Task DropDraftAsync()
    {
        await keeping.CancelAsync();
        unkept = false;
        await Desk.Stores.Drafts.RemoveAsync(who, ProgramDraft.Key(patientCase!.Episode.Id));
        (restored, conflict, reason) = (null, null, null);
        faults.Clear();
        await LoadAsync();
    }

    /// <summary>Keeps the draft once the typing pauses.</summary>
    private void KeepSoon()
    {
        unkept = true;
        keeping.Cancel();
        keeping.Dispose();
        keeping = new CancellationTokenSource();
        _ = KeepAfterPauseAsync(keeping.Token);
    }

    private async Task KeepAfterPauseAsync(CancellationToken cancelled)
    {
        try
        {
            await Task.Delay(Pause, cancelled);
            await InvokeAsync(async () =>
            {
                await KeepAsync();
                StateHasChanged();
            });
        }
        catch (OperationCanceledException)
        {
            // Another change came first; it brings its own pause.
        }
    }

    private async Task KeepAsync()
    {
        var key = ProgramDraft.Key(patientCase!.Episode.Id);
        if (Dirty)
        {
            var draft = new ProgramDraft { BasedOn = basedOn, Reason = reason, Program = bench!.ToProgram() };
            await Desk.Stores.Drafts.SaveAsync(who, key, draft.Write());
        }
        else
        {
            await Desk.Stores.Drafts.RemoveAsync(who, key);
        }

        unkept = false;
    }
}
