using System.Reflection;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.ChangeTracking;

namespace MomentArm.Records;

/// <summary>Turns the changes of a save into lines of the audit trail, within the same transaction.</summary>
internal static class AuditWriter
{
    private static readonly HashSet<string> Silent =
        [nameof(IClinicRow.ClinicId), nameof(IAuditedRow.Id), nameof(IVersionedRow.RowVersion)];

    /// <summary>Adds one line for each changed row that is part of the record.</summary>
    internal static async Task AppendAsync(
        RecordsContext db, IReadOnlyList<EntityEntry<IClinicRow>> changed, CancellationToken cancellationToken)
    {
        var lines = changed.Where(entry => entry.Entity is IAuditedRow).Select(entry => LineOf(db, entry)).ToList();
        await AppendAsync(db, lines, cancellationToken);
    }

    /// <summary>Adds lines to the end of the clinic's trail.</summary>
    internal static async Task AppendAsync(RecordsContext db, IReadOnlyList<AuditLine> lines, CancellationToken cancellationToken)
    {
        if (lines.Count == 0)
            return;
        if (db.Database.CurrentTransaction is null)
            throw new InvalidOperationException("The record and its audit trail are written in one transaction; begin one first.");
        var who = db.Who ?? throw new InvalidOperationException("Nobody acts.");
        var head = await db.AuditEntries.AsNoTracking().OrderByDescending(entry => entry.Sequence)
            .Select(entry => new { entry.Sequence, entry.Hash }).FirstOrDefaultAsync(cancellationToken);
        var sequence = head?.Sequence ?? 0;
        var hash = head?.Hash ?? AuditChain.Beginning(db.Clinic);
        foreach (var line in lines)
        {
            sequence++;
            var entry = AuditChain.Next(db.Clinic, sequence, db.UtcNow, who, line, hash);
            hash = entry.Hash;
            db.AuditEntries.Add(entry);
        }
    }

    private static AuditLine LineOf(RecordsContext db, EntityEntry<IClinicRow> entry)
    {
        var row = (IAuditedRow)entry.Entity;
        Guid? patient = row switch
        {
            Clinic or ClinicForm => null,
            Patient => row.Id,
            _ => db.PatientId ?? throw new InvalidOperationException("The patient concerned has not been named."),
        };
        return new AuditLine(
            patient, db.ActionOn(row) ?? Verb(entry.State), SubjectOf(row), row.Id.ToString("D"), ChangesOf(entry));
    }

    private static string Verb(EntityState state) => state switch
    {
        EntityState.Added => "added",
        EntityState.Deleted => "removed",
        _ => "changed",
    };

    private static string SubjectOf(IAuditedRow row) => row switch
    {
        Clinic => "clinic",
        Patient => "patient",
        Episode => "episode",
        Visit => "visit",
        DangerAnswerRow => "danger answer",
        DangerDecision => "danger decision",
        MeasurementRow => "measurement",
        ObservationRow => "observation",
        FindingDecision => "finding decision",
        VisitAnswerRow => "answer",
        Attachment => "attachment",
        NoteAmendment => "note amendment",
        Goal => "goal",
        ProgramVersion => "program version",
        TeachBack => "teach-back",
        PatientLink => "patient link",
        SessionLogRow => "session log",
        MorningLogRow => "morning answer",
        ClinicForm => "exercise form",
        _ => throw new InvalidOperationException($"No trade word for {row.GetType().Name}."),
    };

    private static string ChangesOf(EntityEntry entry)
    {
        var changes = new SortedDictionary<string, object>(StringComparer.Ordinal);
        foreach (var property in entry.Properties)
        {
            var name = property.Metadata.Name;
            if (Silent.Contains(name) || !IsWorthNoting(entry.State, property))
                continue;
            changes[JsonNamingPolicy.CamelCase.ConvertName(name)] =
                property.Metadata.PropertyInfo?.GetCustomAttribute<NameOnlyAttribute>() is not null
                    ? new { Changed = true }
                    : entry.State switch
                    {
                        EntityState.Added => new { After = property.CurrentValue },
                        EntityState.Deleted => new { Before = property.OriginalValue },
                        _ => new { Before = property.OriginalValue, After = property.CurrentValue },
                    };
        }
        return JsonSerializer.Serialize(changes, JsonOptions);
    }

    private static bool IsWorthNoting(EntityState state, PropertyEntry property) => state switch
    {
        EntityState.Added => property.CurrentValue is not null,
        EntityState.Deleted => property.OriginalValue is not null,
        _ => property.IsModified,
    };

    // Anonymous objects have read-only properties, so the options for documents do not fit here.
    private static readonly JsonSerializerOptions JsonOptions = new(JsonSerializerDefaults.Web)
    {
        Converters = { new System.Text.Json.Serialization.JsonStringEnumConverter() },
    };
}

/// <summary>What a line of the trail says, before it gets its place and hash.</summary>
internal sealed record AuditLine(Guid? PatientId, string Action, string SubjectType, string SubjectId, string Changes = "{}");
