using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BuckGen.Quantities;

namespace BuckGen.Cutting.Drilling;

/// <summary>The holes as a table for people and programs: comma-separated values after RFC 4180, in UTF-8.</summary>
internal static class DrillCsv
{
    /// <summary>
    /// The bytes of the file: a header, then one line a hole, ended by CR and LF, lengths in mm with three decimals. Holes stand
    /// by layer, then by diameter, then in the order of drilling.
    /// </summary>
    /// <param name="holes">The holes; without any, the header stands alone.</param>
    /// <exception cref="DrillException">A hole has a number out of range.</exception>
    public static ImmutableArray<byte> Write(IReadOnlyList<DrillHole> holes)
    {
        var text = new StringBuilder("x,y,diameter,depth,layer,drill,reason\r\n");
        foreach (var hole in DrillRun.Split(holes).SelectMany(run => run.Holes))
        {
            string[] fields =
            [
                DrillText.Length(hole.Centre.X),
                DrillText.Length(hole.Centre.Y),
                DrillText.Length(hole.Diameter),
                DrillText.Length(hole.Depth),
                hole.Layer.ToString(CultureInfo.InvariantCulture),
                Text(hole.Drill),
                Text(hole.Reason),
            ];
            text.AppendJoin(',', fields).Append("\r\n");
        }

        return [.. Encoding.UTF8.GetBytes(text.ToString())];
    }

    /// <summary>What makes a spreadsheet take a cell for a formula, in half and full width (from memory, no source).</summary>
    private const string FormulaSigns = "=+-@＝＋－＠";

    /// <summary>
    /// Text as a field: visible, with an apostrophe in front where a spreadsheet would take it for a formula. It is quoted where
    /// it holds a quotation mark or a comma, and its own marks are doubled.
    /// </summary>
    private static string Text(string words)
    {
        var field = VisibleText.Escape(words);
        if (field.Length > 0 && FormulaSigns.Contains(field[0], StringComparison.Ordinal)) field = $"'{field}";
        return field.AsSpan().ContainsAny(",\"") ? $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : field;
    }
}
