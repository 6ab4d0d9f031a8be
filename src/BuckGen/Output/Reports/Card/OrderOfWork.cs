using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Trimming;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Output.Reports.Card;

/// <summary>What is done at the former and after it, step by step.</summary>
internal sealed class OrderOfWork : IReportSection
{
    public string Title => "Order of work";

    public IEnumerable<string> Lines(CutPlan plan) =>
        Steps(plan.Design, plan.Design.Spec.Sheet?.Plastic).Select((s, i) => CardText.Line($"{i + 1,2}. {s}"));

    private static IEnumerable<string> Steps(BuckDesign design, CatalogPlastic? plastic)
    {
        if (plastic?.Drying is { } drying && drying.StartsWith("Needed", StringComparison.Ordinal)) yield return "Dry the sheet.";
        if (design.Spec.EdgeRadius > 0)
            yield return $"Check that the {(design.Spec.Kind == BuckKind.Male ? "edge of the face" : "lip of the rim")} "
                + CardText.Line($"is rounded to {design.Spec.EdgeRadius:0.##} mm and smooth (see below).");
        yield return design.Vents is { Vents: { IsEmpty: false } vents } venting
            ? CardText.Line($"Warm the buck; check that the {vents.Length} vents are open (drill {venting.DrillText}) and the ")
                + "steps sanded."
            : "Warm the buck; check that vents are open and the steps sanded.";
        yield return "Clamp the blank, heat it until it sags evenly all over.";
        yield return design.Spec.Kind == BuckKind.Male
            ? "Lift the buck into the sheet in one go, then draw the vacuum at once."
            : "Lower the sheet to seal all round the cavity, then draw the vacuum at once.";
        yield return "Hold the vacuum until the sheet is stiff, then let it cool to the take-off temperature.";
        yield return "Blow air in through the port and lift the part off straight.";
        if (design.Jig is { } jig)
        {
            var put = jig.Core.IsEmpty ? "Put the ring round the part"
                : jig.Bed is null ? "Put the core inside and the ring round the part"
                : "Set the part over the core on its bed, put the ring round it";
            yield return CardText.Line($"{put}; cut flat on the ring, {jig.Height:0.##} mm above the ")
                + $"{FlangeFaceText.Format(jig.HeightFrom)}.";
        }

        if (design.Flange is { } flange)
            yield return "Hang the part in the nest, clamp the template on it and rout the flange "
                + CardText.Line($"to its rim; it is {flange.Narrowest.Width:0.#} mm wide at least.");
        if (design.Panel is { } panel)
            yield return CardText.Line($"Try the part in the panel ({panel.Fit:0.##} mm of room round it) before gluing.");
        yield return "Measure the thinnest wall and write down below what worked.";
    }
}
