using Xunit.Sdk;
using Xunit.v3;

[assembly: TestCollectionOrderer(typeof(BuckGen.References.Tests.LongestFirst))]

namespace BuckGen.References.Tests;

/// <summary>Starts what takes longest first, so that no core waits for it at the end.</summary>
public sealed class LongestFirst : ITestCollectionOrderer
{
    private static readonly string[] Longest =
    [
        Browser.BrowserTests.Name, nameof(Layers.LayerOffsetTests), nameof(Written.GateTests), nameof(Packages.PackageTests),
        nameof(Models.MeshTests), nameof(Layers.SideTests), nameof(Signs.LongSignTests),
    ];

    public IReadOnlyCollection<TTestCollection> OrderTestCollections<TTestCollection>(
        IReadOnlyCollection<TTestCollection> testCollections)
        where TTestCollection : ITestCollection => [.. testCollections.OrderBy(Rank)];

    private static int Rank<TTestCollection>(TTestCollection collection)
        where TTestCollection : ITestCollection
    {
        var rank = Array.FindIndex(
            Longest, name => collection.TestCollectionDisplayName.Contains(name, StringComparison.Ordinal));
        return rank < 0 ? Longest.Length : rank;
    }
}
