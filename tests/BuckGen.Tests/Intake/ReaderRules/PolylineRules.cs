using BuckGen.Dxf.Reading;
using BuckGen.Geometry;
using BuckGen.Tests.Intake.Outlines;
using Xunit;
using static BuckGen.Tests.Intake.ReaderRules.Files;

namespace BuckGen.Tests.Intake.ReaderRules;

/// <summary>Flags, counts and bulges of polylines.</summary>
public class PolylineRules
{
    private const string Corners = "10 0|20 0|10 9|20 0|10 9|20 9";
    private const string Vertices = "0 VERTEX|10 0|20 0|0 VERTEX|10 9|20 0|0 VERTEX|10 9|20 9|0 SEQEND";

    [Theory]
    [InlineData("0 LWPOLYLINE|70 1|" + Corners)]
    [InlineData("0 LWPOLYLINE|70 129|" + Corners)]
    [InlineData("0 LWPOLYLINE|70 128|" + Corners + "|10 0|20 0")]
    [InlineData("0 POLYLINE|66 1|70 1|" + Vertices)]
    [InlineData("0 POLYLINE|66 1|70 129|" + Vertices)]
    [InlineData("0 POLYLINE|66 1|70 9|" + Vertices)]
    public void The_closing_bit_counts_among_others_and_a_repeated_first_corner_closes_too(string tags)
    {
        var outline = Read("", Tags(tags));

        Assert.Equal(40.5, outline.Region.Area, 1e-9);
        Assert.Empty(outline.Repairs);
    }

    [Theory]
    [InlineData("0 LWPOLYLINE|70 128|" + Corners)]
    [InlineData("0 POLYLINE|66 1|70 128|" + Vertices)]
    public void Other_bits_do_not_close(string tags) => Assert.Contains("open line", RefusalOf(Entities(tags)));

    [Theory]
    [InlineData("0 LWPOLYLINE|70 1")]
    [InlineData("0 LWPOLYLINE|70 1|10 3|20 3")]
    [InlineData("0 LWPOLYLINE|70 1|10 3|20 3|10 3|20 3")]
    [InlineData("0 POLYLINE|66 1|70 1|0 SEQEND")]
    [InlineData("0 POLYLINE|66 1|70 0|0 VERTEX|10 3|20 3|0 SEQEND")]
    [InlineData("0 CIRCLE|10 3|20 3|40 0")]
    [InlineData("0 ARC|10 3|20 3|40 0|50 0|51 90")]
    [InlineData("0 ELLIPSE|10 3|20 3|11 0|21 0|40 1")]
    [InlineData("0 LINE|10 3|20 3|11 3|21 3")]
    public void What_has_no_size_is_dropped_and_counted(string tags)
    {
        var outline = Read("", DxfText.Circle(0, 0, 50), Tags(tags));

        Assert.Equal(1, outline.LoopCount);
        var repair = Assert.Single(outline.Repairs);
        Assert.Equal(("zero-length-dropped", 1), (repair.Kind, repair.Count));
    }

    [Theory]
    [InlineData("0 LWPOLYLINE|90 2000000000|70 1|" + Corners)]
    [InlineData("0 SPLINE|71 1|72 2000000000|73 2000000000|74 2000000000|40 0|40 0|40 1|40 1|10 0|20 0|10 9|20 9")]
    [InlineData("0 HATCH|91 2000000000|92 2|72 0|73 1|93 2000000000|" + Corners)]
    public void Room_is_never_made_by_a_stated_count(string tags)
    {
        var file = Entities(tags);
        _ = DxfReader.Read(file);
        var before = GC.GetAllocatedBytesForCurrentThread();

        Assert.Single(DxfReader.Read(file).Entities);

        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 1_000_000);
    }

    [Theory]
    [InlineData(1.0, Math.PI)]
    [InlineData(0.41421356237309503, Math.PI / 2)]
    [InlineData(2.414213562373095, 1.5 * Math.PI)]
    public void A_bulge_is_the_tangent_of_a_quarter_of_the_angle(double bulge, double angle)
    {
        var outline = Read("", DxfText.Format(new(new(0, 0), new(10, 0), bulge)), DxfText.Line(10, 0, 0, 0));

        var radius = 5 / Math.Sin(angle / 2);
        Assert.Equal(radius * radius * (angle - Math.Sin(angle)) / 2, outline.Region.Area, 1e-6);
    }

    [Fact]
    public void A_bulge_above_0_lies_to_the_right_of_the_way_and_below_0_to_the_left()
    {
        Assert.Equal(new Bounds(0, -5, 10, 0), Rounded("42 1"));
        Assert.Equal(new Bounds(0, 0, 10, 5), Rounded("42 -1"));

        static Bounds Rounded(string bulge)
        {
            var b = Read("", Tags($"0 LWPOLYLINE|70 1|10 0|20 0|{bulge}|10 10|20 0")).Region.Bounds;
            return new(Math.Round(b.MinX, 9) + 0, Math.Round(b.MinY, 9) + 0, Math.Round(b.MaxX, 9) + 0,
                Math.Round(b.MaxY, 9) + 0);
        }
    }
}
