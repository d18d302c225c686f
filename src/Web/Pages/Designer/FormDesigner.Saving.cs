using Microsoft.AspNetCore.Components;
using MomentArm.Exam;
using MomentArm.Records;
using MomentArm.Web.Parts;

namespace MomentArm.Web.Pages.Designer;

/// <summary>Keeping and saving of the live designer.</summary>
public sealed partial class FormDesigner
{
    private async Task SaveAsync()
    {
        if (busy)
            return;
        if (fieldFaults.Any)
        {
            message = (Tone.Stop, "Not saved", "A field holds a number out of range. Mend the marked fields first.");
            return;
        }

        busy = true;
        try
        {
            switch (await Forms.SaveAsync(who, design!.Form, basedOn))
            {
                case SaveOutcome<ClinicForm>.Saved done:
                    await TakeSavedAsync(done.Value);
                    break;
                case SaveOutcome<ClinicForm>.Conflict met:
                    conflict = met;
                    await KeepAsync();
                    break;
                case SaveOutcome<ClinicForm>.Refused no:
                    await KeepAsync();
                    message = (Tone.Stop, "Not saved", no.Sentence);
                    break;
            }
        }
        finally
        {
            busy = false;
        }
    }

    private async Task TakeSavedAsync(ClinicForm row)
    {
        await keeping.CancelAsync();
        (saved, basedOn, restored, conflict, unkept) = (row, row.Id, null, null, false);
        await Forms.DropAsync(who, draftName);
        draftName = row.FormId;
        design = new Design(FormDesk.Read(row)!);
        Compute();
        message = (Tone.Good, "Saved", FormattableString.Invariant($"{row.Name} is in the library as version {row.Number}."));
    }

    private async Task DropDraftAsync()
    {
        await keeping.CancelAsync();
        (restored, unreadable, conflict, message, unkept) = (null, null, null, null, false);
        await Forms.DropAsync(who, draftName);
        await LoadAsync(withDraft: false);
    }

    private async Task TurnAsync()
    {
        if (busy || saved is null)
            return;
        busy = true;
        try
        {
            var why = await Forms.TurnAsync(who, saved);
            saved = await Desk.Stores.Forms.LatestAsync(who, saved.FormId) ?? saved;
            message = why is not null ? (Tone.Stop, "Not done", why)
                : saved.State == ClinicFormState.InUse ? (Tone.Good, "In use", $"{saved.Name} is offered in the library.")
                : (Tone.Good, "Retired", $"{saved.Name} is offered no more; programs that have it keep it.");
        }
        finally
        {
            busy = false;
        }
    }

    private void TakeTheirs()
    {
        if (conflict?.Theirs is not { } theirs || FormDesk.Read(theirs) is not { } form)
            return;
        (saved, basedOn, conflict) = (theirs, theirs.Id, null);
        Change(form);
        said = "Theirs is shown; Undo brings yours back.";
    }

    private void KeepMine()
    {
        (saved, basedOn, conflict) = (conflict?.Theirs, conflict?.Theirs?.Id, null);
        said = "Yours is shown; saving makes a version after theirs.";
        KeepSoon();
    }

    private void KeepSoon()
    {
        unkept = true;
        keeping.Cancel();
        keeping.Dispose();
        keeping = new CancellationTokenSource();
        var token = keeping.Token;
        _ = InvokeAsync(async () =>
        {
            try
            {
                await Task.Delay(Pause, token);
                await KeepAsync();
                StateHasChanged();
            }
            catch (OperationCanceledException)
            {
                // A newer change keeps itself.
            }
        });
    }

    private async Task KeepAsync()
    {
        await Forms.KeepAsync(who, draftName, new DesignDraft { BasedOn = basedOn, Form = design!.Form });
        unkept = false;
    }
}
