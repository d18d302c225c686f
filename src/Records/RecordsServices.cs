using Microsoft.AspNetCore.Identity;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace MomentArm.Records;

/// <summary>Registers the Records room.</summary>
public static class RecordsServices
{
    /// <summary>
    /// Registers database, stores and the sign-in tables. Sign-in itself (cookies, tokens, sign-in manager) is added by
    /// the caller on the builder given back.
    /// </summary>
    public static IdentityBuilder AddRecords(this IServiceCollection services, string databasePath)
    {
        services.TryAddSingleton(TimeProvider.System);
        services.AddDbContextFactory<RecordsContext>(options => Configure(options, databasePath));
        services.AddSingleton<RecordsWork>();
        services.AddSingleton(provider => new RecordsStores(provider.GetRequiredService<RecordsWork>()));
        services.AddSingleton<PatientStore>();
        services.AddSingleton<EpisodeStore>();
        services.AddSingleton<VisitStore>();
        services.AddSingleton<ProgramStore>();
        services.AddSingleton<LinkStore>();
        services.AddSingleton<LogStore>();
        services.AddSingleton<TodayQuery>();
        services.AddSingleton<AuditStore>();
        services.AddSingleton<DraftStore>();
        services.AddScoped<ClinicSetup>();
        services.AddSingleton(provider => new Database(
            databasePath, provider.GetRequiredService<IDbContextFactory<RecordsContext>>(), provider.GetRequiredService<TimeProvider>()));
        return AddSignInTables(services);
    }

    internal static void Configure(DbContextOptionsBuilder options, string databasePath) =>
        options.UseSqlite(ConnectionString(databasePath));

    internal static string ConnectionString(string databasePath, bool pooling = true) => new SqliteConnectionStringBuilder
    {
        DataSource = databasePath,
        ForeignKeys = true,
        Pooling = pooling,
        DefaultTimeout = 30,
    }.ToString();

    private static IdentityBuilder AddSignInTables(IServiceCollection services)
    {
        // The OWASP password storage cheat sheet asks for 210,000 rounds of PBKDF2-HMAC-SHA512 (change of December 2022).
        services.Configure<PasswordHasherOptions>(options => options.IterationCount = 210_000);
        return services
            .AddIdentityCore<Clinician>(options =>
            {
                options.Password.RequiredLength = 12;
                options.Password.RequiredUniqueChars = 1;
                options.Password.RequireDigit = false;
                options.Password.RequireLowercase = false;
                options.Password.RequireUppercase = false;
                options.Password.RequireNonAlphanumeric = false;
                options.Lockout.MaxFailedAccessAttempts = 5;
                options.Lockout.DefaultLockoutTimeSpan = TimeSpan.FromMinutes(15);
                options.Lockout.AllowedForNewUsers = true;
                options.User.RequireUniqueEmail = true;
                options.Stores.SchemaVersion = IdentitySchemaVersions.Version3;
            })
            .AddEntityFrameworkStores<RecordsContext>();
    }
}
