using BuckGen.Design.Bucks;
using BuckGen.Design.Venting;
using BuckGen.Findings;
using BuckGen.Geometry;

namespace BuckGen.Design.Checks;

/// <summary>Checks that the base does not bow over its plenum under one atmosphere.</summary>
internal static class PlenumChecks
{
    /// <summary>The findings about the plenum.</summary>
    public static IEnumerable<Finding> Run(PlenumSpec plenum, BasePlate plate, IReadOnlyList<LayerBlank> layers)
    {
        var widest = PlenumLayer.MaxChannelWidth(plenum, plate);
        var opening = Math.Max(plenum.Width, plenum.PortDiameter);
        if (plenum.Kind == PlenumKind.Channels && opening > widest)
            yield return Bows($"The opening of {opening:0.#} mm in the plenum is wider than the base spans ({widest:0.#} mm)",
                plenum, opening, widest);
        if (plenum.Kind == PlenumKind.Feet && PlenumLayer.FeetPitch(plenum, plate) is null)
            yield return Bows("The base is too thin to stand on feet of this size", plenum, plenum.Width, null);
        var left = layers.FirstOrDefault(l => l.Role == LayerRole.Plenum);
        if (left is null) yield return Vanishes(plenum, layers.First(l => l.Role == LayerRole.Base).Wood.Bounds);
        else if (plenum.Kind == PlenumKind.Channels && left.Wood.Islands.Length is var pieces && pieces > 1)
            yield return new("plenum-in-pieces", Severity.Note,
                $"The channels divide the plenum into {pieces} pieces.",
                "Glue them by the layer drawing, or use narrower channels.");
    }

    private static Finding Vanishes(PlenumSpec plenum, Bounds plate) => plenum.Kind == PlenumKind.Channels
        ? new("plenum-vanishes", Severity.Error,
            FormattableString.Invariant(
                $"Channels of {plenum.Width:0.##} mm and a port of {plenum.PortDiameter:0.##} mm leave no room for a plenum ")
                + FormattableString.Invariant($"of {plate.Width:0.##} x {plate.Height:0.##} mm."),
            "Use narrower channels, a smaller port or a larger base.")
        {
            Place = plate.Centre,
            Value = Math.Max(plenum.Width, plenum.PortDiameter),
            Limit = Math.Min(plate.Width, plate.Height),
        }
        : new("plenum-vanishes", Severity.Error,
            FormattableString.Invariant(
                $"No foot of {plenum.Width:0.##} mm has room under a base of {plate.Width:0.##} x {plate.Height:0.##} mm."),
            "Use smaller feet or a larger base.")
        {
            Place = plate.Centre,
            Value = plenum.Width,
            Limit = Math.Min(plate.Width, plate.Height),
        };

    private static Finding Bows(FormattableString what, PlenumSpec plenum, double value, double? limit) =>
        Bows(FormattableString.Invariant(what), plenum, value, limit);

    private static Finding Bows(string what, PlenumSpec plenum, double value, double? limit) =>
        new("base-bows", Severity.Warning,
            FormattableString.Invariant($"{what} without bowing {plenum.MaxBow:0.##} mm or breaking under one atmosphere."),
            "Use a thicker base, narrower channels or larger feet.")
        {
            Value = value,
            Limit = limit,
            Source = "plate theory (Timoshenko and Woinowsky-Krieger); the worse of MDF and birch plywood",
        };
}
