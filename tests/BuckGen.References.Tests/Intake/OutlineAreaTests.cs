using System.Text.Json;
using BuckGen.Intake.Outlines;
using BuckGen.References.Tests.Support;

namespace BuckGen.References.Tests.Intake;

/// <summary>
/// Areas of the corpus outlines as BuckGen reads them, against ezdxf and dxf-parser for DXF and librsvg for SVG, each joined and
/// measured by shapely. A reader that does not find the area that the corpus states is no judge of that file.
/// </summary>
public class OutlineAreaTests(ITestOutputHelper log)
{
    [Fact]
    public void Outlines_have_the_area_that_other_readers_find()
    {
        Reference.Python.Need();
        Reference.Librsvg.Need();
        Reference.DxfParser.Need();
        using var scratch = new ScratchFolder();
        var files = CorpusFiles.Valid();
        var (listing, chains) = (scratch.File("files.json"), scratch.File("chains.json"));
        File.WriteAllText(listing, JsonSerializer.Serialize(
            files.Select(f => new { file = f.File, source = f.FullPath, mmPerUnit = f.MillimetresPerUnit })));
        string[] drawings =
            [.. files.Where(f => f.File.EndsWith(".dxf", StringComparison.Ordinal) && !Hangs(f)).Select(f => f.FullPath)];
        var chained = Reference.DxfParser.Run(TimeSpan.FromMinutes(2), [RepositoryFolder.Script("dxf_chains.js"), .. drawings]);
        Assert.True(chained.ExitCode == 0, chained.Error);
        File.WriteAllText(chains, chained.Output);

        var found = Reference.Python.Run(
            TimeSpan.FromMinutes(5), "-W", "ignore", RepositoryFolder.Script("judge_outlines.py"), listing, chains);
        Assert.True(found.ExitCode == 0, found.Error);
        var others = found.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonElement.Parse(line))
            .ToDictionary(r => r.GetProperty("file").GetString()!);

        var compared = new List<(string File, string Reader, double Miss)>();
        var refused = new List<string>();
        foreach (var file in files)
        {
            try
            {
                var area = file.Read().Region.Islands.Sum(i => i.Area);
                foreach (var (key, reader) in Readers(file))
                {
                    if (others[file.File].GetProperty(key) is { ValueKind: JsonValueKind.Number } other
                        && Agrees(other.GetDouble(), file))
                        compared.Add((file.File, reader, Math.Abs(area - other.GetDouble()) / file.Area));
                }
            }
            catch (OutlineException refusal) when (file.MayBeRefused)
            {
                log.WriteLine($"refused, as it may be: {refusal.Message}");
            }
            catch (OutlineException refusal)
            {
                refused.Add(refusal.Message);
            }
        }

        foreach (var reader in compared.GroupBy(c => c.Reader))
            log.WriteLine(
                $"{reader.Key}: {reader.Count()} files, the largest miss {reader.Max(c => c.Miss):P4} in "
                + $"{reader.MaxBy(c => c.Miss).File}");
        Faults.None(refused);
        Faults.None(compared.Where(c => c.Miss > CorpusFile.UsualAreaTolerance)
            .Select(c => $"{c.File} and {c.Reader}: {c.Miss:P3} apart"));
        Assert.True(compared.Count(c => c.Reader == "ezdxf") >= 60);
        Assert.True(compared.Count(c => c.Reader == "dxf-parser") >= 40);
        Assert.True(compared.Count(c => c.Reader == "librsvg") >= 40);
    }

    private static (string Key, string Name)[] Readers(CorpusFile file) =>
        file.File.EndsWith(".dxf", StringComparison.Ordinal) ? [("area", "ezdxf"), ("chained", "dxf-parser")]
            : [("area", "librsvg")];

    private static bool Agrees(double area, CorpusFile file) =>
        file.AreaTolerance <= CorpusFile.UsualAreaTolerance
            && Math.Abs(area - file.Area) <= CorpusFile.UsualAreaTolerance * file.Area;

    /// <summary>dxf-parser never ends on a polyline that states more vertices than it has.</summary>
    private static bool Hangs(CorpusFile file) => file.File == "dxf/b_lw_count.dxf";
}
