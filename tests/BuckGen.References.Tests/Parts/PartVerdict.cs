using System.Globalization;

namespace BuckGen.References.Tests.Parts;

/// <summary>A finished part as the script measures it.</summary>
/// <param name="Job">The job.</param>
/// <param name="Ordered">Ordered width, height and depth, mm.</param>
/// <param name="Measured">The same of the finished part, by the script, mm.</param>
/// <param name="Reported">The same by the program, mm.</param>
/// <param name="Boards">By how much the boards miss the depth, on the cooled part, mm.</param>
/// <param name="Wall">Mean thickness of the wall, by the script, mm.</param>
/// <param name="Faults">What differs by too much.</param>
internal sealed record PartVerdict(
    string Job, double[] Ordered, double[] Measured, double[] Reported, double Boards, double Wall, string[] Faults)
{
    public override string ToString() => FormattableString.Invariant(
        $"{Job,-14} ordered {Sizes(Ordered)}; measured {Sizes(Measured)}; reported {Sizes(Reported)}; ")
        + FormattableString.Invariant($"boards {Boards:+0.00;-0.00;0.00}; wall {Wall:0.000}");

    private static string Sizes(double[] sizes) =>
        string.Join(" x ", sizes.Select(s => s.ToString("0.00", CultureInfo.InvariantCulture)));
}
