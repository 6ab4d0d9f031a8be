namespace BuckGen.References.Tests.Support;

internal static class Faults
{
    /// <summary>Fails with all the faults, one a line, and how many there are.</summary>
    public static void None(IEnumerable<string> faults)
    {
        var all = faults.ToList();
        if (all.Count > 0) Assert.Fail($"{all.Count} faults:\n{string.Join('\n', all.Take(40))}");
    }
}
