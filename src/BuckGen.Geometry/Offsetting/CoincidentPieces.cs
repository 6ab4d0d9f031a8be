namespace BuckGen.Geometry.Offsetting;

/// <summary>Resolves pieces of an offset that lie on each other.</summary>
/// <remarks>
/// Where two edges meet exactly, as when a gap is closed to the last bit, they run along each other in opposite directions.
/// Neither bounds anything any more, and both go. Where they run along each other in the same direction, one of them is enough.
/// The sides of two mitres over a narrow mouth do so, and the arcs of a corner that is passed twice.
/// </remarks>
internal static class CoincidentPieces
{
    /// <summary>The pieces without what lies on another.</summary>
    public static List<RawPiece> Resolve(List<RawPiece> pieces, CancellationToken cancellation)
    {
        var index = BoxTree.FromItems(pieces, p => p.Segment.Bounds);
        var kept = new List<RawPiece>(pieces.Count);
        var open = new OpenIntervals();
        for (var i = 0; i < pieces.Count; i++)
        {
            cancellation.ThrowIfCancellationRequested();
            open.Reset();
            var piece = pieces[i];
            foreach (var j in index.Query(piece.Segment.Bounds.Grown(Precision.MinPieceLength)))
                if (j != i && LieOnOneCurve(piece.Segment, pieces[j].Segment)) RemoveShared(open, pieces, i, j);
            foreach (var (from, to) in open.Intervals)
            {
                var part = from == 0 && to == 1 ? piece.Segment : piece.Segment.Part(from, to);
                if (part.Length > Precision.MinPieceLength) kept.Add(piece with { Segment = part });
            }
        }

        return kept;
    }

    private static void RemoveShared(OpenIntervals open, List<RawPiece> pieces, int i, int j)
    {
        var (piece, other) = (pieces[i].Segment, pieces[j].Segment);
        Span<double> cuts =
            [0, Math.Clamp(piece.ParameterOf(other.Start), 0, 1), Math.Clamp(piece.ParameterOf(other.End), 0, 1), 1];
        cuts.Sort();
        for (var k = 0; k + 1 < cuts.Length; k++)
        {
            var middle = (cuts[k] + cuts[k + 1]) / 2;
            var p = piece.PointAt(middle);
            if (cuts[k + 1] - cuts[k] < 1e-12 || other.DistanceTo(p) > Precision.MinPieceLength) continue;
            var opposite = piece.DirectionAt(middle).Dot(other.DirectionAt(other.NearestParameter(p))) < 0;
            if (opposite || YieldsTo(pieces, i, j)) open.Remove(cuts[k], cuts[k + 1]);
        }
    }

    private static bool YieldsTo(List<RawPiece> pieces, int i, int j) =>
        pieces[i].IsMitre == pieces[j].IsMitre ? j < i : pieces[i].IsMitre;

    private static bool LieOnOneCurve(Segment a, Segment b)
    {
        if (a.IsArc != b.IsArc) return false;
        if (a.IsArc)
            return a.Centre.DistanceTo(b.Centre) < Precision.MinPieceLength
                && Math.Abs(a.Radius - b.Radius) < Precision.MinPieceLength;
        return Aside(a, b.Start) < Precision.MinPieceLength && Aside(a, b.End) < Precision.MinPieceLength;
    }

    private static double Aside(Segment line, Vec2 p) => Math.Abs((p - line.Start).Cross(line.Chord)) / line.Chord.Length;
}
