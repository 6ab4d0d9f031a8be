using System.Collections.Immutable;
using System.Text;

namespace BuckGen.Cutting.Drilling;

/// <summary>
/// One run of holes as a program for a router, in NIST's RS274/NGC (NISTIR 6556): absolute millimetres, X and Y the
/// design's own, Z 0 the top of the stock. No tool change, no offsets, no variables: the operator sets the bit and the zero.
/// </summary>
internal static class DrillProgram
{
    /// <summary>The bytes of the file: ASCII, lines ended by LF.</summary>
    /// <param name="run">Holes of one layer and one diameter; see <see cref="DrillRun.Split"/>.</param>
    /// <param name="spec">How to drill them.</param>
    /// <exception cref="DrillException">A setting is out of range.</exception>
    public static ImmutableArray<byte> Write(DrillRun run, DrillProgramSpec spec)
    {
        ArgumentNullException.ThrowIfNull(run);
        ArgumentNullException.ThrowIfNull(spec);
        spec.Validate();
        var drilling = run.Holes.SelectMany(hole => DrillMoves.ForHole(hole, spec));
        IEnumerable<string> lines = [.. Heading(run), .. Start(spec), .. drilling, .. End(spec)];
        return [.. Encoding.ASCII.GetBytes(string.Concat(lines.Select(line => line + "\n")))];
    }

    private static IEnumerable<string> Heading(DrillRun run)
    {
        var holes = run.Holes.Length == 1 ? "1 hole" : FormattableString.Invariant($"{run.Holes.Length} holes");
        yield return FormattableString.Invariant($"(Layer {run.Layer}: {holes}, drill {run.Holes[0].Drill})");
        yield return $"(Diameter of the drill {DrillText.Length(run.Diameter)} mm)";
        yield return $"(Deepest hole {DrillText.Length(run.Holes.Max(h => h.Depth))} mm below the top of the stock)";
        yield return "(Millimetres. Z 0 is the top of the stock, X 0 Y 0 the origin of the drawing)";
        yield return "(Run it above the stock first, then on scrap)";
        yield return "(Wear eye protection, extract the dust, stay by the stop button)";
    }

    private static IEnumerable<string> Start(DrillProgramSpec spec) =>
    [
        "G21 G90 G17 G94 G80",
        SafeHeight(spec),
        $"S{DrillText.Speed(spec.SpindleSpeed)} M3",
        $"F{DrillText.Speed(spec.Feed)}",
    ];

    private static IEnumerable<string> End(DrillProgramSpec spec) =>
        spec.Cycles ? ["G80", SafeHeight(spec), "M5", "M2"] : [SafeHeight(spec), "M5", "M2"];

    private static string SafeHeight(DrillProgramSpec spec) => $"G0 Z{DrillText.Length(spec.SafeHeight)}";
}
