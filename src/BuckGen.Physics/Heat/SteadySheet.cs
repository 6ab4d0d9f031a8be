namespace BuckGen.Physics.Heat;

/// <summary>The steady state: as much heat enters by one face as leaves by the other.</summary>
internal static class SteadySheet
{
    /// <summary>
    /// Upper bound of the steady temperature of a face, degrees C, with the heaters and fluxes that are allowed, unless it cannot
    /// lose heat.
    /// </summary>
    private const double MaxTemperature = 1e9;

    /// <summary>The temperatures of the steady state; null when there is none.</summary>
    public static SheetTemperatures? Solve(FlatSheet sheet, SheetFace first, SheetFace second, double start)
    {
        if (!first.DependsOnTemperature && !second.DependsOnTemperature)
            return first.Flux + second.Flux == 0 ? LinearProfile(start, start) : null;
        // The temperature of the first face gives the flux, the flux the temperature of the other face, and that the net flux.
        var resistance = sheet.Thickness / 1000 / sheet.Material.Conductivity;
        double OtherFaceTemperature(double t) => t - first.FluxInto(t) * resistance;
        double NetFlux(double t) => first.FluxInto(t) + second.FluxInto(OtherFaceTemperature(t));
        var face = IntervalHalving.Narrow(-273.15, MaxTemperature, t => NetFlux(t) > 0, count: 200).Low;
        return LinearProfile(face, OtherFaceTemperature(face));
    }

    private static SheetTemperatures LinearProfile(double first, double second) =>
        new(first, (first + second) / 2, second, (first + second) / 2, Math.Min(first, second), Math.Max(first, second));
}
