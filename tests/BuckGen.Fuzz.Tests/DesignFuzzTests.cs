using BuckGen.Fuzz.Tests.Laws;
using BuckGen.Fuzz.Tests.Runs;
using BuckGen.Tests.Intake.Fuzzing;
using Xunit;

namespace BuckGen.Fuzz.Tests;

/// <summary>
/// Random drawings with random settings, taken all the way to the files: each is refused in words or keeps every law.
/// BUCKGEN_FUZZ=50000 tries as many; BUCKGEN_FUZZ_SEED and BUCKGEN_FUZZ_FIRST name others.
/// </summary>
[Trait("Tier", "slow")]
public class DesignFuzzTests
{
    private const int Usual = 2000;

    internal static readonly ILaw[] Laws =
    [
        new SideLaw(), new DistanceLaw(), new NestingLaw(), new StackLaw(), new DowelLaw(), new VentLaw(), new LayerFileLaw(),
        new KerfLaw(), new BoardLaw(), new SummaryLaw(),
    ];

    [Fact]
    public void Every_design_keeps_every_law()
    {
        var report = FuzzReport.Create(FuzzSettings.Or(Usual), Laws);
        TestContext.Current.TestOutputHelper?.WriteLine(report.ToString());
        Assert.True(report.Faults.Count == 0, report.ToString());
        // Refusing everything would keep all laws too.
        Assert.True(report.Runs < 100 || report.Designed * 2 >= report.Runs, report.ToString());
    }

    /// <summary>
    /// Cases that broke a law once: dowels in one place, a rim that its own part crosses by a hair, a board that ends a hair off
    /// a ledge, a lip wider than its block, a jig round next to nothing.
    /// </summary>
    [Theory]
    [InlineData(1, 216)]
    [InlineData(1, 1547)]
    [InlineData(404, 8226)]
    [InlineData(404, 8243)]
    [InlineData(1, 1058)]
    [InlineData(1, 1860)]
    [InlineData(405, 4389)]
    public void A_design_that_broke_a_law_keeps_it_now(int seed, int number)
    {
        var report = FuzzReport.Create(new(1, seed, number, false), Laws);
        Assert.True(report.Faults.Count == 0, report.ToString());
        Assert.Equal(1, report.Runs);
    }
}
