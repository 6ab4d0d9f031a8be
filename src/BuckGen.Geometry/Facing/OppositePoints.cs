namespace BuckGen.Geometry.Facing;

/// <summary>A way straight across, square to the edge at both ends.</summary>
/// <param name="A">One end.</param>
/// <param name="B">The other end.</param>
/// <param name="Misfit">The angle by which it is not square at one end, radians; 0 but for nearly parallel edges and
/// facets.</param>
/// <param name="IsMiddle">True in the middle of a stretch along which two edges face each other: of equal places, that one is
/// named.</param>
internal readonly record struct OppositePoints(Vec2 A, Vec2 B, double Misfit, bool IsMiddle)
{
    /// <summary>Edges nearer than this, mm, touch; no width is measured there.</summary>
    private const double Touching = 1e-5;

    /// <summary>Its length, mm.</summary>
    public double Width => A.DistanceTo(B);

    /// <summary>Its middle.</summary>
    public Vec2 Middle => A.MidpointTo(B);

    /// <summary>Adds the ways across from one face to another.</summary>
    /// <remarks>
    /// Two lines or two arcs round one centre face each other all along a stretch. Its middle is taken. Edges that are only
    /// nearly parallel stand closer at one end. So the places half a width from its ends are taken too, where a square end wall
    /// leaves room for a circle. An open end has corners, which are faces of their own.
    /// </remarks>
    public static void Find(Face a, Face b, List<OppositePoints> found)
    {
        if (a.Line is { } line && b.Line is { } other) BetweenLines(a, b, line, other, found);
        else if (a.Line is { } left) FromLine(a, b, left, found);
        else if (b.Line is { } right) FromLine(b, a, right, found);
        else BetweenRounds(a, b, found);
    }

    private static void Add(Face a, Face b, Vec2 onA, Vec2 onB, List<OppositePoints> found, bool isMiddle = false)
    {
        if ((onB - onA).LengthSquared < Touching * Touching) return;
        if (a.Misfit(onA, onB - onA) is { } atA && b.Misfit(onB, onA - onB) is { } atB)
            found.Add(new(onA, onB, Math.Max(atA, atB), isMiddle));
    }

    private static void BetweenLines(Face a, Face b, Segment line, Segment other, List<OppositePoints> found)
    {
        // The two sides of a needle are no walls that face each other, however thin it is.
        if (line.End == other.Start || other.End == line.Start) return;
        if (b.Normals.Opposite.Outside(a.Normals.Middle) > AngleTolerances.Parallel) return;
        var across = a.Normals.Middle + a.Normals.From(b.Normals.Opposite.Middle) / 2;
        var (way, normal) = (DirectionRange.Towards(across), DirectionRange.Towards(b.Normals.Middle));
        var along = way.Left;
        var (t0, t1) = (ParameterBelow(other.Start), ParameterBelow(other.End));
        var (low, high) = (Math.Max(0, Math.Min(t0, t1)), Math.Min(1, Math.Max(t0, t1)));
        if (low > high) return;
        var half = WidthAt((low + high) / 2) / 2 / line.Chord.Length;
        if (half <= 0) return;
        foreach (var t in Places(low, high, half))
        {
            var p = line.PointAt(t);
            Add(a, b, p, p + way * WidthAt(t), found, t == (low + high) / 2);
        }

        double ParameterBelow(Vec2 p) => (p - line.Start).Dot(along) / line.Chord.Dot(along);

        double WidthAt(double t) => (other.Start - line.PointAt(t)).Dot(normal) / way.Dot(normal);
    }

    private static void FromLine(Face a, Face b, Segment line, List<OppositePoints> found)
    {
        var back = a.Normals.Middle + Math.PI;
        if (b.Normals.Outside(back) > AngleTolerances.Square) return;
        var q = b.PointFor(back);
        Add(a, b, line.PointAt(Math.Clamp(line.ParameterOf(q), 0, 1)), q, found);
    }

    private static void BetweenRounds(Face a, Face b, List<OppositePoints> found)
    {
        var between = b.Centre - a.Centre;
        if (between.LengthSquared > 0)
        {
            AddTowards(a, b, DirectionRange.AngleOf(between), found);
            if (a.Radius != 0 || b.Radius != 0) AddTowards(a, b, DirectionRange.AngleOf(between) + Math.PI, found);
        }

        var width = -a.Radius - b.Radius;
        if (width > 0 && between.Length <= AngleTolerances.Parallel * width) RoundOneCentre(a, b, width, found);
    }

    private static void AddTowards(Face a, Face b, double angle, List<OppositePoints> found, bool isMiddle = false)
    {
        if (a.Normals.Outside(angle) <= AngleTolerances.Square && b.Normals.Outside(angle + Math.PI) <= AngleTolerances.Square)
            Add(a, b, a.PointFor(angle), b.PointFor(angle + Math.PI), found, isMiddle);
    }

    private static void RoundOneCentre(Face a, Face b, double width, List<OppositePoints> found)
    {
        var way = a.Normals.From(b.Normals.Middle + Math.PI);
        var inset = width / 2 / Math.Max(Math.Abs(a.Radius), Math.Abs(b.Radius));
        for (var turn = -1; turn <= 1; turn++)
        {
            var middle = way + 2 * Math.PI * turn;
            var (low, high) = (Math.Max(-a.Normals.Half, middle - b.Normals.Half),
                Math.Min(a.Normals.Half, middle + b.Normals.Half));
            if (low > high + AngleTolerances.Square) continue;
            foreach (var angle in Places(Math.Min(low, high), Math.Max(low, high), inset))
                AddTowards(a, b, a.Normals.Middle + angle, found, angle == (low + high) / 2);
        }
    }

    /// <summary>The places of a stretch that are tried.</summary>
    private static double[] Places(double low, double high, double inset)
    {
        var middle = (low + high) / 2;
        return inset < (high - low) / 2 ? [middle, low + inset, high - inset] : [middle];
    }
}
