using System.Text;
using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Web.Pages.Library;

/// <summary>Trade words for what the library holds.</summary>
public static class ExerciseText
{
    /// <summary>Such as "hip abduction".</summary>
    public static string Words<T>(T value)
        where T : struct, Enum
    {
        var text = new StringBuilder();
        foreach (var letter in value.ToString())
            text.Append(char.IsUpper(letter) && text.Length > 0 ? " " : "").Append(char.ToLowerInvariant(letter));
        return text.ToString();
    }

    /// <summary>Such as "Hip abduction".</summary>
    public static string Title<T>(T value)
        where T : struct, Enum => Capital(Words(value));

    /// <summary>Such as "Ankle and foot".</summary>
    public static string Region(BodyRegion region) => region switch
    {
        BodyRegion.AnkleFoot => "Ankle and foot",
        BodyRegion.ElbowWrist => "Elbow and wrist",
        _ => Title(region),
    };

    /// <summary>The same with a capital.</summary>
    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>What an exercise is for: "Strengthen: hip abduction, hip external rotation".</summary>
    public static string For(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        var targets = exercise.Loads.Select(a => Words(a)).Concat(exercise.Groups.Select(g => Words(g)));
        var listed = string.Join(", ", targets);
        return listed.Length == 0 ? Title(exercise.Purpose) : $"{Title(exercise.Purpose)}: {listed}";
    }

    /// <summary>What it needs: "a mat, a strap", or "nothing".</summary>
    public static string Needs(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return exercise.Equipment.IsEmpty ? "nothing" : string.Join(", ", exercise.Equipment.Select(Candidates.Name));
    }

    /// <summary>The ladder in words: "hip abductors, rung 2".</summary>
    public static string Ladder(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return FormattableString.Invariant($"{exercise.Ladder.Replace('-', ' ')}, rung {exercise.Rung}")
            + (exercise.Change is { } change ? $" ({Words(change)})" : "");
    }

    /// <summary>Whether every typed word is found in name, purpose, targets, position or equipment.</summary>
    public static bool Matches(Exercise exercise, string? typed)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        if (string.IsNullOrWhiteSpace(typed))
            return true;
        var text = $"{exercise.Name} {For(exercise)} {Candidates.Name(exercise.Position)} {Needs(exercise)} {Ladder(exercise)}";
        return typed.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .All(word => text.Contains(word, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>A sentence of the computing rooms with joint actions and places of the body in trade words.</summary>
    public static string Plain(string sentence)
    {
        ArgumentNullException.ThrowIfNull(sentence);
        foreach (var action in Enum.GetValues<JointAction>())
            sentence = sentence.Replace(action.ToString(), Words(action), StringComparison.Ordinal);
        return Capital(BodyWords.Plain(sentence));
    }

    /// <summary>What a capacity rests on, whether that is weak, and whether the joint goes beyond the published angles.</summary>
    public static string Of(Capacity capacity) => Of(capacity.Basis) + (capacity.WeakSource ? "; a weak source" : "")
        + (capacity.BeyondCurve ? "; joint angle beyond the published curve, its end value taken" : "");

    /// <summary>What a capacity rests on.</summary>
    public static string Of(CapacityBasis basis) => basis switch
    {
        CapacityBasis.Tested => "tested",
        CapacityBasis.TestedPainLimited => "tested, pain-limited: at least this",
        CapacityBasis.ScaledFromTested => "published, scaled by what was tested",
        CapacityBasis.PublishedOnly => "published for sex and age",
        CapacityBasis.FromEndurance => "from repetitions or seconds",
        CapacityBasis.EndurancePainLimited => "repetitions or seconds, pain-limited: at least this",
        CapacityBasis.Combined => "tested, several ways together",
    };

    /// <summary>The side in an address.</summary>
    public static string Path(Side side) => side == Side.Left ? "left" : "right";

    /// <summary>The side of an address; null for anything else.</summary>
    public static Side? SideOf(string? path) => path switch
    {
        "left" => Side.Left,
        "right" => Side.Right,
        _ => null,
    };
}
