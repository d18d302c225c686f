using MomentArm.Cli;

return await CommandLine.RunAsync(args, Console.Out, Console.Error);
