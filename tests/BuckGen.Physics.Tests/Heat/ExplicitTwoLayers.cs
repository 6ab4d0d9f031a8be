using BuckGen.Physics.Heat;

namespace BuckGen.Physics.Tests.Heat;

/// <summary>
/// A sheet on a body by another scheme than that of the library: even cells, temperatures at their middles, explicit steps.
/// </summary>
internal static class ExplicitTwoLayers
{
    /// <summary>The time until all of the sheet is as cold as wanted, s.</summary>
    public static double SecondsUntil(FlatSheet sheet, SheetBacking buck, double film, double air, double farFilm, double hot,
        double buckStart, double wanted, double cell)
    {
        var (under, over) = ((int)Math.Round(buck.Body.Thickness / cell), (int)Math.Round(sheet.Thickness / cell));
        var count = under + over;
        var width = cell / 1000;
        var capacity = new double[count];
        var conductivity = new double[count];
        var now = new double[count];
        for (var i = 0; i < count; i++)
        {
            var material = i < under ? buck.Body.Material : sheet.Material;
            (conductivity[i], capacity[i]) = (material.Conductivity, width * material.Density * material.HeatCapacity);
            now[i] = i < under ? buckStart : hot;
        }
        var step = Enumerable.Range(0, count).Min(i => capacity[i] / (conductivity[i] / width)) * 0.2;
        for (var seconds = 0.0; ; seconds += step)
        {
            if (now.Skip(under).Max() <= wanted) return seconds;
            var flux = new double[count + 1];
            flux[0] = (air - now[0]) / (width / 2 / conductivity[0] + 1 / farFilm);
            for (var i = 1; i < count; i++)
            {
                var resistance = width / 2 / conductivity[i - 1] + width / 2 / conductivity[i]
                    + (i == under ? 1 / buck.Contact : 0);
                flux[i] = (now[i - 1] - now[i]) / resistance;
            }
            flux[count] = -(air - now[^1]) / (width / 2 / conductivity[^1] + 1 / film);
            for (var i = 0; i < count; i++) now[i] += step * (flux[i] - flux[i + 1]) / capacity[i];
        }
    }
}
