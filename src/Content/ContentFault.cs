using System.Globalization;
using System.Text;

namespace MomentArm.Content;

/// <summary>One thing wrong with a content file: where it is, what it is, how to mend it.</summary>
/// <param name="File">File path relative to the content folder.</param>
/// <param name="Line">Line, first = 1; null when unknown.</param>
/// <param name="Path">Place inside the file, such as frames[0].working.hipFlexionDeg; empty for the whole file.</param>
/// <param name="What">What is wrong, with the value found.</param>
/// <param name="Mend">What to do.</param>
public sealed record ContentFault(string File, int? Line, string Path, string What, string Mend)
{
    /// <inheritdoc/>
    public override string ToString()
    {
        var place = Line is { } line ? string.Create(CultureInfo.InvariantCulture, $"{File}:{line}") : File;
        return Path.Length == 0 ? $"{place}: {What} {Mend}" : $"{place}: {Path}: {What} {Mend}";
    }
}

/// <summary>Gathers faults so that all are told at once.</summary>
public sealed class FaultList
{
    private readonly List<ContentFault> faults = [];

    /// <summary>The faults so far.</summary>
    public IReadOnlyList<ContentFault> Faults => faults;

    /// <summary>Adds a fault.</summary>
    public void Add(string file, int? line, string path, string what, string mend) =>
        faults.Add(new ContentFault(file, line, path, what, mend));

    /// <summary>Throws one exception with every fault, if there is any.</summary>
    /// <exception cref="ContentException">There is at least one fault.</exception>
    public void ThrowIfAny()
    {
        if (faults.Count > 0)
            throw new ContentException(faults);
    }
}

/// <summary>Content that cannot be used, with every fault found.</summary>
public sealed class ContentException : Exception
{
    /// <summary>Makes the exception for a list of faults.</summary>
    public ContentException(IReadOnlyList<ContentFault> faults)
        : base(Text(faults)) => Faults = faults;

    /// <summary>Every fault found.</summary>
    public IReadOnlyList<ContentFault> Faults { get; }

    private static string Text(IReadOnlyList<ContentFault> faults)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{faults.Count} fault{(faults.Count == 1 ? "" : "s")} in the content:");
        foreach (var fault in faults)
            text.AppendLine().Append("  ").Append(fault);
        return text.ToString();
    }
}
