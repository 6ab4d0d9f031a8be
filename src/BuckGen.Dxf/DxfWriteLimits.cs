namespace BuckGen.Dxf;

/// <summary>What the writer writes as something simpler, and what it refuses.</summary>
public static class DxfWriteLimits
{
    /// <summary>
    /// Height of an arc over its chord, in drawing units, below which a polyline's bulge is written as a straight piece. Some
    /// readers fail on bulges that are nearly zero.
    /// </summary>
    public const double FlatSagitta = 0.0005;

    /// <summary>Maximum coordinate or radius that is written, either sign, in drawing units.</summary>
    public const double MaxCoordinate = 1e9;
}
