using System.Collections.Immutable;
using BuckGen.Findings;
using BuckGen.Intake.Healing;
using BuckGen.Intake.Outlines;
using BuckGen.Settings;

namespace BuckGen.Intake.Reading;

/// <summary>Reads an outline file into closed loops with islands and holes: SVG, DXF and what plug-ins read.</summary>
public static class OutlineReader
{
    /// <summary>The largest drawing that is taken from a stream, bytes.</summary>
    private const int MaxBytes = 64 * 1024 * 1024;

    private const int LayersNamed = 8;

    /// <summary>Reads and heals the outline in a file.</summary>
    /// <param name="content">The whole file; what it is shows in its first bytes, not in its name.</param>
    /// <param name="name">Name of the file, for messages and titles.</param>
    /// <param name="options">How to read; <see cref="OutlineOptions.Default"/> when left out.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OutlineException">The file can't be used as an outline; the message says where and why.</exception>
    /// <exception cref="SpecException">A number of the options is out of range.</exception>
    public static Outline Read(byte[] content, string name, OutlineOptions? options = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(content);
        ArgumentNullException.ThrowIfNull(name);
        return ReadWhole(content, name, options ?? OutlineOptions.Default, cancellation);
    }

    /// <summary>Reads and heals the outline in a stream.</summary>
    /// <param name="content">The stream, read to its end and left open.</param>
    /// <param name="name">Name of the file, for messages and titles.</param>
    /// <param name="options">How to read; <see cref="OutlineOptions.Default"/> when left out.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <exception cref="OutlineException">The file can't be used as an outline; the message says where and why.</exception>
    /// <exception cref="SpecException">A number of the options is out of range.</exception>
    public static Outline Read(Stream content, string name, OutlineOptions? options = null,
        CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(content);
        ArgumentNullException.ThrowIfNull(name);
        using var whole = new MemoryStream();
        var buffer = new byte[81920];
        for (int read; (read = content.Read(buffer)) > 0;)
        {
            cancellation.ThrowIfCancellationRequested();
            whole.Write(buffer, 0, read);
            if (whole.Length > MaxBytes)
                throw new OutlineException(
                    $"{name}: the file is larger than {MaxBytes} bytes, the limit for a drawing; take pictures and unused "
                    + "parts out of it");
        }

        return ReadWhole(whole.ToArray(), name, options ?? OutlineOptions.Default, cancellation);
    }

    private static Outline ReadWhole(byte[] content, string name, OutlineOptions options, CancellationToken cancellation)
    {
        options.Validate();
        cancellation.ThrowIfCancellationRequested();
        var drawing = OfLayers(Draw(content, name, options, cancellation), name, options);
        cancellation.ThrowIfCancellationRequested();
        return Scaling.Apply(Placing.NearOrigin(drawing), options,
            d => Healer.Heal(d, name, options, PieceBudget.ForContent(content), cancellation));
    }

    private static Drawing Draw(byte[] content, string name, OutlineOptions options, CancellationToken cancellation)
    {
        var notes = new List<ReadNote>();
        foreach (var format in options.Formats.IsDefaultOrEmpty ? OutlineFormats.All : options.Formats)
            if (Drawn(format, content, name, options, notes, cancellation) is { } drawing)
                return drawing with { Notes = [.. drawing.Notes, .. notes] };

        throw new OutlineException(
            $"{name}: "
            + $"{ContentKind.Foreign(content) ?? "no reader knows this kind of file"}"
            + $"{(notes.Count == 0 ? "" : $". {notes[0].Message}")}");
    }

    /// <summary>
    /// What a reader finds; null when the file is not of its kind, or when it is a plug-in's and fails, which is noted.
    /// </summary>
    private static Drawing? Drawn(IOutlineFormat format, byte[] content, string name, OutlineOptions options,
        List<ReadNote> notes, CancellationToken cancellation)
    {
        if (!ForeignCode.IsForeign(format))
            return format.Recognises(content) ? format.Read(content, name, options, cancellation) : null;
        try
        {
            return format.Recognises(content) ? ReaderResult.Read(format, content, name, options, cancellation) : null;
        }
        catch (Exception failure) when (failure is not (OutlineException or OperationCanceledException))
        {
            notes.Add(new("plugin-failed",
                $"The reader \"{ForeignCode.Named(format, () => format.Name)}\" of a plug-in failed and was skipped: "
                + $"{ForeignCode.Reason(failure)}"));
            return null;
        }
    }

    private static Drawing OfLayers(Drawing drawing, string name, OutlineOptions options)
    {
        var taken = drawing.Paths.Where(p => options.Takes(p.Layer)).ToImmutableArray();
        var drawn = drawing.Paths.Select(p => p.Layer.Length == 0 ? "no layers" : p.Layer);
        if (taken.IsEmpty && !drawing.Paths.IsEmpty)
            throw new OutlineException(
                $"{name}: nothing is drawn on the layers asked for "
                + $"({Excerpt.ShortenList([.. options.Layers], LayersNamed)}); the drawing has "
                + $"{Excerpt.ShortenList([.. drawn.Distinct().Order(StringComparer.Ordinal)], LayersNamed)}");
        return drawing with { Paths = taken };
    }
}
