using NetTopologySuite.Index.HPRtree;

namespace BuckGen.Geometry.Offsetting;

/// <summary>
/// Finds where the side of a mitre runs along another piece in the same direction, as when two mitres meet over a narrow
/// mouth; one of the two is enough there.
/// </summary>
internal sealed class DoubledMitres
{
    private readonly List<RawPiece> pieces;
    private readonly HPRtree<int> lines = new();

    public DoubledMitres(List<RawPiece> pieces)
    {
        this.pieces = pieces;
        if (!pieces.Exists(p => p.IsMitre)) return;
        for (var i = 0; i < pieces.Count; i++)
            if (!pieces[i].Segment.IsArc) lines.Insert(SegmentIndex.ToEnvelope(pieces[i].Segment.Bounds), i);
        lines.Build();
    }

    /// <summary>Takes from a mitre's side what an outline's piece or an earlier mitre covers.</summary>
    public void Remove(OpenIntervals open, int number)
    {
        var side = pieces[number].Segment;
        foreach (var other in lines.Query(SegmentIndex.ToEnvelope(side.Bounds.Grown(OffsetPrecision.Join))))
        {
            if (other == number || (pieces[other].IsMitre && other > number)) continue;
            var line = pieces[other].Segment;
            if (side.Chord.Dot(line.Chord) <= 0 || Aside(side, line.Start) > OffsetPrecision.ShortestPiece
                || Aside(side, line.End) > OffsetPrecision.ShortestPiece) continue;
            open.Remove(side.ParameterOf(line.Start), side.ParameterOf(line.End));
        }
    }

    private static double Aside(Segment line, Vec2 p) => Math.Abs((p - line.Start).Cross(line.Chord)) / line.Chord.Length;
}
