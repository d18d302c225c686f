using MomentArm.Content;

namespace MomentArm.Exam.Tests;

/// <summary>The shipped measures, norms and danger signs, read through the real reader.</summary>
internal static class Shipped
{
    public static string ContentFolder { get; } = Find();

    public static ExamContent Exam { get; } = ExamContent.Read(ContentFolder);

    public static Measure Measure(string id) => Exam.Measure(id) ?? throw new ArgumentException(id);

    private static string Find()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, "MomentArm.slnx")))
                return Path.Combine(at.FullName, "content");
        }

        throw new InvalidOperationException("No folder above holds MomentArm.slnx.");
    }
}
