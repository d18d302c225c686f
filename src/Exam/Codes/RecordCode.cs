using MomentArm.Body;

namespace MomentArm.Exam;

/// <summary>A code that a visit note may carry, with our own short label. Look it up in the year's official file before it is billed.</summary>
/// <param name="System">Code system: ICD-10-CM or ICF.</param>
/// <param name="Code">The code; an injury's seventh character stands as A.</param>
/// <param name="Side">The side the code itself means; null when it means none or both.</param>
/// <param name="Label">What it is for, in our words.</param>
/// <param name="Condition">The complaint it is listed under; empty for functions and activities.</param>
/// <param name="SeventhCharacter">The seventh characters that may stand, such as "A/D/S"; empty when there is none.</param>
/// <param name="Note">Remark; empty when there is none.</param>
/// <param name="Confirmation">How far it was confirmed: read in a summary, or from memory.</param>
public sealed record RecordCode(
    string System, string Code, Side? Side, string Label, string Condition, string SeventhCharacter, string Note, string Confirmation)
{
    /// <summary>Code, label and side in a line: "M76.31 iliotibial band syndrome, right".</summary>
    public string Words => $"{Code} {Label}{(Side is null ? "" : ", " + Say.Side(Side))}";

    /// <summary>Codes that hold every word, those of the wanted side first, then those without a side.</summary>
    /// <param name="codes">All codes.</param>
    /// <param name="words">Words typed, in any order and case; empty finds all.</param>
    /// <param name="side">The affected side; null for none.</param>
    /// <returns>The codes found, the better ones first.</returns>
    public static IEnumerable<RecordCode> Find(IEnumerable<RecordCode> codes, string words, Side? side)
    {
        ArgumentNullException.ThrowIfNull(words);
        var wanted = words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return codes
            .Where(c => wanted.All(w => $"{c.System} {c.Code} {c.Label} {c.Condition} {Say.Side(c.Side)}".Contains(w, StringComparison.OrdinalIgnoreCase)))
            .OrderBy(c => c.Side is null ? 1 : c.Side == side ? 0 : 2);
    }
}
