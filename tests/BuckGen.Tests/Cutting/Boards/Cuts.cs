using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutPaths;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Geometry;
using BuckGen.Tests.Design.Bucks;

namespace BuckGen.Tests.Cutting.Boards;

/// <summary>Plans and parts to start a test from.</summary>
internal static class Cuts
{
    public static CutPlan Create(Region region, CuttingSpec? cutting = null, BuckSpec? buck = null) =>
        CutPlan.Create(PlainBuck.Create(region, buck), cutting ?? new());

    public static CutPart Rectangle(string name, double width, double height, Stock stock) =>
        new(name, stock, [CutPath.FromLoop(CutLayer.CutOuter, Loop.Rectangle(new(0, 0, width, height)))],
            new(0, 0, width, height), width * height, null);

    public static ImmutableArray<Loop> Loops(this CutPart part, CutLayer layer) =>
        [.. part.Paths.Where(p => p.Layer == layer).Select(p => p.AsLoop()!)];
}
