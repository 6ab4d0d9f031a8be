namespace BuckGen.Geometry.Offsetting;

/// <summary>What a piece of a raw offset is made from.</summary>
internal enum RawPieceKind
{
    /// <summary>A line or arc of the outline, moved aside.</summary>
    Side,

    /// <summary>An arc round a corner of the outline.</summary>
    RoundJoin,

    /// <summary>A side of a mitre, which may reach farther than the distance.</summary>
    Mitre,
}

/// <summary>One piece of a raw offset.</summary>
/// <param name="Segment">The line or arc.</param>
/// <param name="Zone">Number of the piece of the outline that it comes from.</param>
/// <param name="Kind">What it is made from.</param>
internal readonly record struct RawPiece(Segment Segment, int Zone, RawPieceKind Kind)
{
    /// <summary>True for the side of a mitre.</summary>
    public bool IsMitre => Kind == RawPieceKind.Mitre;
}
