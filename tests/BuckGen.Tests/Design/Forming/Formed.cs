using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Design.Specs;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Tests.Design.Forming;

/// <summary>Designs with a plastic sheet for the tests of forming and trimming.</summary>
internal static class Formed
{
    /// <summary>Boards of 1 mm reach any whole depth exactly.</summary>
    public static readonly Stock Thin = new("board 1", 1, 2000, 2000);

    public static readonly Stock Mdf6 = new("board 6", 6, 2000, 2000);

    public static BuckSpec Spec(BuckKind kind, double depth, double draft = 0, double gauge = 1) => new()
    {
        Kind = kind,
        Depth = depth,
        Draft = draft,
        Stock = [Thin],
        Sheet = new() { Gauge = gauge },
        DepthTolerance = 0.01,
    };

    public static Region Rectangle(double width, double height) => Region.FromLoops([Loop.Rectangle(new(0, 0, width, height))]);

    public static Region Disc(double diameter) => Region.FromLoops([Loop.Circle(new(0, 0), diameter / 2)]);

    public static BuckDesign Design(Region outline, BuckSpec spec) =>
        BuckDesign.Create(Outline.FromRegion("part", outline), spec);

    public static Blank Blank(Region outline, BuckSpec spec) => Design(outline, spec).Blank!;
}
