namespace BuckGen.Physics.Heat;

/// <summary>Where the sheet comes to rest: as much heat enters by one face as leaves by the other.</summary>
internal static class SteadySheet
{
    /// <summary>
    /// No face can rest hotter than this, degrees C, with the heaters and fluxes that are allowed, unless it can't lose heat.
    /// </summary>
    private const double MaxTemperature = 1e9;

    /// <summary>Temperatures at rest; null when there is no rest.</summary>
    public static SheetTemperatures? Solve(FlatSheet sheet, SheetFace first, SheetFace second, double start)
    {
        if (!first.DependsOnTemperature && !second.DependsOnTemperature)
            return first.Flux + second.Flux == 0 ? LinearProfile(start, start) : null;
        // The first face's temperature decides what enters there, that what lies across the sheet, and that what enters behind.
        var resistance = sheet.Thickness / 1000 / sheet.Material.Conductivity;
        double OtherFaceTemperature(double face) => face - first.FluxInto(face) * resistance;
        double NetFlux(double face) => first.FluxInto(face) + second.FluxInto(OtherFaceTemperature(face));
        var (cold, hot) = (-273.15, MaxTemperature);
        for (var i = 0; i < 200; i++)
        {
            var middle = (cold + hot) / 2;
            if (NetFlux(middle) > 0) cold = middle;
            else hot = middle;
        }
        return LinearProfile(cold, OtherFaceTemperature(cold));
    }

    private static SheetTemperatures LinearProfile(double first, double second) =>
        new(first, (first + second) / 2, second, (first + second) / 2, Math.Min(first, second), Math.Max(first, second));
}
