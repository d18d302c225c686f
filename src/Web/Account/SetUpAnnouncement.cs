using MomentArm.Records;

namespace MomentArm.Web.Account;

/// <summary>At start: when the clinic has not been set up, make the set-up code and write it to the console.</summary>
public sealed class SetUpAnnouncement(IServiceScopeFactory scopes, SetUpCode code) : IHostedLifecycleService
{
    public async Task StartedAsync(CancellationToken cancellationToken)
    {
        await using var scope = scopes.CreateAsyncScope();
        if (!await scope.ServiceProvider.GetRequiredService<ClinicSetup>().IsSetUpAsync(cancellationToken))
        {
            code.Begin();
        }
    }

    public Task StartingAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StoppingAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StoppedAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}
