using BuckGen.Cutting.CutFiles;
using BuckGen.Cutting.CutPaths;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Dxf;
using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Tests.Design.Bucks;
using BuckGen.Tests.Intake.Outlines;
using CsCheck;
using Xunit;

namespace BuckGen.Tests.Cutting.CutFiles;

public class DxfCutFileTests
{
    [Theory]
    [InlineData(DxfVersion.R12)]
    [InlineData(DxfVersion.R2000)]
    public void An_offset_circle_leaves_as_a_circle(DxfVersion version)
    {
        var entities = Entities(SmallDesign.Drawing, version);

        // The hole of 12 mm radius has shrunk by 24·tan 5° (trigonometry).
        var hole = Assert.IsType<DxfCircle>(Assert.Single(entities, e => e.Layer == "CUT_INNER"));
        Assert.Equal(12 - 24 * Math.Tan(5 * Math.PI / 180), hole.Radius, 1e-4);
        Assert.All(entities.Where(e => e.Layer == "DOWEL"), e => Assert.IsType<DxfCircle>(e));
        Assert.Equal(3, entities.Count(e => e.Layer == "DOWEL"));
    }

    [Theory]
    [InlineData(DxfVersion.R12)]
    [InlineData(DxfVersion.R2000)]
    public void A_slot_leaves_as_one_closed_polyline_of_two_lines_and_two_arcs(DxfVersion version)
    {
        var outer = Assert
            .IsType<DxfPolyline>(Assert.Single(Entities(SmallDesign.Drawing, version), e => e.Layer == "CUT_OUTER"));

        Assert.True(outer.Closed);
        Assert.Equal(4, outer.Vertices.Length);
        // A half circle has bulge 1.
        var bulges = outer.Vertices.Select(v => Math.Round(v.Bulge, 6)).ToArray();
        Assert.Equal(2, bulges.Count(b => b == 1));
        Assert.Equal(2, bulges.Count(b => b == 0));
    }

    /// <summary>
    /// Found by a random design: a drawing as far away as one may be was read, and its layers could not be written.
    /// </summary>
    [Fact]
    public void What_is_drawn_as_far_away_as_may_be_read_can_be_written()
    {
        var drawn = Reading.Dxf(Intake.Outlines.DxfText.Rectangle(-1e8, 1e8 - 50, 80, 50));
        var design = BuckDesign.Create(drawn, PlainBuck.Spec with { OutlineAt = OutlineAt.Face });

        Assert.Equal(3, design.Layers.Length);
        Assert.All(design.Layers,
            layer => Assert.Contains(Entities(LayerDrawing.Create(layer), DxfVersion.R12), e => e.Layer == "CUT_OUTER"));
    }

    [Fact]
    public void Any_region_is_read_back_as_it_was() =>
        Gen.Select(RandomRegion.Islands, Gen.Enum<DxfVersion>()).Sample((region, version) =>
        {
            var drawing =
                new CutDrawing("random", [.. region.Loops.Select(l => CutPath.FromLoop(CutLayer.CutOuter, l))], region.Bounds);

            var read = BuckGen.Intake.Reading.OutlineReader.Read([.. DxfCutFile.Write(drawing, version)], "random.dxf");

            Assert.Equal(region.Area, read.Region.Area, 0.01);
            Assert.Equal(region.HoleCount, read.Region.HoleCount);
            Assert.Empty(read.Repairs);
        }, iter: 100);

    [Fact]
    public void Only_layers_in_use_are_declared() =>
        Assert.Equal(["CUT_OUTER"],
            Read(new("one", [CutPath.FromLoop(CutLayer.CutOuter, Loop.Circle(new(0, 0), 5))], new(-5, -5, 5, 5))).Layers
            .Select(l => l.Name).Where(n => n != "0"));

    [Theory]
    [InlineData(DxfVersion.R12)]
    [InlineData(DxfVersion.R2000)]
    public void The_file_says_that_it_is_in_millimetres(DxfVersion version) =>
        // $INSUNITS 4 is mm in the DXF reference.
        Assert.Equal(4, Read(SmallDesign.Drawing, version).InsertionUnits);

    private static DxfDrawing Read(CutDrawing drawing, DxfVersion version = DxfVersion.R12) =>
        DxfReader.Read([.. DxfCutFile.Write(drawing, version)]);

    private static DxfEntity[] Entities(CutDrawing drawing, DxfVersion version) => [.. Read(drawing, version).Entities];
}
