using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Content.Tests;

/// <summary>The shipped content, read once, and the reference woman whose numbers the tests look at.</summary>
internal static class Shipped
{
    private static readonly Lazy<ContentLibrary> Read = new(() => ContentLibrary.Read(FindFolder()));

    internal static string Folder { get; } = FindFolder();

    internal static ContentLibrary Library => Read.Value;

    internal static Physique Woman { get; } = new(Sex.Female, 40, 1.65, 65);

    internal static TheoryData<string> Ids => [.. Library.Exercises.Select(e => e.Id)];

    internal static Exercise Exercise(string id) =>
        Library.Exercise(id) ?? throw new ArgumentException($"There is no exercise {id}.", nameof(id));

    private static string FindFolder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "MomentArm.slnx")))
            folder = folder.Parent;
        return Path.Combine(folder?.FullName ?? throw new InvalidOperationException("MomentArm.slnx not found above the tests."), "content");
    }
}
