using System.Collections.Frozen;
using System.Text;
using System.Text.RegularExpressions;
using MomentArm.Body;
using MomentArm.Exam;

namespace MomentArm.Web.Pages.Library;

/// <summary>Places of the body and what touches them, in trade words.</summary>
public static partial class BodyWords
{
    private static readonly FrozenDictionary<string, string> Places = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["ballInner"] = "inner ball of the foot",
        ["ballOuter"] = "outer ball of the foot",
        ["toeTip"] = "tip of the toes",
        ["toeTop"] = "top of the toes",
        ["forefootSole"] = "sole of the forefoot",
        ["heelBack"] = "back of the heel",
        ["ankleFront"] = "front of the ankle",
        ["ankleOuter"] = "outer ankle",
        ["ankleInner"] = "inner ankle",
        ["kneeFront"] = "front of the knee",
        ["kneeOuter"] = "outer knee",
        ["kneeInner"] = "inner knee",
        ["kneeBack"] = "back of the knee",
        ["shinFront"] = "shin",
        ["calfBack"] = "calf",
        ["thighBack"] = "back of the thigh",
        ["thighFront"] = "front of the thigh",
        ["thighFrontLower"] = "front of the thigh, lower part",
        ["thighOuterUpper"] = "outer thigh, upper part",
        ["thighOuter"] = "outer thigh",
        ["thighOuterLower"] = "outer thigh, lower part",
        ["thighInner"] = "inner thigh",
        ["thighInnerLower"] = "inner thigh, lower part",
        ["trochanter"] = "side of the hip",
        ["pelvisBack"] = "back of the pelvis",
        ["sitBone"] = "sit bone",
        ["pelvisFront"] = "front of the pelvis",
        ["pelvisSide"] = "side of the pelvis",
        ["chestFront"] = "chest",
        ["upperBack"] = "upper back",
        ["lowerBack"] = "lower back",
        ["shoulderOuter"] = "side of the shoulder",
        ["ribOuter"] = "side of the ribs",
        ["headBack"] = "back of the head",
        ["headSide"] = "side of the head",
        ["forearmBelow"] = "forearm",
        ["handBack"] = "back of the hand",
        ["handHeel"] = "heel of the hand",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>A named place of the body: "back of the pelvis". A name this list does not hold is split into its words.</summary>
    public static string Place(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        if (Places.TryGetValue(name, out var known))
            return known;
        var text = new StringBuilder();
        foreach (var letter in name)
            text.Append(char.IsUpper(letter) ? " " : "").Append(char.ToLowerInvariant(letter));
        return text.ToString().Trim();
    }

    /// <summary>A contact with its side: "Back of the pelvis, right".</summary>
    public static string Contact(SupportRange support, Side working)
    {
        ArgumentNullException.ThrowIfNull(support);
        return ExerciseText.Capital(Place(support.Point)) + (support.Limb is { } limb ? ", " + Say.Side(limb.On(working)) : "");
    }

    /// <summary>The joint of a contact force.</summary>
    public static string Joint(SegmentKind segment) => segment switch
    {
        SegmentKind.Thigh => "Hip",
        SegmentKind.Shank => "Knee",
        _ => "Ankle",
    };

    /// <summary>A sentence with the names of places in trade words.</summary>
    public static string Plain(string sentence) => PlaceName().Replace(sentence, match => Place(match.Value));

    [GeneratedRegex(@"\b[a-z]+(?:[A-Z][a-z]+)+\b")]
    private static partial Regex PlaceName();
}
