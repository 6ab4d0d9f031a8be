using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Design.Prediction;
using BuckGen.Design.Trimming;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Outlines;
using BuckGen.Settings;

namespace BuckGen.Jobs;

/// <summary>Reads the tables of a job file that follow the buck: the plastic sheet, the former, jigs and panel.</summary>
internal static class FinishTables
{
    /// <summary>The table [sheet]; null when the job has none.</summary>
    public static SheetSpec? Sheet(JobTable? table, Catalog catalog)
    {
        if (table is null) return null;
        var defaults = new SheetSpec();
        var plastic = table.Text("plastic", "") is { Length: > 0 } word
            ? catalog.FindPlastic(word) ?? throw table.Fault(table.LineOf("plastic"), $"the plastic \"{word}\" is not in the catalog; see 'buckgen catalog'")
            : null;
        return new()
        {
            Plastic = plastic,
            Gauge = table.Length("gauge", defaults.Gauge),
            PricePerSquareMetre = table.OptionalNumber("price") ?? plastic?.Price,
            MinWall = table.OptionalLength("min-wall"),
            Sizes = [.. table.LengthLists("sizes", 2, "[[\"1220mm\", \"610mm\"]]").Select(s => new RectangleSize(s[0], s[1]))],
        };
    }

    /// <summary>The table [former].</summary>
    public static FormerSpec Former(JobTable table)
    {
        var defaults = new FormerSpec();
        return new()
        {
            Opening = table.Size("frame") is { } frame ? new(frame.Width, frame.Height) : null,
            Travel = table.OptionalLength("travel"),
            Gap = table.OptionalLength("gap"),
            PlugGap = table.OptionalLength("plug-gap"),
            Heater = table.Number("heater", defaults.Heater),
            HeaterBelow = table.Flag("heater-below", defaults.HeaterBelow),
            Grip = table.Length("grip", defaults.Grip),
            Lip = table.Length("lip", defaults.Lip),
        };
    }

    /// <summary>The table [forming], and whether the wall is predicted.</summary>
    public static (FormingSpec Spec, bool Predict) Forming(JobTable table)
    {
        var defaults = new FormingSpec();
        var spec = new FormingSpec
        {
            Detail = table.Choice("detail", defaults.Detail),
            Stepped = table.Flag("stepped", defaults.Stepped),
            CornerBall = table.Length("corner-ball", defaults.CornerBall),
            Modulus = table.Number("modulus", defaults.Modulus),
            Friction = table.OptionalNumber("friction"),
            Stiffening = table.Number("stiffening", defaults.Stiffening),
        };
        try
        {
            spec.Validate();
        }
        catch (SpecException refused)
        {
            throw table.Fault(table.Line, refused.Message.TrimEnd('.'));
        }

        return (spec, table.Flag("predict", true));
    }

    /// <summary>The table [jig]; null when the job has none.</summary>
    public static JigSpec? Jig(JobTable? table)
    {
        if (table is null) return null;
        var defaults = new JigSpec();
        return new()
        {
            TrimHeight = table.Length("trim-height", defaults.TrimHeight),
            Clearance = table.Length("clearance", defaults.Clearance),
            Land = table.Length("land", defaults.Land),
            FlangeRoom = table.Length("flange-room", defaults.FlangeRoom),
            Core = table.Flag("core", defaults.Core),
            Bed = table.Flag("bed", defaults.Bed),
            BladeRoom = table.Length("blade-room", defaults.BladeRoom),
        };
    }

    /// <summary>The table [flange]; null when the job has none.</summary>
    public static FlangeSpec? Flange(JobTable? table, ImmutableArray<Stock> stock)
    {
        if (table is null) return null;
        var defaults = new FlangeSpec(stock[0]);
        return new(table.Stock("stock", stock))
        {
            Width = table.Length("width", defaults.Width),
            Bushing = table.Length("bushing", defaults.Bushing),
            Bit = table.Length("bit", defaults.Bit),
            Land = table.Length("land", defaults.Land),
            Screw = table.Length("screw", defaults.Screw),
        };
    }

    /// <summary>The drawing that the table [panel] names; null when it names none.</summary>
    public static PanelDrawing? PanelDrawing(JobTable? table, OutlineOptions reading)
    {
        var file = table?.Text("outline", "");
        var layers = table?.Texts("outline-layers") ?? [];
        if (string.IsNullOrEmpty(file))
            return layers.Length == 0 ? null : throw table!.Fault(table.LineOf("outline-layers"), "\"outline-layers\" needs \"outline\", the file they are in");
        return new(file, reading with { Layers = [.. layers] });
    }

    /// <summary>The table [panel]; null when the job has none.</summary>
    public static PanelSpec? Panel(JobTable? table, ImmutableArray<Stock> stock)
    {
        if (table is null) return null;
        var defaults = new PanelSpec(stock[0]);
        return new(table.Stock("stock", stock))
        {
            Fit = table.OptionalLength("fit"),
            Plane = table.Length("plane", defaults.Plane),
            Edge = table.Choice("edge", defaults.Edge),
            Margin = table.Length("margin", defaults.Margin),
            CornerRadius = table.Length("corner-radius", defaults.CornerRadius),
            Bit = table.Length("bit", defaults.Bit),
            Flange = table.Length("flange", defaults.Flange),
        };
    }
}
