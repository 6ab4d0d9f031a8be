using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Geometry;
using BuckGen.Intake.Catalogs;
using BuckGen.Physics.Air;
using BuckGen.Physics.Membranes;

namespace BuckGen.Design.Prediction;

/// <summary>
/// Simulates the forming of the sheet over a designed buck: the frame is lowered over it, or it rises through the frame; then the
/// air is drawn out below.
/// </summary>
internal sealed class PartForming
{
    /// <summary>
    /// Step limits, without and with friction. A sheet that sticks converges in one to five thousand steps; a sliding one creeps
    /// for many more.
    /// </summary>
    private const int MaxSteps = 20_000, MaxFrictionSteps = 200_000;

    private static readonly MeshFineness
        Coarse = new(1_800, 4, 20_000), Quick = new(7_000, 6, 40_000), Fine = new(50_000, 12, 150_000);

    /// <summary>Smallest gap between a plate and the frame with which the plate passes through the frame, mm.</summary>
    internal const double MinClearance = 0.5;

    /// <summary>Relative error of the wall allowed in the search of the gauge, and the number of tries.</summary>
    private const double GaugeTolerance = 0.01;
    private const int MaxGaugeTries = 2;

    private readonly SheetSpec sheet;
    private readonly AirFlowSpec air;
    private readonly FormingSpec forming;
    private readonly BuckTool tool;
    private readonly Bounds opening, part;
    private readonly double frameHeight, rise;
    private readonly PlanDistance footprint;
    private readonly SheetMesh meshes;
    private readonly GapWidth gaps;
    private readonly Region gapEdge;
    private readonly DraftedWall wall;

    public PartForming(FormedWood wood, SheetSpec sheet, AirFlowSpec air, Blank blank, FormingSpec forming)
    {
        (this.sheet, this.air, this.forming) = (sheet, air, forming);
        var middle = wood.Footprint.Bounds.Centre;
        var half = new Vec2(blank.Opening.Width / 2, blank.Opening.Height / 2);
        opening = Bounds.FromCorners(middle - half, middle + half);
        WoodSlab[] slabs = [.. BuckSlabs.FromLayers(wood.Solid.Finished, wood.Layers, forming.Stepped)];
        // The frame rests on the highest slab that is too large to pass through it.
        frameHeight = slabs.Where(s => !opening.Contains(s.Lower.Bounds.Grown(MinClearance)))
            .Select(s => s.Top).DefaultIfEmpty(0).Max();
        rise = Math.Max(0, slabs.Max(s => s.Top) - frameHeight);
        tool = new(slabs, frameHeight, opening);
        (footprint, part) = (new(wood.Footprint, opening), wood.Footprint.Bounds);
        var (finished, shape) = (wood.Solid.Finished, wood.Solid.Shape);
        var (low, high) = (shape.Foot, shape.Face);
        wall = wood.Solid.Kind == BuckKind.Male ? new(low, high, shape.Side.DraftAtFace, wood.CutHeight)
            : new(high, low, shape.Side.DraftAtFace, wood.CutHeight);
        var face = finished.At(shape.Face);
        PlanDistance[] edges = face.IsEmpty ? [footprint] : [footprint, new(face, opening)];
        // Where the gap is widest, so that its walls belong to it too.
        var isMale = wood.Solid.Kind == BuckKind.Male;
        gapEdge = isMale && !face.IsEmpty ? face : wood.Footprint;
        gaps = new(isMale ? edges[^1] : footprint, isMale);
        meshes = new(opening, edges, gaps, sheet.Gauge);
    }

    /// <summary>The drafted wall of the wood.</summary>
    public DraftedWall Wall => wall;

    /// <summary>The formed part, with its difference from that of a coarser mesh.</summary>
    public FormedPart Predict(CancellationToken cancellation)
    {
        var gauge = sheet.Gauge;
        var quick = Form(Quick, gauge, cancellation);
        var (best, coarser) = forming.Detail == FormingDetail.Quick
            ? (quick, Form(Coarse, gauge, cancellation))
            : (Form(Fine, gauge, cancellation), quick);
        return best.Part with
        {
            MeshSensitivity = ThicknessChange(best, coarser),
            ThicknessOf1Percent = RangeOfShare(best, coarser, 0.01),
            ThicknessOf5Percent = RangeOfShare(best, coarser, 0.05),
            NotJudged = gaps.Narrowest(gapEdge, best.MinJudgedGap),
            RequiredGauge = RequiredGauge(best, quick, cancellation),
        };
    }

    /// <summary>The wall of the part by the quick mesh alone; null when the simulation did not converge.</summary>
    public PartWall? PredictWall(CancellationToken cancellation) => Form(Quick, sheet.Gauge, cancellation).Part.Wall;

    private static double? ThicknessChange(PartPostprocessor best, PartPostprocessor coarser) =>
        best.IsConverged && coarser.IsConverged
            && best.Thinnest(coarser.Ball) is { } fine && coarser.Thinnest(coarser.Ball) is { } coarse
            ? fine.Thickness / coarse.Thickness - 1 : null;

    private FigureRange? RangeOfShare(PartPostprocessor best, PartPostprocessor coarser, double share) =>
        best.IsConverged && coarser.IsConverged
            && best.Quantile(share) is > 0 and var fine && coarser.Quantile(share) is > 0 and var coarse
            ? MeshError.Range(fine, fine / coarse - 1, forming.Detail) : null;

    private PartPostprocessor Form(MeshFineness fineness, double gauge, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        var (mesh, sizes) = meshes.Create(fineness);
        var clamped = ClampedSheet.FromMesh(mesh, HyperelasticMaterial.MooneyRivlin(forming.Modulus, forming.Stiffening), gauge);
        var load = new FormingLoad(air.AmbientPressure - air.ReservoirPressure)
        {
            Rise = rise,
            Friction = forming.Friction,
            MaxSteps = forming.Friction is null ? MaxSteps : MaxFrictionSteps,
        };
        var formed = MembraneForming.Form(clamped, tool, load, cancellation);
        return new(formed, tool, footprint, part, frameHeight, forming, wall, sizes);
    }

    /// <summary>
    /// Searches the gauge by repeated simulation: a thicker sheet fills corners less, so the wall is not proportional to the
    /// gauge. It uses the quick mesh and assumes that the ratio of its wall to that of the best mesh is constant; rounded up to
    /// hundredths.
    /// </summary>
    private double? RequiredGauge(PartPostprocessor best, PartPostprocessor quick, CancellationToken cancellation)
    {
        if (sheet.MinWall is not { } minWall || !best.IsConverged || !quick.IsConverged) return null;
        if (best.Thinnest(best.Ball) is not { } fine || quick.Thinnest(quick.Ball) is not { } seen) return null;
        var targetWall = minWall * seen.Thickness / fine.Thickness;
        var gauge = sheet.Gauge * targetWall / seen.Thickness;
        for (var tries = 0; tries < MaxGaugeTries && gauge <= SheetSettings.Gauge.Max; tries++)
        {
            var next = Form(Quick, gauge, cancellation);
            if (!next.IsConverged || next.Thinnest(quick.Ball) is not { } there) return null;
            if (Math.Abs(there.Thickness / targetWall - 1) <= GaugeTolerance) break;
            gauge *= targetWall / there.Thickness;
        }
        return gauge >= SheetSettings.Gauge.Min
            && gauge <= SheetSettings.Gauge.Max ? Math.Ceiling(gauge * 100 - 1e-6) / 100 : null;
    }
}

/// <summary>The wood over which the sheet is formed.</summary>
/// <param name="Solid">The drafted wall.</param>
/// <param name="Layers">The layers as they are cut.</param>
/// <param name="Footprint">Where the part meets its flange.</param>
/// <param name="CutHeight">Where the part is cut, on the wood, from the plane of the flange, mm; 0 or less for no cut.</param>
internal sealed record FormedWood(
    StackedSolid Solid, IReadOnlyList<Layer> Layers, Region Footprint, double CutHeight);
