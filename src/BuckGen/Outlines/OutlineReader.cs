using System.Collections.Immutable;
using BuckGen.Dxf;
using BuckGen.Outlines.Dxf;
using BuckGen.Outlines.Healing;
using BuckGen.Outlines.Svg;

namespace BuckGen.Outlines;

/// <summary>Reads an outline file, SVG or DXF, into closed loops with islands and holes.</summary>
public static class OutlineReader
{
    /// <summary>Reads and heals the outline in a file.</summary>
    /// <param name="content">The whole file; what it is shows in its first bytes, not in its name.</param>
    /// <param name="name">Name of the file, for messages and titles.</param>
    /// <param name="options">How to read; <see cref="OutlineOptions.Default"/> when left out.</param>
    /// <exception cref="OutlineException">The file can't be used as an outline; the message says where and why.</exception>
    public static Outline Read(byte[] content, string name, OutlineOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(content);
        ArgumentNullException.ThrowIfNull(name);
        options ??= OutlineOptions.Default;
        options.Validate(name);
        var drawing = OfLayers(Draw(content, name, options), name, options);
        return Healer.Heal(drawing, name, options);
    }

    private static Drawing Draw(byte[] content, string name, OutlineOptions options)
    {
        if (ContentKind.Foreign(content) is { } foreign) throw new OutlineException($"{name}: {foreign}");
        if (ContentKind.IsSvg(content)) return SvgReader.Read(content, name, SvgOptions(name, options.Units));
        try
        {
            return DxfOutline.Read(DxfReader.Read(content), name, options);
        }
        catch (DxfException e)
        {
            throw new OutlineException($"{name}: {FirstOf(e)}", e);
        }
    }

    /// <summary>An SVG may leave only its user unit open, the pixel; named lengths in it stay what they are.</summary>
    private static SvgReadOptions SvgOptions(string name, string? unit)
    {
        if (unit is null) return SvgReadOptions.Default;
        var pixelsPerInch = 25.4 / DrawingUnit.MillimetresIn(unit);
        return pixelsPerInch >= 1
            ? SvgReadOptions.Default with { PixelsPerInch = pixelsPerInch }
            : throw new OutlineException($"{name}: the user unit of an SVG can be taken as mm, cm or in, not as {unit}");
    }

    private static string FirstOf(DxfException e) =>
        e.Faults.Length == 1 ? e.Faults[0].ToString() : $"{e.Faults[0]} (and {Counted.Of(e.Faults.Length - 1, "more fault")})";

    private static Drawing OfLayers(Drawing drawing, string name, OutlineOptions options)
    {
        var taken = drawing.Paths.Where(p => options.Takes(p.Layer)).ToImmutableArray();
        if (taken.IsEmpty && !drawing.Paths.IsEmpty)
            throw new OutlineException($"{name}: nothing is drawn on the layers asked for ({string.Join(", ", options.Layers)}); the drawing has {string.Join(", ", drawing.Paths.Select(p => p.Layer.Length == 0 ? "no layers" : p.Layer).Distinct().Order(StringComparer.Ordinal))}");
        return drawing with { Paths = taken };
    }
}
