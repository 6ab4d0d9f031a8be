using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Bucks;

/// <summary>What lettering takes: its own box and clear space round it. mm.</summary>
internal readonly record struct LabelBox(double Width, double Height, double Room)
{
    /// <summary>The same text upright.</summary>
    public LabelBox Turned => new(Height, Width, Room);

    /// <summary>Radius of the largest circle inside.</summary>
    public double Inside => Math.Min(Width, Height) / 2 + Room;

    /// <summary>Where it lies round a place.</summary>
    public Bounds Round(Vec2 p) => new Bounds(p.X - Width / 2, p.Y - Height / 2, p.X + Width / 2, p.Y + Height / 2).Grown(Room);
}

/// <summary>
/// The places of a piece that are tried for its lettering, the nearest to the middle first. What is learned about a place with
/// one size serves all others.
/// </summary>
internal sealed class LabelPlaces
{
    private const int Across = 40, Count = (Across + 1) * (Across + 1);

    /// <summary>Up to this many obstacles a walk along all of them is as quick as an index.</summary>
    private const int Few = 32;

    /// <summary>Rounding of a distance, mm.</summary>
    private const double Rounding = 1e-9;

    private readonly Bounds bounds;
    private readonly RegionInterior wood;
    private readonly (Segment Piece, Bounds Box)[] obstacles;
    private readonly SegmentIndex? index;
    private readonly LabelBox smallest;
    private readonly double reach;
    private readonly Vec2[] places;

    /// <summary>
    /// Distance of each place from the next obstacle, mm: not a number until first used, infinite beyond the reach, negative
    /// outside the wood.
    /// </summary>
    private readonly double[] clear;

    /// <summary>Whether the smallest lettering fits at each place, level and turned; null until first used.</summary>
    private readonly bool?[][] fits;

    private int inTheWay;

    /// <param name="piece">The wood.</param>
    /// <param name="all">Lines and edges the lettering must not touch, those of the piece among them.</param>
    /// <param name="area">Where it is looked for.</param>
    /// <param name="smallest">The smallest lettering that will be tried, level.</param>
    /// <param name="reach">The largest circle that will be tried has this radius, mm.</param>
    public LabelPlaces(Island piece, SegmentIndex all, Bounds area, LabelBox smallest, double reach)
    {
        (bounds, this.smallest, this.reach) = (piece.Outer.Bounds, smallest, reach);
        wood = new(new([piece]));
        // A box clear of the piece's own edge lies inside it: nothing outside can be in its way.
        obstacles = [.. all.Intersecting(bounds).Select(s => (s, s.Bounds))];
        index = obstacles.Length > Few ? all : null;
        places = InOrder(area);
        clear = new double[Count];
        Array.Fill(clear, double.NaN);
        fits = [new bool?[Count], new bool?[Count]];
    }

    /// <summary>The first place where a box clears everything; null for none.</summary>
    /// <param name="box">The box.</param>
    /// <param name="level">True for level lettering.</param>
    public Vec2? First(LabelBox box, bool level)
    {
        if (IsTooLarge(box)) return null;
        for (var i = 0; i < places.Length; i++)
            if (MayFit(i, box, level) && !IsEntered(box.Round(places[i]))) return places[i];
        return null;
    }

    private static Vec2[] InOrder(Bounds area)
    {
        var target = area.Centre;
        // Rounded, so that the last bit of a double decides nothing; of equals the lowest, then the leftmost.
        var unit = Math.Max(1e-6, area.Diagonal * area.Diagonal / 1e15);
        var order = new long[Count];
        for (var n = 0; n < Count; n++) order[n] = (long)Math.Round((Place(n) - target).LengthSquared / unit) * Count + n;
        Array.Sort(order);
        return Array.ConvertAll(order, n => Place((int)(n % Count)));

        Vec2 Place(int number) => new(
            area.MinX + area.Width * (number % (Across + 1)) / Across,
            area.MinY + area.Height * (number / (Across + 1)) / Across);
    }

    /// <summary>True when the box is larger than the piece one way.</summary>
    private bool IsTooLarge(LabelBox box) =>
        box.Width + 2 * box.Room > bounds.Width + Rounding || box.Height + 2 * box.Room > bounds.Height + Rounding;

    /// <summary>False when the circle in the box is not clear, or when not even the smallest lettering fits there.</summary>
    private bool MayFit(int place, LabelBox box, bool level)
    {
        if (double.IsNaN(clear[place])) clear[place] = wood.Contains(places[place]) ? DistanceAt(places[place]) : -1;
        if (clear[place] < box.Inside - Rounding) return false;
        return fits[level ? 0 : 1][place] ??= !IsEntered((level ? smallest : smallest.Turned).Round(places[place]));
    }

    private double DistanceAt(Vec2 p)
    {
        if (index is not null) return index.DistanceWithin(p, reach);
        var nearest = double.PositiveInfinity;
        foreach (var (piece, _) in obstacles) nearest = Math.Min(nearest, piece.DistanceTo(p));
        return nearest;
    }

    private bool IsEntered(Bounds box)
    {
        if (index is not null) return index.Intersecting(box).Any(s => s.Enters(box));
        // What was in the way of the last box is most likely in the way of this one.
        if (inTheWay < obstacles.Length && Enters(inTheWay)) return true;
        for (var i = 0; i < obstacles.Length; i++)
        {
            if (!Enters(i)) continue;
            inTheWay = i;
            return true;
        }

        return false;

        bool Enters(int i) => obstacles[i].Box.Intersects(box) && obstacles[i].Piece.Enters(box);
    }
}
