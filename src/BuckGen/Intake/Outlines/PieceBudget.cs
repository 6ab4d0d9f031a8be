namespace BuckGen.Intake.Outlines;

/// <summary>
/// How many lines and arcs a drawing may have: it follows from the size of its file, so that a few bytes can't ask for minutes.
/// </summary>
/// <remarks>The numbers are our own: a file of 1 MB drawn by hand or by program has at most 700,000 pieces.</remarks>
internal static class PieceBudget
{
    /// <summary>The limit for any file.</summary>
    public const int AnyFile = 100_000;

    /// <summary>What no file may exceed.</summary>
    public const int MaxPieces = 1_000_000;

    /// <summary>Usual number of bytes for a packed byte.</summary>
    private const int Packed = 8;

    /// <summary>The budget of a file.</summary>
    public static int ForContent(ReadOnlySpan<byte> content) =>
        (int)Math.Min(MaxPieces, AnyFile + (long)content.Length * (ContentKind.IsPacked(content) ? Packed : 1));
}
