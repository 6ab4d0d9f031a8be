using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Intake.Catalogs;
using BuckGen.Physics.Heat;

namespace BuckGen.Output.Reports.Card;

/// <summary>Temperatures of the plastic, and times from a model of how the sheet takes up heat.</summary>
internal sealed class StartValues : IReportSection
{
    /// <summary>Temperature of workshop, air and sheet, °C (common practice, no source).</summary>
    private const double Room = 20;

    /// <summary>Film coefficient of still air, W/(m²·K) (Incropera and DeWitt, from memory).</summary>
    private const double StillAir = 8;

    /// <summary>The heater's emissivity (common practice, no source).</summary>
    private const double HeaterEmissivity = 0.9;

    private const double SheetEmissivity = 0.9;
    public string Title => "Start values";

    public IEnumerable<string> Lines(CutPlan plan) => plan.Design.Spec.Sheet?.Plastic is { } plastic
        ? Compute(plan.Design, plastic)
        : ["Name the plastic ([sheet] plastic = \"petg\") for temperatures and times."];

    private static IEnumerable<string> Compute(BuckDesign design, CatalogPlastic plastic)
    {
        if (plastic is { FormingLower: { } lower, FormingUpper: { } upper })
        {
            var range = plastic.FormingNormal is { } normal
                ? CardText.Between(normal.Low, normal.High) : CardText.Between(lower, upper);
            yield return CardText.Line($"Forming     {range} C; never below {lower:0}, never above {upper:0} C");
        }

        if (plastic.SetTemperature is { } set) yield return CardText.Line($"Take off    below {set:0} C");
        if (plastic.Drying is { } drying) yield return $"Dry first   {drying}";
        var (heating, seconds) = Heating(design, plastic);
        foreach (var line in heating) yield return line;
        foreach (var line in Cooling(design, plastic, seconds)) yield return line;
        var shrinkage = design.Spec.ShrinkageOfPlastic ?? plastic.Shrinkage;
        yield return CardText.Line($"Shrinkage   {CardText.Between(shrinkage.Low, shrinkage.High)} % ")
            + CardText.Line(
                $"{(design.Spec.Kind == BuckKind.Male ? "over a male buck" : "in a cavity")}; ")
                + CardText.Line($"{design.Sizing.Shrinkage:0.##} % allowed for");
    }

    /// <summary>
    /// How long the sheet takes until its coldest place is at the lower limit, in words and in s; null when it never is.
    /// </summary>
    private static (string[] Lines, double? Seconds) Heating(BuckDesign design, CatalogPlastic plastic)
    {
        var former = design.Spec.Former;
        var wanted = plastic.FormingNormal?.Low ?? plastic.FormingLower;
        if (wanted is not > Room + 1 || wanted is not { } target || plastic.Heat(Room, target) is not { } material)
            return ([], null);
        var emissivity = SheetFace.EffectiveEmissivity(HeaterEmissivity, plastic.Emissivity?.Middle ?? SheetEmissivity);
        var hot = SheetFace.Heated(former.Heater, emissivity, StillAir, Room);
        var result =
            SheetHeating.Until(new(design.Blank!.Gauge, material), hot, former.HeaterBelow ? hot
                : SheetFace.InAir(StillAir, Room), target, start: Room);
        var hottest = Math.Max(result.End.First, result.End.Second);
        if (result.Seconds is not { } seconds)
            return ([CardText.Line($"Heating     a heater at {former.Heater:0} C does not bring this sheet to {target:0} C")],
                null);
        return
        ([
            CardText.Line($"Heating     about {Rounded(seconds)} s under ")
                + CardText.Line(
                    $"{(former.HeaterBelow ? "heaters on both sides" : "a heater on one side")} at {former.Heater:0} C,"),
            CardText.Line($"            until the cold side is {target:0} C and the hot side {hottest:0} C"),
            .. hottest > plastic.FormingUpper ? ["            (above the upper limit: use a cooler heater, or heat both sides)"]
                : Array.Empty<string>(),
        ], seconds);
    }

    /// <summary>How long the first and the later parts take until all of the sheet is as cold as the take-off.</summary>
    private static IEnumerable<string> Cooling(BuckDesign design, CatalogPlastic plastic, double? heating)
    {
        if (heating is not { } seconds || CoolingTimes.Find(design, plastic, seconds, Room) is not { } times) yield break;
        yield return CardText.Line(
            $"Cooling     first part {Range(times.First)} on the buck warmed to {CoolingTimes.WarmedTo:0} C;");
        yield return times is { Later: { } later, BuckFace: { } face }
            ? CardText.Line($"            later parts {Range(later)}, when the buck's face is at ")
                + CardText.Line($"{CardText.Between(Math.Round(face.Low), Math.Round(face.High))} C as the sheet comes down")
            : "            later parts stay too warm: let the buck cool in between, or use a fan";
        yield return "            (from good to poor contact and boards, in still air; a fan shortens it)";
    }

    /// <summary>From the lower to the upper time, no more exact than it is worth: in minutes from ten minutes.</summary>
    private static string Range(FigureRange seconds)
    {
        var (unit, step) = seconds.High >= 600 ? (60, 1) : (1, seconds.High < 20 ? 1 : seconds.High < 120 ? 5 : 10);
        var (low, high) = (Math.Floor(seconds.Low / unit / step) * step, Math.Ceiling(seconds.High / unit / step) * step);
        return CardText.Line($"{Math.Max(low, step):0} to {high:0} {(unit == 60 ? "min" : "s")}");
    }

    /// <summary>An estimate with no more digits than it is worth: to 5 s below two minutes, to 10 s above.</summary>
    private static string Rounded(double seconds) =>
        CardText.Line($"{RoundedTo(seconds < 20 ? 1 : seconds < 120 ? 5 : 10, seconds):0}");

    private static double RoundedTo(double step, double value) => Math.Round(value / step) * step;
}
