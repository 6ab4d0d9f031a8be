using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using BuckGen.Catalogs;
using BuckGen.Designs;
using BuckGen.Physics.Heat;

namespace BuckGen.Reports;

/// <summary>
/// A page for the bench: start values for heating, forming and cooling, the order of work, cautions, and lines to write down what
/// worked, because the shop will repeat the order.
/// </summary>
public static class ProcessCard
{
    /// <summary>Temperature of workshop, air and sheet, °C (common practice, no source).</summary>
    private const double Room = 20;

    /// <summary>Film coefficient of still air, W/(m²·K) (Incropera and DeWitt, from memory).</summary>
    private const double StillAir = 8;

    /// <summary>Conductance between formed sheet and buck, W/(m²·K), and the buck's face when it is warm, °C (common practice, no source).</summary>
    private const double Contact = 200, WarmBuck = 45;

    /// <summary>The heater's emissivity (common practice, no source).</summary>
    private const double HeaterEmissivity = 0.9;

    private const double SheetEmissivity = 0.9;
    private const int LineLength = 96;

    /// <summary>The card as plain text in UTF-8; null when the plastic sheet is not known.</summary>
    /// <param name="design">The design.</param>
    /// <param name="title">What the job is called; empty for the outline's name.</param>
    public static ImmutableArray<byte>? Write(BuckDesign design, string title)
    {
        ArgumentNullException.ThrowIfNull(design);
        ArgumentNullException.ThrowIfNull(title);
        if (design is not { Blank: { } blank, Spec.Sheet: { } sheet }) return null;
        var plastic = sheet.Plastic;
        IEnumerable<string> lines =
        [
            "PROCESS CARD", title.Length > 0 ? title : design.Outline.Name, "",
            Text($"Sheet       {plastic?.Name ?? "plastic not named"}, {blank.Gauge:0.##} mm; blank {blank.Width:0} x {blank.Height:0} mm"),
            Text($"Frame       {blank.Opening.Width:0} x {blank.Opening.Height:0} mm clear, {blank.Gap:0} mm from the buck"),
            Text($"Wall        {blank.MeanThickness:0.##} mm on average (area method), thinner in corners"),
            Text($"Expect      formed sizes within {design.Sizing.FormedTolerance:0.#} mm, edges trimmed by hand within {design.Sizing.TrimmedTolerance:0.##} mm either way"),
            .. plastic is null
                ? ["", "Name the plastic ([sheet] plastic = \"petg\") for temperatures and times."]
                : Temperatures(design, plastic),
            "", "ORDER OF WORK",
            .. Steps(design, plastic).Select((s, i) => Text($"{i + 1,2}. {s}")),
            "", "TAKE CARE",
            "Hot heater and sheet: gloves, distance, nothing that burns nearby. Fumes: exhaust or open air, and",
            "never hotter than the upper limit. Knives, saws and routers: guards, and the part held down.",
            "A wooden buck is no food-safe tool. The supplier's data sheet, local rules and licensed practice",
            "come before this card; its values are starts, not settings.",
            .. plastic?.Caution is { } caution ? Wrapped(caution) : [],
            "", "WHAT WORKED",
            .. ((string[])["Date", "Heater setting", "Heating time, s", "Sag before forming, mm", "Vacuum, and held for, s", "Time to cool, s", "Thinnest wall, mm", "Notes"])
                .Select(l => $"{l,-26}{new string('_', 56)}"),
            .. plastic is null ? [] : (string[])["", "SOURCES", .. Wrapped(Sources(plastic)),
                .. Wrapped("Times: heat conduction through the sheet, heater and film coefficients by common practice (no source); see the values above.")],
        ];
        return [.. Encoding.UTF8.GetBytes(string.Join('\n', lines) + "\n")];
    }

    private static IEnumerable<string> Temperatures(BuckDesign design, CatalogPlastic plastic)
    {
        yield return "";
        yield return "START VALUES";
        if (plastic is { FormingLower: { } lower, FormingUpper: { } upper })
            yield return Text($"Forming     {(plastic.FormingNormal is { } normal ? Between(normal.Low, normal.High) : Between(lower, upper))} C; never below {lower:0}, never above {upper:0} C");
        if (plastic.SetTemperature is { } set) yield return Text($"Take off    below {set:0} C");
        if (plastic.Drying is { } drying) yield return $"Dry first   {drying}";
        if (Heating(design, plastic) is { } heat) yield return heat;
        if (Cooling(design, plastic) is { } cool) yield return cool;
        var shrinkage = design.Spec.ShrinkageOfPlastic ?? plastic.Shrinkage;
        yield return Text($"Shrinkage   {Between(shrinkage.Low, shrinkage.High)} % {(design.Spec.Kind == Bucks.BuckKind.Male ? "over a male buck" : "in a cavity")}; {design.Sizing.Shrinkage:0.##} % allowed for");
    }

    /// <summary>How long the sheet takes until its coldest place is at the lower limit.</summary>
    private static string? Heating(BuckDesign design, CatalogPlastic plastic)
    {
        var former = design.Spec.Former;
        var wanted = plastic.FormingNormal?.Low ?? plastic.FormingLower;
        if (wanted is not > Room + 1 || wanted is not { } target || plastic.Heat(Room, target) is not { } material) return null;
        var emissivity = SheetFace.EffectiveEmissivity(HeaterEmissivity, plastic.Emissivity?.Middle ?? SheetEmissivity);
        var hot = SheetFace.Heated(former.Heater, emissivity, StillAir, Room);
        var result = SheetHeating.Until(new(design.Blank!.Gauge, material), hot, former.HeaterBelow ? hot : SheetFace.InAir(StillAir, Room), target, start: Room);
        var hottest = Math.Max(result.End.First, result.End.Second);
        return result.Seconds is { } seconds
            ? Text($"Heating     about {Rounded(seconds)} s under {(former.HeaterBelow ? "heaters on both sides" : "a heater on one side")} at {former.Heater:0} C,\n            until the cold side is {target:0} C and the hot side {hottest:0} C")
                + (hottest > plastic.FormingUpper ? "\n            (above the upper limit: use a cooler heater, or heat both sides)" : "")
            : Text($"Heating     a heater at {former.Heater:0} C does not bring this sheet to {target:0} C");
    }

    /// <summary>How long the formed sheet takes until all of it is below the set temperature.</summary>
    private static string? Cooling(BuckDesign design, CatalogPlastic plastic)
    {
        if (plastic is not { SetTemperature: { } set, FormingNormal: { } normal } || normal.Middle <= set + 1 || plastic.Heat(set, normal.Middle) is not { } material) return null;
        var result = SheetCooling.Until(new(design.Blank!.Gauge, material), SheetFace.OnBuck(Contact, WarmBuck), SheetFace.InAir(StillAir, Room), normal.Middle, set);
        return result.Seconds is { } seconds
            ? Text($"Cooling     about {Rounded(seconds)} s on a buck at {WarmBuck:0} C; longer once the wood is warm, shorter with a fan")
            : null;
    }

    private static IEnumerable<string> Steps(BuckDesign design, CatalogPlastic? plastic)
    {
        if (plastic?.Drying is { } drying && drying.StartsWith("Needed", StringComparison.Ordinal)) yield return "Dry the sheet.";
        yield return "Warm the buck; check that vents are open and the steps sanded.";
        yield return "Clamp the blank, heat it until it sags evenly all over.";
        yield return design.Spec.Kind == Bucks.BuckKind.Male
            ? "Lift the buck into the sheet in one go, then draw the vacuum at once."
            : "Lower the sheet to seal all round the cavity, then draw the vacuum at once.";
        yield return "Hold the vacuum until the sheet is stiff, then let it cool to the take-off temperature.";
        yield return "Blow air in through the port and lift the part off straight.";
        if (design.Jig is { } jig) yield return Text($"{(jig.Core.IsEmpty ? "Put" : jig.Bed is null ? "Put the core inside and" : "Set the part over the core on its bed, put")} the ring round {(jig.Core.IsEmpty || jig.Bed is null ? "the part" : "it")}; cut flat on the ring, {jig.Height:0.##} mm above the flange.");
        if (design.Flange is not null) yield return "Hang the part in the nest, clamp the template on it and rout the flange to width.";
        if (design.Panel is { } panel) yield return Text($"Try the part in the panel ({panel.Fit:0.##} mm of room round it) before gluing.");
        yield return "Measure the thinnest wall and write down below what worked.";
    }

    private static string Sources(CatalogPlastic plastic) => string.Join("; ", ((string[])["forming-lower", "forming-normal", "forming-upper", "set-temperature", "shrinkage", "conductivity", "heat-capacity", "density"])
        .Select(plastic.Find).OfType<CatalogFigure>().SelectMany(f => f.Sources).Distinct()) + ".";

    private static ImmutableArray<string> Wrapped(string text) => Pictures.TextLines.Wrap(text, LineLength);

    private static string Between(double low, double high) => low == high ? Text($"{low:0.##}") : Text($"{low:0.##} to {high:0.##}");

    /// <summary>An estimate with no more digits than it is worth: to 5 s below two minutes, to 10 s above.</summary>
    private static string Rounded(double seconds) => Text($"{(seconds < 20 ? Math.Round(seconds) : seconds < 120 ? Math.Round(seconds / 5) * 5 : Math.Round(seconds / 10) * 10):0}");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
