using System.Globalization;
using Microsoft.Data.Sqlite;

namespace MomentArm.Records;

/// <summary>Whole-file work on a SQLite database: copying while in use, checking, replacing.</summary>
internal static class SqliteFile
{
    internal static readonly string[] Companions = ["-wal", "-shm"];

    /// <summary>Copies a database that may be in use into a new single file, with every commit made so far.</summary>
    internal static void CopyOnline(string from, string to)
    {
        using (var source = Open(from, SqliteOpenMode.ReadWrite))
        using (var target = Open(to, SqliteOpenMode.ReadWriteCreate))
        {
            source.BackupDatabase(target);
            // The copy is a single file, without a log beside it.
            Run(target, "PRAGMA journal_mode=DELETE");
        }
        Flush(to);
    }

    /// <summary>What is wrong with the file; null when nothing is.</summary>
    internal static string? Fault(string path)
    {
        try
        {
            using var connection = Open(path, SqliteOpenMode.ReadOnly);
            var whole = Run(connection, "PRAGMA integrity_check");
            if (whole != "ok")
                return whole ?? "empty answer";
            return Run(connection, "SELECT 'a reference that leads nowhere in ' || \"table\" FROM pragma_foreign_key_check LIMIT 1");
        }
        catch (SqliteException fault)
        {
            return fault.Message;
        }
    }

    /// <summary>Rows in each table.</summary>
    internal static SortedDictionary<string, long> CountRows(string path)
    {
        using var connection = Open(path, SqliteOpenMode.ReadOnly);
        var names = new List<string>();
        using (var command = connection.CreateCommand())
        {
            command.CommandText = "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'";
            using var reader = command.ExecuteReader();
            while (reader.Read())
                names.Add(reader.GetString(0));
        }
        var counts = new SortedDictionary<string, long>(StringComparer.Ordinal);
        foreach (var name in names)
            counts[name] = long.Parse(Run(connection, $"SELECT count(*) FROM \"{name}\"")!, CultureInfo.InvariantCulture);
        return counts;
    }

    /// <summary>The latest migration the file has seen; null when it has seen none.</summary>
    internal static string? LastMigration(string path)
    {
        using var connection = Open(path, SqliteOpenMode.ReadOnly);
        return Run(connection, "SELECT 1 FROM sqlite_master WHERE name = '__EFMigrationsHistory'") is null
            ? null
            : Run(connection, "SELECT max(MigrationId) FROM __EFMigrationsHistory");
    }

    /// <summary>
    /// Puts a checked file in the place of a database nobody uses. The old one is copied beside first; the change itself
    /// is one rename, so at any instant either the whole old or the whole new database is there.
    /// </summary>
    internal static void Replace(string fresh, string path, string? keepAs)
    {
        if (File.Exists(path))
        {
            TryCheckpoint(path);
            if (keepAs is not null)
                CopyAside(path, keepAs);
            foreach (var end in Companions)
                File.Delete(path + end);
        }
        File.Move(fresh, path, overwrite: true);
    }

    internal static void Flush(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.ReadWrite);
        file.Flush(flushToDisk: true);
    }

    internal static SqliteConnection Open(string path, SqliteOpenMode mode)
    {
        var connection = new SqliteConnection(
            new SqliteConnectionStringBuilder { DataSource = path, Mode = mode, Pooling = false }.ToString());
        connection.Open();
        return connection;
    }

    internal static string? Run(SqliteConnection connection, string statement)
    {
        using var command = connection.CreateCommand();
        command.CommandText = statement;
        return Convert.ToString(command.ExecuteScalar(), CultureInfo.InvariantCulture) is { Length: > 0 } text ? text : null;
    }

    private static void CopyAside(string path, string keepAs)
    {
        foreach (var end in (string[])["", .. Companions])
        {
            if (!File.Exists(path + end))
                continue;
            File.Copy(path + end, keepAs + end);
            Flush(keepAs + end);
        }
    }

    // A damaged database can't be checkpointed; its log is then kept beside it as it is.
    private static void TryCheckpoint(string path)
    {
        try
        {
            using var connection = Open(path, SqliteOpenMode.ReadWrite);
            Run(connection, "PRAGMA wal_checkpoint(TRUNCATE)");
        }
        catch (SqliteException)
        {
        }
    }
}
