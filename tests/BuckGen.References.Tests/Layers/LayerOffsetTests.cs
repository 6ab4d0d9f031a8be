using System.Text.Json;
using System.Text.Json.Serialization;
using BuckGen.References.Tests.Support;

namespace BuckGen.References.Tests.Layers;

/// <summary>
/// Written layers against the offset that shapely (GEOS) makes of the same outline. The outline is read by ezdxf or librsvg;
/// where these can't read a file as the corpus says it is, BuckGen's own reading of it is offset instead.
/// </summary>
public class LayerOffsetTests(ITestOutputHelper log)
{
    private const double MaxAreaMiss = 0.001;
    private const double MaxDistance = 0.05;

    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web)
    {
        Converters = { new JsonStringEnumConverter() },
    };

    [Fact]
    public void Every_layer_is_the_offset_of_its_outline()
    {
        Reference.Python.Need();
        Reference.Librsvg.Need();
        using var scratch = new ScratchFolder();
        var written = WrittenLayers.Create(CorpusFiles.Valid(), scratch);
        var listing = scratch.File("listing.json");
        File.WriteAllText(listing, JsonSerializer.Serialize(new
        {
            LayerCase.Depth,
            LayerCase.Draft,
            LayerCase.Thickness,
            LayerCase.MitreLimit,
            LayerCase.BlockMargin,
            written.Outlines,
        }, Json));

        var judged =
            Reference.Python.Run(TimeSpan.FromMinutes(15), "-W", "ignore", RepositoryFolder.Script("judge_layers.py"), listing);
        Assert.True(judged.ExitCode == 0, judged.Error);
        var verdicts = judged.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Select(line => JsonSerializer.Deserialize<LayerVerdict>(line, Json)!).ToList();
        Report(verdicts);

        Faults.None(written.Refusals);
        Faults.None(verdicts.Where(v => v.AreaMiss > MaxAreaMiss || v.DiffersAcross).Select(v => v.ToString()));
        Assert.True(verdicts.Count(v => v.MaxDistance > MaxDistance) < verdicts.Count / 100, "too many tips and notches are off");
        Assert.True(verdicts.Count >= 1150, $"only {verdicts.Count} layers were compared");
        Assert.True(verdicts.Where(v => v.ReadBy != "BuckGen").Select(v => v.File).Distinct().Count() >= 100,
            "too few outlines were read by others");
    }

    private void Report(List<LayerVerdict> verdicts)
    {
        log.WriteLine(
            $"{verdicts.Count} layers compared; {verdicts.Count(v => v.MaxDistance > MaxDistance)} with a longer tip or notch.");
        foreach (var reader in verdicts.GroupBy(v => v.ReadBy))
        {
            log.WriteLine($"{reader.Select(v => v.File).Distinct().Count()} outlines read by {reader.Key}; the largest misses:");
            log.WriteLine($"  {reader.MaxBy(v => v.AreaMiss)}");
            log.WriteLine($"  {reader.MaxBy(v => v.MaxDistance)}");
        }
    }
}
