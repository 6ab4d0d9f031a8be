using System.Text.Json;
using System.Text.Json.Serialization;
using BuckGen.Cutting.CutFiles;
using BuckGen.Cutting.CutPaths;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Dxf;
using BuckGen.Intake.Outlines;
using BuckGen.References.Tests.Support;

namespace BuckGen.References.Tests.Layers;

/// <summary>Layers of domed and stepped bucks against the offsets that shapely (GEOS) makes of their outlines.</summary>
public class SideTests
{
    private const double Depth = 36, Thickness = 6, MaxAreaMiss = 0.001, MaxDistance = 0.05;
    private const int Files = 12, MaxPieces = 100;

    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web)
    {
        Converters = { new JsonStringEnumConverter() },
    };

    private static readonly SideStretch[] Domed =
    [
        new() { Draft = 4 }, new() { Height = 5, Draft = 15 }, new() { Height = 4, Inset = 2 }, new() { Height = 2, Draft = 50 },
    ];

    private static readonly SideStretch[] Stepped =
        [new() { Draft = 3 }, new() { Height = 0, Inset = 1.5 }, new() { Height = 12, Draft = 6 }];

    [Fact]
    public void Every_layer_of_a_shaped_side_is_the_offset_of_its_outline()
    {
        Reference.Python.Need();
        using var scratch = new ScratchFolder();
        var outlines = CorpusFiles.Valid().Where(f => f.IsCore).Select(f => (f.File, Outline: Read(f)))
            .Where(f => f.Outline is not null && f.Outline.Region.Segments.Count() <= MaxPieces).Take(Files).ToArray();
        var bucks = outlines.SelectMany(o => (object[])
        [
            Written(o.File, o.Outline!, BuckKind.Male, Domed, scratch),
            Written(o.File, o.Outline!, BuckKind.Female, Stepped, scratch),
        ]).ToArray();
        var listing = scratch.File("sides.json");
        File.WriteAllText(listing, JsonSerializer.Serialize(new { Depth, Thickness, Bucks = bucks }, Json));

        var judged = Reference.Python.Run(
            TimeSpan.FromMinutes(10), "-W", "ignore", RepositoryFolder.Script("judge_sides.py"), listing);

        Assert.True(judged.ExitCode == 0, judged.Error);
        var verdicts = judged.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Select(line => JsonSerializer.Deserialize<Verdict>(line, Json)!).ToArray();
        Assert.Equal(2 * Files * 6, verdicts.Length);
        Faults.None(verdicts.Where(v => v.AreaMiss > MaxAreaMiss).Select(v => v.ToString()));
        // Sharp tips move along far more than across.
        Assert.InRange(verdicts.Count(v => v.Distance > MaxDistance), 0, verdicts.Length / 50);
    }

    private static Outline? Read(CorpusFile file)
    {
        try
        {
            return file.Read();
        }
        catch (OutlineException)
        {
            return null; // The intake tests say which files must be read.
        }
    }

    private static object Written(string file, Outline outline, BuckKind kind, SideStretch[] side, ScratchFolder scratch)
    {
        var drawn = scratch.File($"{file}/{kind}/outline.dxf");
        Write(drawn, new(file, [.. outline.Region.Loops.Select(l =>
            CutPath.FromLoop(l.SignedArea > 0 ? CutLayer.CutOuter : CutLayer.CutInner, l))], outline.Region.Bounds));
        var design = BuckDesign.Create(outline, new BuckSpec
        {
            Kind = kind,
            Depth = Depth,
            Stock = [new("board", Thickness)],
            Side = [.. side],
            EdgeRadius = kind == BuckKind.Male ? 0 : 1,
        });
        var layers = design.Layers.Select(l =>
        {
            var path = scratch.File($"{file}/{kind}/layer-{l.Number:00}.dxf");
            Write(path, LayerDrawing.Create(l));
            return path;
        });
        return new { File = file, Outline = drawn, Kind = kind, Side = side, Layers = layers.ToArray() };
    }

    private static void Write(string path, CutDrawing drawing) =>
        File.WriteAllBytes(path, [.. DxfCutFile.Write(drawing, DxfVersion.R12)]);

    /// <summary>How far one layer, or its cavity, is from what it should be.</summary>
    private sealed record Verdict(string Buck, double ExpectedArea, double Area, double Distance)
    {
        /// <summary>By which share the area differs; below a square millimetre the chords of arcs decide.</summary>
        public double AreaMiss => Math.Abs(Area - ExpectedArea) / Math.Max(1, Math.Max(ExpectedArea, Area));
    }
}
