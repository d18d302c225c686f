using MomentArm.Content;

namespace MomentArm.Web.Pages.Designer;

/// <summary>The form that is being made, with the way back and forth.</summary>
public sealed class Design(OwnFormFile form)
{
    private const int MostSteps = 200;
    private readonly List<OwnFormFile> before = [];
    private readonly Stack<OwnFormFile> after = new();
    private string? joined;

    /// <summary>As it stands.</summary>
    public OwnFormFile Form { get; private set; } = form;

    public bool CanUndo => before.Count > 0;

    public bool CanRedo => after.Count > 0;

    /// <summary>Takes a change.</summary>
    /// <param name="changed">The form after it.</param>
    /// <param name="joins">Changes one after the other that say the same here are taken back in one step; null stands alone.</param>
    public void Take(OwnFormFile changed, string? joins = null)
    {
        if (ReferenceEquals(changed, Form))
            return;
        if (joins is null || joins != joined || before.Count == 0)
        {
            before.Add(Form);
            if (before.Count > MostSteps)
                before.RemoveAt(0);
        }

        joined = joins;
        after.Clear();
        Form = changed;
    }

    /// <summary>Ends a row of joined changes.</summary>
    public void Rest() => joined = null;

    public void Undo()
    {
        if (!CanUndo)
            return;
        after.Push(Form);
        Form = before[^1];
        before.RemoveAt(before.Count - 1);
        joined = null;
    }

    public void Redo()
    {
        if (!CanRedo)
            return;
        before.Add(Form);
        Form = after.Pop();
        joined = null;
    }
}
