using System.Globalization;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace MomentArm.Records;

/// <summary>Makes a database file ready for one server.</summary>
public sealed class Database(string path, IDbContextFactory<RecordsContext> factory, TimeProvider clock)
{
    /// <summary>The database file.</summary>
    public string Path => path;

    /// <summary>
    /// Takes the server lock, then brings the file to this program's form: a backup first, and back to it if that fails.
    /// Hold the lock as long as the server runs.
    /// </summary>
    /// <exception cref="DatabaseNotUsableException">The message says why and what to do.</exception>
    public async Task<ServerLock> PrepareAsync(CancellationToken cancellationToken = default)
    {
        var held = ServerLock.Take(path);
        try
        {
            await MigrateAsync(cancellationToken);
            return held;
        }
        catch
        {
            held.Dispose();
            throw;
        }
    }

    /// <summary>Whether the database answers and can be written.</summary>
    public async Task<bool> IsReadyAsync(CancellationToken cancellationToken = default)
    {
        try
        {
            await using var db = await factory.CreateDbContextAsync(cancellationToken);
            await using var transaction = await db.Database.BeginTransactionAsync(cancellationToken);
            return await db.Clinics.IgnoreQueryFilters([RecordsContext.ClinicFilter]).CountAsync(cancellationToken) >= 0;
        }
        catch (SqliteException)
        {
            return false;
        }
    }

    private async Task MigrateAsync(CancellationToken cancellationToken)
    {
        var existed = File.Exists(path) && new FileInfo(path).Length > 0;
        if (existed && SqliteFile.Fault(path) is { } damage)
            throw new DatabaseNotUsableException(
                $"The database {path} is damaged ({damage}). Restore the latest backup; the damaged file is kept beside it.");
        await using var db = await factory.CreateDbContextAsync(cancellationToken);
        var known = db.Database.GetMigrations().ToList();
        var applied = existed ? (await db.Database.GetAppliedMigrationsAsync(cancellationToken)).ToList() : [];
        if (applied.Except(known).Any())
            throw new DatabaseNotUsableException(
                $"The database {path} was written by a newer version of this program. Install that version, or restore an older backup.");
        if (applied.Count == known.Count)
            return;
        var backup = existed ? BackUp(known[^1]) : null;
        try
        {
            // We hold the server lock, so a migration lock in the file was left by a server that was killed.
            if (existed)
                ForgetStaleLock();
            await db.Database.MigrateAsync(cancellationToken);
        }
        catch (Exception fault) when (fault is SqliteException or InvalidOperationException or DbUpdateException)
        {
            await db.Database.CloseConnectionAsync();
            SqliteConnection.ClearPool((SqliteConnection)db.Database.GetDbConnection());
            throw GoBack(backup, fault);
        }
    }

    private string BackUp(string migration)
    {
        var stamp = clock.GetUtcNow().UtcDateTime.ToString("yyyyMMddTHHmmss'Z'", CultureInfo.InvariantCulture);
        var backup = $"{path}.before-{migration}-{stamp}";
        try
        {
            File.Delete(backup);
            SqliteFile.CopyOnline(path, backup);
            return backup;
        }
        catch (Exception fault) when (fault is SqliteException or IOException)
        {
            throw new DatabaseNotUsableException(
                $"No backup could be made before bringing {path} to this version, so nothing was changed. {fault.Message}", fault);
        }
    }

    private DatabaseNotUsableException GoBack(string? backup, Exception fault)
    {
        if (backup is null)
        {
            foreach (var end in (string[])["", .. SqliteFile.Companions])
                File.Delete(path + end);
            return new DatabaseNotUsableException($"The database {path} could not be made. {fault.Message}", fault);
        }
        var copy = backup + ".restoring";
        File.Copy(backup, copy, overwrite: true);
        SqliteFile.Flush(copy);
        SqliteFile.Replace(copy, path, keepAs: null);
        return new DatabaseNotUsableException(
            $"The database {path} could not be brought to this version and was put back as it was. The backup is {backup}. {fault.Message}",
            fault);
    }

    private void ForgetStaleLock()
    {
        using var connection = SqliteFile.Open(path, SqliteOpenMode.ReadWrite);
        SqliteFile.Run(connection, "DROP TABLE IF EXISTS __EFMigrationsLock");
    }
}
