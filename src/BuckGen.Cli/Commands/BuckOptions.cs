using System.Collections.Immutable;
using System.CommandLine;
using BuckGen.Cli.Help;
using BuckGen.Cli.Terminals;
using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutFiles;
using BuckGen.Cutting.Seams;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Dxf;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Outlines;
using BuckGen.Jobs;
using BuckGen.Output.Files;
using BuckGen.Plugins;

namespace BuckGen.Cli.Commands;

/// <summary>All options for a buck.</summary>
internal sealed class BuckOptions
{
    private static readonly BuckSpec Defaults = new() { Depth = 1, Stock = [] };
    private static readonly BasePlate BaseDefaults = new(new("", 1));
    private static readonly CuttingSpec CuttingDefaults = new();

    private readonly Option<double?> depth = QuantityOption.Create(
        StackSettings.Depth, "Depth of the buck, or with --part that of the finished part. Required.");
    private readonly Option<string[]> stock = new Option<string[]>("--stock")
    {
        Description = "Boards you have: a measured thickness (12mm) or a name from the catalog (mdf-12); several may "
            + "follow. Required.",
        HelpName = "BOARD",
        AllowMultipleArgumentsPerToken = true,
    }.WithCompletions(CatalogFiles.Stocks);

    private readonly Option<string?> catalogFile = CatalogFiles.Option();

    private readonly Option<string?> sheet = QuantityOption.Create(
        StockSettings.Board, "Size of a whole board, such as 600x400mm; without it that size is assumed.");

    private readonly Option<double?> draft = QuantityOption.Create(StackSettings.Draft);
    private readonly Option<double?> edgeRadius = QuantityOption.Create(SideSettings.EdgeRadius);
    private readonly Option<BuckKind?> kind = QuantityOption.Create(StackSettings.Kind);
    private readonly Option<OutlineAt?> outlineAt = QuantityOption.Create(StackSettings.OutlineAt);
    private readonly Option<Corners?> corners = QuantityOption.Create(StackSettings.Corners);
    private readonly Option<double?> mitreLimit = QuantityOption.Create(StackSettings.MitreLimit);

    private readonly Option<Steps?> steps = QuantityOption.Create(StackSettings.Steps);
    private readonly Option<double?> shrinkage = QuantityOption.Create(BuckSettings.Shrinkage);
    private readonly Option<string?> basePlate = new Option<string?>("--base")
    {
        Description = "A plate under the stack, from this board.",
        HelpName = "BOARD",
    }.WithCompletions(CatalogFiles.Stocks);

    private readonly Option<double?> baseMargin = QuantityOption.Create(BaseSettings.Margin);
    private readonly Option<double?> blockMargin = QuantityOption.Create(StackSettings.BlockMargin);
    private readonly Option<double?> dowel = QuantityOption.Create(DowelSettings.Diameter);
    private readonly Option<Machine?> machine = QuantityOption.Create(CuttingSettings.Machine);
    private readonly Option<double?> kerf = QuantityOption.Create(CuttingSettings.Kerf, "Full width of the laser's cut.");
    private readonly Option<double?> spacing = QuantityOption.Create(CuttingSettings.Spacing);
    private readonly Option<double?> edgeMargin = QuantityOption.Create(CuttingSettings.EdgeMargin);
    private readonly Option<SeamKind?> seams = QuantityOption.Create(SeamSettings.Kind);
    private readonly Option<DxfVersion?> dxf = QuantityOption.Create(OutputSettings.Dxf);
    private readonly Option<bool> svg = QuantityOption.Create(OutputSettings.Svg, "Also write an SVG beside every DXF.");

    private readonly Option<bool> model =
        QuantityOption.Create(OutputSettings.Model, "Also write solid models of the buck (STL, glTF).");
    private readonly Option<DrillProgramFormat?> drill =
        QuantityOption.Choice("--drill", "Programs that drill the vents:", DrillProgramFormat.None);
    private readonly VentOptions vents = new();
    private readonly PartOptions part = new();
    private readonly Option<string[]> formats = QuantityOption.Names(OutputSettings.Formats);

    /// <summary>Where plug-ins come from.</summary>
    public PluginOptions Plugins { get; } = new();

    public void AddTo(HelpedCommand command)
    {
        seams.Description = "Cut plates larger than a board in pieces, with such seams; without it they are an error.";
        command.Add(
            OptionGroup.Buck, depth, draft, edgeRadius, kind, outlineAt, corners, mitreLimit, steps, shrinkage, basePlate,
            baseMargin, blockMargin, dowel);
        command.Add(OptionGroup.Boards, stock, catalogFile, sheet, machine, kerf, spacing, edgeMargin, seams);
        command.Add(OptionGroup.Output, dxf, svg, model, drill, formats);
        vents.AddTo(command);
        part.AddTo(command);
        Plugins.AddTo(command);
    }

    /// <summary>The extensions of the library and of plug-ins, and the user's own catalog.</summary>
    public Extensions Extensions(ParseResult parsed, Terminal terminal)
    {
        var extensions = Plugins.Extensions(parsed, terminal);
        return extensions with { Catalog = CatalogFiles.Read(parsed.GetValue(catalogFile), extensions.Catalog) };
    }

    /// <summary>The buck that is asked for.</summary>
    /// <param name="parsed">The arguments.</param>
    /// <param name="reading">Where the tolerances come from.</param>
    /// <param name="extensions">The patterns, sheets and plastics that can be named.</param>
    /// <param name="withVents">True for vents even without an option for them.</param>
    /// <param name="withSheet">True for a plastic sheet even when no option concerns it.</param>
    private BuckSpec Buck(ParseResult parsed, OutlineOptions reading, Extensions extensions, bool withVents = false,
        bool withSheet = false)
    {
        var deep = parsed.GetValue(depth)
            ?? throw new UsageException("--depth is missing; give the depth, such as --depth 36mm.");
        StackSettings.Draft.Require(parsed.GetValue(draft));
        var size = parsed.GetValue(sheet) is { } text ? SizeText.Parse(StockSettings.Board, text) : null;
        var catalog = extensions.Catalog;
        Stock StockOf(string text) => BuckOptions.StockOf(text, size, catalog);
        var sheets = (parsed.GetValue(stock) ?? []).SelectMany(s => s.Split(',')).Select(StockOf).ToImmutableArray();
        if (sheets.IsEmpty)
            throw new UsageException("--stock is missing; name the boards you have, such as --stock 12mm or --stock mdf-12.");
        var buck = new BuckSpec
        {
            Kind = parsed.GetValue(kind) ?? Defaults.Kind,
            Depth = deep,
            Draft = parsed.GetValue(draft) ?? Defaults.Draft,
            EdgeRadius = parsed.GetValue(edgeRadius) ?? Defaults.EdgeRadius,
            OutlineAt = parsed.GetValue(outlineAt) ?? Defaults.OutlineAt,
            Stock = sheets,
            Corners = new(
                parsed.GetValue(corners) ?? Defaults.Corners.Corners, parsed.GetValue(mitreLimit) ?? Defaults.Corners.MitreLimit),
            Steps = parsed.GetValue(steps) ?? Defaults.Steps,
            Shrinkage = parsed.GetValue(shrinkage),
            Base = parsed.GetValue(basePlate) is { } plate
                ? new(StockOf(plate), parsed.GetValue(baseMargin) ?? BaseDefaults.Margin) : null,
            BlockMargin = parsed.GetValue(blockMargin) ?? Defaults.BlockMargin,
            Dowels = Defaults.Dowels with { Diameter = parsed.GetValue(dowel) ?? Defaults.Dowels.Diameter },
            Tolerance = reading.Tolerance,
        };
        if (parsed.GetResult(outlineAt) is { Implicit: false } && part.IsOrdered(parsed))
            throw new UsageException(
                $"{outlineAt.Name} is that of the buck; with --part say --part-at, where the finished part is to size.");
        return part.Apply(parsed, vents.Apply(parsed, buck, extensions.VentPatterns, withVents), catalog, withSheet);
    }

    /// <summary>The job that the options describe; its wall is predicted when they name the plastic sheet.</summary>
    /// <param name="parsed">The arguments.</param>
    /// <param name="drawing">The drawing's file.</param>
    /// <param name="reading">How the drawing is read.</param>
    /// <param name="extensions">What can be named.</param>
    /// <param name="withVents">True for vents even without an option for them.</param>
    /// <param name="withSheet">True for a plastic sheet even when no option concerns it.</param>
    public Job Job(
        ParseResult parsed, string drawing, ReadingOptions reading, Extensions extensions, bool withVents = false,
        bool withSheet = false)
    {
        var how = reading.Read(parsed, extensions);
        var spec = Buck(parsed, how, extensions, withVents, withSheet);
        return new("", drawing, how, spec with { Prediction = spec.Sheet is null ? null : new() }, Cutting(parsed),
            Output(parsed, extensions))
        {
            Design = extensions.Design,
        };
    }

    private CuttingSpec Cutting(ParseResult parsed) =>
        new(
            parsed.GetValue(machine) ?? CuttingDefaults.Machine, parsed.GetValue(kerf) ?? CuttingDefaults.Kerf,
            parsed.GetValue(spacing) ?? CuttingDefaults.Spacing, parsed.GetValue(edgeMargin) ?? CuttingDefaults.EdgeMargin)
        {
            Seams = parsed.GetValue(seams) is { } wanted ? new() { Kind = wanted } : null,
        };

    private OutputOptions Output(ParseResult parsed, Extensions extensions) => new(
        "", parsed.GetValue(dxf) ?? DxfVersion.R12, parsed.GetValue(svg),
        parsed.GetValue(drill) == DrillProgramFormat.Ngc ? new() : null)
    {
        Formats = [.. (parsed.GetValue(formats) ?? []).Select(f => FormatOf(f, extensions))],
        Sections = extensions.ReportSections,
        Model = parsed.GetValue(model),
    };

    private static ICutFileFormat FormatOf(string word, Extensions extensions) =>
        extensions.CutFileFormats.FirstOrDefault(f => f.Name.Equals(word, StringComparison.OrdinalIgnoreCase))
        ?? throw new UsageException($"--formats names '{word}', which no plug-in provides; see 'buckgen plugins'.");

    private static Stock StockOf(string text, RectangleSize? size, Catalog catalog)
    {
        var stock = Stock.FromText(text, catalog)
            ?? throw new UsageException(
                $"The stock '{text}' is neither a thickness such as 12mm nor in the catalog; see 'buckgen catalog'.");
        return size is { } s ? stock with { BoardWidth = s.Width, BoardHeight = s.Height, SizeIsAssumed = false } : stock;
    }
}
