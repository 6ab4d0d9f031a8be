using BuckGen.Dxf.Entities;
using BuckGen.Dxf.Tests.Support;

namespace BuckGen.Dxf.Tests.Reading;

public class PolylineTests
{
    [Fact]
    public void A_light_polyline_keeps_bulges_with_their_vertices()
    {
        var polyline = Sample.ReadOne<DxfPolyline>("0 LWPOLYLINE|10 0|20 0|42 0.5|10 8|20 0|10 8|20 6|42 -1|38 2|70 129|90 3");
        Assert.Equal([new(0, 0, 0.5, 2), new(8, 0, 0, 2), new(8, 6, -1, 2)], polyline.Vertices);
        Assert.True(polyline.Closed);
        Assert.Equal("LWPOLYLINE", polyline.Type);
        Assert.False(polyline.HasWidth);
    }

    [Fact]
    public void A_bulge_before_the_first_vertex_is_left_out_and_noted()
    {
        var drawing = Sample.Read(Sample.Entities("0 LWPOLYLINE|42 0.5|10 0|20 0|10 1|20 0"));
        Assert.Equal(0, Assert.IsType<DxfPolyline>(drawing.Entities[0]).Vertices[0].Bulge);
        Assert.Equal(DxfNoteKind.ValueIgnored, Assert.Single(drawing.Notes).Kind);
    }

    [Theory]
    [InlineData("2000000000")]
    [InlineData("99999999999999")]
    [InlineData("-1")]
    public void A_false_count_is_noted_and_not_believed(string count)
    {
        var drawing = Sample.Read(Sample.Entities($"0 LWPOLYLINE|90 {count}|10 0|20 0|10 1|20 0"));
        Assert.Equal(2, Assert.IsType<DxfPolyline>(drawing.Entities[0]).Vertices.Length);
        Assert.Equal(DxfNoteKind.CountMismatch, Assert.Single(drawing.Notes).Kind);
    }

    [Fact]
    public void An_old_polyline_takes_its_vertices_along()
    {
        var polyline = Sample.ReadOne<DxfPolyline>(
            "0 POLYLINE|8 A|66 1|30 4|70 1|0 VERTEX|10 0|20 0|30 9|42 1|0 VERTEX|10 2|20 0|0 SEQEND|8 A");
        Assert.Equal([new(0, 0, 1, 4), new(2, 0, 0, 4)], polyline.Vertices);
        Assert.Equal((true, "POLYLINE", "A", DxfPolylineKind.Flat),
            (polyline.Closed, polyline.Type, polyline.Layer, polyline.Kind));
    }

    [Fact]
    public void The_control_frame_of_a_fitted_curve_is_dropped()
    {
        var polyline = Sample.ReadOne<DxfPolyline>(
            "0 POLYLINE|70 4|0 VERTEX|10 0|20 9|70 16|0 VERTEX|10 1|20 1|70 8|0 VERTEX|10 2|20 2|70 8|0 SEQEND|8 0");
        Assert.True(polyline.CurveFit);
        Assert.Equal([new(1, 1), new(2, 2)], polyline.Vertices);
    }

    [Fact]
    public void A_spatial_polyline_keeps_its_heights()
    {
        var polyline =
            Sample.ReadOne<DxfPolyline>(
                "0 POLYLINE|70 9|0 VERTEX|10 0|20 0|30 2|70 32|0 VERTEX|10 5|20 0|30 3|70 32|0 SEQEND|8 0");
        Assert.Equal(DxfPolylineKind.Spatial, polyline.Kind);
        Assert.Equal([new(0, 0, 0, 2), new(5, 0, 0, 3)], polyline.Vertices);
    }

    [Theory]
    [InlineData(16)]
    [InlineData(64)]
    public void A_mesh_is_distinguished(int flag) =>
        Assert.Equal(
            DxfPolylineKind.Mesh,
            Sample.ReadOne<DxfPolyline>(
                $"0 POLYLINE|70 {flag}|0 VERTEX|10 0|20 0|70 192|0 VERTEX|70 128|71 1|0 SEQEND|8 0").Kind);

    [Theory]
    [InlineData("0 LWPOLYLINE|43 2|10 0|20 0|10 1|20 0")]
    [InlineData("0 LWPOLYLINE|10 0|20 0|40 1|41 2|10 1|20 0")]
    [InlineData("0 POLYLINE|40 1|0 VERTEX|10 0|20 0|0 SEQEND|8 0")]
    [InlineData("0 POLYLINE|70 0|0 VERTEX|10 0|20 0|41 1|0 SEQEND|8 0")]
    public void Widths_are_reported(string tags) => Assert.True(Sample.ReadOne<DxfPolyline>(tags).HasWidth);

    [Fact]
    public void A_missing_SEQEND_is_noted_and_the_next_entity_is_not_lost()
    {
        var drawing = Sample.Read(Sample.Entities($"0 POLYLINE|66 1|0 VERTEX|10 0|20 0|{Sample.Line}"));
        Assert.Equal(["POLYLINE", "LINE"], drawing.Entities.Select(entity => entity.Type));
        Assert.Equal(DxfNoteKind.MissingSequenceEnd, Assert.Single(drawing.Notes).Kind);
    }

    [Fact]
    public void A_vertex_outside_a_polyline_is_refused() =>
        Assert.Equal("VERTEX", Sample.RefusedEntity("0 VERTEX|10 0|20 0").EntityType);

    [Fact]
    public void Empty_and_single_vertex_polylines_are_kept_as_they_are()
    {
        var entities = Sample.Read(Sample.Entities("0 LWPOLYLINE|70 1|0 LWPOLYLINE|10 1|20 2")).Entities;
        Assert.Equal([0, 1], entities.Cast<DxfPolyline>().Select(polyline => polyline.Vertices.Length));
    }
}
