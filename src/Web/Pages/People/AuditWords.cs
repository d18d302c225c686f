using System.Globalization;
using System.Text.Json;
using MomentArm.Content;
using MomentArm.Records;
using MomentArm.Web.Clinic;

namespace MomentArm.Web.Pages.People;

/// <summary>Lines of the audit trail in plain words.</summary>
public static class AuditWords
{
    private static readonly Dictionary<string, string> Names = new(StringComparer.Ordinal)
    {
        ["displayName"] = "name", ["givenName"] = "given name", ["familyName"] = "family name", ["birthYear"] = "birth year",
        ["birthDate"] = "birth date", ["statureM"] = "stature (m)", ["massKg"] = "body mass (kg)", ["affectedSide"] = "affected side",
        ["startedOn"] = "started on", ["closedOn"] = "closed on", ["closedReason"] = "reason for closing", ["episodeId"] = "",
        ["patientId"] = "", ["visitId"] = "", ["searchText"] = "", ["cell"] = "", ["atUtc"] = "", ["createdById"] = "",
        ["createdAtUtc"] = "", ["byId"] = "", ["signedById"] = "", ["tokenHash"] = "", ["receivedAtUtc"] = "", ["programVersionId"] = "",
        ["signedAtUtc"] = "", ["handedOverAtUtc"] = "", ["trials"] = "values in the stored unit", ["createdByName"] = "written by",
        ["leverArmM"] = "lever arm (m)", ["painDuring"] = "pain during", ["asTyped"] = "as typed", ["measureId"] = "measure",
        ["signId"] = "danger sign", ["byName"] = "decided by", ["findingId"] = "finding", ["exerciseId"] = "exercise",
        ["saidBack"] = "said back", ["expiresAtUtc"] = "expires at (UTC)", ["revokedAtUtc"] = "revoked at (UTC)",
        ["lastOpenedAtUtc"] = "last opened at (UTC)", ["timeZone"] = "time zone", ["isDemo"] = "demo clinic", ["document"] = "contents",
    };

    /// <summary>What was done: "changed patient", "signed visit", "reported session log".</summary>
    public static string What(AuditEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        return $"{entry.Action} {entry.SubjectType}";
    }

    /// <summary>The fields that changed, each with before and after where the trail keeps them.</summary>
    public static IReadOnlyList<string> Fields(AuditEntry entry, ContentLibrary content, ClinicLibrary library)
    {
        ArgumentNullException.ThrowIfNull(entry);
        ArgumentNullException.ThrowIfNull(content);
        using var changes = JsonDocument.Parse(entry.Changes);
        var said = new List<string>();
        foreach (var field in changes.RootElement.EnumerateObject())
        {
            var name = Names.TryGetValue(field.Name, out var known) ? known : Plain(field.Name);
            if (name.Length > 0)
                said.Add(name + Change(field.Value, value => Named(content, library, field.Name, value)));
        }

        return said;
    }

    private static string Change(JsonElement change, Func<string, string> named)
    {
        var before = change.TryGetProperty("before", out var b) ? b : (JsonElement?)null;
        var after = change.TryGetProperty("after", out var a) ? a : (JsonElement?)null;
        return (before, after) switch
        {
            (null, null) => "",
            (null, { } now) => ": " + named(Value(now)),
            ({ } was, null) => ": was " + named(Value(was)),
            ({ } was, { } now) => $": {named(Value(was))} → {named(Value(now))}",
        };
    }

    /// <summary>Ids of content by their names, states in words; everything else as it stands.</summary>
    private static string Named(ContentLibrary content, ClinicLibrary library, string field, string value) => field switch
    {
        "measureId" => content.Exam.Measures.FirstOrDefault(m => m.Id == value)?.Name ?? value,
        "signId" => value.Replace('-', ' '),
        "exerciseId" => library.Exercise(value)?.Name ?? value,
        "state" => Plain(value).Trim(),
        _ => value,
    };

    private static string Value(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.Null or JsonValueKind.Undefined => "empty",
        JsonValueKind.String => value.GetString() is { Length: > 0 } text ? text : "empty",
        JsonValueKind.True => "yes",
        JsonValueKind.False => "no",
        JsonValueKind.Number => value.GetDouble().ToString("0.####", CultureInfo.InvariantCulture),
        JsonValueKind.Array => string.Join(", ", value.EnumerateArray().Select(Value)),
        JsonValueKind.Object => "a document",
    };

    /// <summary>"painCeiling" as "pain ceiling".</summary>
    private static string Plain(string name) => string.Concat(name.Select(c => char.IsAsciiLetterUpper(c)
        ? " " + char.ToLowerInvariant(c)
        : c.ToString()));
}
