using System.Collections.Immutable;
using BuckGen.Bucks;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Venting;

/// <summary>The vents of a buck and why they are as they are.</summary>
/// <param name="Spec">What was asked for.</param>
/// <param name="Sizing">How wide the holes may be.</param>
/// <param name="Diameter">How wide they are, mm.</param>
/// <param name="Vents">The vents.</param>
/// <param name="Findings">Places without a vent, holes too wide.</param>
public sealed record VentDesign(
    VentSpec Spec, VentSizing Sizing, double Diameter, ImmutableArray<Vent> Vents, ImmutableArray<Finding> Findings)
{
    /// <summary>Places the vents of a stack that has a base plate.</summary>
    internal static VentDesign Of(
        IReadOnlyList<LayerBlank> layers, IEnumerable<DowelHole> dowels, StackedSolid solid, BuckSpec buck, VentSpec spec, IOffsetter offsetter)
    {
        var sizing = VentSizing.Of(layers, solid, buck, spec);
        var diameter = spec.Diameter ?? Math.Max(sizing.Largest, VentSizing.NarrowestEver);
        var vents = ImmutableArray.CreateBuilder<Vent>();
        var findings = ImmutableArray.CreateBuilder<Finding>();
        if (diameter > sizing.Largest) findings.Add(TooWide(diameter, sizing));
        var holes = dowels.Distinct().ToArray();
        var taken = new List<Vec2>();
        foreach (var floor in AirFloor.Of(layers, solid))
        {
            var placement = new VentPlacement(floor.Layer, layers, holes, taken, spec, diameter);
            var walls = new SegmentIndex(floor.Walls.Segments);
            var wishes = VentWishes.Of(floor, spec.WallDistance + diameter / 2, spec, spec.Spacing, offsetter)
                .Concat(spec.Points.Where(floor.Air.Contains).Select(p => new VentWish(p, VentReason.Given)));
            foreach (var wish in wishes.OrderBy(w => w.Reason))
            {
                if (placement.IsDouble(wish)) continue;
                if (placement.Grant(wish, walls) is { } place) vents.Add(new(place, diameter, floor.Layer.Number, wish.Reason));
                else findings.Add(NoRoom(wish, floor.Layer));
            }
        }

        return new(spec, sizing, diameter, vents.ToImmutable(), findings.ToImmutable());
    }

    private static Finding TooWide(double diameter, VentSizing sizing) =>
        new("vents-too-wide", Severity.Warning,
            FormattableString.Invariant(
                $"Vents of {diameter:0.##} mm are wider than the formed sheet is thick on average ({sizing.FormedThickness:0.##} mm); they may leave pimples."),
            "Use a narrower drill, a thicker sheet or a larger plate.")
        {
            Value = diameter, Limit = sizing.Largest, Source = "common practice, no source: no wider than the local formed thickness",
        };

    private static Finding NoRoom(VentWish wish, LayerBlank layer) =>
        new("vent-no-room", Severity.Warning,
            $"There is no room for a vent where air gathers ({wish.Reason.ToString().ToLowerInvariant()}).",
            "Use a narrower bore or less land, move a dowel, or widen the place.")
        {
            Place = wish.Centre, Height = layer.Top, Source = "common practice, no source",
        };
}
