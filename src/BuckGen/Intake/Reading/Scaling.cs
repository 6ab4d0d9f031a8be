using System.Globalization;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Reading;

/// <summary>
/// Gives an outline the size that is asked for. Tolerances hold for the outline as it is made, not as it is drawn.
/// </summary>
internal static class Scaling
{
    /// <summary>A width or height is met to this share of it, which only rounding exceeds.</summary>
    private const double Exact = 1e-12;

    /// <summary>Up to this share off it is scaled once more and not read anew.</summary>
    private const double Near = 0.001;

    /// <summary>The outline of a drawing at the size that the options ask for.</summary>
    /// <param name="drawing">The drawing at its own size.</param>
    /// <param name="options">The size.</param>
    /// <param name="heal">Makes an outline of a drawing.</param>
    public static Outline Apply(Drawing drawing, OutlineOptions options, Func<Drawing, Outline> heal)
    {
        if (options.Scale is { } asked) return Noted(heal(Scaled(drawing, asked)), asked, "the scale asked for");
        if ((options.Width ?? options.Height) is null) return heal(drawing);
        var factor = FactorFor(Drawing.BoundsOf(drawing.Paths), options);
        // What has no extent is refused by the healing, with its own reason.
        if (!double.IsFinite(factor) || factor == 0) return heal(drawing);
        var outline = heal(Scaled(drawing, factor));
        var rest = FactorFor(outline.Region.Bounds, options);
        // What was drawn may reach farther than the outline: a background, lines that enclose nothing.
        if (Math.Abs(rest - 1) > Near)
        {
            factor *= rest;
            outline = heal(Scaled(drawing, factor));
            rest = FactorFor(outline.Region.Bounds, options);
        }

        if (Math.Abs(rest - 1) > Exact)
            outline = outline with { Region = outline.Region.Transformed(Affine.Scaling(rest, default)) };
        return Noted(outline, factor * rest, Reason(options));
    }

    /// <summary>By how much the bounds grow so that they have the width or height asked for, or fit both.</summary>
    private static double FactorFor(Bounds bounds, OutlineOptions options) => Math.Min(
        options.Width / bounds.Width ?? double.PositiveInfinity, options.Height / bounds.Height ?? double.PositiveInfinity);

    private static string Reason(OutlineOptions options) => (options.Width, options.Height) switch
    {
        ({ } width, { } height) => string.Create(CultureInfo.InvariantCulture,
            $"as large as fits the width and height asked for, {width:0.###} x {height:0.###} mm"),
        ({ } width, _) => string.Create(CultureInfo.InvariantCulture, $"the width asked for, {width:0.###} mm"),
        (_, var height) => string.Create(CultureInfo.InvariantCulture, $"the height asked for, {height:0.###} mm"),
    };

    private static Drawing Scaled(Drawing drawing, double factor) => drawing.Transformed(Affine.Scaling(factor, default));

    private static Outline Noted(Outline outline, double factor, string reason)
    {
        var (width, height) = (outline.Region.Bounds.Width, outline.Region.Bounds.Height);
        return outline with
        {
            Scale = factor,
            Notes = outline.Notes.Add(new("scaled", string.Create(CultureInfo.InvariantCulture,
                $"The outline is drawn {width / factor:0.###} x {height / factor:0.###} mm large and was scaled by ")
                + string.Create(CultureInfo.InvariantCulture,
                    $"{factor:0.######} to {width:0.###} x {height:0.###} mm: {reason}."))),
        };
    }
}
