using MomentArm.Cli;

return await CommandLine.Build().Parse(args).InvokeAsync();
