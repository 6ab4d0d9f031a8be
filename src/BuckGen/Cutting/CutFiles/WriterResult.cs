using System.Collections.Immutable;
using BuckGen.Cutting.CutPaths;
using BuckGen.Findings;

namespace BuckGen.Cutting.CutFiles;

/// <summary>The checked file of a writer.</summary>
internal static class WriterResult
{
    /// <summary>Maximum number of bytes of a plug-in's file: a hundred times the largest DXF of the corpus.</summary>
    private const int MaxBytes = 100_000_000;

    /// <summary>The bytes, a copy.</summary>
    /// <exception cref="ForeignResultException">A plug-in's writer returned something that can't be used.</exception>
    public static ImmutableArray<byte> Write(ICutFileFormat format, CutDrawing drawing)
    {
        var bytes = format.Write(drawing);
        if (!ForeignCode.IsForeign(format)) return bytes;
        if (bytes.IsDefault) throw new ForeignResultException("it gave no bytes");
        if (bytes.Length > MaxBytes)
            throw new ForeignResultException(
                FormattableString.Invariant($"it gave a file of {bytes.Length} bytes; the limit is {MaxBytes}"));
        return [.. bytes.AsSpan()];
    }
}
