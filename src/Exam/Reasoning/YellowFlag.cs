using System.Collections.Immutable;

namespace MomentArm.Exam;

/// <summary>A question about what may slow recovery. Our own wording; common practice, no score is published for it.</summary>
/// <param name="Id">Id.</param>
/// <param name="Question">The question as asked.</param>
/// <param name="About">What it is about: "worry", "mood", "work".</param>
/// <param name="WhenYes">What to talk about when it is answered yes.</param>
/// <param name="Source">Key into content/sources.json.</param>
public sealed record YellowFlag(string Id, string Question, string About, string WhenYes, string Source);

/// <summary>What the yellow flags say.</summary>
/// <param name="Present">Questions answered yes.</param>
/// <param name="Unasked">Questions not asked.</param>
/// <param name="Sentence">In one sentence, without a diagnosis.</param>
public sealed record YellowReading(ImmutableArray<YellowFlag> Present, ImmutableArray<YellowFlag> Unasked, string Sentence);

/// <summary>Reads the yellow-flag answers. It counts and names; it gives no score and no diagnosis.</summary>
public static class YellowScreen
{
    /// <summary>Yes answers from which we advise to share the care with another professional. Our choice, no source.</summary>
    public const int ShareCareFrom = 4;

    /// <summary>Reads the answers.</summary>
    /// <param name="flags">The questions.</param>
    /// <param name="answers">Answers by id; a missing one was not asked.</param>
    /// <returns>What they say.</returns>
    public static YellowReading Read(IReadOnlyList<YellowFlag> flags, IReadOnlyDictionary<string, ItemAnswer> answers)
    {
        ArgumentNullException.ThrowIfNull(flags);
        ArgumentNullException.ThrowIfNull(answers);
        var present = flags.Where(f => answers.GetValueOrDefault(f.Id) == ItemAnswer.Yes).ToImmutableArray();
        var unasked = flags.Where(f => answers.GetValueOrDefault(f.Id) == ItemAnswer.Unknown).ToImmutableArray();
        var asked = flags.Count - unasked.Length;
        var sentence = asked == 0 ? "Not asked yet."
            : present.IsEmpty && unasked.IsEmpty ? "All asked, none present."
            : present.IsEmpty ? $"None present among {asked} of {flags.Count} asked."
            : present.Length >= ShareCareFrom
                ? $"{present.Length} of {asked} asked are present: talk about them first, and think of sharing the care with someone who helps with these."
                : $"{present.Length} of {asked} asked {(present.Length == 1 ? "is" : "are")} present: talk about {(present.Length == 1 ? "it" : "them")} when planning.";
        return new YellowReading(present, unasked, sentence);
    }
}
