using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Svg;

/// <summary>Reads the drawn paths of an SVG file.</summary>
/// <remarks>
/// The file is checked and cleaned first, then the Svg libraries resolve style sheets, references and transforms, and
/// their scene is taken over as curves. Nothing outside the file is ever opened.
/// </remarks>
internal static class SvgReader
{
    /// <summary>The paths of an SVG file in millimetres, y up, the origin at the lower left of its page.</summary>
    /// <param name="content">The whole file, plain or packed with gzip.</param>
    /// <param name="name">Name of the file, for messages.</param>
    /// <param name="options">How to read; <see cref="SvgReadOptions.Default"/> when left out.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OutlineException">The file is no SVG, is broken, goes beyond a limit or holds no shape.</exception>
    public static Drawing Read(byte[] content, string name, SvgReadOptions? options = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(content);
        ArgumentNullException.ThrowIfNull(name);
        options ??= SvgReadOptions.Default;
        if (!(options.PixelsPerInch is >= 1 and <= 10_000))
            throw new OutlineException(
                $"{name}: {SvgGrammar.Text(options.PixelsPerInch)} pixels per inch can't be used; give 1 to 10000, usually 96.");

        var notes = new SvgNotes();
        var document = SvgXml.Load(SvgContent.Decode(content, name, options, notes, cancellation), name, options, cancellation);
        var page = SvgPreparation.Prepare(document, name, options, notes, cancellation);
        var paths = SvgScene.Paths(page, name, notes, cancellation);
        if (paths.IsEmpty)
            throw new OutlineException(
                $"{name}: no drawn shape was found{notes.Summary}; {notes.Remedy}.");
        return new(paths, page.Viewport.Units, notes.ToImmutable())
        {
            Page = Bounds.FromCorners(new(0, 0), page.Viewport.Size),
        };
    }
}
