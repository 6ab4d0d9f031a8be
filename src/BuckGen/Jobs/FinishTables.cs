using BuckGen.Design.Forming;
using BuckGen.Design.Grouping;
using BuckGen.Design.Parts;
using BuckGen.Design.Prediction;
using BuckGen.Design.Trimming;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Outlines;
using BuckGen.Settings;

namespace BuckGen.Jobs;

/// <summary>Reads the tables of a job file that follow the buck: the plastic sheet, the former, jigs and panel.</summary>
internal static class FinishTables
{
    /// <summary>The table [part], but for its depth; null when the job has none.</summary>
    public static PartSpec? Part(JobTable? table) => table is null ? null : new()
    {
        Side = table.Choice(PartSettings.Side),
        At = table.Choice(PartSettings.At),
        Size = table.Size(PartSettings.Size),
        CutHeight = table.Optional(PartSettings.CutHeight),
    };

    /// <summary>The table [lid]; null when the job has none.</summary>
    public static LidSpec? Lid(JobTable? table) => table is null ? null : new()
    {
        Fit = table.Choice(LidSettings.Fit),
        Skirt = table.Number(LidSettings.Skirt),
        Clearance = table.Number(LidSettings.Clearance),
        Draft = table.Optional(LidSettings.Draft),
        Brim = table.Number(LidSettings.Brim),
    };

    /// <summary>The table [sheet]; null when the job has none.</summary>
    public static SheetSpec? Sheet(JobTable? table, Catalog catalog)
    {
        if (table is null) return null;
        var word = table.Text(SheetSettings.Plastic);
        var plastic = word is null ? null : catalog.FindPlastic(word);
        if (word is not null && plastic is null)
            table.Fault(SheetSettings.Plastic, $"the plastic \"{word}\" is not in the catalog; see 'buckgen catalog'");
        return new()
        {
            Plastic = plastic,
            Gauge = table.Number(SheetSettings.Gauge),
            PricePerSquareMetre = table.Optional(SheetSettings.Price) ?? plastic?.Price,
            MinWall = table.Optional(SheetSettings.MinWall),
            Sizes = table.Sizes(SheetSettings.Sizes),
        };
    }

    /// <summary>The table [former].</summary>
    public static FormerSpec Former(JobTable table) => new()
    {
        Opening = table.Size(FormerSettings.Frame),
        Platen = table.Size(FormerSettings.Platen),
        Travel = table.Optional(FormerSettings.Travel),
        Gap = table.Optional(FormerSettings.Gap),
        BaseGap = table.Number(FormerSettings.BaseGap),
        PlugGap = table.Optional(FormerSettings.PlugGap),
        PlugDepth = table.Optional(FormerSettings.PlugDepth),
        Heater = table.Number(FormerSettings.Heater),
        HeaterBelow = table.Flag(FormerSettings.HeaterBelow),
        Grip = table.Number(FormerSettings.Grip),
        Lip = table.Number(FormerSettings.Lip),
    };

    /// <summary>The table [forming], and whether the wall is predicted.</summary>
    public static (FormingSpec Spec, bool Predict) Forming(JobTable table)
    {
        var spec = new FormingSpec
        {
            Detail = table.Choice(FormingSettings.Detail),
            Stepped = table.Flag(FormingSettings.Stepped),
            CornerBall = table.Number(FormingSettings.CornerBall),
            Modulus = table.Optional(FormingSettings.Modulus),
            Friction = table.Optional(FormingSettings.Friction),
            Stiffening = table.Number(FormingSettings.Stiffening),
            Sag = table.Number(FormingSettings.Sag),
            EdgeStiffness = table.Number(FormingSettings.EdgeStiffness),
            EdgeWidth = table.Number(FormingSettings.EdgeWidth),
            CompareInputs = table.Flag(FormingSettings.CompareInputs),
        };
        return (spec, table.Flag(FormingSettings.Predict));
    }

    /// <summary>The table [jig]; null when the job has none.</summary>
    public static JigSpec? Jig(JobTable? table) => table is null ? null : new()
    {
        TrimHeight = table.Optional(JigSettings.TrimHeight),
        Clearance = table.Number(JigSettings.Clearance),
        Land = table.Number(JigSettings.Land),
        FlangeRoom = table.Number(JigSettings.FlangeRoom),
        Core = table.Flag(JigSettings.Core),
        Bed = table.Flag(JigSettings.Bed),
        BladeRoom = table.Number(JigSettings.BladeRoom),
    };

    /// <summary>The table [flange]; null when the job has none.</summary>
    public static FlangeSpec? Flange(JobTable? table, JobBoards boards)
    {
        if (table is null) return null;
        var spec = new FlangeSpec(table.Board(FlangeSettings.Stock, boards))
        {
            Width = table.Number(FlangeSettings.Width),
            Rim = table.Choice(FlangeSettings.Rim),
            Margin = table.Optional(FlangeSettings.Margin),
            CornerRadius = table.Number(FlangeSettings.CornerRadius),
            Bushing = table.Number(FlangeSettings.Bushing),
            Bit = table.Number(FlangeSettings.Bit),
            Land = table.Number(FlangeSettings.Land),
            Screw = table.Number(FlangeSettings.Screw),
        };
        table.Check(FlangeSettings.Bushing, spec.RequireBushing);
        return spec;
    }

    /// <summary>The drawing that the table [panel] or [flange] names; null when it names none.</summary>
    public static FurtherDrawing? Drawing(JobTable? table, TextSetting outline, TextSetting layersOf, OutlineOptions reading)
    {
        var file = table?.Text(outline);
        var layers = table?.Texts(layersOf) ?? [];
        if (file is not null) return new(file, reading with { Layers = [.. layers] });
        if (layers.Length > 0)
            table!.Fault(layersOf, "\"outline-layers\" needs \"outline\", the file they are in");
        return null;
    }

    /// <summary>The table [groups]; null when the job has none.</summary>
    public static GroupSpec? Groups(JobTable? table, JobBoards boards) =>
        table is null ? null : new(table.Board(GroupSettings.Stock, boards))
        {
            Fit = table.Optional(GroupSettings.Fit),
            Margin = table.Number(GroupSettings.Margin),
        };

    /// <summary>The table [panel]; null when the job has none.</summary>
    public static PanelSpec? Panel(JobTable? table, JobBoards boards) =>
        table is null ? null : new(table.Board(PanelSettings.Stock, boards))
        {
            Fit = table.Optional(PanelSettings.Fit),
            Plane = table.Number(PanelSettings.Plane),
            Edge = table.Choice(PanelSettings.Edge),
            Margin = table.Number(PanelSettings.Margin),
            CornerRadius = table.Number(PanelSettings.CornerRadius),
            Bit = table.Number(PanelSettings.Bit),
            Flange = table.Number(PanelSettings.Flange),
        };
}
