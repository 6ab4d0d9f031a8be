using BuckGen.Geometry;

namespace BuckGen.Design.Venting;

/// <summary>A loop measured along its length.</summary>
internal sealed class LoopMeasure
{
    private readonly double[] starts;

    public LoopMeasure(Loop loop)
    {
        Loop = loop;
        starts = new double[loop.Segments.Length];
        for (var i = 1; i < starts.Length; i++) starts[i] = starts[i - 1] + loop.Segments[i - 1].Length;
    }

    public Loop Loop { get; }

    /// <summary>Where a piece starts, mm along the loop.</summary>
    public double StartOf(int piece) => starts[piece];

    /// <summary>The piece and its parameter a way along the loop, mm, counted round and round.</summary>
    public (Segment Piece, double Parameter) At(double along)
    {
        var wrapped = along % Loop.Length;
        if (wrapped < 0) wrapped += Loop.Length;
        var i = Array.BinarySearch(starts, wrapped);
        if (i < 0) i = ~i - 1;
        return (Loop.Segments[i], Math.Min(1, (wrapped - starts[i]) / Loop.Segments[i].Length));
    }

    /// <summary>The point a way along the loop, mm.</summary>
    public Vec2 PointAt(double along) => At(along) is var (piece, t) ? piece.PointAt(t) : default;
}
