using System.Globalization;
using System.IO.Compression;
using System.Reflection;
using System.Security.Cryptography;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;

namespace MomentArm.Records;

/// <summary>Backups: one zip with the database and a manifest that proves it whole.</summary>
public static class BackupArchive
{
    private const string ManifestName = "manifest.json";
    private const string DatabaseName = "records.db";
    private const long LargestManifest = 1024 * 1024;

    private static readonly JsonSerializerOptions JsonOptions = new(JsonSerializerDefaults.Web) { WriteIndented = true };

    /// <summary>Backs a database up while it is in use. The archive appears whole or not at all.</summary>
    /// <exception cref="DatabaseNotUsableException">There is no sound database at the path.</exception>
    public static async Task<BackupManifest> WriteAsync(
        string databasePath, string archivePath, TimeProvider clock, CancellationToken cancellationToken = default)
    {
        if (!File.Exists(databasePath))
            throw new DatabaseNotUsableException($"There is no database at {databasePath}.");
        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(archivePath))!);
        var copy = archivePath + ".copying";
        var half = archivePath + ".writing";
        try
        {
            File.Delete(copy);
            SqliteFile.CopyOnline(databasePath, copy);
            if (SqliteFile.Fault(copy) is { } damage)
                throw new DatabaseNotUsableException($"The database {databasePath} is damaged ({damage}); no backup was written.");
            var manifest = await DescribeAsync(copy, clock, cancellationToken);
            await PackAsync(half, copy, manifest, cancellationToken);
            SqliteFile.Flush(half);
            File.Move(half, archivePath, overwrite: true);
            return manifest;
        }
        finally
        {
            File.Delete(copy);
            File.Delete(half);
        }
    }

    /// <summary>Puts a backup in the place of the database, after checking it whole. The replaced database is kept beside it.</summary>
    /// <exception cref="BackupNotUsableException">The archive is damaged, newer or something else; nothing was changed.</exception>
    /// <exception cref="DatabaseNotUsableException">A server is using the database, or the folder can't be written.</exception>
    public static async Task<RestoreReport> RestoreAsync(
        string archivePath, string databasePath, TimeProvider clock, CancellationToken cancellationToken = default)
    {
        using var held = ServerLock.Take(databasePath);
        var fresh = databasePath + ".restoring";
        try
        {
            var manifest = await UnpackAsync(archivePath, fresh, cancellationToken);
            Check(fresh, manifest);
            var kept = File.Exists(databasePath) ? KeptName(databasePath, clock) : null;
            SqliteFile.Replace(fresh, databasePath, kept);
            return new RestoreReport(manifest, kept);
        }
        finally
        {
            File.Delete(fresh);
        }
    }

    /// <summary>Reads what an archive says about itself, without restoring it.</summary>
    /// <exception cref="BackupNotUsableException">It is no backup of this program.</exception>
    public static async Task<BackupManifest> ReadManifestAsync(string archivePath, CancellationToken cancellationToken = default)
    {
        return await ReadingAsync(archivePath, zip => ManifestOfAsync(zip, archivePath, cancellationToken));
    }

    private static async Task<BackupManifest> DescribeAsync(string copy, TimeProvider clock, CancellationToken cancellationToken)
    {
        await using var stream = File.OpenRead(copy);
        return new BackupManifest
        {
            FormatVersion = BackupManifest.CurrentFormat,
            AppVersion = typeof(BackupArchive).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion,
            CreatedAtUtc = clock.GetUtcNow().UtcDateTime,
            Migration = SqliteFile.LastMigration(copy)
                ?? throw new DatabaseNotUsableException("The file is no database of this program; no backup was written."),
            DatabaseSha256 = Convert.ToHexStringLower(await SHA256.HashDataAsync(stream, cancellationToken)),
            DatabaseBytes = stream.Length,
            Rows = SqliteFile.CountRows(copy),
        };
    }

    private static async Task PackAsync(string path, string copy, BackupManifest manifest, CancellationToken cancellationToken)
    {
        await using var zip = await ZipFile.OpenAsync(path, ZipArchiveMode.Create, cancellationToken);
        await using (var entry = await zip.CreateEntry(ManifestName).OpenAsync(cancellationToken))
            await JsonSerializer.SerializeAsync(entry, manifest, JsonOptions, cancellationToken);
        await zip.CreateEntryFromFileAsync(copy, DatabaseName, cancellationToken);
    }

    private static Task<BackupManifest> UnpackAsync(string archivePath, string fresh, CancellationToken cancellationToken) =>
        ReadingAsync(
            archivePath,
            async zip =>
            {
                var manifest = await ManifestOfAsync(zip, archivePath, cancellationToken);
                var entry = zip.GetEntry(DatabaseName)!;
                if (entry.Length != manifest.DatabaseBytes)
                    throw Damaged(archivePath);
                await using var source = await entry.OpenAsync(cancellationToken);
                await using var target = new FileStream(fresh, FileMode.Create, FileAccess.Write);
                await CopyExactlyAsync(source, target, manifest.DatabaseBytes, archivePath, cancellationToken);
                target.Flush(flushToDisk: true);
                return manifest;
            });

    // A zip is read bit by bit, so its faults show at any step; all of them mean the same to the person who restores.
    private static async Task<T> ReadingAsync<T>(string archivePath, Func<ZipArchive, Task<T>> read)
    {
        if (!File.Exists(archivePath))
            throw new BackupNotUsableException($"There is no file {archivePath}.");
        ZipArchive zip;
        try
        {
            zip = await ZipFile.OpenReadAsync(archivePath);
        }
        catch (InvalidDataException fault)
        {
            throw new BackupNotUsableException($"{archivePath} is not a backup of this program, or it is damaged. Nothing was changed.", fault);
        }
        await using (zip)
        {
            try
            {
                return await read(zip);
            }
            catch (Exception fault) when (fault is InvalidDataException or NotSupportedException or EndOfStreamException)
            {
                throw Damaged(archivePath, fault);
            }
        }
    }

    // Never writes more than the manifest promises, whatever the zip unpacks to.
    private static async Task CopyExactlyAsync(
        Stream source, FileStream target, long bytes, string archivePath, CancellationToken cancellationToken)
    {
        var buffer = new byte[81920];
        long written = 0;
        int read;
        while ((read = await source.ReadAsync(buffer, cancellationToken)) > 0)
        {
            written += read;
            if (written > bytes)
                throw Damaged(archivePath);
            await target.WriteAsync(buffer.AsMemory(0, read), cancellationToken);
        }
    }

    private static void Check(string fresh, BackupManifest manifest)
    {
        using (var stream = File.OpenRead(fresh))
        {
            if (Convert.ToHexStringLower(SHA256.HashData(stream)) != manifest.DatabaseSha256)
                throw new BackupNotUsableException("The database in the backup differs from its manifest: the archive is damaged. Nothing was changed.");
        }
        if (SqliteFile.Fault(fresh) is { } damage)
            throw new BackupNotUsableException($"The database in the backup is damaged ({damage}). Nothing was changed.");
        var migration = SqliteFile.LastMigration(fresh);
        if (migration is null)
            throw new BackupNotUsableException("The database in the backup is not one of this program. Nothing was changed.");
        if (!KnownMigrations().Contains(migration))
            throw Newer();
        var rows = SqliteFile.CountRows(fresh);
        if (rows.Count != manifest.Rows.Count || rows.Any(table => manifest.Rows.GetValueOrDefault(table.Key, -1) != table.Value))
            throw new BackupNotUsableException("The rows in the backup differ from its manifest. Nothing was changed.");
    }

    private static async Task<BackupManifest> ManifestOfAsync(ZipArchive zip, string archivePath, CancellationToken cancellationToken)
    {
        var entry = zip.GetEntry(ManifestName);
        if (entry is null || zip.Entries.Count != 2 || zip.GetEntry(DatabaseName) is null)
            throw new BackupNotUsableException($"{archivePath} is not a backup of this program. Nothing was changed.");
        if (entry.Length > LargestManifest)
            throw Damaged(archivePath);
        try
        {
            await using var stream = await entry.OpenAsync(cancellationToken);
            using var document = await JsonDocument.ParseAsync(stream, default, cancellationToken);
            // A newer archive may say more than this program understands; its format number comes first.
            if (document.RootElement.GetProperty("formatVersion").GetInt32() > BackupManifest.CurrentFormat)
                throw Newer();
            return document.Deserialize<BackupManifest>(JsonOptions) ?? throw Damaged(archivePath);
        }
        catch (Exception fault) when (fault is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            throw Damaged(archivePath, fault);
        }
    }

    private static HashSet<string> KnownMigrations()
    {
        using var db = new DesignTimeFactory().CreateDbContext([]);
        return [.. db.Database.GetMigrations()];
    }

    private static string KeptName(string databasePath, TimeProvider clock)
    {
        var stamp = clock.GetUtcNow().UtcDateTime.ToString("yyyyMMddTHHmmss'Z'", CultureInfo.InvariantCulture);
        var name = $"{databasePath}.before-restore-{stamp}";
        for (var next = 2; File.Exists(name); next++)
            name = FormattableString.Invariant($"{databasePath}.before-restore-{stamp}-{next}");
        return name;
    }

    private static BackupNotUsableException Damaged(string archivePath, Exception? cause = null) =>
        new($"The backup {archivePath} is damaged. Use another one. Nothing was changed.", cause);

    private static BackupNotUsableException Newer() =>
        new("The backup was written by a newer version of this program. Install that version first. Nothing was changed.");
}
