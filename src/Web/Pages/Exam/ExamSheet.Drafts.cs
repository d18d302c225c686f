using MomentArm.Exam;

namespace MomentArm.Web.Pages.Exam;

/// <summary>What is typed and not saved yet, kept as typed.</summary>
public sealed partial class ExamSheet
{
    private const string LineKey = "line";

    /// <summary>Text of the shorthand line that came back from a draft.</summary>
    public string Line { get; set; } = "";

    /// <summary>Where the typing of a visit's cells is kept.</summary>
    public static string DraftPrefix(Guid visitId) => $"visit/{visitId:D}/typed/";

    /// <summary>Keeps what stands in a cell, while it differs from what is saved.</summary>
    public async Task KeepAsync(CellKey key)
    {
        if (!cells.TryGetValue(key, out var cell))
            return;
        if (cell.IsOpen)
            await DraftAsync(key, cell.Typed);
        else
            await DropAsync(key);
    }

    /// <summary>Keeps what stands in the shorthand line.</summary>
    public Task KeepLineAsync() => Line.Trim().Length > 0
        ? desk.Stores.Drafts.SaveAsync(who, DraftPrefix(Record.Visit.Id) + LineKey, Line)
        : desk.Stores.Drafts.RemoveAsync(who, DraftPrefix(Record.Visit.Id) + LineKey);

    private async Task RestoreAsync()
    {
        var prefix = DraftPrefix(Record.Visit.Id);
        foreach (var draft in await desk.Stores.Drafts.ListAsync(who, prefix))
        {
            var name = draft.Key[prefix.Length..];
            if (name == LineKey)
                Line = draft.Text;
            else if (cells.Values.FirstOrDefault(c => c.Key.ElementId == name) is { } cell)
            {
                drafted.Add(cell.Key);
                Restore(cell, draft.Text);
            }
        }
    }

    private void Restore(SheetCell cell, string text)
    {
        cell.Type(text);
        var read = TypedEntry.Parse(text.Trim(), cell.Measure, cell.Key.Side, Context);
        if (cell.State == CellState.Typing && !read.Faults.IsEmpty)
            cell.Fault(read.Faults);
        else if (cell.State == CellState.Typing && !read.Questions.IsEmpty)
            cell.Ask(read.Questions);
    }

    private Task DraftAsync(CellKey key, string text)
    {
        drafted.Add(key);
        return desk.Stores.Drafts.SaveAsync(who, DraftKey(key), text);
    }

    private Task DropAsync(CellKey key) =>
        drafted.Remove(key) ? desk.Stores.Drafts.RemoveAsync(who, DraftKey(key)) : Task.CompletedTask;

    private string DraftKey(CellKey key) => DraftPrefix(Record.Visit.Id) + key.ElementId;
}
