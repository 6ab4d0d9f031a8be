namespace BuckGen.Physics.Heat;

/// <summary>The steady state: as much heat enters by one face as leaves by the other.</summary>
internal static class SteadySheet
{
    /// <summary>
    /// Upper bound of the steady temperature of a face, degrees C, with the heaters and fluxes that are allowed, unless it cannot
    /// lose heat.
    /// </summary>
    private const double MaxTemperature = 1e9;

    /// <summary>The temperatures of the steady state of the sheet; null when there is none.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="first">Heat exchange at its first face, or at the far face of the body under it.</param>
    /// <param name="second">Heat exchange at its second face.</param>
    /// <param name="start">Temperature that stays when no heat enters or leaves, degrees C.</param>
    /// <param name="backing">The body under the first face; null for none.</param>
    public static SheetTemperatures? Solve(
        FlatSheet sheet, SheetFace first, SheetFace second, double start, SheetBacking? backing = null)
    {
        if (!first.DependsOnTemperature && !second.DependsOnTemperature)
            return first.Flux + second.Flux == 0 ? LinearProfile(start, start) : null;
        // The temperature of the first face gives the flux, the flux the temperature of the other face, and that the net flux.
        var under = backing is null ? 0 : Resistance(backing.Body) + 1 / backing.Contact;
        double FirstTemperature(double t) => t - first.FluxInto(t) * under;
        double OtherFaceTemperature(double t) => t - first.FluxInto(t) * (under + Resistance(sheet));
        double NetFlux(double t) => first.FluxInto(t) + second.FluxInto(OtherFaceTemperature(t));
        var face = IntervalHalving.Narrow(-273.15, MaxTemperature, t => NetFlux(t) > 0, count: 200).Low;
        return LinearProfile(FirstTemperature(face), OtherFaceTemperature(face));
    }

    /// <summary>Thermal resistance of a sheet or body, m²·K/W.</summary>
    private static double Resistance(FlatSheet body) => body.Thickness / 1000 / body.Material.Conductivity;

    private static SheetTemperatures LinearProfile(double first, double second) =>
        new(first, (first + second) / 2, second, (first + second) / 2, Math.Min(first, second), Math.Max(first, second));
}
