namespace BuckGen.Outlines;

/// <summary>How many lines and arcs a drawing may come to: it follows from the size of its file, so that a few bytes can't ask for minutes.</summary>
/// <remarks>The numbers are our own: a file of 1 MB drawn by hand or by program comes to 700,000 pieces at the very most.</remarks>
internal static class PieceBudget
{
    /// <summary>What any file may come to.</summary>
    public const int AnyFile = 100_000;

    /// <summary>What no file may exceed.</summary>
    public const int Most = 1_000_000;

    /// <summary>Bytes that a packed byte stands for, as a rule.</summary>
    private const int Packed = 8;

    /// <summary>The budget of a file.</summary>
    public static int Of(ReadOnlySpan<byte> content) =>
        (int)Math.Min(Most, AnyFile + (long)content.Length * (ContentKind.IsPacked(content) ? Packed : 1));
}
