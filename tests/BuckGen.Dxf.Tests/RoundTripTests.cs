using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Reading;
using BuckGen.Dxf.Tests.Support;
using CsCheck;

namespace BuckGen.Dxf.Tests;

public class RoundTripTests
{
    // Whole micrometres, so that six decimals lose nothing.
    private static readonly Gen<double> Coordinate = Gen.Int[-1_000_000, 1_000_000].Select(i => i / 1000.0);
    private static readonly Gen<DxfPoint> Point = Gen.Select(Coordinate, Coordinate).Select((x, y) => new DxfPoint(x, y));
    private static readonly Gen<double> Radius = Gen.Int[1, 100_000].Select(i => i / 1000.0);
    private static readonly Gen<double> Degrees = Gen.Int[0, 359].Select(i => (double)i);

    private static readonly Gen<DxfEntity> Entity = Gen.OneOf(
        Gen.Select(Point, Point).Where((a, b) => a != b).Select((a, b) => (DxfEntity)new DxfLine(a, b)),
        Gen.Select(Point, Radius).Select((c, r) => (DxfEntity)new DxfCircle(c, r)),
        Gen.Select(Point, Radius, Degrees, Degrees).Where((_, _, a, b) => a != b)
            .Select((c, r, a, b) => (DxfEntity)new DxfArc(c, r, a, b)),
        Point.Select(p => (DxfEntity)new DxfPointEntity(p)));

    [Theory]
    [InlineData(DxfVersion.R12)]
    [InlineData(DxfVersion.R2000)]
    public void What_is_written_is_read_back_the_same(DxfVersion version) =>
        Entity.Array[1, 8].Sample(
            entities =>
            {
                var back = DxfReader.Read(Drawings.Bytes(Drawings.Create(entities), version));
                Assert.Equal(entities, back.Entities.Select(entity => entity with { Line = 0 }));
                Assert.Empty(back.Notes);
            },
            iter: 200);

    [Theory]
    [InlineData(DxfVersion.R12)]
    [InlineData(DxfVersion.R2000)]
    public void A_file_that_is_read_and_written_again_has_the_same_bytes(DxfVersion version)
    {
        var first = Drawings.Bytes(Drawings.Panel, version);
        Assert.Equal(first, Drawings.Bytes(DxfReader.Read(first), version));
    }

    [Fact]
    public void Polylines_come_back_with_their_vertices()
    {
        var outline = Assert.IsType<DxfPolyline>(Drawings.Panel.Entities[4]);
        foreach (var version in Enum.GetValues<DxfVersion>())
        {
            var back = Assert.IsType<DxfPolyline>(DxfReader.Read(Drawings.Bytes(Drawings.Panel, version)).Entities[4]);
            Assert.Equal(outline.Vertices, back.Vertices);
            Assert.Equal((true, "CUT_OUTER", version == DxfVersion.R2000), (back.Closed, back.Layer, back.Lightweight));
        }
    }
}
