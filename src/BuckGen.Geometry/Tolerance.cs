namespace BuckGen.Geometry;

/// <summary>The one set of tolerances of a run; everything that compares lengths takes it from here.</summary>
/// <param name="Chord">Maximum distance, in mm, between a curve and the lines and arcs that replace it.</param>
/// <param name="Join">Maximum gap, in mm, between the ends of two drawn pieces that are still taken as joined.</param>
/// <param name="Coincident">Distance, in mm, below which two points are the same point.</param>
public sealed record Tolerance(double Chord = 0.01, double Join = 0.1, double Coincident = 1e-5)
{
    /// <summary>Chord 0.01 mm, join 0.1 mm, coincident 0.00001 mm.</summary>
    public static Tolerance Default { get; } = new();

    /// <summary>True when two points are the same point within <see cref="Coincident"/>.</summary>
    internal bool AreCoincident(Vec2 a, Vec2 b) => (a - b).LengthSquared <= Coincident * Coincident;
}
