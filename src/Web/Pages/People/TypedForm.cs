using System.Text.Json;

namespace MomentArm.Web.Pages.People;

/// <summary>One field of a form, as typed.</summary>
/// <param name="Name">Its name in the form.</param>
/// <param name="Label">What the page calls it.</param>
/// <param name="Read">Gives what stands in it.</param>
/// <param name="Write">Puts something in it.</param>
public sealed record TypedField(string Name, string Label, Func<string?> Read, Action<string?> Write)
{
    /// <summary>What stands in it, without outer spaces; empty for nothing.</summary>
    public string Text => (Read() ?? "").Trim();
}

/// <summary>A form that people edit: what is typed, what it was when it was read, and which version that was.</summary>
public interface ITypedForm
{
    /// <summary>Row version of what was read.</summary>
    string? Version { get; set; }

    /// <summary>What the fields held when they were read, as JSON.</summary>
    string? AsRead { get; set; }

    /// <summary>The fields in the order of the page.</summary>
    IReadOnlyList<TypedField> Fields();
}

/// <summary>A field that two people changed differently.</summary>
/// <param name="Label">The field.</param>
/// <param name="Theirs">What now stands.</param>
/// <param name="Mine">What was typed here.</param>
public sealed record Clash(string Label, string Theirs, string Mine);

/// <summary>What became of a form after someone else had saved first.</summary>
/// <param name="Clashes">Fields both changed; the form keeps what was typed here.</param>
/// <param name="TakenOver">Fields only the other changed; the form now holds theirs.</param>
public sealed record Merged(IReadOnlyList<Clash> Clashes, IReadOnlyList<Clash> TakenOver);

/// <summary>Keeps both people's work when they edit the same thing.</summary>
public static class TypedForms
{
    /// <summary>Notes in the form what its fields hold now, as what was read.</summary>
    public static void MarkRead(this ITypedForm form, Guid version)
    {
        ArgumentNullException.ThrowIfNull(form);
        form.Version = version.ToString("D");
        form.AsRead = JsonSerializer.Serialize(form.Fields().Select(f => f.Text).ToArray());
    }

    /// <summary>
    /// Brings what now stands into the form: fields not touched here take it over, fields touched here keep what was typed.
    /// The next save of the form is then based on what now stands.
    /// </summary>
    public static Merged TakeIn(this ITypedForm mine, ITypedForm theirs, Guid theirVersion)
    {
        ArgumentNullException.ThrowIfNull(mine);
        ArgumentNullException.ThrowIfNull(theirs);
        var read = ReadOf(mine);
        List<Clash> clashes = [], takenOver = [];
        var pairs = mine.Fields().Zip(theirs.Fields()).ToArray();
        for (var i = 0; i < pairs.Length; i++)
        {
            var (own, other) = pairs[i];
            if (own.Text == other.Text)
                continue;
            var wasRead = i < read.Length ? read[i] : null;
            if (own.Text == wasRead)
            {
                takenOver.Add(new Clash(own.Label, other.Text, own.Text));
                own.Write(other.Text);
            }
            else if (other.Text != wasRead)
            {
                clashes.Add(new Clash(own.Label, other.Text, own.Text));
            }
        }

        theirs.MarkRead(theirVersion);
        (mine.Version, mine.AsRead) = (theirs.Version, theirs.AsRead);
        return new Merged(clashes, takenOver);
    }

    private static string?[] ReadOf(ITypedForm form)
    {
        try
        {
            return form.AsRead is null ? [] : JsonSerializer.Deserialize<string?[]>(form.AsRead) ?? [];
        }
        catch (JsonException)
        {
            return [];
        }
    }
}
