using BuckGen.Design.Bucks;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Physics.Air;

namespace BuckGen.Design.Venting;

/// <summary>What to know about the vents before they are drilled.</summary>
internal static class VentFindings
{
    /// <summary>Holes wider than the formed sheet is thick.</summary>
    public static IEnumerable<Finding> OfSize(double diameter, VentSizing sizing)
    {
        if (diameter > sizing.MaxDiameter)
            yield return new("vents-too-wide", Severity.Warning,
                FormattableString.Invariant($"Vents of {diameter:0.##} mm are wider than the formed sheet is thick on average ")
                    + FormattableString.Invariant($"({sizing.FormedThickness:0.##} mm); they may leave pimples."),
                "Use a narrower drill, a thicker sheet or a larger plate.")
            {
                Value = diameter,
                Limit = sizing.MaxDiameter,
                Source = "common practice, no source: no wider than the local formed thickness",
            };
    }

    /// <summary>Air that leaves too slowly.</summary>
    public static IEnumerable<Finding> OfAir(VentAir air, int placed, AirFlowSpec spec)
    {
        if (air.DrawDown.Seconds is { } seconds && seconds <= spec.WantedTime) yield break;
        var time = air.DrawDown.Seconds is { } s ? FormattableString.Invariant($"{s:0.##} s") : "more than a minute";
        var limit = air.DrawDown.Bottleneck switch
        {
            AirBottleneck.Pump => "the pump",
            AirBottleneck.Reservoir => "the tank",
            _ => "the vents",
        };
        yield return new("air-too-slow", Severity.Warning,
            FormattableString.Invariant(
                $"The {air.Volume:0.###} L of air under the sheet take {time} to leave through {placed} vents, more than ")
                + FormattableString.Invariant($"the wanted {spec.WantedTime:0.##} s; {limit} hold it back."),
            air.Needed is { } needed && needed > placed
                ? $"Allow wider vents or a smaller spacing: about {needed} vents of this size would do."
                : "Use a larger pump or tank, or accept a slower draw.")
        {
            Value = air.DrawDown.Seconds,
            Limit = spec.WantedTime,
            Source = "compressible flow through the vents; the wanted time is common practice, no source",
        };
    }

    /// <summary>A wish that could not be granted.</summary>
    public static Finding NoRoom(VentCandidate wish, LayerBlank layer) =>
        new("vent-no-room", Severity.Warning,
            FormattableString.Invariant(
                $"There is no room for a vent {Where(wish.Reason)} at {wish.Centre} on layer {layer.Number}."),
            "Use a narrower bore or less land, move a dowel, or widen the place.")
        {
            Place = wish.Centre,
            Height = layer.Top,
            Source = "common practice, no source",
        };

    /// <summary>A stretch of wall along which something keeps the vents apart.</summary>
    public static Finding FarApart(Vec2 place, double stretch, double spacing, LayerBlank layer) =>
        new("vent-spacing", Severity.Warning,
            FormattableString.Invariant(
                $"Along the wall at {place} on layer {layer.Number}, {stretch:0.#} mm are without a vent, more than the ")
                + FormattableString.Invariant(
                    $"spacing of {spacing:0.#} mm: an edge, a dowel, a wall or another bore is in the way."),
            "Use a narrower bore or less land, move a dowel, or widen the place.")
        {
            Place = place,
            Height = layer.Top,
            Value = stretch,
            Limit = spacing,
            Source = "common practice, no source",
        };

    /// <summary>A given point over which no sheet comes down on a floor.</summary>
    public static Finding NotOnAFloor(Vec2 point) =>
        new("vent-not-on-floor", Severity.Warning,
            FormattableString.Invariant(
                $"The vent at {point} does not lie on a floor but under a wall or outside; it is left out."),
            "Move the point into a pocket or onto the base beside the wall.")
        {
            Place = point,
        };

    private static string Where(VentReason reason) => reason switch
    {
        VentReason.Given => "that was asked for",
        VentReason.Gap => "in the gap",
        VentReason.Counter => "in the counter or pit",
        VentReason.Corner => "in the corner",
        VentReason.Wall => "along the wall",
        _ => "of the pattern",
    };
}
