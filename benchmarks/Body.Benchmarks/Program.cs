using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using MomentArm.Body.Benchmarks;

// In this process: a project made on the side would not see the repository's build settings.
BenchmarkRunner.Run(
    [typeof(EngineBenchmarks), typeof(PictureBenchmarks)],
    DefaultConfig.Instance
        .AddJob(Job.Default.WithToolchain(InProcessEmitToolchain.Instance).WithWarmupCount(5).WithIterationCount(15))
        .WithArtifactsPath(Path.Combine("artifacts", "benchmarks")),
    args);
