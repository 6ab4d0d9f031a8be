using System.Collections.Immutable;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Tests.Design.Bucks;

/// <summary>Specs and designs to start a test from.</summary>
internal static class PlainBuck
{
    public static Stock Mdf12 { get; } = new("MDF 12", 12);

    /// <summary>36 mm deep, 5° of draft, 12 mm boards: three layers, each step 12·tan 5° = 1.0499 mm (trigonometry).</summary>
    public static BuckSpec Spec { get; } = new() { Depth = 36, Draft = 5, Stock = [Mdf12] };

    public static double Tan5 { get; } = Math.Tan(5 * Math.PI / 180);

    public static BuckDesign Create(Region region, BuckSpec? spec = null) =>
        BuckDesign.Create(Outline.FromRegion("drawn", region), spec ?? Spec);

    public static IEnumerable<Finding> Named(this BuckDesign design, string id) => design.Findings.Where(f => f.Id == id);

    public static ImmutableArray<double> Widths(this BuckDesign design) => [.. design.Layers.Select(l => l.Region.Bounds.Width)];
}
