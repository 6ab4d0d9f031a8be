using BuckGen.Cutting.CutPaths;
using BuckGen.Design;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Tests.Design.Bucks;

namespace BuckGen.Tests.Cutting.CutFiles;

/// <summary>
/// One layer with everything a cut file can hold: lettering, a sand-to line, dowels, a round hole, a smooth outline.
/// </summary>
internal static class SmallDesign
{
    public static BuckDesign Design { get; } = PlainBuck.Create(
        Region.FromLoops([Shapes.Slot(60, 30).OnlyLoop(), Loop.Circle(new(60, 0), 12)]),
        PlainBuck.Spec with { Depth = 24, Dowels = new() { ThroughFace = true } });

    public static CutDrawing Drawing { get; } = LayerDrawing.Create(Design.Layers[0]);
}
