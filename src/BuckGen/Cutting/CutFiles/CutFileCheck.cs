using BuckGen.Cutting.CutPaths;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading;
using BuckGen.Geometry;

namespace BuckGen.Cutting.CutFiles;

/// <summary>Reads a written DXF back and compares it with the drawing, before the file is used.</summary>
internal static class CutFileCheck
{
    /// <summary>Paths may differ by this much of their length, because of rounding to the file's decimals.</summary>
    private const double LengthShare = 1e-4;

    /// <summary>Throws when a path is missing, on another layer, open instead of closed, or of another size.</summary>
    public static void Verify(byte[] file, CutDrawing drawing)
    {
        var entities = DxfReader.Read(file).Entities;
        if (entities.Length != drawing.Paths.Length)
            throw new CutFileException(
                $"\"{drawing.Title}\" has {drawing.Paths.Length} paths, its DXF reads back {entities.Length}.");
        for (var i = 0; i < entities.Length; i++)
        {
            var (path, entity) = (drawing.Paths[i], entities[i]);
            var (closed, length, bounds) = Measure(entity);
            var expected = path.Segments.Aggregate(Bounds.Nothing, (b, s) => b.With(s.Bounds));
            if (entity.Layer != path.Layer.Name() || closed != path.Closed
                || Math.Abs(length - path.Length) > LengthShare * path.Length + 0.01
                || !expected.Grown(0.01).Contains(bounds) || !bounds.Grown(0.01).Contains(expected))
                throw new CutFileException(FormattableString.Invariant(
                    $"\"{drawing.Title}\": path {i + 1} on {path.Layer.Name()} is {path.Length:F3} mm long, its DXF reads ")
                    + FormattableString.Invariant($"back {length:F3} mm on {entity.Layer}."));
        }
    }

    private static (bool Closed, double Length, Bounds Bounds) Measure(DxfEntity entity)
    {
        switch (entity)
        {
            case DxfCircle c:
                var circle = Loop.Circle(new(c.Centre.X, c.Centre.Y), c.Radius);
                return (true, circle.Length, circle.Bounds);
            case DxfPolyline p:
                var count = p.Closed ? p.Vertices.Length : p.Vertices.Length - 1;
                var segments = Enumerable.Range(0, count)
                    .Select(i => Between(p.Vertices[i], p.Vertices[(i + 1) % p.Vertices.Length])).ToArray();
                return (p.Closed, segments.Sum(s => s.Length), segments.Aggregate(Bounds.Nothing, (b, s) => b.With(s.Bounds)));
            default:
                throw new CutFileException($"A {entity.Type} was read back; cut files hold only polylines and circles.");
        }
    }

    private static Segment Between(DxfVertex a, DxfVertex b) => new(new(a.X, a.Y), new(b.X, b.Y), a.Bulge);
}
