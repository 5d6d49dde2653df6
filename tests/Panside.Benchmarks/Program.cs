using BenchmarkDotNet.Running;
using Panside.Benchmarks;

BenchmarkSwitcher.FromAssembly(typeof(PropertyCalls).Assembly).Run(args);
