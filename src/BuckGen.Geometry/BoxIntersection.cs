namespace BuckGen.Geometry;

/// <summary>Decides whether a line or arc enters an upright rectangle.</summary>
internal static class BoxIntersection
{
    /// <summary>True when a point of the piece lies in the rectangle.</summary>
    public static bool Enters(this Segment segment, Bounds box)
    {
        if (!segment.Bounds.Intersects(box)) return false;
        if (box.Contains(segment.Start) || box.Contains(segment.End)) return true;
        return segment.IsArc ? ArcCrosses(segment, box) : LineCrosses(segment, box);
    }

    /// <summary>By the parameters at which the line enters and leaves the two strips that make the rectangle.</summary>
    private static bool LineCrosses(Segment line, Bounds box)
    {
        var (enter, leave) = (0.0, 1.0);
        return Clip(line.Start.X, line.Chord.X, box.MinX, box.MaxX) && Clip(line.Start.Y, line.Chord.Y, box.MinY, box.MaxY);

        bool Clip(double start, double way, double low, double high)
        {
            if (way == 0) return start >= low && start <= high;
            var (a, b) = ((low - start) / way, (high - start) / way);
            (enter, leave) = (Math.Max(enter, Math.Min(a, b)), Math.Min(leave, Math.Max(a, b)));
            return enter <= leave;
        }
    }

    /// <summary>An arc that enters without ending inside crosses one of the four sides.</summary>
    private static bool ArcCrosses(Segment arc, Bounds box)
    {
        var (centre, radius) = (arc.Centre, arc.Radius);
        return Upright(box.MinX) || Upright(box.MaxX) || Level(box.MinY) || Level(box.MaxY);

        bool Upright(double x)
        {
            var half = Half(x - centre.X);
            return half >= 0 && (On(new(x, centre.Y + half)) || On(new(x, centre.Y - half)));
        }

        bool Level(double y)
        {
            var half = Half(y - centre.Y);
            return half >= 0 && (On(new(centre.X + half, y)) || On(new(centre.X - half, y)));
        }

        double Half(double away) => Math.Abs(away) > radius ? -1 : Math.Sqrt(radius * radius - away * away);

        bool On(Vec2 p) => box.Contains(p) && arc.ParameterOf(p) is >= 0 and <= 1;
    }
}
