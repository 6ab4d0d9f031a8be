using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Geometry;

namespace BuckGen.Fuzz.Tests.Judging;

/// <summary>
/// What the wood is by its definition: at a height h from the reference plane all points deeper in the outline than the wall has
/// moved, h times the tangent of the draft. With round corners that is exact; with mitred ones, and where the outline was first
/// moved for the plastic's wall, it lies between two bounds.
/// </summary>
internal sealed class DraftedWall
{
    /// <summary>A board that ends this near to a ledge ends on it, mm.</summary>
    private const double OnLedge = 0.0011;

    private readonly BuckSpec spec;
    private readonly double slope;
    private readonly double reference;
    private readonly double allowance;
    private readonly double scale;

    public DraftedWall(BuckDesign design)
    {
        spec = design.Spec;
        (Foot, allowance, scale) = (Plates(spec), design.Sizing.WallAllowance, 1 - design.Sizing.Shrinkage / 100);
        Face = Foot + design.Plan.LayerStocks.Sum(s => s.Thickness);
        reference = spec.OutlineAt == OutlineAt.Face ? Face - design.Sizing.Inset : Foot + design.Sizing.Inset;
        slope = Math.Tan(spec.Draft * Math.PI / 180) * (IsMale ? -1 : 1);
        Source = Enlarged(design.Outline.Region, 1 / (1 - design.Sizing.Shrinkage / 100));
    }

    /// <summary>The drawn outline, enlarged for shrinkage round the middle of its bounds.</summary>
    public Shape Source { get; }

    public double Foot { get; }

    public double Face { get; }

    public bool IsMale => spec.Kind == BuckKind.Male;

    /// <summary>How far the wall stands outside the drawn outline, mm.</summary>
    public double OffsetAt(double height) => allowance
        + (spec.Side.IsEmpty ? (height - reference) * slope : InsetAt(reference) - InsetAt(height));

    /// <summary>How far the wall stands inside the outline at the flange, by the stretches of the side.</summary>
    private double InsetAt(double height)
    {
        var from = IsMale ? height - Foot : Face - height;
        var rest = Face - Foot - spec.Side.Sum(s => s.Height ?? 0) / scale;
        var (at, total) = (0.0, 0.0);
        foreach (var stretch in spec.Side)
        {
            var high = stretch.Height / scale ?? rest;
            var across = stretch.Inset / scale ?? high * Math.Tan(stretch.Draft!.Value * Math.PI / 180);
            if (from < at + high) return total + across * (from - at) / high;
            (at, total) = (at + high, total + across);
        }

        return total;
    }

    /// <summary>The height whose outline a layer is cut to: the larger one's, the smaller one's or between.</summary>
    public double CutHeight(Layer layer)
    {
        // Beside a ledge the wall within the layer counts.
        var (bottom, top) = (Beside(layer.Bottom, 1e-5), Beside(layer.Top, -1e-5));
        var (broad, narrow) = spec.Draft >= 0 ? (bottom, top) : (top, bottom);
        return spec.Steps switch { Steps.Outside => broad, Steps.Inside => narrow, _ => (layer.Bottom + layer.Top) / 2 };
    }

    private double Beside(double height, double inside)
    {
        foreach (var ledge in Ledges())
            if (Math.Abs(ledge - height) <= OnLedge) return ledge + inside;
        return height;
    }

    /// <summary>Heights at which the side leads in at once, mm.</summary>
    private IEnumerable<double> Ledges()
    {
        var (at, rest) = (0.0, Face - Foot - spec.Side.Sum(s => s.Height ?? 0) / scale);
        foreach (var stretch in spec.Side)
        {
            if (stretch.Height == 0) yield return IsMale ? Foot + at : Face - at;
            at += stretch.Height / scale ?? rest;
        }
    }

    /// <summary>Bounds of how deep a point lies in the drafted outline at a height, mm; negative outside.</summary>
    public (double Least, double Most) InOutline(Vec2 p, double height)
    {
        var (depth, run) = (Source.DepthAt(p), OffsetAt(height) - allowance);
        var reach = spec.Corners.MaxReach;
        if (allowance != 0)
        {
            // Moved to and fro a narrow place is lost or filled; the same way twice is once by the sum.
            var (exact, sameWay) = (depth + allowance + run, Math.Sign(allowance) * Math.Sign(run) >= 0);
            var tight = reach == 1;
            return (tight && (sameWay || allowance > 0) ? exact : double.NegativeInfinity, tight
                && (sameWay || allowance < 0) ? exact : double.PositiveInfinity);
        }

        return (depth + (run < 0 ? run * reach : run), depth + (run > 0 ? run * reach : run));
    }

    /// <summary>
    /// Bounds of how deep a point lies in the wood of a layer, mm: the outline itself, or a block less the cavity.
    /// </summary>
    public (double Least, double Most) InWood(Vec2 p, double height, Bounds block)
    {
        var (min, max) = InOutline(p, height);
        if (IsMale) return (min, max);
        var inBlock = Math.Min(Math.Min(p.X - block.MinX, block.MaxX - p.X), Math.Min(p.Y - block.MinY, block.MaxY - p.Y));
        return (Math.Min(inBlock, -max), Math.Min(inBlock, -min));
    }

    private static double Plates(BuckSpec spec) =>
        (spec.Plenum?.Stock.Thickness ?? 0) + (spec.Base?.Under?.Thickness ?? 0) + (spec.Base?.Stock.Thickness ?? 0);

    private static Shape Enlarged(Region region, double factor)
    {
        var drawn = Shape.FromRegion(region);
        if (factor == 1) return drawn;
        var middle = new Vec2(drawn.Box.MinX + drawn.Box.MaxX, drawn.Box.MinY + drawn.Box.MaxY) * 0.5;
        return new(region.Loops.Select(l => l.Segments.Select(s => (middle + (s.Start - middle) * factor, s.Bulge)).ToArray()));
    }
}
