using BenchmarkDotNet.Running;
using MomentArm.Body.Benchmarks;

BenchmarkRunner.Run<EngineBenchmarks>(args: args);
