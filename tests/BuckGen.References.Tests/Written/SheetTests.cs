using System.Text.Json;
using BuckGen.References.Tests.Support;

namespace BuckGen.References.Tests.Written;

/// <summary>Parts on sheets against the nominal layers, moved aside by half the kerf by shapely (GEOS).</summary>
public class SheetTests(WrittenBucks bucks, ITestOutputHelper log) : IClassFixture<WrittenBucks>
{
    [Fact]
    public void Parts_are_their_layers_grown_by_half_the_kerf_and_lie_apart_on_the_sheet()
    {
        Reference.Python.Need();
        using var scratch = new ScratchFolder();
        var listing = scratch.File("sheets.json");
        File.WriteAllText(listing, JsonSerializer.Serialize(bucks.Sheets.Select(Listed)));

        var reports = GateTests.Json(
            Reference.Python.Run(TimeSpan.FromMinutes(5), "-W", "ignore", RepositoryFolder.Script("sheet_parts.py"), listing));
        log.WriteLine($"{reports.Count} sheets, {reports.Sum(r => r.GetProperty("parts").GetInt32())} parts, the farthest "
            + $"{reports.Max(r => r.GetProperty("farthest").GetDouble()):F4} mm from where it ought to be.");

        Faults.None(reports.SelectMany(GateTests.FaultsOf));
        Assert.True(reports.Count >= 18, $"only {reports.Count} sheets were looked at");
    }

    private static object Listed(WrittenSheet sheet) => new
    {
        file = sheet.File.Path,
        width = sheet.Layout.Stock.SheetWidth,
        height = sheet.Layout.Stock.SheetHeight,
        spacing = sheet.Cutting.Spacing,
        margin = sheet.Cutting.EdgeMargin,
        kerf = sheet.Cutting.Compensation * 2,
        parts = sheet.Layout.Placements.Zip(sheet.Sources, (placement, source) => new
        {
            name = placement.Part.Name,
            layerFile = source.LayerFile,
            island = source.Island,
            map = (double[])[placement.Map.A, placement.Map.C, placement.Map.B, placement.Map.D, placement.Map.E, placement.Map.F],
        }),
    };
}
