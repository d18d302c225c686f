namespace MomentArm.Records;

/// <summary>
/// Rules the database keeps even against a hand-written statement. They belong to their tables and vanish when a
/// migration rebuilds one; such a migration has to create them again (a test counts them).
/// </summary>
internal static class Triggers
{
    private static readonly string[] VisitParts = ["DangerAnswers", "DangerDecisions", "Measurements", "Observations", "FindingDecisions"];

    /// <summary>The statements that create all of them.</summary>
    internal static IEnumerable<string> Create()
    {
        foreach (var change in (string[])["UPDATE", "DELETE"])
        {
            yield return Refuse("AuditEntries", change, "1", "The audit trail can not be changed; it only grows.");
            yield return Refuse("Visits", change, "OLD.State = 'Signed'", "A signed visit can not be changed.");
            foreach (var table in VisitParts)
                yield return Refuse(table, change, IsSigned("OLD"), "A signed visit can not be changed.");
        }
        foreach (var table in VisitParts)
            yield return Refuse(table, "INSERT", IsSigned("NEW"), "A signed visit can not be changed.");
    }

    private static string IsSigned(string row) =>
        $"EXISTS (SELECT 1 FROM Visits v WHERE v.ClinicId = {row}.ClinicId AND v.Id = {row}.VisitId AND v.State = 'Signed')";

    private static string Refuse(string table, string change, string when, string sentence) =>
        $"CREATE TRIGGER {table}_refuse_{change.ToLowerInvariant()} BEFORE {change} ON {table} WHEN {when} "
        + $"BEGIN SELECT RAISE(ABORT, '{sentence}'); END;";
}
