using System.Collections.Immutable;
using System.Text.RegularExpressions;
using BuckGen.Design.Bucks;
using BuckGen.Design.Trimming;
using BuckGen.Intake.Catalogs;
using BuckGen.Intake.Outlines;
using BuckGen.Output.Files;
using BuckGen.Plugins;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace BuckGen.Jobs;

/// <summary>
/// Reads a job file (TOML). Every key has a default but the outline, the depth and the stock; unknown keys are refused. All
/// mistakes are found at once.
/// </summary>
public static partial class JobFile
{
    /// <summary>The catalog file that a job names, as written there; null when it names none.</summary>
    /// <param name="text">The job file's text.</param>
    /// <param name="name">The job file's name, for messages.</param>
    /// <exception cref="JobFileException">The file is not understood; the message names the lines.</exception>
    public static string? CatalogName(string text, string name) => ReadRoot(text, name, root => root.Text(JobSettings.Catalog));

    /// <summary>The plug-ins that a job names, and how they are to be run.</summary>
    /// <param name="text">The job file's text.</param>
    /// <param name="name">The job file's name, for messages.</param>
    /// <exception cref="JobFileException">The file is not understood; the message names the lines.</exception>
    public static JobPlugins Plugins(string text, string name) => ReadRoot(text, name, JobPlugins.Read);

    /// <summary>Reads a job.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="name">The file's name, for messages.</param>
    /// <param name="catalog">
    /// The catalog whose sheets may be named: what <see cref="CatalogFile"/> reads from the file of
    /// <see cref="CatalogName(string, string)"/>, or another; null for that of the extensions, when the job names no file.
    /// </param>
    /// <param name="extensions">What the job may name besides what comes with the library; null for nothing more.</param>
    /// <exception cref="JobFileException">The file is not understood; the message names all mistakes with their
    /// lines.</exception>
    public static Job Read(string text, string name, Catalog? catalog = null, Extensions? extensions = null)
    {
        extensions ??= Extensions.BuiltIn;
        var document = Parse(text, name);
        var faults = new JobFaults(name);
        var root = Root(document, faults);
        if (root.Text(JobSettings.Catalog) is { } file && catalog is null)
            root.Fault(JobSettings.Catalog,
                $"the job names the catalog \"{file}\", which was not read along with it; pass it to JobFile.Read");
        catalog ??= extensions.Catalog;
        // They were loaded before, to read the job with them.
        _ = JobPlugins.Read(root);
        var (tables, repeated) = Tables(document, faults);
        JobTable[] boards = [.. repeated[StockSettings.Table.Name]], sides = [.. repeated[SideSettings.Table.Name]];
        extensions = SettingTables.Apply(tables, extensions);
        JobTable Table(string key) => tables.GetValueOrDefault(key) ?? new JobTable(faults, key, 1);
        JobTable? Given(string key) => tables.GetValueOrDefault(key);

        var title = root.Text(JobSettings.Title) ?? Path.GetFileNameWithoutExtension(name);
        var (outline, buck, output) = (Table("outline"), Table("buck"), Table("output"));
        if (boards.Length == 0 && !buck.Has(StackSettings.Stock))
            faults.Add(1, "the stock is missing; add [[stock]] and below it thickness = \"12mm\", for every thickness you have");
        var stock = new JobBoards(
            [.. boards.Select(s => BuckTables.Stock(s, catalog)), .. BuckTables.Stocks(buck, catalog)], catalog);
        var reading = BuckTables.Reading(outline, buck, extensions);
        var (forming, predict) = FinishTables.Forming(Table("forming"));
        var job = new Job(
            title,
            outline.RequiredText(OutlineSettings.File),
            reading,
            BuckTables.Buck(buck, BuckTables.Side(buck, sides), Given("part"), Given("base"), Table("dowels"), stock,
                reading.Tolerance) with
            {
                Vents = VentTables.Vents(Given("vents"), Table("vacuum"), extensions.VentPatterns),
                Plenum = VentTables.Plenum(Given("plenum"), stock),
                Sheet = FinishTables.Sheet(Given("sheet"), catalog),
                Former = FinishTables.Former(Table("former")),
                Jig = FinishTables.Jig(Given("jig")),
                Flange = FinishTables.Flange(Given("flange"), stock),
                Panel = FinishTables.Panel(Given("panel"), stock),
                Groups = FinishTables.Groups(Given("groups"), stock),
                Checks = CheckTable.Read(Table("checks")),
                Prediction = predict && Given("sheet") is not null ? forming : null,
            },
            BuckTables.Cutting(Table("cutting"), Given("seams")),
            new(title, output.Choice(OutputSettings.Dxf), output.Flag(OutputSettings.Svg), VentTables.Drilling(Given("drilling")))
            {
                Rates = CostTables.Rates(Table("rates")),
                Sections = extensions.ReportSections,
                Model = output.Flag(OutputSettings.Model),
                Paper = output.Choice(OutputSettings.Paper),
                Formats = output.SomeOf(OutputSettings.Formats, extensions.CutFileFormats, f => f.Name),
            })
        {
            Design = extensions.Design,
            Forming = forming,
            Lid = FinishTables.Lid(Given("lid")),
            PanelDrawing =
                FinishTables.Drawing(Given("panel"), PanelSettings.Outline, PanelSettings.OutlineLayers, reading),
            FlangeDrawing =
                FinishTables.Drawing(Given("flange"), FlangeSettings.Outline, FlangeSettings.OutlineLayers, reading),
        };
        foreach (var table in tables.Values.Concat(repeated.SelectMany(r => r)).Prepend(root)) table.RejectUnknownKeys();
        faults.Throw();
        return job;
    }

    private static DocumentSyntax Parse(string text, string name)
    {
        var document = SyntaxParser.Parse(text, name, validate: true);
        var faults = new JobFaults(name);
        var errors = document.Diagnostics.Where(d => d.Kind == DiagnosticMessageKind.Error).ToList();
        if (errors.Count == 0) return document;
        var lines = text.Split('\n');
        var bare = errors.Select(e => e.Span.Start.Line).Distinct().Where(l => l < lines.Length)
            .Select(l => (Line: l + 1, Found: BareQuantity().Match(lines[l]))).Where(b => b.Found.Success).ToList();
        foreach (var (line, found) in bare)
            faults.Add(line, $"a number with its unit stands in quotes; write {found.Groups[1].Value} = "
                + $"\"{InWords(found.Groups[2].Value)}\"");
        // A sign for inches or feet opens a text, and all errors after it follow from that.
        var opened = bare.Where(b => b.Found.Groups[2].Value.IndexOfAny(['"', '\'']) >= 0).Select(b => b.Line)
            .DefaultIfEmpty(int.MaxValue).Min();
        foreach (var wrong in errors.Where(e => e.Span.Start.Line < opened && !bare.Exists(b => b.Line == e.Span.Start.Line + 1)))
            faults.Add(wrong.Span.Start.Line + 1, wrong.Message.ReplaceLineEndings(" ").TrimEnd('.'));
        faults.Throw();
        return document;
    }

    /// <summary>Inches and feet as a job writes them: their signs are quotes there.</summary>
    private static string InWords(string quantity) =>
        quantity.Replace("\"", "in", StringComparison.Ordinal).Replace("'", "ft", StringComparison.Ordinal);

    /// <summary>A key and a number with a unit that stands without quotes.</summary>
    [GeneratedRegex(@"^\s*([\w-]+)\s*=\s*([-+]?[\d.,/ ]*\d\s*[a-zA-Z%°""']+)\s*(#.*)?$", RegexOptions.CultureInvariant)]
    private static partial Regex BareQuantity();

    /// <summary>Reads something from the keys above the first table.</summary>
    private static T ReadRoot<T>(string text, string name, Func<JobTable, T> read)
    {
        var faults = new JobFaults(name);
        var result = read(Root(Parse(text, name), faults));
        faults.Throw();
        return result;
    }

    private static JobTable Root(DocumentSyntax document, JobFaults faults)
    {
        var root = new JobTable(faults, "", 1);
        foreach (var item in document.KeyValues) root.Add(item);
        return root;
    }

    private static (Dictionary<string, JobTable> Tables, ILookup<string, JobTable> Repeated) Tables(
        DocumentSyntax document, JobFaults faults)
    {
        var tables = new Dictionary<string, JobTable>(StringComparer.Ordinal);
        var repeated = new List<(string Key, JobTable Table)>();
        var known = JobSettings.Tables.Where(t => t.Name.Length > 0).DistinctBy(t => t.Name)
            .ToDictionary(t => t.Name, StringComparer.Ordinal);
        foreach (var syntax in document.Tables)
        {
            var (key, line) = (syntax.Name?.ToString().Trim() ?? "", syntax.Span.Start.Line + 1);
            var table = new JobTable(faults, key, line);
            foreach (var item in syntax.Items) table.Add(item);
            var isRepeated = syntax is TableArraySyntax;
            if (known.TryGetValue(key, out var declared))
            {
                if (declared.IsRepeated != isRepeated) table.Fault($"the table {key} is written {declared.Heading}");
                if (declared.IsRepeated) repeated.Add((key, table));
                else tables.TryAdd(key, table);
            }
            else if (SettingTables.IsOne(key) && !isRepeated) tables.TryAdd(key, table);
            else table.Fault($"the table {Written(key, isRepeated)} is not known; {(NearestWord.Find(key, known.Keys) is { } near
                ? $"the nearest known is {known[near].Heading}"
                : $"known are {string.Join(", ", known.Values.Select(t => t.Heading))} and [settings.NAME] for plug-ins")}");
        }

        return (tables, repeated.ToLookup(r => r.Key, r => r.Table));
    }

    private static string Written(string key, bool isRepeated) => isRepeated ? $"[[{key}]]" : $"[{key}]";
}
