using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace MomentArm.Records;

/// <summary>The hash chain of a clinic's audit trail.</summary>
internal static class AuditChain
{
    /// <summary>The hash before the first line.</summary>
    internal static byte[] Beginning(Guid clinicId) => SHA256.HashData(clinicId.ToByteArray(bigEndian: true));

    /// <summary>The next line, with its hash.</summary>
    internal static AuditEntry Next(Guid clinicId, long sequence, DateTime atUtc, Acting who, AuditLine line, byte[] previous) =>
        new()
        {
            ClinicId = clinicId,
            Sequence = sequence,
            AtUtc = atUtc,
            WhoId = who.ClinicianId,
            WhoName = who.Name,
            PatientId = line.PatientId,
            Action = line.Action,
            SubjectType = line.SubjectType,
            SubjectId = line.SubjectId,
            Changes = line.Changes,
            Hash = Hash(
                previous, clinicId, sequence, atUtc, who.ClinicianId, who.Name, line.PatientId, line.Action, line.SubjectType,
                line.SubjectId, line.Changes),
        };

    /// <summary>The hash a stored line must have.</summary>
    internal static byte[] HashOf(AuditEntry entry, byte[] previous) => Hash(
        previous, entry.ClinicId, entry.Sequence, entry.AtUtc, entry.WhoId, entry.WhoName, entry.PatientId, entry.Action,
        entry.SubjectType, entry.SubjectId, entry.Changes);

    private static byte[] Hash(
        byte[] previous, Guid clinicId, long sequence, DateTime atUtc, Guid? whoId, string whoName, Guid? patientId,
        string action, string subjectType, string subjectId, string changes)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(previous);
        Append(hash, clinicId.ToString("D"));
        Append(hash, sequence);
        Append(hash, atUtc.Ticks);
        Append(hash, whoId?.ToString("D") ?? "");
        Append(hash, whoName);
        Append(hash, patientId?.ToString("D") ?? "");
        Append(hash, action);
        Append(hash, subjectType);
        Append(hash, subjectId);
        Append(hash, changes);
        return hash.GetHashAndReset();
    }

    // Length first, so that no two different lines give the same bytes.
    private static void Append(IncrementalHash hash, string text)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        Append(hash, bytes.Length);
        hash.AppendData(bytes);
    }

    private static void Append(IncrementalHash hash, long number)
    {
        Span<byte> bytes = stackalloc byte[8];
        BinaryPrimitives.WriteInt64LittleEndian(bytes, number);
        hash.AppendData(bytes);
    }
}
