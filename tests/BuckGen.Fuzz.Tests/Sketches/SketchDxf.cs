using System.Globalization;
using System.Text;

namespace BuckGen.Fuzz.Tests.Sketches;

/// <summary>A sketch as a DXF of closed polylines, in mm.</summary>
internal static class SketchDxf
{
    public static byte[] Write(IEnumerable<SketchLoop> loops)
    {
        var text = new StringBuilder(
            "0\nSECTION\n2\nHEADER\n9\n$ACADVER\n1\nAC1009\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n");
        foreach (var loop in loops)
        {
            text.Append("0\nPOLYLINE\n8\n0\n66\n1\n70\n1\n");
            foreach (var (point, bulge) in loop.Corners)
                text.Append(CultureInfo.InvariantCulture, $"0\nVERTEX\n8\n0\n10\n{point.X:R}\n20\n{point.Y:R}\n42\n{bulge:R}\n");
            text.Append("0\nSEQEND\n");
        }

        return Encoding.ASCII.GetBytes(text.Append("0\nENDSEC\n0\nEOF\n").ToString());
    }
}
