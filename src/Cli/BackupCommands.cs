using System.CommandLine;
using MomentArm.Records;

namespace MomentArm.Cli;

/// <summary>backup and restore.</summary>
internal static class BackupCommands
{
    internal static Command Backup()
    {
        var database = new Argument<string>("database") { Description = "The database file, in use or not." };
        var archive = new Argument<string>("archive") { Description = "The zip to write." };
        var backup = new Command("backup", "Backs a clinic's database up while it is in use.\nExample: momentarm backup data/demo/clinic.db clinic-backup.zip") { database, archive };
        backup.SetAction((parse, cancel) => Guarded(parse, async output =>
        {
            var path = parse.GetValue(archive)!;
            var manifest = await BackupArchive.WriteAsync(parse.GetValue(database)!, path, TimeProvider.System, cancel);
            output.Write(new { archive = path, manifest }, $"Wrote {path}.");
        }));
        return backup;
    }

    internal static Command Restore()
    {
        var archive = new Argument<string>("archive") { Description = "The zip that backup wrote." };
        var database = new Argument<string>("database") { Description = "The database file to put in its place; the one it replaces is kept beside it." };
        var restore = new Command("restore", "Puts a backup in the place of a database after checking it whole. Stop the server first.\nExample: momentarm restore clinic-backup.zip data/demo/clinic.db") { archive, database };
        restore.SetAction((parse, cancel) => Guarded(parse, async output =>
        {
            var report = await BackupArchive.RestoreAsync(parse.GetValue(archive)!, parse.GetValue(database)!, TimeProvider.System, cancel);
            output.Write(report, $"Restored {parse.GetValue(database)}." + (report.KeptAs is { } kept ? $" The replaced database is kept as {kept}." : ""));
        }));
        return restore;
    }

    private static async Task<int> Guarded(ParseResult parse, Func<Output, Task> act)
    {
        var output = Output.For(parse);
        try
        {
            await act(output);
            return 0;
        }
        catch (Exception error) when (error is BackupNotUsableException or DatabaseNotUsableException or IOException or UnauthorizedAccessException)
        {
            return output.Faults([error.Message]);
        }
    }
}
