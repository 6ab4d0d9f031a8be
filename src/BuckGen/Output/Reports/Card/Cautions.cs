using BuckGen.Cutting.Boards;

namespace BuckGen.Output.Reports.Card;

/// <summary>The usual cautions, and those of the plastic.</summary>
internal sealed class Cautions : IReportSection
{
    public string Title => "Take care";

    public IEnumerable<string> Lines(CutPlan plan) =>
    [
        "Hot heater and sheet: gloves, distance, nothing that burns nearby. Fumes: exhaust or open air, and",
        "never hotter than the upper limit. Knives, saws and routers: guards, and the part held down.",
        "A wooden buck is not a food-safe tool. The supplier's data sheet, local rules and licensed practice",
        "come before this card; its values are starting points, not settings.",
        .. plan.Design.Spec.EdgeRadius == 0 ? Array.Empty<string>()
            :
            [
                CardText.Line($"To round the edge to {plan.Design.Spec.EdgeRadius:0.##} mm, glue the stack first and let it ")
                    + "set. Clamp it; use a",
                "round-over bit with a bearing, at the speed of its supplier, in light passes, or sand by a gauge.",
                "Eye, ear and dust protection; keep the bit off dowels of metal. Try it on a scrap of the same board.",
            ],
        .. plan.Design.Spec.Sheet?.Plastic?.Caution is { } caution ? [caution] : Array.Empty<string>(),
    ];
}
