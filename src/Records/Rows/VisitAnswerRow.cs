using MomentArm.Body;

namespace MomentArm.Records;

/// <summary>One answer on one of the sheets of a visit: an item of a decision rule or questionnaire, a clinical test, a mark on the body chart.</summary>
public sealed class VisitAnswerRow : IVisitRow, IVersionedRow
{
    public Guid ClinicId { get; init; }

    public Guid Id { get; init; }

    public Guid VisitId { get; init; }

    /// <summary>Sheet, item and side joined; one row each.</summary>
    public required string Cell { get; init; }

    /// <summary>Which sheet, such as "test" or "rule/ottawa-knee".</summary>
    public required string Sheet { get; init; }

    /// <summary>Which item of the sheet.</summary>
    public required string Item { get; init; }

    public Side? Side { get; init; }

    /// <summary>The answer, in the words of the sheet.</summary>
    [NameOnly]
    public required string Value { get; set; }

    /// <summary>When it was last given.</summary>
    public DateTime AtUtc { get; set; }

    public Guid RowVersion { get; set; }

    /// <summary>The cell an answer belongs in.</summary>
    public static string CellOf(string sheet, string item, Side? side) => $"{sheet}|{item}|{side?.ToString() ?? "-"}";
}
