using System.Collections.Immutable;
using BuckGen.Cutting.CutPaths;
using BuckGen.Cutting.Seams;
using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Cutting.Boards;

/// <summary>One piece to be cut, with the kerf already allowed for, in the design's coordinates.</summary>
/// <param name="Name">Its lettering: "3A".</param>
/// <param name="Stock">The stock it is cut from.</param>
/// <param name="Paths">Marks, then holes, then the outer edge.</param>
/// <param name="Bounds">Round the outer cut.</param>
/// <param name="Area">Area of the finished piece, mm².</param>
/// <param name="Lost">A place, in the design's coordinates, where a slot or hole is narrower than the kerf; null for
/// none.</param>
public sealed record CutPart(string Name, Stock Stock, ImmutableArray<CutPath> Paths, Bounds Bounds, double Area, Vec2? Lost)
{
    /// <summary>True when it lies on the board with its face down, for its marks belong on its back.</summary>
    public bool IsFaceDown { get; init; }

    private const double CrossArm = 1;

    /// <summary>
    /// A path whose inside is narrower than this on average, mm, would be a burnt dot; it is reported and not cut.
    /// </summary>
    private const double MinAcross = 0.05;

    private static double Across(Loop loop) => 2 * Math.Abs(loop.SignedArea) / loop.Length;

    /// <summary>Length cut through, mm; marks not counted.</summary>
    public double CutLength => Paths.Where(p => p.Layer != CutLayer.Mark).Sum(p => p.Length);

    /// <summary>A piece of a layer.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="piece">One of its parts with its name, or a piece of a part that is cut in several.</param>
    /// <param name="spec">How it is cut.</param>
    /// <param name="offsetter">Moves the edges.</param>
    /// <param name="cancellation">Stops the work.</param>
    internal static CutPart FromPiece(Layer layer, NamedPart piece, CuttingSpec spec, IOffsetter offsetter,
        CancellationToken cancellation)
    {
        var (compensation, smallest) = (spec.Compensation, spec.MinHoleDiameter(layer.Thickness));
        var (name, part) = piece;
        Loop[] lines = [.. layer.SandTo, .. layer.GlueUp];
        var whole = offsetter.Offset(new([part.Shape]), compensation, CornerJoin.Round, cancellation).Islands[0];
        var speck = whole.Holes.FirstOrDefault(h => Across(h) < MinAcross);
        var cut = whole with { Holes = [.. whole.Holes.Where(h => Across(h) >= MinAcross)] };
        var inside = new RegionInterior(new([part.Shape]));
        var marks = lines.Where(l => l.Bounds.Intersects(part.Shape.Outer.Bounds))
            .Where(l => inside.Contains(l.Segments[0].Start) || IsOn(inside, l));
        IEnumerable<CutPath> paths =
        [
            .. marks.Select(l => CutPath.FromLoop(CutLayer.Mark, l)),
            .. part.Strokes.Select(s => CutPath.FromStroke(CutLayer.Mark, s)),
            .. part.Vents.Where(v => v.Diameter < smallest).SelectMany(v => Cross(v.Centre)),
            .. part.Vents.Where(v => v.Diameter >= smallest)
                .Select(v => CutPath.FromLoop(CutLayer.Vent, Loop.Circle(v.Centre, v.Diameter / 2 - compensation))),
            .. part.Dowels
                .Select(d => CutPath.FromLoop(CutLayer.Dowel, Loop.Circle(d.Centre, d.Diameter / 2 - compensation))),
            .. cut.Holes.Select(h => CutPath.FromLoop(CutLayer.CutInner, h)),
            CutPath.FromLoop(CutLayer.CutOuter, cut.Outer),
        ];
        return new(name, layer.Stock, [.. paths], cut.Outer.Bounds, part.Shape.Area, speck?.Bounds.Centre
            ?? KerfLoss.Find(part.Shape, cut, compensation, offsetter, cancellation))
        {
            IsFaceDown = layer.MarkedOnBack,
        };
    }

    /// <summary>A small cross to set a drill on, where the machine can't make the hole itself.</summary>
    private static IEnumerable<CutPath> Cross(Vec2 p) =>
    [
        new(CutLayer.Mark, [new(p - new Vec2(CrossArm, 0), p + new Vec2(CrossArm, 0))], false),
        new(CutLayer.Mark, [new(p - new Vec2(0, CrossArm), p + new Vec2(0, CrossArm))], false),
    ];

    /// <summary>True when most of a line lies on the piece, though it may start on its edge.</summary>
    private static bool IsOn(RegionInterior piece, Loop line) =>
        line.Segments.Count(s => piece.Contains(s.PointAt(0.5))) * 2 > line.Segments.Length;
}
