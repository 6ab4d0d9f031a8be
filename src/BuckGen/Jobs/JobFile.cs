using System.Collections.Immutable;
using BuckGen.Cutting.Boards;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Dxf;
using BuckGen.Geometry;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Outlines;
using BuckGen.Output.Pictures.Drawing;
using BuckGen.Plugins;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace BuckGen.Jobs;

/// <summary>
/// Reads a job file (TOML). Every key has a default but the outline, the depth and the stock; unknown keys are refused.
/// </summary>
public static class JobFile
{
    private static readonly string[] SingleTables = ["outline", "buck", "base", "dowels", "vents", "vacuum", "plenum", "drilling", "sheet", "former", "forming", "jig", "flange", "panel", "checks", "cutting", "rates", "output"];

    /// <summary>The catalog file that a job names, as written there; null when it names none.</summary>
    /// <param name="text">The job file's text.</param>
    /// <param name="name">The job file's name, for messages.</param>
    /// <exception cref="JobFileException">The file is not understood; the message names the line.</exception>
    public static string? CatalogName(string text, string name) => CatalogName(Root(Parse(text, name), name));

    /// <summary>The plug-ins that a job names, and how they are to be run.</summary>
    /// <param name="text">The job file's text.</param>
    /// <param name="name">The job file's name, for messages.</param>
    /// <exception cref="JobFileException">The file is not understood; the message names the line.</exception>
    public static JobPlugins Plugins(string text, string name) => JobPlugins.Read(Root(Parse(text, name), name));

    /// <summary>Reads a job.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="name">The file's name, for messages.</param>
    /// <param name="catalog">
    /// The catalog whose stocks may be named: what <see cref="CatalogFile"/> reads from the file of
    /// <see cref="CatalogName(string, string)"/>, or another; null for that of the extensions, when the job names no file.
    /// </param>
    /// <param name="extensions">What the job may name besides what comes with the library; null for nothing more.</param>
    /// <exception cref="JobFileException">The file is not understood; the message names the line.</exception>
    public static Job Read(string text, string name, Catalog? catalog = null, Extensions? extensions = null)
    {
        extensions ??= Extensions.BuiltIn;
        var document = Parse(text, name);
        var root = Root(document, name);
        if (CatalogName(root) is { } file && catalog is null)
            throw root.Fault(root.LineOf("catalog"), $"the job names the catalog \"{file}\", which was not read along with it; pass it to JobFile.Read");
        catalog ??= extensions.Catalog;
        // They were loaded before, to read the job with them.
        _ = JobPlugins.Read(root);
        var (tables, stock) = Tables(document, name);
        extensions = SettingTables.Apply(tables, extensions);
        JobTable Table(string key) => tables.GetValueOrDefault(key) ?? new JobTable(name, key, 1);

        var outline = Table("outline");
        var buck = Table("buck");
        var tolerance = new Tolerance(
            buck.Length("tolerance", Tolerance.Default.Chord), outline.Length("join", Tolerance.Default.Join), Tolerance.Default.Coincident);
        var stocks = stock.Select(s => ReadStock(s, catalog)).ToImmutableArray();
        var title = root.Text("title", Path.GetFileNameWithoutExtension(name));
        var reading = new OutlineOptions(tolerance, outline.Text("units", "") is { Length: > 0 } units ? units : null, [.. outline.Texts("layers")],
            outline.Length("min-loop-width", OutlineOptions.Default.MinLoopWidth)) { Formats = extensions.OutlineFormats };
        var (forming, predict) = FinishTables.Forming(Table("forming"));
        var job = new Job(
            title,
            outline.RequiredText("file"),
            reading,
            ReadBuck(buck, tables.GetValueOrDefault("base"), Table("dowels"), stocks, tolerance) with
            {
                Vents = VentTables.Vents(tables.GetValueOrDefault("vents"), Table("vacuum"), extensions.VentPatterns),
                Plenum = VentTables.Plenum(tables.GetValueOrDefault("plenum"), stocks),
                Sheet = FinishTables.Sheet(tables.GetValueOrDefault("sheet"), catalog),
                Former = FinishTables.Former(Table("former")),
                Prediction = predict && tables.ContainsKey("sheet") ? forming : null,
                Jig = FinishTables.Jig(tables.GetValueOrDefault("jig")),
                Flange = FinishTables.Flange(tables.GetValueOrDefault("flange"), stocks),
                Panel = FinishTables.Panel(tables.GetValueOrDefault("panel"), stocks),
                Checks = CheckTable.Read(Table("checks")),
            },
            ReadCutting(Table("cutting")),
            new(title, Table("output").Choice("dxf", DxfVersion.R12), Table("output").Flag("svg", false),
                VentTables.Drilling(tables.GetValueOrDefault("drilling"))) 
            {
                Rates = CostTables.Rates(Table("rates")), Sections = extensions.ReportSections, Model = Table("output").Flag("model", false),
                Paper = Table("output").Choice("paper", Paper.A4),
                Formats = Table("output").SomeOf("formats", extensions.CutFileFormats, f => f.Name),
            })
        {
            Design = extensions.Design,
            Forming = forming,
            PanelDrawing = FinishTables.PanelDrawing(tables.GetValueOrDefault("panel"), reading),
        };
        foreach (var table in tables.Values.Concat(stock).Prepend(root)) table.RejectUnknownKeys();
        return job;
    }

    private static DocumentSyntax Parse(string text, string name)
    {
        var document = SyntaxParser.Parse(text, name, validate: true);
        if (!document.HasErrors) return document;
        var first = document.Diagnostics.First(d => d.Kind == DiagnosticMessageKind.Error);
        throw new JobFileException($"{name}, line {first.Span.Start.Line + 1}: {first.Message.TrimEnd('.')}.");
    }

    /// <summary>The keys above the first table.</summary>
    private static JobTable Root(DocumentSyntax document, string name)
    {
        var root = new JobTable(name, "", 1);
        foreach (var item in document.KeyValues) root.Add(item);
        return root;
    }

    private static string? CatalogName(JobTable root) => root.Text("catalog", "") is { Length: > 0 } file ? file : null;

    private static (Dictionary<string, JobTable> Tables, List<JobTable> Stock) Tables(DocumentSyntax document, string file)
    {
        var tables = new Dictionary<string, JobTable>(StringComparer.Ordinal);
        var stock = new List<JobTable>();
        foreach (var syntax in document.Tables)
        {
            var (key, line) = (syntax.Name?.ToString().Trim() ?? "", syntax.Span.Start.Line + 1);
            var table = new JobTable(file, key, line);
            foreach (var item in syntax.Items) table.Add(item);
            if (key == "stock" && syntax is TableArraySyntax) stock.Add(table);
            else if ((!SingleTables.Contains(key) && !SettingTables.IsOne(key)) || syntax is TableArraySyntax)
                throw table.Fault(line, $"the table [{key}] is not known; known are {string.Join(", ", SingleTables.Select(t => $"[{t}]"))} and [[stock]] and [settings.NAME] for plug-ins");
            else tables.Add(key, table);
        }

        return (tables, stock);
    }

    private static Stock ReadStock(JobTable table, Catalog catalog)
    {
        var known = table.Text("catalog", "") is { Length: > 0 } id
            ? catalog.FindStock(id) ?? throw table.Fault(table.Line, $"the stock \"{id}\" is not in the catalog; see 'buckgen catalog'")
            : null;
        var thickness = known is null ? table.RequiredLength("thickness") : table.Length("thickness", known.Thickness);
        var sheet = table.Size("board");
        var name = table.Text("name", known?.Name ?? FormattableString.Invariant($"{thickness:0.###} mm"));
        var (width, height) = sheet ?? (Stock.UsualWidth, Stock.UsualHeight);
        return new(name, thickness, width, height)
        {
            SizeIsAssumed = sheet is null, Material = known, ThicknessIsAssumed = known is not null && !table.Has("thickness"),
            Price = table.OptionalNumber("price") ?? known?.Price, CutFeed = table.OptionalNumber("cut-feed") ?? known?.CutFeed,
        };
    }

    private static BuckSpec ReadBuck(JobTable buck, JobTable? plate, JobTable dowels, ImmutableArray<Stock> stock, Tolerance tolerance)
    {
        var defaults = new BuckSpec { Depth = 1, Stock = stock };
        return new()
        {
            Kind = buck.Choice("kind", defaults.Kind),
            Depth = buck.RequiredLength("depth"),
            Draft = buck.Angle("draft", defaults.Draft),
            Drawn = buck.Choice("drawn", defaults.Drawn),
            OutlineAt = buck.Choice("outline-at", defaults.OutlineAt),
            Corners = new(buck.Choice("corners", defaults.Corners.Corners), buck.Number("mitre-limit", defaults.Corners.MitreLimit)),
            Steps = buck.Choice("steps", defaults.Steps),
            Shrinkage = buck.OptionalPerCent("shrinkage"),
            DepthTolerance = buck.Length("depth-tolerance", defaults.DepthTolerance),
            BlockMargin = buck.Length("block-margin", defaults.BlockMargin),
            LetterHeight = buck.Length("letter-height", defaults.LetterHeight),
            Stock = stock,
            Base = plate is null ? null : ReadBase(plate, stock),
            Dowels = new(
                dowels.Length("diameter", defaults.Dowels.Diameter), dowels.Length("fit", defaults.Dowels.Fit),
                dowels.Length("wall", defaults.Dowels.Wall)),
            Tolerance = tolerance,
        };
    }

    private static BasePlate ReadBase(JobTable table, ImmutableArray<Stock> stock)
    {
        var found = table.Stock("stock", stock);
        return new(found, table.Length("margin", new BasePlate(found).Margin), table.Has("under") ? table.Stock("under", stock) : null);
    }

    private static CuttingSpec ReadCutting(JobTable table)
    {
        var defaults = new CuttingSpec();
        return new(
            table.Choice("machine", defaults.Machine), Kerf(table) ?? defaults.Kerf,
            table.Length("spacing", defaults.Spacing), table.Length("edge-margin", defaults.EdgeMargin))
        {
            Bed = table.Size("bed") is { } bed ? new(bed.Width, bed.Height) : null,
        };
    }

    /// <summary>The width of the cut, or the hole and the piece of a test square.</summary>
    private static double? Kerf(JobTable table) => table.IsList("kerf")
        ? table.Size("kerf") is { } test ? CuttingSpec.KerfOfTest(test.Width, test.Height) : null
        : table.OptionalLength("kerf");
}
