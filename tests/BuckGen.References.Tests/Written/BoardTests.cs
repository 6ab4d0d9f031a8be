using System.Text.Json;
using BuckGen.Geometry;
using BuckGen.References.Tests.Support;

namespace BuckGen.References.Tests.Written;

/// <summary>Parts on boards against the nominal layers, moved aside by half the kerf by shapely (GEOS).</summary>
[Collection(WrittenBucks.Name)]
public class BoardTests(WrittenBucks bucks, ITestOutputHelper log)
{
    [Fact]
    public void Parts_are_their_layers_grown_by_half_the_kerf_and_lie_apart_on_the_board()
    {
        Reference.Python.Need();
        using var scratch = new ScratchFolder();
        var listing = scratch.File("boards.json");
        File.WriteAllText(listing, JsonSerializer.Serialize(bucks.Boards.Select(Listed)));

        var reports = GateTests.Json(
            Reference.Python.Run(TimeSpan.FromMinutes(5), "-W", "ignore", RepositoryFolder.Script("board_parts.py"), listing));
        log.WriteLine($"{reports.Count} boards, {reports.Sum(r => r.GetProperty("parts").GetInt32())} parts, the farthest "
            + $"{reports.Max(r => r.GetProperty("farthest").GetDouble()):F4} mm from where it ought to be.");

        Faults.None(reports.SelectMany(GateTests.FaultsOf));
        Assert.True(reports.Count >= 18, $"only {reports.Count} boards were looked at");
    }

    private static object Listed(WrittenBoard board) => new
    {
        file = board.File.Path,
        width = board.Layout.Stock.BoardWidth,
        height = board.Layout.Stock.BoardHeight,
        spacing = board.Cutting.Spacing,
        margin = board.Cutting.EdgeMargin,
        kerf = board.Cutting.Compensation * 2,
        parts = board.Layout.Placements.Zip(board.Sources, (placement, source) => new
        {
            name = placement.Part.Name,
            layerFile = source.LayerFile,
            island = source.Island,
            map = Numbers(source.View.Then(placement.Map)),
        }),
    };

    private static double[] Numbers(Affine map) => [map.A, map.C, map.B, map.D, map.E, map.F];
}
