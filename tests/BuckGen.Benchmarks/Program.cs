using BenchmarkDotNet.Running;
using BuckGen.Benchmarks.Comparing;

// Side by side with other programs, as a table of ratios; "short" leaves out the large sizes:
//   dotnet run -c Release --project tests/BuckGen.Benchmarks -- compare [short]
if (args is ["compare", .. var rest])
{
    Comparison.Run(isShort: rest is ["short"]);
    return;
}

// Each class has a peer in the same run, so that ratios mean something on any machine:
//   dotnet run -c Release --project tests/BuckGen.Benchmarks -- --filter '*'
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
