using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Venting;

/// <summary>A stretch of the foot of a wall.</summary>
/// <param name="From">Where it starts, mm along the foot.</param>
/// <param name="To">Where it ends, mm.</param>
/// <param name="IsServed">True when vents serve its ends, false for a whole foot without any.</param>
internal readonly record struct WallStretch(double From, double To, bool IsServed)
{
    public double Length => To - From;
}

/// <summary>The foot of one wall, measured along, with the vents that serve it.</summary>
/// <remarks>
/// A vent serves the wall at each point of the foot that lies nearest to it, if it sees that point from no farther than the
/// reach.
/// </remarks>
internal sealed class WallFoot
{
    private const int Halvings = 24;

    /// <summary>A place this much nearer to the wall than wanted, mm, lies between two walls.</summary>
    private const double Narrow = 0.01;

    private readonly AirFloor floor;
    private readonly LoopMeasure line;
    private readonly SegmentIndex pieces;
    private readonly double distance;
    private readonly double reach;
    private readonly Lazy<double> start;

    /// <param name="loop">The foot; the air lies to its left.</param>
    /// <param name="floor">The floor.</param>
    /// <param name="distance">From the foot to the centre of a vent, mm.</param>
    /// <param name="reach">Farthest a vent may lie from the foot to serve it, mm.</param>
    /// <param name="middle">The middle of the whole outline.</param>
    public WallFoot(Loop loop, AirFloor floor, double distance, double reach, Vec2 middle)
    {
        (this.floor, this.distance, this.reach) = (floor, distance, reach);
        (line, pieces, Within) = (new(loop), new(loop.Segments), loop.Bounds.Grown(reach));
        start = new(() => RowStart.Find(line, middle));
    }

    public double Length => line.Loop.Length;

    /// <summary>Vents elsewhere serve no point of the foot.</summary>
    public Bounds Within { get; }

    /// <summary>The point of the foot a way along, mm.</summary>
    public Vec2 PointAt(double along) => line.PointAt(along);

    /// <summary>A wish for a vent beside the foot.</summary>
    public VentCandidate CandidateAt(double along)
    {
        var place = PlaceAt(along);
        return new(place, place.DistanceTo(PointAt(along)) < distance - Narrow ? VentReason.Gap
            : VentReason.Wall, PlaceAt, along);
    }

    /// <summary>
    /// The stretches of the foot longer than the spacing between the vents that serve it; the whole when none does.
    /// </summary>
    /// <param name="vents">Vents on the floor's layer.</param>
    /// <param name="spacing">Maximum length of a stretch that is well, mm.</param>
    public List<WallStretch> TooLong(IEnumerable<Vent> vents, double spacing)
    {
        var feet = vents.SelectMany(v => FeetOf(v.Centre)).Order().ToArray();
        if (feet.Length == 0) return [new(start.Value, start.Value + Length, IsServed: false)];
        return [.. feet.Select((f, i) => new WallStretch(f, i + 1 < feet.Length ? feet[i + 1] : feet[0] + Length, IsServed: true))
            .Where(s => s.Length > spacing + 1e-6)];
    }

    /// <summary>
    /// At the wanted distance, or half-way to a wall that is nearer: the middle of the largest circle that touches the foot
    /// there.
    /// </summary>
    private Vec2 PlaceAt(double along)
    {
        var (piece, t) = line.At(along);
        var (foot, into) = (piece.PointAt(t), piece.DirectionAt(t).Left);
        if (HasRoom(distance)) return foot + into * distance;
        var (low, high) = (0.0, distance);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            if (HasRoom(middle)) low = middle;
            else high = middle;
        }

        return foot + into * low;

        bool HasRoom(double radius) => floor.ToWall(foot + into * radius, radius) >= radius - 1e-6;
    }

    private IEnumerable<double> FeetOf(Vec2 vent)
    {
        if (!Within.Contains(vent)) yield break;
        foreach (var i in pieces.IndicesIntersecting(Bounds.FromCorners(vent, vent).Grown(reach)))
        {
            var piece = line.Loop.Segments[i];
            var t = piece.NearestParameter(vent);
            // An end is nearest only when it is so for both pieces that meet there; it is counted with the second.
            if (t == 1 || (t == 0
                && line.Loop.Segments[(i + line.Loop.Segments.Length - 1) % line.Loop.Segments.Length].NearestParameter(vent)
                < 1)) continue;
            var foot = piece.PointAt(t);
            var away = foot.DistanceTo(vent);
            if (away <= reach && floor.Sees(vent, vent + (foot - vent) * (1 - 1e-3 / Math.Max(away, 0.01))))
                yield return line.StartOf(i) + t * piece.Length;
        }
    }
}
