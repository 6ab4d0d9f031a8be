using BuckGen.Bucks;

namespace BuckGen.Venting;

/// <summary>How wide a vent may be: no wider than the sheet is thick where it lands, so that it leaves no pimple.</summary>
/// <param name="ArealRatio">Area of the formed sheet over area of the flat sheet that becomes it.</param>
/// <param name="FormedThickness">Mean thickness of the formed sheet, mm.</param>
/// <param name="Largest">Widest hole allowed, mm.</param>
public sealed record VentSizing(double ArealRatio, double FormedThickness, double Largest)
{
    /// <summary>Widest hole for any sheet, mm: heavy rigid sheet (SPI Plastics Engineering Handbook, from memory).</summary>
    public const double WidestEver = 1.5;

    /// <summary>Narrowest hole that is worth drilling, mm: a common small drill (common practice, no source).</summary>
    public const double NarrowestEver = 0.4;

    /// <summary>Sizes the vents of a buck.</summary>
    /// <remarks>
    /// The reciprocal of the areal draw ratio is the mean thickness fraction (SPE Thermoforming Division, "The Ubiquitous Draw
    /// Ratio", Thermoforming Quarterly 24(4), 2005). The flat sheet is taken as large as the base plate; the walls stretch it.
    /// </remarks>
    internal static VentSizing Of(IReadOnlyList<LayerBlank> layers, StackedSolid solid, BuckSpec spec, VentSpec vents)
    {
        var flat = layers.Last(l => l.Role == LayerRole.Base).Wood.Area;
        var slant = 1 / Math.Cos(spec.Draft * Math.PI / 180);
        var walls = layers.Where(l => l.Role == LayerRole.Wall)
            .Sum(l => solid.Shape.At((l.Bottom + l.Top) / 2).Perimeter * (l.Top - l.Bottom) * slant);
        var ratio = (flat + walls) / flat;
        var formed = vents.Gauge / ratio;
        // To a twentieth of a millimetre, as drills come; always downward.
        return new(ratio, formed, Math.Min(WidestEver, Math.Floor(formed * 20) / 20));
    }
}
