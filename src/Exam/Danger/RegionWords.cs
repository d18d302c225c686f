using System.Collections.Immutable;
using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>Which region a complaint is about, read from its words. Own list of words; where none is known the region is asked for.</summary>
public static class RegionWords
{
    private static readonly ImmutableArray<(BodyRegion Region, ImmutableArray<string> Words)> Known =
    [
        (BodyRegion.Hip, ["hip", "hips", "groin", "gluteal", "buttock", "thigh", "hamstring", "hamstrings", "adductor"]),
        (BodyRegion.Knee, ["knee", "knees", "kneecap", "patella", "patellar", "thigh", "meniscus", "hamstring", "hamstrings"]),
        (BodyRegion.AnkleFoot, ["ankle", "ankles", "ankle-foot", "anklefoot", "foot", "feet", "heel", "heels", "calf", "achilles", "shin", "shins", "toe", "toes", "sole", "plantar", "lower leg"]),
        (BodyRegion.Trunk, ["back", "trunk", "lumbar", "spine", "sciatica", "sacroiliac", "pelvis", "chest", "rib", "ribs"]),
        (BodyRegion.Shoulder, ["shoulder", "shoulders", "cuff", "upper arm"]),
        (BodyRegion.ElbowWrist, ["elbow", "elbows", "elbow-wrist", "elbowwrist", "wrist", "wrists", "forearm", "hand", "hands", "thumb", "finger", "fingers"]),
        (BodyRegion.Neck, ["neck", "cervical", "whiplash"]),
        (BodyRegion.WholeBody, ["whole body", "wholebody", "whole-body", "balance", "walking", "conditioning"]),
    ];

    /// <summary>The name of a region as shown.</summary>
    /// <param name="region">A region.</param>
    /// <returns>Lower case words.</returns>
    public static string Name(BodyRegion region) => region switch
    {
        BodyRegion.Hip => "hip",
        BodyRegion.Knee => "knee",
        BodyRegion.AnkleFoot => "ankle and foot",
        BodyRegion.Trunk => "back",
        BodyRegion.Shoulder => "shoulder",
        BodyRegion.ElbowWrist => "elbow and wrist",
        BodyRegion.Neck => "neck",
        BodyRegion.WholeBody => "whole body",
    };

    /// <summary>The regions that words name: those of the region field, or without any those of the title.</summary>
    /// <param name="region">The region as stored or typed; may be null.</param>
    /// <param name="title">The title of the episode, such as "left hip, outer side"; may be null.</param>
    /// <returns>The regions, in a fixed order; empty when no word is known.</returns>
    public static ImmutableArray<BodyRegion> Read(string? region, string? title)
    {
        var named = In(region);
        return named.IsEmpty ? In(title) : named;
    }

    private static ImmutableArray<BodyRegion> In(string? text)
    {
        // "Back of the knee" is no back; "lower leg" is the calf and shin.
        var plain = " " + string.Concat((text ?? "").ToLowerInvariant().Select(c => char.IsLetter(c) || c == '-' ? c : ' ')) + " ";
        while (plain.Contains("  ", StringComparison.Ordinal))
            plain = plain.Replace("  ", " ", StringComparison.Ordinal);
        plain = plain.Replace(" back of ", " ", StringComparison.Ordinal);
        return [.. Known.Where(k => k.Words.Any(w => plain.Contains($" {w} ", StringComparison.Ordinal))).Select(k => k.Region)];
    }
}
