using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Cutting.Seams;
using BuckGen.Design.Bucks;
using BuckGen.Design.Parts;
using BuckGen.Design.Specs;
using BuckGen.Geometry;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Outlines;
using BuckGen.Plugins;
using BuckGen.Settings;

namespace BuckGen.Jobs;

/// <summary>Reads the tables of a job file that make the stack: outline, buck, stock, base, dowels and cutting.</summary>
internal static class BuckTables
{
    /// <summary>How the outline is read.</summary>
    public static OutlineOptions Reading(JobTable outline, JobTable buck, Extensions extensions)
    {
        var tolerance =
            new Tolerance(buck.Number(OutlineSettings.Chord), outline.Number(OutlineSettings.Join), Tolerance.Default.Coincident);
        var reading = new OutlineOptions(tolerance, outline.Text(OutlineSettings.Units),
            [.. outline.Texts(OutlineSettings.Layers)], outline.Number(OutlineSettings.MinLoopWidth))
        {
            Formats = extensions.OutlineFormats,
            Background = outline.Choice(OutlineSettings.Background),
            Unite = outline.Flag(OutlineSettings.Unite),
            Width = outline.Optional(OutlineSettings.Width),
            Height = outline.Optional(OutlineSettings.Height),
            Scale = outline.Optional(OutlineSettings.Scale),
        };
        outline.Check(OutlineSettings.Scale, reading.Validate);
        return reading;
    }

    /// <summary>A table [[stock]].</summary>
    public static Stock Stock(JobTable table, Catalog catalog)
    {
        var id = table.Text(StockSettings.Catalog);
        var known = id is null ? null : catalog.FindStock(id);
        if (id is not null && known is null)
            table.Fault(StockSettings.Catalog, $"the stock \"{id}\" is not in the catalog; see 'buckgen catalog'");
        var thickness = id is null ? table.Required(StockSettings.Thickness) : table.Optional(StockSettings.Thickness);
        var thick = thickness ?? known?.Thickness ?? StockSettings.Thickness.Example;
        var board = table.Size(StockSettings.Board);
        var name = table.Text(StockSettings.Name) ?? known?.Name ?? FormattableString.Invariant($"{thick:0.###} mm");
        return new(name, thick, board?.Width ?? Design.Bucks.Stock.UsualWidth, board?.Height ?? Design.Bucks.Stock.UsualHeight)
        {
            SizeIsAssumed = board is null,
            Material = known,
            ThicknessIsAssumed = thickness is null,
            Price = table.Optional(StockSettings.Price) ?? known?.Price,
            CutFeed = table.Optional(StockSettings.CutFeed)
                ?? known?.CutFeed,
        };
    }

    /// <summary>The boards that "stock" of [buck] lists, each by its thickness or by its id in the catalog.</summary>
    public static IEnumerable<Stock> Stocks(JobTable buck, Catalog catalog)
    {
        foreach (var text in buck.OneOrMore(StackSettings.Stock))
            if (Design.Bucks.Stock.FromText(text, catalog) is { } known) yield return known;
            else
                buck.Fault(StackSettings.Stock,
                    $"the stock \"{text}\" is neither a thickness, such as \"12mm\", nor in the catalog; see 'buckgen catalog'");
    }

    /// <summary>The tables [[side]]; they decide in place of the draft of [buck].</summary>
    public static ImmutableArray<SideStretch> Side(JobTable buck, IReadOnlyList<JobTable> tables)
    {
        if (tables.Count == 0) return [];
        if (buck.Has(StackSettings.Draft))
            buck.Fault(StackSettings.Draft, "\"draft\" is that of the whole side, but [[side]] gives its stretches; leave one of "
                + "them out");
        ImmutableArray<SideStretch> side =
        [
            .. tables.Select(t => new SideStretch
            {
                Height = t.Optional(SideSettings.Height),
                Draft = t.Optional(SideSettings.Draft),
                Inset = t.Optional(SideSettings.Inset),
            }),
        ];
        // A value that is refused already makes no second mistake.
        Setting[] settings = [SideSettings.Height, SideSettings.Draft, SideSettings.Inset];
        if (tables.Zip(side).Any(t => settings.Count(t.First.Has) > t.Second.Given)) return [];
        for (var i = 0; i < side.Length; i++) tables[i].Check(SideSettings.Height, () => side[i].Require(i + 1));
        tables[0].Check(SideSettings.Height, () => SideStretch.RequireTogether(side));
        return side;
    }

    /// <summary>The tables [buck], [base] and [dowels].</summary>
    public static BuckSpec Buck(
        JobTable buck, ImmutableArray<SideStretch> side, JobTable? part, JobTable? plate, JobTable dowels,
        JobBoards boards, Tolerance tolerance) => new()
        {
            Kind = buck.Choice(StackSettings.Kind),
            Depth = Depth(buck, part),
            Part = FinishTables.Part(part),
            Draft = buck.Number(StackSettings.Draft),
            Side = side,
            EdgeRadius = buck.Number(SideSettings.EdgeRadius),
            OutlineAt = buck.Choice(StackSettings.OutlineAt),
            Corners = new(buck.Choice(StackSettings.Corners), buck.Number(StackSettings.MitreLimit)),
            Steps = buck.Choice(StackSettings.Steps),
            Shrinkage = buck.Optional(BuckSettings.Shrinkage),
            DepthTolerance = buck.Number(StackSettings.DepthTolerance),
            BlockMargin = buck.Number(StackSettings.BlockMargin),
            LetterHeight = buck.Number(StackSettings.LetterHeight),
            Stock = boards.Own,
            Base = plate is null ? null : Base(plate, boards),
            Dowels = new(
                dowels.Number(DowelSettings.Diameter), dowels.Number(DowelSettings.Fit), dowels.Number(DowelSettings.Wall))
            {
                ThroughFace = dowels.Flag(DowelSettings.ThroughFace),
            },
            Tolerance = tolerance,
        };

    /// <summary>The depth of the buck, or of the part where one is ordered; then [part] decides what [buck] would.</summary>
    private static double Depth(JobTable buck, JobTable? part)
    {
        if (part is null) return buck.Required(StackSettings.Depth);
        foreach (var setting in (Setting[])[StackSettings.Depth, StackSettings.OutlineAt])
            if (buck.Has(setting))
                buck.Fault(setting,
                    $"\"{setting.Key}\" is that of the buck, but [part] orders the finished part; leave one of them out");
        return part.Required(PartSettings.Depth);
    }

    /// <summary>The tables [cutting] and [seams].</summary>
    public static CuttingSpec Cutting(JobTable table, JobTable? seams) => new(
        table.Choice(CuttingSettings.Machine), Kerf(table), table.Number(CuttingSettings.Spacing),
        table.Number(CuttingSettings.EdgeMargin))
    {
        Bed = table.Size(CuttingSettings.Bed),
        Seams = seams is null ? null : new()
        {
            Kind = seams.Choice(SeamSettings.Kind),
            Key = seams.Number(SeamSettings.Key),
            Clearance = seams.Number(SeamSettings.Clearance),
            Distance = seams.Number(SeamSettings.Distance),
            Bit = seams.Number(SeamSettings.Bit),
        },
    };

    private static BasePlate Base(JobTable table, JobBoards boards) => new(
        table.Board(BaseSettings.Stock, boards), table.Number(BaseSettings.Margin),
        table.Has(BaseSettings.Under) ? table.Board(BaseSettings.Under, boards) : null);

    /// <summary>The width of the cut, or the hole and the piece of a test square.</summary>
    private static double Kerf(JobTable table)
    {
        var kerf = CuttingSettings.Kerf.Value;
        if (!table.IsList(CuttingSettings.Kerf)) return table.Number(CuttingSettings.Kerf);
        if (table.Pair(CuttingSettings.Kerf) is [var hole, var piece])
            table.Check(CuttingSettings.Kerf, () =>
            {
                var measured = CuttingSpec.KerfOfTest(hole, piece);
                CuttingSettings.Kerf.Require(measured);
                kerf = measured;
            });
        return kerf;
    }
}
