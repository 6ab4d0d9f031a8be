using BuckGen.Cutting.Boards;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Output.Reports.Card;

/// <summary>Where the start values come from.</summary>
internal sealed class CardSources : IReportSection
{
    public string Title => "Sources";

    public IEnumerable<string> Lines(CutPlan plan) => plan.Design.Spec.Sheet?.Plastic is { } plastic
        ? [List(plastic),
            "Times: heat conduction through the sheet and into the buck. Heater, contact, air and handling by common practice "
            + $"(no source); boards: {Boards(plan)}."]
        : [];

    /// <summary>Where it is known from how boards take up heat.</summary>
    private static string Boards(CutPlan plan)
    {
        string[] known =
        [
            .. plan.Design.Layers.Select(l => l.Stock.Material).OfType<CatalogStock>().Distinct()
                .SelectMany(s => (CatalogFigure?[])[s.Find("conductivity"), s.Find("heat-capacity")]).OfType<CatalogFigure>()
                .SelectMany(f => f.Sources).Distinct(),
        ];
        return known.Length > 0 ? string.Join("; ", known) : BuckMaterial.WoodSource;
    }

    private static string List(CatalogPlastic plastic) =>
        string.Join("; ",
            ((string[])["forming-lower", "forming-normal", "forming-upper", "set-temperature", "shrinkage", "conductivity",
                "heat-capacity", "density"])
        .Select(plastic.Find).OfType<CatalogFigure>().SelectMany(f => f.Sources).Distinct()) + ".";
}
