using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using BuckGen.Cutting.CutPaths;
using BuckGen.Dxf;
using BuckGen.Geometry;
using BuckGen.References.Tests.Support;

namespace BuckGen.References.Tests.Written;

/// <summary>What other programs make of the cut files.</summary>
[Collection(WrittenBucks.Name)]
public partial class GateTests(WrittenBucks bucks, ITestOutputHelper log)
{
    private static readonly TimeSpan Minute = TimeSpan.FromMinutes(1);

    [Fact]
    public void There_are_files_of_both_forms()
    {
        Assert.True(bucks.Files.Count(f => f.Version == DxfVersion.R12) >= 30);
        Assert.True(bucks.Files.Count(f => f.Version == DxfVersion.R2000) >= 30);
    }

    // ezdxf: strict loading checks the structure; the audit of a sound file has nothing to report and nothing to repair.
    [Fact]
    public void ezdxf_finds_nothing_to_mend()
    {
        var reports = Json(Reference.Python.Run(Minute * 5, [RepositoryFolder.Script("audit.py"), .. bucks.Paths]));
        Assert.Equal(bucks.Files.Count, reports.Count);
        Faults.None(reports.SelectMany(r => FaultsOf(r)));
        Assert.Equal(
            bucks.Files.Select(f =>
                (f.Path, Version: f.Version == DxfVersion.R12 ? "AC1009" : "AC1015", Count: f.Drawing.Paths.Length)),
            reports.Select(r =>
                (r.GetProperty("file").GetString()!, r.GetProperty("version").GetString()!,
                    r.GetProperty("entities").GetInt32())));
    }

    // GDAL: a reader of its own that measures what it read. A list of drawings has it start once for all of them.
    [Fact]
    public void GDAL_reads_every_path_where_it_is()
    {
        using var scratch = new ScratchFolder();
        File.WriteAllText(scratch.File("all.vrt"), new XElement("OGRVRTDataSource", bucks.Files.Select((f, i) =>
            new XElement("OGRVRTLayer", new XAttribute("name", $"drawing {i}"),
                new XElement("SrcDataSource", f.Path), new XElement("SrcLayer", "entities")))).ToString());
        var report = Reference.Gdal.Run(
            Minute * 5, "--config", "OGR_ARC_STEPSIZE", "0.25", "-ro", "-al", "-so", scratch.File("all.vrt")).All;
        var drawings = report.Split("\nLayer name: ")[1..];
        Assert.Equal(bucks.Files.Count, drawings.Length);
        Assert.DoesNotContain("ERROR", report, StringComparison.Ordinal);

        var faults = new List<string>();
        foreach (var (file, drawing) in bucks.Files.Zip(drawings))
        {
            var expected = file.Drawing.Paths.SelectMany(p => p.Segments).Aggregate(Bounds.Nothing, (b, s) => b.With(s.Bounds));
            if (Extent(drawing) is not { } seen || !seen.Grown(0.02).Contains(expected) || !expected.Grown(0.02).Contains(seen))
                faults.Add($"{file.Path}: {Extent(drawing)} instead of {expected}");
            else if (int.Parse(FeatureCount().Match(drawing).Groups[1].Value, CultureInfo.InvariantCulture)
                != file.Drawing.Paths.Length)
                faults.Add($"{file.Path}: {FeatureCount().Match(drawing)} instead of {file.Drawing.Paths.Length}");
        }

        Faults.None(faults);
    }

    // dxf-parser: what many viewers and machine programs written in JavaScript see.
    [Fact]
    public void dxf_parser_counts_every_path()
    {
        Reference.DxfParser.Need();
        var counts = Json(Reference.DxfParser.Run(Minute * 5, [RepositoryFolder.Script("count_entities.js"), .. bucks.Paths]))
            .Single();
        foreach (var file in bucks.Files)
        {
            var circles = file.Drawing.Paths.Count(p => p.AsLoop()?.AsCircle(1e-4) is not null);
            var expected = new Dictionary<string, int>
            {
                ["CIRCLE"] = circles,
                [file.Version == DxfVersion.R12 ? "POLYLINE" : "LWPOLYLINE"] = file.Drawing.Paths.Length - circles,
            };
            var seen = counts.GetProperty(file.Path).EnumerateObject().ToDictionary(p => p.Name, p => p.Value.GetInt32());
            Assert.Equal(expected.Where(e => e.Value > 0).OrderBy(e => e.Key), seen.OrderBy(s => s.Key));
        }
    }

    // LibreCAD: a drawing program opens the file and prints it. A page without a drawing is 1193 bytes.
    [Fact]
    public void LibreCAD_draws_it()
    {
        using var scratch = new ScratchFolder();
        foreach (var file in bucks.Files.GroupBy(f => f.Version).SelectMany(g => g.Where((_, i) => i % 12 == 0)))
        {
            var copy = scratch.File(Path.GetFileName(file.Path));
            File.Copy(file.Path, copy, overwrite: true);
            Reference.LibreCad.Run(Minute, "dxf2pdf", "-a", "-m", "-t", scratch.Path, copy);
            var drawn = new FileInfo(Path.ChangeExtension(copy, ".pdf"));
            Assert.True(drawn.Exists && drawn.Length > 1300, $"{file.Path}: an empty page");
            drawn.Delete();
        }
    }

    // OpenSCAD makes solids only of closed contours, and warns of any other. It reads no POLYLINE, hence R2000 only.
    [Fact]
    public void OpenSCAD_finds_every_contour_closed()
    {
        using var scratch = new ScratchFolder();
        var faults = new List<string>();
        foreach (var file in bucks.Files.Where(f => f.Version == DxfVersion.R2000))
        {
            foreach (var layer in (CutLayer[])[CutLayer.CutOuter, CutLayer.CutInner])
            {
                if (file.Count(layer) == 0) continue;
                var script = scratch.File("import.scad");
                File.WriteAllText(script, $"import(\"{file.Path}\", layer=\"{layer.Name()}\", $fn=64);\n");
                var said = Reference.OpenScad.Run(Minute, "-o", scratch.File("import.svg"), script).All;
                var contours = ContourCount().Match(said).Groups[1].Value;
                if (said.Contains("WARNING", StringComparison.Ordinal)
                    || contours != file.Count(layer).ToString(CultureInfo.InvariantCulture))
                    faults.Add($"{file.Path}, {layer.Name()}: {contours} contours instead of {file.Count(layer)}\n{said}");
            }
        }

        Faults.None(faults);
    }

    // ezdxf reads, shapely compares: none of the readers above sees a path that is doubled, open or out of order.
    [Fact]
    public void Every_contour_is_closed_and_cut_once_and_holes_come_first()
    {
        var reports =
            Json(Reference.Python.Run(Minute * 5, ["-W", "ignore", RepositoryFolder.Script("contours.py"), .. bucks.Paths]));
        Assert.Equal(bucks.Files.Count, reports.Count);
        Faults.None(reports.SelectMany(r => FaultsOf(r)));
        log.WriteLine($"{reports.Count} files, {bucks.Files.Sum(f => f.Drawing.Paths.Length)} paths.");
    }

    internal static List<JsonElement> Json(ToolOutput said)
    {
        Assert.True(said.ExitCode == 0, said.Error);
        return [.. said.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonElement.Parse(line))];
    }

    internal static IEnumerable<string> FaultsOf(JsonElement report) =>
        report.GetProperty("faults").EnumerateArray().Select(f => $"{report.GetProperty("file")}: {f}");

    private static Bounds? Extent(string said)
    {
        var match = ExtentLine().Match(said);
        if (!match.Success) return null;
        var numbers = match.Groups.Values.Skip(1).Select(g => double.Parse(g.Value, CultureInfo.InvariantCulture)).ToArray();
        return new(numbers[0], numbers[1], numbers[2], numbers[3]);
    }

    [GeneratedRegex(@"Extent: \((\S+), (\S+)\) - \((\S+), (\S+)\)")]
    private static partial Regex ExtentLine();

    [GeneratedRegex(@"Feature Count: (\d+)")]
    private static partial Regex FeatureCount();

    [GeneratedRegex(@"Contours:\s+(\d+)")]
    private static partial Regex ContourCount();
}
