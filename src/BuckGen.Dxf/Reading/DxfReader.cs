using BuckGen.Dxf.Reading.Groups;

namespace BuckGen.Dxf.Reading;

/// <summary>
/// Reads DXF of any version, as text or binary. Tolerant of harmless oddities, which it notes; strict about numbers and about
/// anything that is missing, because a guessed outline costs a board of material.
/// </summary>
public static class DxfReader
{
    /// <summary>Reads a drawing from a stream, to its end.</summary>
    /// <param name="stream">The file's content. It is not closed.</param>
    /// <param name="limits">How much to take; null for <see cref="DxfReadLimits.Default"/>.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <returns>The drawing, possibly without any entity.</returns>
    /// <exception cref="DxfException">The content is not a sound DXF, or is beyond a limit.</exception>
    public static DxfDrawing Read(Stream stream, DxfReadLimits? limits = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(stream);
        limits ??= DxfReadLimits.Default;
        using var content = new MemoryStream();
        var buffer = new byte[81920];
        for (var count = stream.Read(buffer); count > 0; count = stream.Read(buffer))
        {
            cancellation.ThrowIfCancellationRequested();
            content.Write(buffer, 0, count);
            RefuseSize(content.Length, limits);
        }

        return Read(content.ToArray(), limits, cancellation);
    }

    /// <summary>Reads a drawing from bytes.</summary>
    /// <param name="bytes">The file's content.</param>
    /// <param name="limits">How much to take; null for <see cref="DxfReadLimits.Default"/>.</param>
    /// <param name="cancellation">Stops the reading.</param>
    /// <returns>The drawing, possibly without any entity.</returns>
    /// <exception cref="DxfException">The content is not a sound DXF, or is beyond a limit.</exception>
    public static DxfDrawing Read(byte[] bytes, DxfReadLimits? limits = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        limits ??= DxfReadLimits.Default;
        RefuseSize(bytes.LongLength, limits);
        var context = new ReadContext(limits, cancellation);
        var decoder = new ValueDecoder(context, FileKind.HasUtf8Mark(bytes));
        if (FileKind.IsBinaryDxf(bytes))
            return DrawingReading.Read(BinaryTagSource.Read(bytes, decoder), context);
        FileKind.RefuseForeign(bytes);
        return DrawingReading.Read(TextTagSource.Read(bytes, decoder, context), context);
    }

    private static void RefuseSize(long length, DxfReadLimits limits)
    {
        if (length > limits.MaxBytes)
            throw new DxfException($"the file is larger than {limits.MaxBytes} bytes; simplify the drawing or raise the limit");
    }
}
