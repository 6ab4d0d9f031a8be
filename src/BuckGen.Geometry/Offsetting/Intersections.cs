namespace BuckGen.Geometry.Offsetting;

/// <summary>Where the whole line or circle of one piece meets other lines and circles, as parameters of the piece.</summary>
internal static class Intersections
{
    /// <summary>Adds the parameters, strictly inside the piece, at which it meets a circle.</summary>
    public static void WithCircle(Carrier piece, Vec2 centre, double radius, ref ParameterList found)
    {
        if (radius <= 0) return;
        if (piece.IsArc)
        {
            var between = centre - piece.Centre;
            var distance = between.Length;
            if (distance == 0) return;
            // Distance from the arc's centre to the common chord, and half that chord.
            var along = (distance * distance + piece.Radius * piece.Radius - radius * radius) / (2 * distance);
            if (!Reaches(piece.Radius * piece.Radius - along * along, piece.Radius, out var halfSquared)) return;
            var unit = between * (1 / distance);
            var foot = piece.Centre + unit * along;
            var half = unit.Left * Math.Sqrt(halfSquared);
            found.AddIfInside(piece.ParameterOf(foot + half));
            found.AddIfInside(piece.ParameterOf(foot - half));
        }
        else
        {
            var t = piece.ParameterOf(centre);
            var offLine = (centre - piece.Start).Cross(piece.Chord) / piece.ChordLength;
            if (!Reaches(radius * radius - offLine * offLine, radius, out var halfSquared)) return;
            var half = Math.Sqrt(halfSquared) / piece.ChordLength;
            found.AddIfInside(t - half);
            found.AddIfInside(t + half);
        }
    }

    /// <summary>Adds the parameters, strictly inside the piece, at which it meets a line.</summary>
    public static void WithLine(Carrier piece, Vec2 point, Vec2 direction, ref ParameterList found)
    {
        if (piece.IsArc)
        {
            var unit = direction.Unit();
            var foot = point + unit * (piece.Centre - point).Dot(unit);
            if (!Reaches(piece.Radius * piece.Radius - (foot - piece.Centre).LengthSquared, piece.Radius, out var halfSquared))
                return;
            var half = unit * Math.Sqrt(halfSquared);
            found.AddIfInside(piece.ParameterOf(foot + half));
            found.AddIfInside(piece.ParameterOf(foot - half));
        }
        else
        {
            var cross = piece.Chord.Cross(direction);
            if (cross != 0) found.AddIfInside((point - piece.Start).Cross(direction) / cross);
        }
    }

    /// <summary>
    /// True when a circle is reached. A tangent may miss it by rounding; then it counts as touching, for a piece that lies on
    /// both sides of the place must be cut there.
    /// </summary>
    private static bool Reaches(double squared, double radius, out double halfSquared)
    {
        halfSquared = Math.Max(0, squared);
        return squared >= -2 * radius * Precision.MinPieceLength;
    }
}

/// <summary>A short sorted list of parameters on the stack.</summary>
internal ref struct ParameterList(Span<double> space)
{
    private readonly Span<double> space = space;

    public int Count { get; private set; }

    public readonly ReadOnlySpan<double> Sorted
    {
        get
        {
            var used = space[..Count];
            used.Sort();
            return used;
        }
    }

    public void Add(double t) => space[Count++] = t;

    public void AddIfInside(double t)
    {
        if (t > 0 && t < 1) Add(t);
    }
}
