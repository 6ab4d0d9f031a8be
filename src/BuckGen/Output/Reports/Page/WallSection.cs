using BuckGen.Design;
using BuckGen.Design.Prediction;
using BuckGen.Output.Pictures.Thickness;

namespace BuckGen.Output.Reports.Page;

/// <summary>The predicted wall of the formed part: map, section, and what the numbers mean.</summary>
internal static class WallSection
{
    public static void Add(Html page, BuckDesign design, FormedPart part)
    {
        page.Raw("<h2 id=\"wall\">Predicted wall</h2>\n").Line($"<p>{Words(part)}</p>");
        if (ThicknessMap.Draw(design) is { } map)
            DrawingSections.Figure(page, map,
                "How thick the sheet ends up, seen from above. Steep walls are narrow from here; the section and the model "
                + "show them.");
        if (ThicknessSection.Draw(design) is { } section)
            DrawingSections.Figure(page, section, part.Spec.Friction is null
                ? "The sheet along section A-A. It sticks where it touches: the face keeps the gauge, walls thin as they "
                    + "are drawn." : "The sheet along section A-A.");
        if (part.IsConverged) page.Line($"<p class=\"small\">{Method(part)}</p>");
        if (part.InputEffects.IsEmpty) return;
        TableSections.Table(
            page, "What moves the thinnest wall", ["Input", "From", "To", "Thinnest wall changes by"],
            part.InputEffects.Select(e => (string[])[InputText.Name(e.Input), InputText.Value(e.Input, e.From),
                InputText.Value(e.Input, e.To), InputText.Effect(e)]),
            numbersFrom: 1);
        page.Raw("<p class=\"small\">Each input alone, over its usual range (common practice, no source), on a coarse net. "
            + "Measure the first of them before the others, and set it in [forming], [sheet] or [vacuum].</p>\n");
    }

    private static string Words(FormedPart part) => !part.IsConverged
        ? "The prediction did not converge; do not use it. The finding says what may help."
        : $"The part without its skirt is {WallText.Format(part.MeanRange)} thick on average" + (part.Thinnest is { } thin
            ? FormattableString.Invariant(
                $" and thinnest, {WallText.Format(part.ThinnestRange)}, at {thin.Place.X:0.#}, {thin.Place.Y:0.#}, ")
                + FormattableString.Invariant($"{thin.Height:0.#} mm up. Thickness that 1 % of it is below: ")
                + $"{WallText.Format(part.ThicknessOf1Percent)}; 5 %: {WallText.Format(part.ThicknessOf5Percent)}."
            : ".") + (part.RequiredGaugeRange is { } gauge
            ? $" For the minimum wall you want, start with a sheet of {WallText.Format(gauge)}." : "");

    private static string Method(FormedPart part) => FormattableString.Invariant(
        $"Computed ({(part.Spec.Detail == FormingDetail.Fine ? "fine" : "quick")}) with {part.Triangles.Length} triangles, ")
        + FormattableString.Invariant($"{part.MinEdgeLength:0.#} mm at the walls, over the ")
        + FormattableString.Invariant($"{(part.Spec.Stepped ? "layers with their steps" : "wall after sanding")}; ")
        + (part.MeshSensitivity is { } change
            ? FormattableString.Invariant(
                $"a coarser net gives a thinnest wall {-change / (1 + change) * 100:+0;-0;0} % different. ") : "")
        + (part.MaterialSensitivity is { } material && part.Modulus.Low < part.Modulus.High
            ? FormattableString.Invariant(
                $"The hot sheet may be as soft as {part.Modulus.Low:0.##} MPa or as stiff as {part.Modulus.High:0.##} MPa, ")
                + FormattableString.Invariant(
                    $"which makes the thinnest wall {material.Low:0.##} to {material.High:0.##} times as thick. ") : "")
        + FormattableString.Invariant(
            $"The thinnest place is one that a ball of {part.BallRadius:0.#} mm radius can touch: deeper in a sharp inside ")
            + "corner a wall has no minimum thickness. "
        + (part.PlugDepth is { } depth
            ? FormattableString.Invariant($"A plug first pushes the sheet down to {depth:0.#} mm below the rim. ") : "")
        + (part.Spec.Friction is { } f
            ? FormattableString.Invariant($"The model assumes {Sheet(part)} that slides with a friction of {f:0.##};")
            : $"The model assumes {Sheet(part)} that sticks where it touches;")
            + " real walls are within 5 to 15 % of such predictions, corners within 20 to 30 % (from memory, no source). "
            + "Measure the first part.";

    private static string Sheet(FormedPart part) => (part.Spec.EdgeStiffness > 1, part.Spec.Sag > 0) switch
    {
        (false, false) => "an evenly hot sheet",
        (true, false) => "a sheet, colder at the frame,",
        (false, true) => "an evenly hot sheet, sagged as given,",
        (true, true) => "a sheet, sagged as given and colder at the frame,",
    };
}
