using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading;
using BuckGen.Dxf.Tests.Support;

namespace BuckGen.Dxf.Tests.Writing;

public class EntityTests
{
    private static readonly DxfPolyline Slot = new([new(0, 0), new(10, 0, 1), new(10, 4)], true);

    [Fact]
    public void R12_writes_a_polyline_with_vertices_and_an_end() =>
        Assert.Equal(
            "0=POLYLINE 8=0 66=1 10=0.0 20=0.0 30=0.0 70=1 "
            + "0=VERTEX 8=0 10=0.0 20=0.0 30=0.0 0=VERTEX 8=0 10=10.0 20=0.0 30=0.0 42=1.0 0=VERTEX 8=0 10=10.0 20=4.0 "
            + "30=0.0 0=SEQEND 8=0",
            Drawings.EntityTags(Drawings.Create(Slot), DxfVersion.R12));

    [Fact]
    public void R2000_writes_a_light_polyline() =>
        Assert.Equal(
            "0=LWPOLYLINE 5=31 330=11 100=AcDbEntity 8=0 100=AcDbPolyline 90=3 70=1 10=0.0 20=0.0 10=10.0 20=0.0 42=1.0 "
            + "10=10.0 20=4.0",
            Drawings.EntityTags(Drawings.Create(Slot with { Lightweight = false }), DxfVersion.R2000));

    [Theory]
    [InlineData(DxfVersion.R12)]
    [InlineData(DxfVersion.R2000)]
    public void An_open_polyline_has_no_closed_flag(DxfVersion version) =>
        Assert.Contains(" 70=0 ", Drawings.EntityTags(Drawings.Create(Slot with { Closed = false }), version),
            StringComparison.Ordinal);

    [Theory]
    [InlineData(DxfVersion.R12, "0=CIRCLE 8=0 62=5 10=1.0 20=2.0 30=0.0 40=3.0")]
    [InlineData(DxfVersion.R2000, "0=CIRCLE 5=31 330=11 100=AcDbEntity 8=0 62=5 100=AcDbCircle 10=1.0 20=2.0 30=0.0 40=3.0")]
    public void A_circle_with_its_own_colour(DxfVersion version, string expected) =>
        Assert.Equal(expected, Drawings.EntityTags(Drawings.Create(new DxfCircle(new(1, 2), 3) { Colour = 5 }), version));

    [Theory]
    [InlineData(DxfVersion.R12, "0=ARC 8=0 10=1.0 20=2.0 30=0.0 40=3.0 50=350.0 51=80.0")]
    [InlineData(
        DxfVersion.R2000,
        "0=ARC 5=31 330=11 100=AcDbEntity 8=0 100=AcDbCircle 10=1.0 20=2.0 30=0.0 40=3.0 100=AcDbArc 50=350.0 51=80.0")]
    public void An_arc_has_angles_within_one_turn(DxfVersion version, string expected) =>
        Assert.Equal(expected, Drawings.EntityTags(Drawings.Create(new DxfArc(new(1, 2), 3, -10, 440)), version));

    [Theory]
    [InlineData(DxfVersion.R12, "0=LINE 8=0 10=1.0 20=2.0 30=0.0 11=3.0 21=4.0 31=0.0 0=POINT 8=0 10=5.0 20=6.0 30=0.0")]
    [InlineData(
        DxfVersion.R2000,
        "0=LINE 5=31 330=11 100=AcDbEntity 8=0 100=AcDbLine 10=1.0 20=2.0 30=0.0 11=3.0 21=4.0 31=0.0 "
        + "0=POINT 5=32 330=11 100=AcDbEntity 8=0 100=AcDbPoint 10=5.0 20=6.0 30=0.0")]
    public void A_line_and_a_point(DxfVersion version, string expected) =>
        Assert.Equal(
            expected, Drawings.EntityTags(Drawings.Create(new DxfLine(new(1, 2), new(3, 4)), new DxfPointEntity(new(5, 6))),
                version));

    [Fact]
    public void Entities_keep_their_order() =>
        Assert.Equal(
            ["CIRCLE", "ARC", "LINE", "POINT", "POLYLINE"],
            DxfReader.Read(Drawings.Bytes(Drawings.Panel, DxfVersion.R12)).Entities.Select(entity => entity.Type));
}
