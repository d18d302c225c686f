namespace MomentArm.Exam;

/// <summary>Holds stature, mass and a printed body mass index against each other.</summary>
public static class BodySizeCheck
{
    /// <summary>
    /// Asks when a printed index can't come from stature and mass even with all three rounded: stature to the centimetre, mass to the
    /// half kilogram, the index to its last printed digit. Any of them may be missing; then nothing is asked.
    /// </summary>
    /// <param name="statureM">Stature, metres.</param>
    /// <param name="massKg">Mass, kilograms.</param>
    /// <param name="index">Printed body mass index, kg/m2.</param>
    /// <param name="decimals">Decimals the index was printed with.</param>
    /// <returns>The question, or null when the three fit.</returns>
    public static EntryQuestion? Question(double? statureM, double? massKg, double? index, int decimals = 1)
    {
        if (statureM is not > 0 || massKg is not > 0 || index is not { } printed)
            return null;
        var half = 0.5 * Math.Pow(10, -decimals);
        var least = (massKg.Value - 0.5) / Math.Pow(statureM.Value + 0.005, 2) - half;
        var most = (massKg.Value + 0.5) / Math.Pow(statureM.Value - 0.005, 2) + half;
        if (printed >= least && printed <= most)
            return null;
        var computed = massKg.Value / (statureM.Value * statureM.Value);
        return new EntryQuestion(
            Say.Number(printed, decimals),
            $"A body mass index of {Say.Number(printed, decimals)} does not follow from {Say.Centimetres(statureM.Value)} and {Say.Number(massKg.Value)} kg, which give "
            + $"{Say.Number(computed)}. Which of the three is right?");
    }
}
