using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using System.Text;
using System.Text.RegularExpressions;

namespace MomentArm.Browser.Tests;

/// <summary>The published app as a process of its own, on a free port, with a database of its own that goes when it ends.</summary>
internal sealed partial class RunningApp : IAsyncDisposable
{
    private readonly Process process;
    private readonly StringBuilder output = new();
    private readonly DirectoryInfo folder;

    private RunningApp(Process process, DirectoryInfo folder, string address)
    {
        this.process = process;
        this.folder = folder;
        Address = address;
    }

    internal string Address { get; }

    /// <summary>What the console said so far.</summary>
    internal string Console
    {
        get
        {
            lock (output)
                return output.ToString();
        }
    }

    /// <summary>Starts the app, with the demo clinic or empty.</summary>
    internal static async Task<RunningApp> StartAsync(bool demo)
    {
        var root = Root();
        var program = Path.Combine(root, "out", "MomentArm.Web.dll");
        if (!File.Exists(program))
            throw new InvalidOperationException("The app is not published. ./test does it: dotnet publish src/Web -c Release -o out");
        var folder = Directory.CreateTempSubdirectory("momentarm-browser-");
        var address = $"http://localhost:{FreePort()}";
        var start = new ProcessStartInfo("dotnet", [program])
        {
            WorkingDirectory = folder.FullName,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            Environment =
            {
                ["ASPNETCORE_ENVIRONMENT"] = "Production",
                ["ASPNETCORE_URLS"] = address,
                ["MomentArm__Content"] = Path.Combine(root, "content"),
                ["MomentArm__Database"] = Path.Combine(folder.FullName, "clinic.db"),
                ["MomentArm__Demo"] = demo ? "true" : "false",
            },
        };
        var app = new RunningApp(Process.Start(start) ?? throw new InvalidOperationException("dotnet did not start."), folder, address);
        app.Listen();
        await app.ReadyAsync();
        return app;
    }

    /// <summary>The one-time code of the first set-up, read off the console as the owner would.</summary>
    internal async Task<string> SetUpCodeAsync()
    {
        for (var waited = 0; waited < 100; waited++)
        {
            if (CodePattern().Match(Console) is { Success: true } match)
                return match.Value;
            await Task.Delay(100);
        }

        throw new InvalidOperationException("No set-up code on the console:\n" + Console);
    }

    public async ValueTask DisposeAsync()
    {
        if (!process.HasExited)
        {
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync();
        }

        process.Dispose();
        folder.Delete(recursive: true);
    }

    private static string Root()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "MomentArm.slnx")))
            at = at.Parent;
        return at?.FullName ?? throw new InvalidOperationException("MomentArm.slnx not found above the tests.");
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private void Listen()
    {
        void Keep(string? line)
        {
            lock (output)
                output.AppendLine(line);
        }

        process.OutputDataReceived += (_, e) => Keep(e.Data);
        process.ErrorDataReceived += (_, e) => Keep(e.Data);
        process.BeginOutputReadLine();
        process.BeginErrorReadLine();
    }

    private async Task ReadyAsync()
    {
        using var client = new HttpClient();
        for (var waited = 0; waited < 300; waited++)
        {
            if (process.HasExited)
                throw new InvalidOperationException("The app ended at start:\n" + Console);
            try
            {
                if ((await client.GetAsync(Address + "/health/ready")).IsSuccessStatusCode)
                    return;
            }
            catch (HttpRequestException)
            {
                // Not listening yet.
            }

            await Task.Delay(200);
        }

        throw new InvalidOperationException("The app was not ready within a minute:\n" + Console);
    }

    [GeneratedRegex(@"\b[A-Z0-9]{5}-[A-Z0-9]{5}\b")]
    private static partial Regex CodePattern();
}
