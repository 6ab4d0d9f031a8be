using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutFiles;
using BuckGen.Cutting.CutPaths;
using BuckGen.Dxf;
using BuckGen.Dxf.Reading;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Tests.Cutting.Boards;
using BuckGen.Tests.Design.Bucks;
using Xunit;

namespace BuckGen.Tests.Cutting.CutFiles;

public class CutOrderTests
{
    private static readonly Region Two = Shapes.Union(Shapes.Counter(60, 60, 30, 30), Shapes.RectangleAt(80, 0, 50, 50));

    [Fact]
    public void In_a_layer_file_marks_come_first_then_holes_then_outer_edges()
    {
        var order = LayerDrawing.Create(PlainBuck.Create(Two).Layers[0]).Paths.Select(p => p.Layer).ToArray();

        Assert.Equal(order.Order(), order);
        Assert.Equal([CutLayer.Mark, CutLayer.Dowel, CutLayer.CutInner, CutLayer.CutOuter], order.Distinct());
    }

    [Theory]
    [InlineData(DxfVersion.R12)]
    [InlineData(DxfVersion.R2000)]
    public void On_a_board_each_part_is_cut_inside_before_outside(DxfVersion version)
    {
        var board = Cuts.Create(Two).Boards[0];

        var layers = DxfReader.Read([.. DxfCutFile.Write(BoardDrawing.Create(board), version)]).Entities.Select(e => e.Layer)
            .ToArray();

        // A part ends with its outer edge; within it nothing goes back to an earlier kind of work.
        Assert.Equal(board.Placements.Length, layers.Count(l => l == "CUT_OUTER"));
        string[] rank = ["MARK", "VENT", "DOWEL", "CUT_INNER", "CUT_OUTER"];
        for (var i = 0; i + 1 < layers.Length; i++)
            Assert.True(layers[i] == "CUT_OUTER" || Array.IndexOf(rank, layers[i]) <= Array.IndexOf(rank, layers[i + 1]),
                $"{layers[i]} before {layers[i + 1]}");
        Assert.Equal("CUT_OUTER", layers[^1]);
    }

    [Fact]
    public void Every_kind_of_work_has_a_name_and_colours_of_its_own()
    {
        var layers = Enum.GetValues<CutLayer>();

        Assert.Equal(["MARK", "VENT", "DOWEL", "CUT_INNER", "CUT_OUTER"], layers.Select(l => l.Name()));
        Assert.Equal(layers.Length, layers.Select(l => l.ColourNumber()).Distinct().Count());
        Assert.Equal(layers.Length, layers.Select(l => l.StrokeColour()).Distinct().Count());
    }
}
