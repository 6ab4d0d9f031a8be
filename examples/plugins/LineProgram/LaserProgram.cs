using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BuckGen.Cutting.CutFiles;
using BuckGen.Cutting.CutPaths;
using BuckGen.Geometry;
using BuckGen.Plugins;

namespace LineProgram;

/// <summary>
/// Writes a program for a laser as NIST RS274/NGC defines it: G0 to a path, G1 and G2/G3 along it, the beam on by M3 and off by
/// M5.
/// </summary>
/// <remarks>
/// Source: Kramer, Proctor and Messina, The NIST RS274NGC Interpreter, NISTIR 6556, 2000. Try it with the beam off first; a laser
/// runs under its maker's rules, with exhaust, never alone, and never on PVC.
/// </remarks>
/// <param name="cutFeed">Feed through the board, mm a minute.</param>
/// <param name="markFeed">Feed along marks, mm a minute.</param>
/// <param name="power">The word S for cutting; marks get a tenth of it.</param>
public sealed class LaserProgram(double cutFeed, double markFeed, double power) : ICutFileFormat, IWithSettings
{
    /// <summary>Slow and weak: a start to be set by [settings.ngc] with cut-feed, mark-feed and power.</summary>
    public LaserProgram()
        : this(300, 1500, 100)
    {
    }

    /// <inheritdoc/>
    public string Name => "ngc";

    /// <inheritdoc/>
    public string Extension => ".ngc";

    /// <inheritdoc/>
    public bool BoardsOnly => true;

    /// <inheritdoc/>
    public ImmutableArray<byte> Write(CutDrawing drawing)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        var program = new StringBuilder();
        void Line(FormattableString words) => program.Append(words.ToString(CultureInfo.InvariantCulture)).Append('\n');
        program.Append("%\n(").Append(Comment(drawing.Title)).Append(")\n");
        Line($"G21 G90 G17 G91.1 M5");
        foreach (var path in drawing.Paths)
        {
            var cuts = path.Layer != CutLayer.Mark;
            var start = path.Segments[0].Start;
            Line($"G0 X{start.X:F4} Y{start.Y:F4}");
            Line($"M3 S{(cuts ? power : power / 10):0.###}");
            Line($"F{(cuts ? cutFeed : markFeed):0.###}");
            foreach (var piece in path.Segments.SelectMany(QuarterTurns))
            {
                var (end, centre) = (piece.End, piece.Centre - piece.Start);
                if (piece.IsArc) Line($"{(piece.Bulge > 0 ? "G3" : "G2")} X{end.X:F4} Y{end.Y:F4} I{centre.X:F4} J{centre.Y:F4}");
                else Line($"G1 X{end.X:F4} Y{end.Y:F4}");
            }

            Line($"M5");
        }

        return [.. Encoding.ASCII.GetBytes(program.Append("M2\n%\n").ToString())];
    }

    /// <inheritdoc/>
    public object With(IReadOnlyDictionary<string, string> settings)
    {
        if (settings.Keys.FirstOrDefault(k => k is not ("cut-feed" or "mark-feed" or "power")) is { } strange)
            throw new ArgumentException($"\"{strange}\" is not known; known are cut-feed, mark-feed and power");
        return new LaserProgram(
            Number(settings, "cut-feed", cutFeed), Number(settings, "mark-feed", markFeed), Number(settings, "power", power));
    }

    /// <summary>An arc of more than a quarter turn in parts: interpreters find the centre of a short arc more surely.</summary>
    private static IEnumerable<Segment> QuarterTurns(Segment piece)
    {
        var count = piece.IsArc ? (int)Math.Ceiling(Math.Abs(piece.Sweep) / (Math.PI / 2) - 1e-9) : 1;
        return Enumerable.Range(0, count).Select(i => piece.Part((double)i / count, (i + 1.0) / count));
    }

    /// <summary>A comment may hold no brackets.</summary>
    private static string Comment(string text) =>
        new([.. text.Select(c => c is '(' or ')' || !char.IsAscii(c) || char.IsControl(c) ? '_' : c)]);

    private static double Number(IReadOnlyDictionary<string, string> settings, string key, double otherwise) =>
        !settings.TryGetValue(key, out var text) ? otherwise
        : double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && number > 0 ? number
        : throw new ArgumentException($"\"{key}\" is \"{text}\"; it must be a number above 0");
}
