using System.Globalization;

namespace BuckGen.References.Tests.Parts;

/// <summary>A drawing made in code.</summary>
/// <param name="Width">Width of what is drawn, mm.</param>
/// <param name="Height">Height of what is drawn, mm.</param>
/// <param name="Svg">The drawing as SVG.</param>
internal sealed record PartDrawing(double Width, double Height, string Svg)
{
    private const double Inch = 25.4;

    /// <summary>A box or tray with round corners.</summary>
    public static PartDrawing RoundedRectangle(double width, double height, double radius) =>
        Millimetres(width, height, Text($"<rect width='{width}' height='{height}' rx='{radius}' ry='{radius}'/>"));

    /// <summary>The same in inches.</summary>
    public static PartDrawing InchRectangle(double width, double height, double radius) => new(
        width * Inch, height * Inch,
        Page(Text($"{width}in"), Text($"{height}in"), width, height,
            Text($"<rect width='{width}' height='{height}' rx='{radius}' ry='{radius}'/>")));

    /// <summary>An oval mask with two eyes that are left out.</summary>
    public static PartDrawing Mask(double width, double height)
    {
        var (across, up, eyeAcross, eyeUp) = (width / 2, height / 2, width / 11, height / 16);
        var eyes = ((double[])[0.7, 1.3]).Select(x => Ellipse(across * x, up * 0.8, eyeAcross, eyeUp));
        return Millimetres(width, height,
            $"<path fill-rule='evenodd' d='{Ellipse(across, up, across, up)} {string.Join(' ', eyes)}'/>");
    }

    /// <summary>An oval without eyes.</summary>
    public static PartDrawing Oval(double width, double height) =>
        Millimetres(width, height, $"<path d='{Ellipse(width / 2, height / 2, width / 2, height / 2)}'/>");

    /// <summary>The letters H, O, E as polygons, O with its counter, on a line; each is as wide as its height.</summary>
    /// <param name="size">Height of the letters, mm.</param>
    /// <param name="gap">Between two of them, mm.</param>
    public static PartDrawing Letters(double size, double gap)
    {
        const string H = "0,0 3,0 3,3.5 7,3.5 7,0 10,0 10,10 7,10 7,6.5 3,6.5 3,10 0,10";
        const string O = "3,0 7,0 10,3 10,7 7,10 3,10 0,7 0,3|3.5,3.5 3.5,6.5 6.5,6.5 6.5,3.5";
        const string E = "0,0 10,0 10,2.5 3,2.5 3,3.75 8,3.75 8,6.25 3,6.25 3,7.5 10,7.5 10,10 0,10";
        var path = string.Join(' ', ((string[])[H, O, E]).Select((letter, i) => Letter(letter, i * (size + gap), size / 10)));
        return Millimetres(3 * size + 2 * gap, size, $"<path fill-rule='evenodd' d='{path}'/>");
    }

    private static string Letter(string loops, double left, double scale) =>
        string.Join(' ', loops.Split('|').Select(loop => "M " + string.Join(" L ", loop.Split(' ').Select(point =>
        {
            double[] at = [.. point.Split(',').Select(n => double.Parse(n, CultureInfo.InvariantCulture) * scale)];
            return Text($"{left + at[0]} {at[1]}");
        })) + " Z"));

    private static string Ellipse(double x, double y, double across, double up) => Text(
        $"M {x - across} {y} A {across} {up} 0 0 1 {x + across} {y} A {across} {up} 0 0 1 {x - across} {y} Z");

    private static PartDrawing Millimetres(double width, double height, string shape) =>
        new(width, height, Page(Text($"{width}mm"), Text($"{height}mm"), width, height, shape));

    private static string Page(string width, string height, double across, double up, string shape) =>
        $"<svg xmlns='http://www.w3.org/2000/svg' width='{width}' height='{height}' "
        + Text($"viewBox='0 0 {across} {up}'>") + shape + "</svg>";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
