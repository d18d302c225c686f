using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace MomentArm.Records;

/// <summary>
/// Settings every connection gets: a commit survives a power cut (WAL with full synchronous), references are enforced,
/// a busy database is waited for, and functions hidden in a schema are not trusted.
/// </summary>
internal sealed class SqliteSettings : DbConnectionInterceptor
{
    internal const string Pragmas =
        "PRAGMA busy_timeout=5000; PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; PRAGMA foreign_keys=ON; "
        + "PRAGMA trusted_schema=OFF; PRAGMA cell_size_check=ON;";

    private SqliteSettings()
    {
    }

    internal static SqliteSettings Instance { get; } = new();

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData) => Apply(connection);

    public override Task ConnectionOpenedAsync(
        DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        Apply(connection);
        return Task.CompletedTask;
    }

    internal static void Apply(DbConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Pragmas;
        command.ExecuteNonQuery();
    }
}
