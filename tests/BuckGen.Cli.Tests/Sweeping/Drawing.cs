using System.Globalization;

namespace BuckGen.Cli.Tests.Sweeping;

/// <summary>Random drawings: ordinary shapes from 0.1 mm to 10 m.</summary>
internal static class Drawing
{
    /// <summary>An SVG in millimetres.</summary>
    /// <param name="dice">The choices.</param>
    /// <param name="size">Width of what is drawn, mm.</param>
    public static string CreateRandom(RandomSource dice, double size)
    {
        var aspect = dice.Chance(0.3) ? dice.Size(0.02, 1) : 1;
        var (w, h) = (size, size * aspect);
        var path = dice.Whole(0, 9) switch
        {
            0 => Box(0, 0, w, h),
            1 => Round(w / 2, w / 2, w / 2),
            2 => Round(w / 2, w / 2, w / 2) + Round(w / 2, w / 2, w / 2 * dice.Between(0.05, 0.98)),
            3 => Box(0, 0, w, h) + Box(w * 0.1, h * 0.1, w * 0.8, h * dice.Between(0.01, 0.8)),
            4 => Box(0, 0, w * 0.45, h) + Box(w * (1 - dice.Between(0.01, 0.54)), 0, w * 0.45, h),
            5 => Star(dice.Whole(2, 24), w / 2, dice.Between(0.1, 0.99)),
            6 => Text($"M0 0H{w}V{h * 0.3}H{w * 0.3}V{h}H0Z"),
            7 => Text($"M0 0H{w}L{w / 2} {h * 0.05}Z"),
            8 => string.Concat(Enumerable.Range(0, dice.Whole(2, 12))
                .Select(i => Round(w / 20 + i % 4 * w / 4, w / 20 + i / 4 * w / 4, w / 20 * dice.Between(0.2, 2.2)))),
            _ => Text($"M0 0C{w} {-h} {w} {2 * h} 0 {h}Z"),
        };
        var page = Text($"width=\"{w * 1.2}mm\" height=\"{w * 1.2}mm\" viewBox=\"0 0 {w * 1.2} {w * 1.2}\"");
        return $"<svg xmlns=\"http://www.w3.org/2000/svg\" {page}><path fill-rule=\"evenodd\" d=\"{path}\"/></svg>";
    }

    private static string Box(double x, double y, double w, double h) => Text($"M{x} {y}h{w}v{h}h{-w}Z");

    private static string Round(double x, double y, double r) =>
        Text($"M{x - r} {y}a{r} {r} 0 1 0 {2 * r} 0a{r} {r} 0 1 0 {-2 * r} 0Z");

    private static string Star(int points, double r, double waist)
    {
        var corners = Enumerable.Range(0, 2 * points).Select(i =>
        {
            var (sin, cos) = Math.SinCos(Math.PI * i / points);
            var here = i % 2 == 0 ? r : r * waist;
            return Text($"{r + here * cos} {r + here * sin}");
        });
        return $"M{string.Join('L', corners)}Z";
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
