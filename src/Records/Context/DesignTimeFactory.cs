using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;
using Microsoft.Extensions.DependencyInjection;

namespace MomentArm.Records;

/// <summary>Makes contexts where no server runs: for the migration tool, and for asking which migrations this program knows.</summary>
internal sealed class DesignTimeFactory : IDesignTimeDbContextFactory<RecordsContext>
{
    // The sign-in tables take their form from the sign-in options, so these have to be the server's own.
    private static readonly ServiceProvider Services =
        new ServiceCollection().AddRecords(":memory:").Services.BuildServiceProvider();

    public RecordsContext CreateDbContext(string[] args) =>
        Services.GetRequiredService<IDbContextFactory<RecordsContext>>().CreateDbContext();
}
