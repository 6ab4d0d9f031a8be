using System.Collections.Immutable;
using BuckGen.Cancellation;
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

    /// <summary>Relative error of the wall allowed in the search of the gauge, and the number of tries.</summary>
    private const double GaugeTolerance = 0.01;
    private const int MaxGaugeTries = 2;

    private readonly FormingInputs inputs;
    private readonly SheetSpec sheet;
    private readonly AirFlowSpec air;
    private readonly FormingSpec forming;
    private readonly FigureRange modulus;
    private readonly BuckTool tool;
    private readonly Bounds opening, part;
    private readonly double frameHeight, rise;
    private readonly PlanDistance footprint;
    private readonly SheetMesh meshes;
    private readonly GapWidth gaps;
    private readonly Region gapEdge;
    private readonly DraftedWall wall;
    private readonly Plug? plug;

    public PartForming(FormingInputs inputs)
    {
        var (wood, blank) = (inputs.Wood, inputs.Blank);
        (this.inputs, sheet, air, forming) = (inputs, inputs.Sheet, inputs.Air, inputs.Forming);
        modulus = forming.Modulus is { } given ? new(given, given)
            : sheet.Plastic?.HotModulus ?? MaterialError.UnknownModulus;
        var middle = wood.Footprint.Bounds.Centre;
        var half = new Vec2(blank.Opening.Width / 2, blank.Opening.Height / 2);
        opening = Bounds.FromCorners(middle - half, middle + half);
        WoodSlab[] slabs = [.. BuckSlabs.FromLayers(wood.Solid.Finished, wood.Layers, forming.Stepped)];
        // The frame rests on the highest slab that is too large to pass through it.
        frameHeight = slabs.Where(s => !opening.Contains(s.Lower.Bounds.Grown(Blank.MinClearance)))
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
        var floor = shape.At(shape.Foot);
        if (isMale || floor.IsEmpty || FloorPlug.DepthOf(inputs.Former, wall.Depth) is not { } depth) return;
        var (plan, gap) = (new PlanDistance(floor, opening), inputs.Former.PlugGap!.Value);
        if (meshes.Create(Coarse).Mesh.Nodes.Any(n => plan.At(n) <= -gap))
            plug = new(new FloorPlug(plan, gap, wall.Flange - frameHeight - depth), depth);
    }

    /// <summary>The drafted wall of the wood.</summary>
    public DraftedWall Wall => wall;

    /// <summary>
    /// The formed part, with its differences from that of a coarser mesh and from those of the softest and the stiffest sheet.
    /// </summary>
    public FormedPart Predict(CancellationToken cancellation)
    {
        var (quickMesh, middle) = (meshes.Create(Quick), MaterialError.Middle(modulus));
        var isQuick = forming.Detail == FormingDetail.Quick;
        Trial quick = new(quickMesh, sheet.Gauge, modulus.Low < modulus.High ? [modulus.High, middle, modulus.Low] : [middle]);
        Trial[] trials = isQuick ? [quick, new(meshes.Create(Coarse), sheet.Gauge, [middle])] : [quick];
        var formed = ParallelWork.Select(trials, t => Form(t, cancellation), cancellation);
        var ofQuick = formed[0][formed[0].Length / 2];
        // The fine mesh alone takes both cores.
        var best = isQuick ? ofQuick : Form(new(meshes.Create(Fine), sheet.Gauge, [middle]), cancellation)[0];
        var ranges = new PredictedRanges(forming.Detail, best, isQuick ? formed[1][0] : ofQuick)
        {
            Materials = formed[0] is [var stiff, var between, var soft] ? [between, soft, stiff] : null,
        };
        return ranges.AddTo(best.Part) with
        {
            Modulus = modulus,
            NotJudged = gaps.Narrowest(gapEdge, best.MinJudgedGap),
            RequiredGauge = RequiredGauge(best, ofQuick, quickMesh, cancellation),
            PlugDepth = plug?.Stroke,
            InputEffects = forming.CompareInputs ? InputComparison.Compare(inputs, modulus, cancellation) : [],
        };
    }

    /// <summary>
    /// The thinnest wall by the coarse mesh alone, mm; null when there is none or the simulation did not converge.
    /// </summary>
    public double? PredictThinnest(CancellationToken cancellation) =>
        Form(new(meshes.Create(Coarse), sheet.Gauge, [MaterialError.Middle(modulus)]), cancellation)[0] is
        { IsConverged: true } made ? made.Thinnest(made.Ball)?.Thickness : null;

    /// <summary>The wall of the part by the quick mesh alone; null when the simulation did not converge.</summary>
    public PartWall? PredictWall(CancellationToken cancellation) =>
        Form(new(meshes.Create(Quick), sheet.Gauge, [MaterialError.Middle(modulus)]), cancellation)[0].Part.Wall;

    /// <summary>
    /// The part of each modulus. They share one simulation of the softest sheet: a stiffer one is what that was under less
    /// pressure.
    /// </summary>
    private ImmutableArray<PartPostprocessor> Form(Trial trial, CancellationToken cancellation)
    {
        cancellation.ThrowIfCancellationRequested();
        var ((mesh, sizes), softest) = (trial.Mesh, trial.Moduli[^1]);
        var clamped = SheetBefore.Create(mesh, Material(softest), trial.Gauge, opening, forming);
        var load = new FormingLoad(air.AmbientPressure - air.ReservoirPressure)
        {
            Rise = rise,
            Friction = forming.Friction,
            Plug = plug,
            MaxSteps = forming.Friction is null ? MaxSteps : MaxFrictionSteps,
        };
        // A plug is withdrawn under the full pressure, so there a simulation holds for one modulus.
        if (plug is not null)
            return [.. trial.Moduli.Select(m => Part(MembraneForming.Form(
                clamped with { Material = Material(m) }, tool, load, cancellation)))];
        ImmutableArray<double> stops = [.. trial.Moduli[..^1].Select(m => load.Pressure * softest / m)];
        var stages = MembraneForming.FormInStages(clamped, tool, load, stops, cancellation);
        return [.. stages.Zip(trial.Moduli, (stage, m) => Part(stage with
        {
            Sheet = clamped with { Material = Material(m) },
            Pressure = stage.Pressure * m / softest,
        }))];

        PartPostprocessor Part(FormedSheet formed) =>
            new(formed, tool, footprint, new Bridging(formed, tool, gaps, part), frameHeight, forming, wall, sizes);
    }

    private HyperelasticMaterial Material(double shearModulus) =>
        HyperelasticMaterial.MooneyRivlin(shearModulus, forming.Stiffening);

    /// <summary>
    /// Searches the gauge by repeated simulation: a thicker sheet fills corners less, so the wall is not proportional to the
    /// gauge. It uses the quick mesh and assumes that the ratio of its wall to that of the best mesh is constant; rounded up to
    /// hundredths.
    /// </summary>
    private double? RequiredGauge(
        PartPostprocessor best, PartPostprocessor quick, GradedMesh quickMesh, CancellationToken cancellation)
    {
        if (sheet.MinWall is not { } minWall || !best.IsConverged || !quick.IsConverged) return null;
        if (best.Thinnest(best.Ball) is not { } fine || quick.Thinnest(quick.Ball) is not { } seen) return null;
        var targetWall = minWall * seen.Thickness / fine.Thickness;
        var gauge = sheet.Gauge * targetWall / seen.Thickness;
        for (var tries = 0; tries < MaxGaugeTries && gauge <= SheetSettings.Gauge.Max; tries++)
        {
            var next = Form(new(quickMesh, gauge, [MaterialError.Middle(modulus)]), cancellation)[0];
            if (!next.IsConverged || next.Thinnest(quick.Ball) is not { } there) return null;
            if (Math.Abs(there.Thickness / targetWall - 1) <= GaugeTolerance) break;
            gauge *= targetWall / there.Thickness;
        }
        return gauge >= SheetSettings.Gauge.Min
            && gauge <= SheetSettings.Gauge.Max ? Math.Ceiling(gauge * 100 - 1e-6) / 100 : null;
    }
}

/// <summary>One simulation.</summary>
/// <param name="Mesh">Mesh of the sheet.</param>
/// <param name="Gauge">Thickness before forming, mm.</param>
/// <param name="Moduli">Shear moduli, MPa, the largest first.</param>
internal sealed record Trial(GradedMesh Mesh, double Gauge, ImmutableArray<double> Moduli);
