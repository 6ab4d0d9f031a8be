using BuckGen.Settings;

namespace BuckGen.Design.Checks;

/// <summary>The limits that a design is checked against.</summary>
internal static class CheckSettings
{
    private const string Former = "design guidelines of a former";

    public static readonly NumberSetting
        WebGap = Ratio("web-gap", "minimum gap against webs", 1, 0, 10, "times the depth",
            "minimum gap between raised parts, times the depth", "guides of resin suppliers (from memory)"),
        MinNeck = Length("min-neck", "minimum neck", 3, 100, "minimum width of the wood"),
        MinDraftMale =
            Draft("min-draft-male", "minimum draft of a male buck", 3,
                "if omitted: the plastic's own in the catalog, or 3 degrees"),
        MinDraftFemale = Draft("min-draft-female", "minimum draft of a cavity", 2, "if omitted: the plastic's own, or 2 degrees"),
        MaxDepthMale = Depth("max-depth-male", "maximum height of a buck over its width", 1,
            "maximum height over width; if omitted: the plastic's own, or 1",
            "Throne, Technology of Thermoforming, 1996 (from memory)"),
        MaxDepthFemale = Depth("max-depth-female", "maximum depth of a cavity over its width", 0.75,
            "maximum depth of a cavity over its width; if omitted: the plastic's own, or 0.75",
            "a former's advice: 75 per cent of the smaller dimension"),
        MaxDepthPlugged =
            Ratio("max-depth-plugged", "maximum depth with a plug over the width", 1.5, 0.01, 10, "times the width",
                "the same with a plug",
            "a sheet former's guide to wall thickness: a plug serves from 1 to 1.5"),
        MaxDraw = Ratio("max-draw", "maximum draw ratio", 3, 1, 20, "times the area", "maximum formed area over flat area"),
        MaxThinning =
            Ratio("max-thinning", "maximum thinning", 6, 1, 100, "times as thin",
                "maximum ratio of gauge to thinnest predicted wall"),
        MinMeanWall = Length("min-mean-wall", "minimum mean wall", 0.2, 25, "a thinner part does not keep its shape"),
        MinCorner = Ratio("min-corner", "minimum radius of a corner", 1, 0, 20, "times the gauge",
            "minimum radius of a corner, times the gauge", Former),
        MaxStep = Ratio("max-step", "maximum step between layers", 0.5, 0, 20, "times the formed thickness",
            "maximum step between layers, times the formed thickness"),
        GrainGauge =
            Length("grain-gauge", "gauge up to which grain shows", 1, 25, "gauge up to which the grain of plywood shows"),
        MinFrameGap =
            Ratio("min-frame-gap", "minimum gap to the frame", 0.5, 0, 10, "times the depth",
                "minimum gap from a male buck to the frame, times its depth"),
        MinGlueLand = Length("min-glue-land", "minimum glue land", 5, 100, "minimum overlap of flange and panel"),
        MinPanelBridge = Ratio("min-panel-bridge", "minimum bridge of a panel", 1, 0, 20, "times the thickness",
            "minimum width of the wood between openings of the panel, times its thickness");

    public static readonly TextSetting Silence = new("silence", "[[\"corner-sharp\", \"the customer wants it so\"]]",
        "findings you accept: listed as notes, with the reason");

    public static readonly SettingTable Table = new("checks", "Limits of the design checks, and findings you accept",
        [
            WebGap, MinNeck, MinDraftMale, MinDraftFemale, MaxDepthMale, MaxDepthFemale, MaxDepthPlugged, MaxDraw, MaxThinning,
            MinMeanWall,
            MinCorner, MaxStep, GrainGauge, MinFrameGap, MinGlueLand, MinPanelBridge, Silence,
        ]);

    private static NumberSetting Length(string key, string name, double value, double max, string meaning) =>
        new(key, name, value, 0, max, meaning) { Source = Setting.Practice };

    private static NumberSetting Ratio(
        string key, string name, double? value, double min, double max, string unit, string meaning,
        string source = Setting.Practice) =>
        new(key, name, value, min, max, meaning) { Kind = QuantityKind.Number, Unit = unit, Source = source };

    private static NumberSetting Draft(string key, string name, double usual, string meaning) =>
        new(key, name, null, 0, 45, meaning) { Kind = QuantityKind.Angle, Example = usual, Source = Former };

    private static NumberSetting Depth(string key, string name, double usual, string meaning, string source) =>
        Ratio(key, name, null, 0.01, 10, "times the width", meaning, source) with { Example = usual };
}
