namespace MomentArm.Content;

/// <summary>The unit in which each quantity comes out, and its words.</summary>
public static class CheckUnits
{
    /// <summary>The unit of a quantity.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <returns>Its unit; that of its operands for a sum or difference, of the last for a crossing.</returns>
    public static CheckUnit? Of(QuantityFile quantity)
    {
        ArgumentNullException.ThrowIfNull(quantity);
        return quantity.Kind switch
        {
            QuantityKind.PathLength or QuantityKind.PathChange or QuantityKind.ShortestPath or QuantityKind.LongestPath
                or QuantityKind.MomentArm or QuantityKind.GroupArm or QuantityKind.JointPlace => CheckUnit.Mm,
            QuantityKind.Moment or QuantityKind.Capacity or QuantityKind.FreeBody => CheckUnit.NmPerKg,
            QuantityKind.TendonForce => CheckUnit.BodyWeights,
            QuantityKind.SupportShare or QuantityKind.JointForce => CheckUnit.PercentBodyWeight,
            QuantityKind.Effort or QuantityKind.ActionShare => CheckUnit.PercentEffort,
            QuantityKind.Lean or QuantityKind.Angle => CheckUnit.Degrees,
            QuantityKind.Lever => CheckUnit.N,
            QuantityKind.Ratio => CheckUnit.Ratio,
            QuantityKind.Sum or QuantityKind.Difference => quantity.Of.Count > 0 ? Of(quantity.Of[0]) : null,
            QuantityKind.Crossing or QuantityKind.Largest => quantity.Of.Count > 0 ? Of(quantity.Of[^1]) : null,
        };
    }

    /// <summary>The unit as it is printed.</summary>
    /// <param name="unit">The unit.</param>
    /// <returns>Its sign; empty for a ratio.</returns>
    public static string Sign(this CheckUnit unit) => unit switch
    {
        CheckUnit.Mm => "mm",
        CheckUnit.NmPerKg => "Nm/kg",
        CheckUnit.PercentBodyWeight => "%BW",
        CheckUnit.BodyWeights => "BW",
        CheckUnit.Degrees => "deg",
        CheckUnit.N => "N",
        CheckUnit.PercentEffort => "%",
        CheckUnit.Ratio => "",
    };
}
