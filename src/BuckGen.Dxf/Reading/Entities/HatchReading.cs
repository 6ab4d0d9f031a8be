using System.Collections.Immutable;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading.Groups;
using BuckGen.Dxf.Tags;

namespace BuckGen.Dxf.Reading.Entities;

/// <summary>
/// HATCH: boundary paths, each begun by a 92. A path is a polyline, or edges that each begin with a 72. Pattern data follow, from
/// code 75 on, and use the same codes for other things.
/// </summary>
internal static class HatchReading
{
    private const int PolylinePath = 2;

    public static DxfEntity Read(TagGroup group, ReadContext context)
    {
        var boundary = group.Tags.TakeWhile(tag => tag.Code is not (75 or 76 or 98)).ToList();
        var paths = Parts(group, boundary, 92).Select(path => Path(path, context)).ToImmutableArray();
        CountCheck.Compare(group, 91, paths.Length, "boundary paths", context);
        return new DxfHatch(paths);
    }

    private static DxfHatchPath Path(TagGroup path, ReadContext context)
    {
        if (path.Flag(92, PolylinePath))
        {
            var outline = (DxfPolyline)LightPolylineReading.Read(path, context);
            return new([outline with { Closed = true, HasWidth = false, Line = path.Line }]);
        }

        return new([.. Parts(path, path.Tags, 72).Select(edge => Edge(edge, context))]);
    }

    private static DxfEntity Edge(TagGroup edge, ReadContext context) => edge.Integer(72, 0) switch
    {
        1 => LineReading.Read(edge, context) with { Line = edge.Line },
        2 => Turned(edge, context) with { Line = edge.Line },
        3 => TurnedEllipse(edge, context) with { Line = edge.Line },
        4 => Spline(edge, context) with { Line = edge.Line },
        var type => throw edge.Fault($"boundary edge type {type} does not exist; there are 1 to 4"),
    };

    // A clockwise edge counts its angles clockwise; an arc entity always runs counter-clockwise.
    private static DxfArc Turned(TagGroup edge, ReadContext context)
    {
        var (start, end) = Angles(edge);
        return new DxfArc(edge.Point(10, context), edge.RequiredLength(40, "radius", context), start, end);
    }

    private static DxfEllipse TurnedEllipse(TagGroup edge, ReadContext context)
    {
        var (start, end) = Angles(edge);
        return new DxfEllipse(
            edge.Point(10, context), edge.Point(11, context), edge.Required(40, "ratio of the axes"),
            double.DegreesToRadians(start), double.DegreesToRadians(end));
    }

    private static (double Start, double End) Angles(TagGroup edge)
    {
        var (start, end) = (edge.Required(50, "start angle"), edge.Required(51, "end angle"));
        return edge.Integer(73, 1) != 0 ? (start, end) : (-end, -start);
    }

    private static DxfSpline Spline(TagGroup edge, ReadContext context)
    {
        var spline = new DxfSpline(
            edge.Integer(94, 3),
            [.. edge.Tags.Where(tag => tag.Code == 40).Select(edge.Number)],
            PointList.Read(edge, 10, context))
        {
            Weights = [.. edge.Tags.Where(tag => tag.Code == 42).Select(edge.Number)],
            Periodic = edge.Integer(74, 0) != 0,
        };
        context.CountVertices(spline.ControlPoints.Length + spline.Knots.Length, edge);
        return SplineReading.Fault(spline) is { } fault ? throw edge.Fault($"a boundary spline: {fault}") : spline;
    }

    /// <summary>Cuts tags into parts that each begin with the given code; what stands before the first is left out.</summary>
    private static List<TagGroup> Parts(TagGroup whole, IReadOnlyList<DxfTag> tags, int first)
    {
        var starts = Enumerable.Range(0, tags.Count).Where(i => tags[i].Code == first).ToList();
        return [.. starts.Zip(starts.Skip(1).Append(tags.Count), Part)];

        TagGroup Part(int start, int end) => new(whole.Type, tags[start].Line, [.. tags.Skip(start).Take(end - start)]);
    }
}
