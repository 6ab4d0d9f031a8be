using System.Text;
using System.Xml.Linq;
using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutFiles;
using BuckGen.Cutting.CutPaths;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Reading;
using BuckGen.Tests.Cutting.Boards;
using CsCheck;
using Xunit;

namespace BuckGen.Tests.Cutting.CutFiles;

public class SvgCutFileTests
{
    [Fact]
    public void A_board_is_drawn_in_real_size()
    {
        var svg = Parse(BoardDrawing.Create(Cuts.Create(Shapes.Rectangle(100, 60)).Boards[0]));

        Assert.Equal("600mm", svg.Attribute("width")!.Value);
        Assert.Equal("400mm", svg.Attribute("height")!.Value);
        Assert.Equal("0 0 600 400", svg.Attribute("viewBox")!.Value);
    }

    [Fact]
    public void Each_kind_of_work_is_a_group_in_the_order_of_cutting()
    {
        var svg = Parse(SmallDesign.Drawing);

        Assert.Equal(["MARK", "DOWEL", "CUT_INNER", "CUT_OUTER"], svg.Elements().Where(e => e.Name.LocalName == "g")
            .Select(e => e.Attribute("id")!.Value));
    }

    [Fact]
    public void A_circle_stays_a_circle()
    {
        var hole = Parse(SmallDesign.Drawing).Descendants().Single(e => e.Parent?.Attribute("id")?.Value == "CUT_INNER");

        Assert.Equal("circle", hole.Name.LocalName);
        Assert.Equal("9.9003", hole.Attribute("r")!.Value);
    }

    [Fact]
    public void A_title_with_signs_of_XML_is_escaped() =>
        Assert.Equal("A < B & \"C\"",
            Parse(new("A < B & \"C\"", [CutPath.FromLoop(CutLayer.CutOuter, Loop.Circle(new(0, 0), 5))], new(-5, -5, 5, 5)))
            .Elements().First().Value);

    [Fact]
    public void Any_region_is_read_back_the_right_way_up_and_in_its_size() =>
        RandomRegion.Islands.Sample(region =>
        {
            var drawing =
                new CutDrawing("random", [.. region.Loops.Select(l => CutPath.FromLoop(CutLayer.CutOuter, l))], region.Bounds);

            var read = OutlineReader.Read([.. SvgCutFile.Write(drawing)], "random.svg").Region;

            Assert.Equal(region.Area, read.Area, 0.02);
            // Mirrored or upside down the outline would lie elsewhere in its own bounds.
            var back = read.Transformed(Affine.Translation(region.Bounds.LowerLeft - read.Bounds.LowerLeft));
            Assert.All(region.Segments, s => Assert.InRange(back.DistanceToEdge(s.PointAt(0.5)), 0, 0.01));
        }, iter: 100);

    private static XElement Parse(CutDrawing drawing) =>
        XDocument.Parse(Encoding.UTF8.GetString([.. SvgCutFile.Write(drawing)])).Root!;
}
