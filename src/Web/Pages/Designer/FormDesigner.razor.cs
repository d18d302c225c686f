using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.JSInterop;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Exam;
using MomentArm.Records;
using MomentArm.Web.Account;
using MomentArm.Web.Clinic;
using MomentArm.Web.Pages.Library;
using MomentArm.Web.Pages.People;
using MomentArm.Web.Parts;

namespace MomentArm.Web.Pages.Designer;

/// <summary>The live designer: computes at every change, keeps what is typed as a draft, saves a version when nothing is wrong.</summary>
public sealed partial class FormDesigner : ComponentBase, IAsyncDisposable
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(500);

    private readonly FieldFaults fieldFaults = new();
    private CancellationTokenSource keeping = new();
    private DotNetObjectReference<FormDesigner>? self;
    private ElementReference stage;
    private bool watched;
    private Acting who = null!;
    private Design? design;
    private DesignFigures? figures;
    private int? shown = 0;
    private ClinicLibrary library = null!;
    private string draftName = "new";
    private Guid? basedOn;
    private ClinicForm? saved;
    private string? restored;
    private (string Name, string Why)? unreadable;
    private string? stopped;
    private string? said;
    private bool busy;
    private bool unkept;
    private SaveOutcome<ClinicForm>.Conflict? conflict;
    private (Tone Tone, string Title, string Text)? message;

    /// <summary>The form to change; null for a new one.</summary>
    [Parameter]
    public string? FormId { get; set; }

    /// <summary>What a new form starts from; null for a neutral stance.</summary>
    [Parameter]
    public string? From { get; set; }

    /// <summary>A kept draft to go on with.</summary>
    [Parameter]
    public string? DraftName { get; set; }

    [CascadingParameter]
    private Task<AuthenticationState> SignedIn { get; set; } = null!;

    [Inject]
    private FormDesk Forms { get; set; } = null!;

    [Inject]
    private CaseDesk Desk { get; set; } = null!;

    [Inject]
    private ReferenceLoads Reference { get; set; } = null!;

    [Inject]
    private ExercisePictures Pictures { get; set; } = null!;

    [Inject]
    private IJSRuntime Script { get; set; } = null!;

    private int PoseIndex => Math.Min(shown ?? int.MaxValue, design!.Form.Exercise.Poses.Count - 1);

    private PoseFile Pose => design!.Form.Exercise.Poses[PoseIndex];

    private string State => unkept ? "Changed." : saved is not null && restored is null && conflict is null && !design!.CanUndo
        ? FormattableString.Invariant($"Saved as version {saved.Number}.")
        : design!.CanUndo || restored is not null ? "Kept as your draft." : "";

    /// <summary>Called by the page's script while a grip is pulled.</summary>
    [JSInvokable]
    public Task PullAsync(string grip, double dx, double dy) => InvokeAsync(() =>
    {
        if (figures?.Posed is not { } posed || PoseHandle.All.FirstOrDefault(h => h.Key == grip) is not { } handle || !double.IsFinite(dx + dy))
            return;
        SetPose(handle.Pull(Pose, posed, Pictures.Figure, Math.Clamp(dx, -100, 100), Math.Clamp(dy, -100, 100)), "pull " + grip);
        StateHasChanged();
    });

    /// <summary>Called when a grip is let go: the next pull is a step of its own for Undo.</summary>
    [JSInvokable]
    public Task LetGoAsync() => InvokeAsync(() =>
    {
        if (design is null || shown is null)
            return;
        design.Rest();
        StateHasChanged();
    });

    /// <summary>Called for an arrow key on a grip.</summary>
    [JSInvokable]
    public Task NudgeAsync(string grip, double degrees) => InvokeAsync(() =>
    {
        if (design is null || PoseHandle.All.FirstOrDefault(h => h.Key == grip) is not { } handle || !double.IsFinite(degrees))
            return;
        SetPose(handle.Main.Set(Pose, Math.Round(handle.Main.Get(Pose)) + Math.Clamp(degrees, -10, 10)), "key " + grip);
        StateHasChanged();
    });

    /// <summary>Called for Ctrl+Z, with Shift the other way.</summary>
    [JSInvokable]
    public Task StepAsync(bool back) => InvokeAsync(() =>
    {
        Step(back);
        StateHasChanged();
    });

    public async ValueTask DisposeAsync()
    {
        await keeping.CancelAsync();
        keeping.Dispose();
        self?.Dispose();
        if (unkept)
            await KeepAsync();
    }

    protected override async Task OnInitializedAsync()
    {
        who = (await SignedIn).User.Acting();
        draftName = (FormId is null ? null : ClinicLibrary.FormOf(FormId)) ?? DraftName ?? (string.IsNullOrEmpty(From) ? "new" : "new-from-" + From);
        await LoadAsync(withDraft: true);
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (watched || design is null)
            return;
        watched = true;
        self = DotNetObjectReference.Create(this);
        await using var module = await Script.InvokeAsync<IJSObjectReference>("import", "/" + Assets["js/pose-drag.js"]);
        await module.InvokeVoidAsync("watch", stage, self);
    }

    private async Task LoadAsync(bool withDraft)
    {
        var (form, why) = await StartAsync();
        if (withDraft && await Forms.DraftAsync(who, draftName) is { } kept)
        {
            if (kept.Draft is { } draft)
            {
                var clinic = await Desk.Stores.Patients.ClinicAsync(who);
                (form, restored) = (draft.Form, new ClinicTime(clinic).Stamp(kept.AtUtc));
                if (draft.BasedOn != saved?.Id && saved is not null)
                    conflict = new SaveOutcome<ClinicForm>.Conflict(saved, saved.CreatedByName, saved.CreatedAtUtc);
            }
            else
            {
                unreadable = (kept.PutAside!, kept.Why!);
            }
        }

        library = await Desk.LibraryAsync(who);
        if (form is null)
        {
            stopped = why;
            return;
        }

        design = new Design(form);
        Compute();
    }

    private async Task<(OwnFormFile? Form, string? Why)> StartAsync()
    {
        if (FormId is null)
            return (await Forms.StartAsync(who, DraftName is null ? From : null), "There is no such form to start from.");
        saved = await Desk.Stores.Forms.LatestAsync(who, ClinicLibrary.FormOf(FormId));
        basedOn = saved?.Id;
        return saved is null
            ? (null, "This clinic has no such form.")
            : (FormDesk.Read(saved), "This form is written in a newer format than this program knows. It is kept as it is.");
    }

    private void Change(OwnFormFile changed, string? joins = null)
    {
        design!.Take(changed, joins);
        (message, said) = (null, null);
        Compute();
        KeepSoon();
    }

    private void SetPose(PoseFile pose, string? joins = null)
    {
        var exercise = design!.Form.Exercise;
        var at = PoseIndex;
        Change(design.Form with { Exercise = exercise with { Poses = [.. exercise.Poses.Select((p, i) => i == at ? pose : p)] } }, joins is null ? null : joins + shown);
    }

    private void Compute()
    {
        var before = figures?.Picture;
        if (shown is not null)
            shown = PoseIndex;
        figures = DesignFigures.Of(design!.Form, shown, Desk.Content, Reference, Pictures.Figure);
        if (figures.Picture is null && before is not null)
            figures = figures with { Picture = before };
    }

    private void Show(int? pose)
    {
        shown = pose;
        design!.Rest();
        Compute();
    }

    private void Step(bool back)
    {
        if (design is null || !(back ? design.CanUndo : design.CanRedo))
            return;
        if (back)
            design.Undo();
        else
            design.Redo();
        said = back ? "Taken back." : "Done again.";
        fieldFaults.Clear();
        Compute();
        KeepSoon();
    }

    private void Mirror()
    {
        SetPose(PoseMirror.Of(Pose));
        said = $"Working and other side changed places in the {Pose.Name} pose.";
    }

    private void TakePoses((ExerciseFile File, int Shown) change)
    {
        shown = change.Shown;
        Change(design!.Form with { Exercise = change.File });
        said = FormattableString.Invariant($"{change.File.Poses.Count} poses.");
    }

    private void SameEverywhere()
    {
        var (exercise, pose) = (design!.Form.Exercise, Pose);
        Change(design.Form with { Exercise = exercise with { Poses = [.. exercise.Poses.Select(p => p with { Contacts = pose.Contacts, Ties = pose.Ties })] } });
        said = "Every pose now touches and holds the same.";
    }

    private void SetExercise(ExerciseFile exercise) => Change(design!.Form with { Exercise = exercise });

    private void TakeFacts((ExerciseFile File, string? Joins) change) => Change(design!.Form with { Exercise = change.File }, change.Joins);

    private void CopyStart()
    {
        var exercise = design!.Form.Exercise;
        PoseFile[] poses = exercise.Poses.Count == 1 ? [exercise.Poses[0], exercise.Poses[0]] : [.. exercise.Poses];
        poses[^1] = poses[0] with { Name = "end" };
        Change(design.Form with { Exercise = exercise with { Poses = poses } });
        said = "The end is now as the start.";
    }
}
