using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Tests.Support;

namespace BuckGen.Dxf.Tests.Reading;

public class HatchTests
{
    [Fact]
    public void A_polyline_boundary_is_a_closed_polyline()
    {
        var hatch = Sample.ReadOne<DxfHatch>(
            "0 HATCH|10 0|20 0|2 SOLID|91 2|92 3|72 1|73 1|93 3|10 0|20 0|42 0|10 9|20 0|42 1|10 9|20 9|42 0|97 0"
            + "|92 2|72 0|73 1|93 2|10 1|20 1|10 2|20 2|97 0|75 0|76 1|98 1|10 7|20 7");
        Assert.Equal(2, hatch.Paths.Length);
        var outline = Assert.IsType<DxfPolyline>(Assert.Single(hatch.Paths[0].Edges));
        Assert.Equal([new(0, 0), new(9, 0, 1), new(9, 9)], outline.Vertices);
        Assert.True(outline.Closed);
    }

    [Fact]
    public void Edges_become_entities_and_clockwise_arcs_are_turned_round()
    {
        var hatch = Sample.ReadOne<DxfHatch>(
            "0 HATCH|91 1|92 1|93 4|72 1|10 0|20 0|11 9|21 0|72 2|10 5|20 5|40 2|50 10|51 100|73 0"
            + "|72 3|10 1|20 1|11 4|21 0|40 0.5|50 0|51 180|73 1"
            + "|72 4|94 1|73 0|74 0|95 4|96 2|40 0|40 0|40 1|40 1|10 0|20 0|10 3|20 3|97 0|75 0");
        var edges = Assert.Single(hatch.Paths).Edges;
        Assert.Equal(new DxfLine(new(0, 0), new(9, 0)), edges[0] with { Line = 0 });
        Assert.Equal(new DxfArc(new(5, 5), 2, -100, -10), edges[1] with { Line = 0 });
        Assert.Equal(new DxfEllipse(new(1, 1), new(4, 0), 0.5, 0, Math.PI), edges[2] with { Line = 0 });
        Assert.Equal([new(0, 0), new(3, 3)], Assert.IsType<DxfSpline>(edges[3]).ControlPoints);
    }
}
