using MomentArm.Records;
using MomentArm.Web.Demo;

namespace MomentArm.Web.Hosting;

/// <summary>
/// Brings the database to this version before the first request is taken, and holds the lock that keeps a second server off the
/// same file until this one ends.
/// </summary>
public sealed class DatabaseStart(Database database, HouseSettings settings, IServiceScopeFactory scopes)
    : IHostedLifecycleService, IDisposable
{
    private ServerLock? held;

    public async Task StartingAsync(CancellationToken cancellationToken)
    {
        held = await database.PrepareAsync(cancellationToken);
        if (!settings.Demo)
            return;
        await using var scope = scopes.CreateAsyncScope();
        await scope.ServiceProvider.GetRequiredService<DemoClinic>().FillAsync(cancellationToken);
    }

    public Task StartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StartedAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StoppingAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StoppedAsync(CancellationToken cancellationToken)
    {
        Dispose();
        return Task.CompletedTask;
    }

    public void Dispose()
    {
        held?.Dispose();
        held = null;
    }
}
