using BenchmarkDotNet.Running;

// Each class has a peer in the same run, so that ratios mean something on any machine:
//   dotnet run -c Release --project tests/BuckGen.Benchmarks -- --filter '*'
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
