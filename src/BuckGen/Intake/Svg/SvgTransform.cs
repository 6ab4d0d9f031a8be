using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Svg;

/// <summary>Reads a transform attribute to the last character, in double precision.</summary>
internal static class SvgTransform
{
    /// <summary>The map of a list of transforms; null, and the fault in words, when the text is wrong.</summary>
    public static Affine? Parse(string text, out string fault)
    {
        var scanner = new SvgScanner(text);
        var map = Affine.Identity;
        scanner.SkipBlanks();
        for (var comma = false; comma || !scanner.AtEnd; comma = scanner.SkipSeparator())
        {
            var place = scanner.Position;
            var word = scanner.TakeWord();
            if (Numbers(ref scanner) is not { } numbers || Single(word, numbers) is not { } step)
            {
                fault = $"character {place + 1} of the transform '{Excerpt.Shorten(text)}' starts no whole "
                    + "matrix, translate, scale, rotate, skewX or skewY with its numbers";
                return null;
            }

            map = step.Then(map);
        }

        fault = "";
        return map;
    }

    /// <summary>A map as the text of a transform attribute.</summary>
    public static string Text(Affine map) =>
        $"matrix({string.Join(' ', ((double[])[map.A, map.B, map.C, map.D, map.E, map.F]).Select(SvgGrammar.Text))})";

    private static double[]? Numbers(ref SvgScanner scanner)
    {
        scanner.SkipBlanks();
        if (scanner.Next != '(') return null;
        scanner.Take();
        scanner.SkipBlanks();
        var numbers = new List<double>();
        for (; scanner.Next != ')'; scanner.SkipSeparator())
        {
            if (!scanner.TryNumber(out var number)) return null;
            numbers.Add(number);
        }

        scanner.Take();
        return [.. numbers];
    }

    private static Affine? Single(string word, double[] n) => (word, n.Length) switch
    {
        ("matrix", 6) => new(n[0], n[1], n[2], n[3], n[4], n[5]),
        ("translate", 1) => Affine.Translation(new(n[0], 0)),
        ("translate", 2) => Affine.Translation(new(n[0], n[1])),
        ("scale", 1) => new(n[0], 0, 0, n[0], 0, 0),
        ("scale", 2) => new(n[0], 0, 0, n[1], 0, 0),
        ("rotate", 1) => Affine.Rotation(Radians(n[0]), new(0, 0)),
        ("rotate", 3) => Affine.Rotation(Radians(n[0]), new(n[1], n[2])),
        ("skewX", 1) => new(1, 0, Math.Tan(Radians(n[0])), 1, 0, 0),
        ("skewY", 1) => new(1, Math.Tan(Radians(n[0])), 0, 1, 0, 0),
        _ => null,
    };

    private static double Radians(double degrees) => degrees * Math.PI / 180;
}
