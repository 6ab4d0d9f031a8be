using Xunit;

namespace BuckGen.Tests.Design.Venting;

/// <summary>What breaks a law, over many cases: all of it is reported at once.</summary>
internal sealed class Faults
{
    private readonly List<string> faults = [];

    /// <summary>How many things were judged.</summary>
    public int CheckedCount { get; private set; }

    public void Check(bool holds, Func<string> fault)
    {
        CheckedCount++;
        if (!holds) faults.Add(fault());
    }

    /// <summary>Fails when anything is wrong, or when too little was judged for that to mean anything.</summary>
    public void None(int minCount)
    {
        if (faults.Count > 0) Assert.Fail($"{faults.Count} faults in {CheckedCount}:\n{string.Join('\n', faults.Take(60))}");
        Assert.InRange(CheckedCount, minCount, int.MaxValue);
    }
}
