using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Bucks;

/// <summary>
/// What lies on a layer and hides its top face. The sheet comes down on the rest, which carries neither lettering nor holes.
/// </summary>
/// <param name="above">The wood of the layer above; empty for none.</param>
/// <param name="isWhole">True when the layer is hidden wholly, such as a plenum.</param>
internal sealed class LayerCover(Region above, bool isWhole = false)
{
    private readonly RegionInterior interior = new(above);
    private readonly Lazy<SegmentIndex> edges = new(() => new(above.Segments));
    private readonly Lazy<(Island Piece, Vec2 Inside)[]> pieces =
        new(() => [.. above.Islands.OrderByDescending(i => Math.Round(i.Area, 3)).Select(i => (i, InsidePoint.Find(i)))]);

    /// <summary>True when a disc on the top face is hidden wholly.</summary>
    public bool Hides(Vec2 centre, double radius) =>
        isWhole || (interior.Contains(centre) && edges.Value.DistanceWithin(centre, radius) >= radius);

    /// <summary>True when something lies on a piece.</summary>
    public bool Covers(Island piece) =>
        isWhole || interior.Contains(InsidePoint.Find(piece)) || Array.Exists(pieces.Value, p => piece.Contains(p.Inside));

    /// <summary>The pieces that lie on a piece.</summary>
    public Island[] On(Island piece) => [.. pieces.Value.Where(p => piece.Contains(p.Inside)).Select(p => p.Piece)];

    /// <summary>The lettering of a piece where it is hidden; null when it fits nowhere there.</summary>
    /// <param name="text">The lettering.</param>
    /// <param name="height">Wanted height of the letters, mm.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="obstacles">Edges and lines of the layer, those of the layer above among them.</param>
    public Label? Label(string text, double height, Island piece, SegmentIndex obstacles)
    {
        if (isWhole) return LabelPlacement.Place(text, height, piece, obstacles, Region.Empty);
        if (!Covers(piece)) return null;
        // Lettering is clear of every line: when its middle is hidden, all of it is.
        if (LabelPlacement.Place(text, height, piece, obstacles, new([.. On(piece)])) is { } label
            && interior.Contains(label.Box.Centre)) return label;
        foreach (var (over, _) in pieces.Value.Where(p => p.Piece.Outer.Bounds.Intersects(piece.Outer.Bounds)))
            if (LabelPlacement.Place(text, height, over, obstacles, Region.Empty) is { } under
                && piece.Contains(under.Box.Centre)) return under;
        return null;
    }
}
