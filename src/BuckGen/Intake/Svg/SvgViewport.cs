using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Svg;

/// <summary>The page: its size in millimetres and how user units map to it.</summary>
/// <param name="Size">Width and height, mm.</param>
/// <param name="ViewBox">Left, top, width and height in user units.</param>
/// <param name="ToPage">From user units, y down, to millimetres, y up from the lower left of the page.</param>
/// <param name="Units">Where the scale came from, in words.</param>
internal sealed partial record SvgViewport(Vec2 Size, double[] ViewBox, Affine ToPage, string Units)
{
    // What a viewer takes when neither a size nor a viewBox is given.
    private const double UsualWidth = 300, UsualHeight = 150;

    /// <summary>The page of a root element.</summary>
    public static SvgViewport Read(XElement root, string file, SvgReadOptions options, SvgNotes notes)
    {
        var pixel = 25.4 / options.PixelsPerInch;
        var width = Extent(root, "width", file);
        var height = Extent(root, "height", file);
        var box = SvgViewBox.Read(root, file);
        var size = SizeOf(Millimetres(width, pixel), Millimetres(height, pixel), box, pixel);
        // User units of a page without a viewBox are px.
        var viewBox = box ?? [0, 0, size.X / pixel, size.Y / pixel];
        var toPage = SvgViewBox.Fit(root, viewBox, size, file);
        var certain = width is { MillimetresPerUnit: not null } || height is { MillimetresPerUnit: not null };
        var units = certain
            ? $"{(width ?? height)!.Value.Unit} (width and height of the page)"
            : Text($"px taken at {options.PixelsPerInch} to the inch");
        if (!certain) notes.Add("units-assumed", Assumption(root, width ?? height, size, options));
        return new(size, viewBox, toPage, units);
    }

    private static SvgLength? Extent(XElement root, string attribute, string file)
    {
        if ((string?)root.Attribute(attribute) is not { } text || text.Trim() is "" or "auto") return null;
        var shown = $"{attribute} '{Excerpt.Shorten(text)}'";
        if (SvgLength.Parse(text) is not { } length || !(length.IsAbsolute || length.IsRelative))
            throw SvgPlace.Error(file, root, $"{shown} is not a length; write a number and mm, cm, in, pt, pc, Q or px");
        if (!(length.Value > 0))
            throw SvgPlace.Error(file, root, $"{shown} must be above 0; set the page size in the drawing program");
        return length.IsRelative ? null : length;
    }

    private static double? Millimetres(SvgLength? length, double pixel) =>
        length is { } l ? l.Value * (l.MillimetresPerUnit ?? pixel) : null;

    /// <summary>A side that is not given follows from the other and the viewBox.</summary>
    private static Vec2 SizeOf(double? width, double? height, double[]? box, double pixel) => (width, height, box) switch
    {
        ({ } w, { } h, _) => new(w, h),
        ({ } w, null, { } b) => new(w, w * b[3] / b[2]),
        (null, { } h, { } b) => new(h * b[2] / b[3], h),
        (null, null, { } b) => new(b[2] * pixel, b[3] * pixel),
        _ => new(width ?? UsualWidth * pixel, height ?? UsualHeight * pixel),
    };

    private static string Assumption(XElement root, SvgLength? given, Vec2 size, SvgReadOptions options)
    {
        var cause = given is null ? "The file gives no size" : "The file gives its size in px, which is not a physical size";
        return Text($"{cause}: taken at {options.PixelsPerInch} px to the inch, the page is {size.X:0.###} x {size.Y:0.###} mm. ")
            + Hint(root, size, options.PixelsPerInch)
            + "Compare this with the drawing, and give the right scale if it differs.";
    }

    /// <summary>What the file's own marks say about an older count of pixels to the inch.</summary>
    private static string Hint(XElement root, Vec2 size, double pixelsPerInch)
    {
        var version = root.Attributes().FirstOrDefault(a => a.Name.LocalName == "version" && a.Name.NamespaceName.Length > 0);
        var old = version is not null && OldVersion().IsMatch(version.Value);
        var (perInch, mark) = old ? (90, $"version {version!.Value.Split(' ')[0]} of the drawing program")
            : root.Attribute("enable-background") is not null ? (72, "enable-background")
            : (0, "");
        if (perInch == 0 || perInch == pixelsPerInch) return "";
        var factor = pixelsPerInch / perInch;
        return Text($"The mark '{mark}' points to a program that counted {perInch} px to the inch: ")
            + Text($"then the page is {size.X * factor:0.###} x {size.Y * factor:0.###} mm. ");
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^0\.([0-8]\d?|9[01]?)(\D|$)")]
    private static partial Regex OldVersion();
}
