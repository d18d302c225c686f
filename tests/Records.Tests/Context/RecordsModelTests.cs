using Microsoft.AspNetCore.Identity;
using Microsoft.EntityFrameworkCore;

namespace MomentArm.Records.Tests;

public sealed class RecordsModelTests
{
    [Fact]
    public async Task The_model_has_no_change_without_a_migration()
    {
        await using var records = await TestRecords.CreateAsync();
        await using var db = records.Open(records.Ana);
        Assert.False(db.Database.HasPendingModelChanges());
        Assert.Empty(await db.Database.GetPendingMigrationsAsync());
    }

    [Fact]
    public async Task Every_table_but_those_of_sign_in_is_filtered_by_clinic_and_its_key_starts_with_the_clinic()
    {
        await using var records = await TestRecords.CreateAsync();
        await using var db = records.Open(records.Ana);
        var signIn = typeof(IdentityUser<>).Assembly;
        var types = db.Model.GetEntityTypes()
            .Where(t => t.ClrType != typeof(Clinician) && t.ClrType.Assembly != signIn).ToList();
        Assert.Equal(21, types.Count);
        foreach (var type in types)
        {
            Assert.NotNull(type.FindDeclaredQueryFilter(RecordsContext.ClinicFilter));
            var first = type.FindPrimaryKey()!.Properties[0].Name;
            Assert.Equal(type.ClrType == typeof(Clinic) ? "Id" : "ClinicId", first);
            Assert.All(
                type.GetForeignKeys(),
                key => Assert.True(key.Properties[0].Name == "ClinicId", $"{type.Name}: {key} leaves its clinic"));
        }
    }

    [Fact]
    public async Task The_tables_refuse_what_the_triggers_say_after_all_migrations()
    {
        await using var records = await TestRecords.CreateAsync();
        Assert.Equal(
            Triggers.Create().Count().ToString(System.Globalization.CultureInfo.InvariantCulture),
            records.RawValue("SELECT count(*) FROM sqlite_master WHERE type = 'trigger'"));
    }

    [Fact]
    public async Task Every_connection_gets_the_durable_and_strict_settings()
    {
        await using var records = await TestRecords.CreateAsync();
        await using var db = records.Open(records.Ana);
        await db.Database.OpenConnectionAsync();
        var connection = (Microsoft.Data.Sqlite.SqliteConnection)db.Database.GetDbConnection();
        Assert.Equal("wal", SqliteFile.Run(connection, "PRAGMA journal_mode"));
        Assert.Equal("2", SqliteFile.Run(connection, "PRAGMA synchronous"));
        Assert.Equal("1", SqliteFile.Run(connection, "PRAGMA foreign_keys"));
        Assert.Equal("5000", SqliteFile.Run(connection, "PRAGMA busy_timeout"));
        Assert.Equal("0", SqliteFile.Run(connection, "PRAGMA trusted_schema"));
    }
}
