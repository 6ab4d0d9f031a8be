using System.Collections.Immutable;
using System.Globalization;

namespace BuckGen.Geometry.Lettering;

/// <summary>
/// One character in units of the cap height: its strokes, which start at x = 0, and the room it wants on either side.
/// </summary>
/// <param name="Before">Room to the left of the strokes.</param>
/// <param name="Width">Width of the strokes themselves.</param>
/// <param name="After">Room to the right of the strokes.</param>
/// <param name="Strokes">The strokes; none for a space.</param>
internal sealed record StrokeGlyph(double Before, double Width, double After, ImmutableArray<Stroke> Strokes)
{
    /// <summary>From the start of this character to the start of the next.</summary>
    public double Advance => Before + Width + After;

    /// <summary>Reads the little path language that <see cref="StrokeAlphabet"/> describes.</summary>
    public static StrokeGlyph Parse(double before, double width, double after, string path)
    {
        var strokes = ImmutableArray.CreateBuilder<Stroke>();
        var stroke = ImmutableArray.CreateBuilder<StrokeVertex>();
        foreach (var step in path.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var numbers = Array.ConvertAll(step[1..].Split(','), text => double.Parse(text, CultureInfo.InvariantCulture));
            switch (step[0], numbers.Length, stroke.Count)
            {
                case ('M', 2, 0):
                    break;
                case ('M', 2, > 1):
                    strokes.Add(new Stroke(stroke.ToImmutable()));
                    stroke.Clear();
                    break;
                case ('L', 2, > 0):
                    break;
                case ('A', 3, > 0):
                    stroke[^1] = stroke[^1] with { Bulge = BulgeOf(numbers[2]) };
                    break;
                default:
                    throw new FormatException($"'{step}' makes no sense in the stroke path '{path}'.");
            }

            stroke.Add(new StrokeVertex(numbers[0], numbers[1], 0));
        }

        if (stroke.Count > 0)
            strokes.Add(new Stroke(stroke.ToImmutable()));
        return new StrokeGlyph(before, width, after, strokes.ToImmutable());
    }

    // Rounded, so that a half circle's bulge is 1 on every machine.
    private static double BulgeOf(double sweepDegrees) => Math.Round(Math.Tan(sweepDegrees * Math.PI / 720), 12);
}
