using BuckGen.Design.Parts;
using BuckGen.Design.Prediction;
using BuckGen.Geometry;
using BuckGen.Intake.Catalogs;
using BuckGen.Quantities;

namespace BuckGen.Output.Reports;

/// <summary>The finished part: cooled, and cut where the job has it cut.</summary>
/// <param name="CutBy">"none", "ring" or "saw".</param>
/// <param name="CutHeight">Height of its edge over the plane in which the flange touched the wood.</param>
/// <param name="CutHeightFrom">"underside" or "upper": the face of the flange that touched the wood.</param>
/// <param name="InsideDepth">From its edge to the inside of its face.</param>
/// <param name="OutsideDepth">From its edge to the outside of its face.</param>
/// <param name="DepthTolerance">How far the depths may be off, either way.</param>
/// <param name="Mouth">Sizes at its edge.</param>
/// <param name="Face">Sizes where the wall meets the face.</param>
/// <param name="SizeTolerance">How far widths and heights may be off, either way.</param>
/// <param name="Litres">What it holds, litres.</param>
/// <param name="Grams">Mass of wall and face, g; null when the density is not known.</param>
/// <param name="WallFrom">"mean" or "predicted": where the wall comes from that the sizes rest on.</param>
/// <param name="FaceWall">Thickness of the face.</param>
/// <param name="Order">What was ordered, and the difference; null when the drawing shows the buck.</param>
/// <param name="Mating">How it fits the part that it closes; null for a part that is no lid.</param>
public sealed record PartReport(
    string CutBy, double CutHeight, string CutHeightFrom, double InsideDepth, double OutsideDepth, double DepthTolerance,
    PartEndReport Mouth, PartEndReport Face, double SizeTolerance, RangeReport Litres, RangeReport? Grams, string WallFrom,
    double FaceWall, OrderReport? Order, MatingReport? Mating)
{
    private const double CubicMillimetresInALitre = 1e6;

    internal static PartReport Create(FinishedPart p, MatingPlay? mating) => new(
        Words.Format(p.Cut.Tool), ReportNumber.Round(p.Cut.Height), Words.Format(p.Cut.HeightFrom),
        ReportNumber.Round(p.InsideDepth), ReportNumber.Round(p.OutsideDepth), ReportNumber.Round(p.DepthTolerance),
        PartEndReport.Create(p.Mouth), PartEndReport.Create(p.Face), ReportNumber.Round(p.SizeTolerance),
        RangeReport.Create(new(p.Volume.Low / CubicMillimetresInALitre, p.Volume.High / CubicMillimetresInALitre)),
        p.Mass is { } mass ? RangeReport.Create(mass) : null, Words.Format(p.Wall.Basis), ReportNumber.Round(p.Wall.Face),
        p.Order is { } order ? OrderReport.Create(order) : null, mating is null ? null : MatingReport.Create(mating));
}

/// <summary>Sizes of the finished part at one end.</summary>
/// <param name="InsideWidth">Clear width.</param>
/// <param name="InsideHeight">Clear height.</param>
/// <param name="OutsideWidth">Outer width.</param>
/// <param name="OutsideHeight">Outer height.</param>
/// <param name="Wall">Thickness of the wall there, mean.</param>
/// <param name="MinWall">Thickness that 5 per cent of the wall there stay below.</param>
/// <param name="MaxWall">Thickness that 5 per cent of the wall there exceed.</param>
public sealed record PartEndReport(
    double InsideWidth, double InsideHeight, double OutsideWidth, double OutsideHeight, double Wall, double MinWall,
    double MaxWall)
{
    internal static PartEndReport Create(PartOutline o)
    {
        var (inside, outside) = (Size(o.Inside), Size(o.Outside));
        return new(inside.Width, inside.Height, outside.Width, outside.Height, ReportNumber.Round(o.Wall.Mean),
            ReportNumber.Round(o.Wall.Min), ReportNumber.Round(o.Wall.Max));
    }

    private static (double Width, double Height) Size(Region region) => region.IsEmpty ? (0, 0)
        : (ReportNumber.Round(region.Bounds.Width), ReportNumber.Round(region.Bounds.Height));
}

/// <summary>A range.</summary>
/// <param name="Min">Lower end.</param>
/// <param name="Max">Upper end.</param>
public sealed record RangeReport(double Min, double Max)
{
    internal static RangeReport Create(FigureRange range) => new(ReportNumber.Round(range.Low), ReportNumber.Round(range.High));

    /// <summary>A range of thicknesses in words, as the page writes it.</summary>
    internal static string Format(RangeReport? range) =>
        WallText.Format(range is null ? null : new FigureRange(range.Min, range.Max));
}

/// <summary>What was ordered, and how the finished part differs from it.</summary>
/// <param name="Side">"inside" or "outside".</param>
/// <param name="At">"mouth" or "face": where the size is given.</param>
/// <param name="Width">Ordered width.</param>
/// <param name="Height">Ordered height.</param>
/// <param name="Depth">Ordered depth.</param>
/// <param name="WidthMiss">Finished width less the ordered one.</param>
/// <param name="HeightMiss">Finished height less the ordered one.</param>
/// <param name="DepthMiss">Finished depth less the ordered one.</param>
/// <param name="FromBoards">The part of the depth's difference that the thicknesses of the boards make.</param>
public sealed record OrderReport(
    string Side, string At, double Width, double Height, double Depth, double WidthMiss, double HeightMiss, double DepthMiss,
    double FromBoards)
{
    internal static OrderReport Create(PartOrder o) => new(
        Words.Format(o.Side), Words.Format(o.At), ReportNumber.Round(o.Width), ReportNumber.Round(o.Height),
        ReportNumber.Round(o.Depth), ReportNumber.Round(o.WidthMiss), ReportNumber.Round(o.HeightMiss),
        ReportNumber.Round(o.DepthMiss), ReportNumber.Round(o.FromBoards));
}

/// <summary>How a lid fits the part that it closes.</summary>
/// <param name="Fit">"over", "into" or "flush".</param>
/// <param name="Skirt">How far the two walls overlap.</param>
/// <param name="Wanted">The smallest play that was asked for, on every side.</param>
/// <param name="MinPlay">The smallest play along the whole skirt; below 0 where the walls would pass through each other.</param>
/// <param name="MaxPlay">The largest play along the whole skirt.</param>
public sealed record MatingReport(string Fit, double Skirt, double Wanted, double MinPlay, double MaxPlay)
{
    internal static MatingReport Create(MatingPlay m) => new(
        Words.Format(m.Fit), ReportNumber.Round(m.Skirt), ReportNumber.Round(m.Wanted), ReportNumber.Round(m.Min),
        ReportNumber.Round(m.Max));
}
