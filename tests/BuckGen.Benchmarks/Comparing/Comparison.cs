using System.Globalization;

namespace BuckGen.Benchmarks.Comparing;

/// <summary>
/// Measures the same work done here and by others, one after the other in turn, and prints the medians with their ratio. A peer
/// that is not installed is named and left out; nothing fails.
/// </summary>
internal static class Comparison
{
    public static void Run(bool isShort)
    {
        var rounds = isShort ? 3 : 5;
        var temporary = Directory.CreateTempSubdirectory("buckgen-compare").FullName;
        Console.WriteLine("| work | here, ms | peer | peer, ms | ratio |\n| --- | ---: | --- | ---: | ---: |");
        foreach (var vertices in isShort ? [500, 5_000] : (int[])[500, 5_000, 20_000])
            OffsetComparison.Run(vertices, rounds, temporary);
        ProgramComparison.Run(isShort ? 1 : rounds, isShort, temporary);
        Directory.Delete(temporary, recursive: true);
    }

    /// <summary>Measures two ways in turn.</summary>
    /// <param name="work">What is done.</param>
    /// <param name="peer">Who else does it.</param>
    /// <param name="rounds">How often.</param>
    /// <param name="here">Does it here; returns the time it took, ms.</param>
    /// <param name="there">Has the peer do it; returns the time it took, ms.</param>
    public static void Alternate(string work, string peer, int rounds, Func<double> here, Func<double> there)
    {
        var (ours, theirs) = (new List<double>(), new List<double>());
        for (var round = 0; round < rounds; round++)
        {
            ours.Add(here());
            theirs.Add(there());
        }

        var (own, other) = (Median(ours), Median(theirs));
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"| {work} | {own:F1} | {peer} | {other:F1} | {own / other:F2} |"));
    }

    private static double Median(IEnumerable<double> values)
    {
        double[] ordered = [.. values.Order()];
        return (ordered[(ordered.Length - 1) / 2] + ordered[ordered.Length / 2]) / 2;
    }
}
