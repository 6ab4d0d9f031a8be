using BuckGen.Geometry;
using BuckGen.Geometry.Polygonal;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Prepared;

namespace BuckGen.Tests.Design.Venting;

/// <summary>A floor and the walls on it as polygons of the geometry library: judged by other code than it was made by.</summary>
internal sealed class FlatFloor
{
    private const double Chord = 0.002;

    private readonly IPreparedGeometry air;
    private readonly IPreparedGeometry edges;

    public FlatFloor(Region walls, bool isMale)
    {
        var shape = PolygonConversion.ToGeometry(walls, Chord).Buffer(0);
        // Over a male buck the air is all that is not wood, far enough out; in a female one it is the cavity.
        Air = isMale ? shape.EnvelopeInternal.IsNull ? shape : shape.Factory.ToGeometry(Wide(shape.EnvelopeInternal))
            .Difference(shape) : shape;
        (air, edges) = (PreparedGeometryFactory.Prepare(Air), PreparedGeometryFactory.Prepare(shape.Boundary));
        Edges = shape.Boundary;
    }

    public NetTopologySuite.Geometries.Geometry Air { get; }

    public NetTopologySuite.Geometries.Geometry Edges { get; }

    public IEnumerable<Polygon> Rooms => Enumerable.Range(0, Air.NumGeometries).Select(i => (Polygon)Air.GetGeometryN(i));

    public bool HasAirAt(Vec2 p) => air.Contains(Air.Factory.CreatePoint(At(p)));

    public double DistanceToWall(Vec2 p) => Edges.Distance(Air.Factory.CreatePoint(At(p)));

    /// <summary>True when no wall stands between a place in the air and a place on a wall.</summary>
    public bool Sees(Vec2 from, Vec2 onWall) =>
        !edges.Intersects(Air.Factory.CreateLineString([At(from), At(onWall + (from - onWall).Unit() * 0.02)]));

    public static Coordinate At(Vec2 p) => new(p.X, p.Y);

    private static Envelope Wide(Envelope e)
    {
        var wide = e.Copy();
        wide.ExpandBy(100);
        return wide;
    }
}
