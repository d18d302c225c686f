using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;

namespace MomentArm.Records.Tests;

public sealed class ClinicSetupTests
{
    private static readonly ClinicDetails Clinic = new("Hillside (invented)", "America/Chicago", "555-0100");
    private static readonly ClinicianDetails Owner = new("Olga (invented)", "olga@example.test", "correct horse battery");

    [Fact]
    public async Task A_fresh_database_has_no_account_and_the_first_run_makes_one_clinic_only()
    {
        using var folder = new TempFolder();
        await using var services = Services(folder.File("records.db"));
        using var held = await services.GetRequiredService<Database>().PrepareAsync();
        Assert.False(await InScopeAsync(services, setup => setup.IsSetUpAsync()));
        var outcomes = await Task.WhenAll(Enumerable.Range(0, 4).Select(n => Task.Run(() => InScopeAsync(
            services, setup => setup.CreateFirstAsync(Clinic, Owner with { Email = $"o{n}@example.test" })))));
        var made = Assert.Single(outcomes, o => o.Worked).Clinician!;
        Assert.True(await InScopeAsync(services, setup => setup.IsSetUpAsync()));
        var people = await InScopeAsync(services, setup => setup.CliniciansAsync(Acting.As(made)));
        Assert.Equal(ClinicianRole.Owner, Assert.Single(people).Role);
        Assert.Equal("555-0100", (await InScopeAsync(services, setup => setup.GetClinicAsync(Acting.As(made)))).Phone);
        var trail = await services.GetRequiredService<RecordsStores>().Audit.ListByClinicAsync(Acting.As(made));
        Assert.Equal(["added as Owner clinician", "added clinic"], trail.Select(l => $"{l.Action} {l.SubjectType}"));
        Assert.True((await services.GetRequiredService<RecordsStores>().Audit.VerifyAsync(Acting.As(made))).IsWhole);
    }

    [Fact]
    public async Task A_short_password_is_refused_a_long_plain_one_is_taken_and_nothing_is_left_behind()
    {
        using var folder = new TempFolder();
        await using var services = Services(folder.File("records.db"));
        using var held = await services.GetRequiredService<Database>().PrepareAsync();
        var refused = await InScopeAsync(services, s => s.CreateFirstAsync(Clinic, Owner with { Password = "elevenchars" }));
        Assert.False(refused.Worked);
        Assert.NotEmpty(refused.Faults);
        Assert.False(await InScopeAsync(services, setup => setup.IsSetUpAsync()));
        Assert.False((await InScopeAsync(services, s => s.CreateFirstAsync(Clinic with { TimeZone = "Mars/Base" }, Owner))).Worked);
        var owner = (await InScopeAsync(services, s => s.CreateFirstAsync(Clinic, Owner with { Password = "aaaaaaaaaaaa" }))).Clinician!;
        var added = await InScopeAsync(services, s => s.AddClinicianAsync(
            Acting.As(owner), new("Theo (invented)", "theo@example.test", "twelve chars!"), ClinicianRole.Therapist));
        Assert.Equal(owner.ClinicId, added.Clinician!.ClinicId);
        Assert.False((await InScopeAsync(services, s => s.AddClinicianAsync(
            Acting.As(owner), new("Theo (invented)", "theo@example.test", "twelve chars!"), ClinicianRole.Therapist))).Worked);
    }

    [Fact]
    public async Task Passwords_are_stretched_at_least_210000_rounds_and_five_wrong_tries_lock()
    {
        using var folder = new TempFolder();
        await using var services = Services(folder.File("records.db"));
        using var held = await services.GetRequiredService<Database>().PrepareAsync();
        var owner = (await InScopeAsync(services, s => s.CreateFirstAsync(Clinic, Owner))).Clinician!;
        // Layout of the stored hash, version 3: marker, pseudo-random function, then the rounds as a big-endian number.
        var hash = Convert.FromBase64String(owner.PasswordHash!);
        Assert.True(System.Buffers.Binary.BinaryPrimitives.ReadUInt32BigEndian(hash.AsSpan(5)) >= 210_000);
        await using var scope = services.CreateAsyncScope();
        var users = scope.ServiceProvider.GetRequiredService<UserManager<Clinician>>();
        var found = (await users.FindByEmailAsync("OLGA@example.test"))!;
        Assert.True(await users.CheckPasswordAsync(found, Owner.Password));
        for (var attempt = 1; attempt <= 5; attempt++)
        {
            Assert.False(await users.IsLockedOutAsync(found));
            await users.AccessFailedAsync(found);
        }
        Assert.True(await users.IsLockedOutAsync(found));
    }

    private static ServiceProvider Services(string path)
    {
        var services = new ServiceCollection();
        services.AddLogging();
        services.AddRecords(path);
        return services.BuildServiceProvider(validateScopes: true);
    }

    private static async Task<T> InScopeAsync<T>(ServiceProvider services, Func<ClinicSetup, Task<T>> use)
    {
        await using var scope = services.CreateAsyncScope();
        return await use(scope.ServiceProvider.GetRequiredService<ClinicSetup>());
    }
}
