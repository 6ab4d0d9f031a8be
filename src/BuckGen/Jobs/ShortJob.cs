using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Design.Parts;
using BuckGen.Design.Specs;
using BuckGen.Design.Trimming;
using BuckGen.Design.Venting;
using BuckGen.Intake.Outlines;
using BuckGen.Settings;

namespace BuckGen.Jobs;

/// <summary>A table of a short job file, and what is set in it; a value of null is the setting's own.</summary>
internal sealed record ShortTable(SettingTable Table, params ImmutableArray<(Setting Setting, string? Value)> Set);

/// <summary>What a kind of work needs, and nothing else. The figures are a start: common practice, no source.</summary>
internal static class ShortJob
{
    /// <summary>The tables of a job for a kind of work, in the order of the long template.</summary>
    public static IEnumerable<ShortTable> Tables(JobWork work) => work switch
    {
        JobWork.Box => Job("My box", "mdf-12", "1.5mm", OfPart("male", "48mm"), new ShortTable(JigSettings.Table)),
        JobWork.Tray => Job("My tray", "mdf-12", "2mm", OfPart("female", "25mm"), new ShortTable(JigSettings.Table)),
        JobWork.Panel => Job("My panel", "mdf-6", "1.5mm", OfBuck(),
            new ShortTable(PanelSettings.Table, (PanelSettings.Stock, "\"mdf-6\""))),
        _ => Job("My sign", "mdf-6", "1.5mm", OfBuck()),
    };

    private static IEnumerable<ShortTable> Job(string title, string board, string gauge,
        IEnumerable<ShortTable> shape, params IEnumerable<ShortTable> further) =>
    [
        new(JobSettings.Root, (JobSettings.Title, $"\"{title}\"")),
        new(OutlineSettings.Table, (OutlineSettings.File, null)),
        .. shape,
        new(StockSettings.Table, (StockSettings.Catalog, $"\"{board}\""), (StockSettings.Thickness, Thickness(board)),
            (StockSettings.Board, null)),
        new(BaseSettings.Table, (BaseSettings.Stock, $"\"{board}\"")),
        new(VentSettings.Table, (VentSettings.Pattern, null)),
        new(SheetSettings.Table, (SheetSettings.Plastic, null), (SheetSettings.Gauge, $"\"{gauge}\"")),
        .. further,
        new(CuttingSettings.Table, (CuttingSettings.Machine, null), (CuttingSettings.Kerf, "\"0.2mm\"")),
    ];

    /// <summary>A buck whose face is the drawing: what people look at.</summary>
    private static IEnumerable<ShortTable> OfBuck() =>
    [
        new(BuckSettings.Table, (StackSettings.Depth, "\"12mm\""), (StackSettings.Draft, null), (StackSettings.Kind, null),
            (StackSettings.OutlineAt, null)),
    ];

    /// <summary>A finished part whose inside is ordered.</summary>
    private static IEnumerable<ShortTable> OfPart(string kind, string depth) =>
    [
        new(BuckSettings.Table, (StackSettings.Draft, null), (StackSettings.Kind, $"\"{kind}\"")),
        new(PartSettings.Table, (PartSettings.Depth, $"\"{depth}\""), (PartSettings.Side, null), (PartSettings.At, null)),
    ];

    /// <summary>The nominal thickness, to be replaced by the measured one.</summary>
    private static string Thickness(string board) => $"\"{board[(board.LastIndexOf('-') + 1)..]}mm\"";
}
