using System.Collections.Immutable;

namespace BuckGen.Geometry.Lettering;

/// <summary>A corner of a stroke and the way on from it to the next one.</summary>
/// <param name="X">Distance to the right, mm.</param>
/// <param name="Y">Height over the baseline, mm, upward.</param>
/// <param name="Bulge">Tangent of a quarter of the arc's sweep to the next vertex, positive counter-clockwise; 0 for a straight
/// line and at the last vertex.</param>
public readonly record struct StrokeVertex(double X, double Y, double Bulge);

/// <summary>One open line of a letter, drawn without lifting the tool. A loop ends on its own first point.</summary>
/// <param name="Vertices">Two vertices or more, in drawing order.</param>
public sealed record Stroke(ImmutableArray<StrokeVertex> Vertices)
{
    /// <summary>The stroke moved, turned or mirrored.</summary>
    internal Stroke Transformed(Affine map) => new(
        [.. Vertices.Select(v => map.Apply(new(v.X, v.Y)) is var p
            ? new StrokeVertex(p.X, p.Y, map.Mirrors ? -v.Bulge : v.Bulge) : v)]);
}
