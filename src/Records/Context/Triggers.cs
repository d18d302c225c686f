namespace MomentArm.Records;

/// <summary>
/// Rules the database keeps even against a hand-written statement. They belong to their tables and vanish when a
/// migration rebuilds one; such a migration has to create them again (a test counts them).
/// </summary>
internal static class Triggers
{
    private static readonly string[] VisitParts = ["DangerAnswers", "DangerDecisions", "Measurements", "Observations", "FindingDecisions"];

    private static readonly string[] LaterVisitParts = ["VisitAnswers", "Attachments"];

    /// <summary>The statements that create all of them.</summary>
    internal static IEnumerable<string> Create() => [.. CreateFirst(), .. CreateForExam()];

    /// <summary>Those of the tables that the first migration made.</summary>
    internal static IEnumerable<string> CreateFirst()
    {
        foreach (var change in (string[])["UPDATE", "DELETE"])
        {
            yield return Refuse("AuditEntries", change, "1", "The audit trail can not be changed; it only grows.");
            yield return Refuse("Visits", change, "OLD.State = 'Signed'", "A signed visit can not be changed.");
            foreach (var table in VisitParts)
                yield return RefuseSigned(table, change);
        }
        foreach (var table in VisitParts)
            yield return RefuseSigned(table, "INSERT");
    }

    /// <summary>Those of the tables that came with the whole exam.</summary>
    internal static IEnumerable<string> CreateForExam()
    {
        foreach (var change in (string[])["UPDATE", "DELETE"])
            yield return Refuse("NoteAmendments", change, "1", "What was added to a signed note can not be changed.");
        foreach (var table in LaterVisitParts)
        {
            foreach (var change in (string[])["UPDATE", "DELETE", "INSERT"])
                yield return RefuseSigned(table, change);
        }
    }

    private static string RefuseSigned(string table, string change) =>
        Refuse(table, change, IsSigned(change == "INSERT" ? "NEW" : "OLD"), "A signed visit can not be changed.");

    private static string IsSigned(string row) =>
        $"EXISTS (SELECT 1 FROM Visits v WHERE v.ClinicId = {row}.ClinicId AND v.Id = {row}.VisitId AND v.State = 'Signed')";

    private static string Refuse(string table, string change, string when, string sentence) =>
        $"CREATE TRIGGER {table}_refuse_{change.ToLowerInvariant()} BEFORE {change} ON {table} WHEN {when} "
        + $"BEGIN SELECT RAISE(ABORT, '{sentence}'); END;";
}
