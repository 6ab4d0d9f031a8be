namespace BuckGen.Dxf;

/// <summary>How much a reader accepts before it refuses. A file is never trusted about its own size.</summary>
public sealed record DxfReadLimits
{
    /// <summary>The limits used when none are given.</summary>
    public static DxfReadLimits Default { get; } = new();

    /// <summary>Maximum size of a file, in bytes. Default 64 MiB.</summary>
    public long MaxBytes { get; init; } = 64L * 1024 * 1024;

    /// <summary>Maximum number of entities, those in blocks included. Default one million.</summary>
    public int MaxEntities { get; init; } = 1_000_000;

    /// <summary>
    /// Maximum number of polyline corners, spline control points and knots and fit points together. Default four million.
    /// </summary>
    public int MaxVertices { get; init; } = 4_000_000;

    /// <summary>
    /// Maximum coordinate or length, either sign, in drawing units. Default 1e11: a surveyor's grid in mm stays below 1e10, and
    /// numbers up to there still hold a ten-thousandth of a unit.
    /// </summary>
    public double MaxCoordinate { get; init; } = 1e11;
}
