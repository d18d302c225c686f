namespace MomentArm.Web.Pages.Designer;

/// <summary>The fields that hold something that can't be taken.</summary>
public sealed class FieldFaults
{
    private readonly HashSet<string> fields = [];

    public bool Any => fields.Count > 0;

    public void Tell(string field, bool faulty)
    {
        if (faulty)
            fields.Add(field);
        else
            fields.Remove(field);
    }

    public void Clear() => fields.Clear();
}
