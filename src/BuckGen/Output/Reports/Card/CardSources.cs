using BuckGen.Cutting.Boards;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Output.Reports.Card;

/// <summary>Where the start values come from.</summary>
internal sealed class CardSources : IReportSection
{
    public string Title => "Sources";

    public IEnumerable<string> Lines(CutPlan plan) => plan.Design.Spec.Sheet?.Plastic is { } plastic
        ? [List(plastic),
            "Times: heat conduction through the sheet, heater and film coefficients by common practice (no source); see "
            + "the values above."]
        : [];

    private static string List(CatalogPlastic plastic) =>
        string.Join("; ",
            ((string[])["forming-lower", "forming-normal", "forming-upper", "set-temperature", "shrinkage", "conductivity",
                "heat-capacity", "density"])
        .Select(plastic.Find).OfType<CatalogFigure>().SelectMany(f => f.Sources).Distinct()) + ".";
}
