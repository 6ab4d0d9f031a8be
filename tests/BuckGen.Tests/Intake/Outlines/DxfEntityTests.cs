using BuckGen.Geometry;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using Xunit;
using static BuckGen.Tests.Intake.Outlines.DxfText;

namespace BuckGen.Tests.Intake.Outlines;

public class DxfEntityTests
{
    private const string FromBehind = "210\n0\n220\n0\n230\n-1\n";
    private const string Tilted = "210\n0\n220\n-1\n230\n0\n";

    [Fact]
    public void An_arc_seen_from_behind_is_mirrored_with_its_sense()
    {
        // A half disc whose arc and chord are both drawn from behind.
        var outline = Reading.Dxf(
            "0\nARC\n8\n0\n10\n-20\n20\n0\n40\n10\n50\n0\n51\n180\n" + FromBehind,
            Line(10, 0, 30, 0));

        Assert.Equal(50 * Math.PI, outline.Region.Area, 1e-9);
        Assert.Equal(10, outline.Region.Bounds.MinX, 1e-9);
        Assert.Equal(10, outline.Region.Bounds.MaxY, 1e-9);
    }

    [Fact]
    public void A_bulge_above_1_is_an_arc_of_more_than_half_a_turn()
    {
        var outline = Reading.Dxf("0\nLWPOLYLINE\n8\n0\n70\n1\n10\n0\n20\n0\n42\n2\n10\n10\n20\n0\n");

        var arc = new Segment(new(0, 0), new(10, 0), 2);
        Assert.Equal(arc.AreaShare, outline.Region.Area, 1e-6);
    }

    [Fact]
    public void An_ellipse_seen_from_behind_keeps_its_place_and_turns_its_sense()
    {
        // From the major axis a quarter turn, clockwise in plan: the lower right quarter.
        var outline = Reading.Dxf(
            "0\nELLIPSE\n8\n0\n10\n0\n20\n0\n11\n20\n21\n0\n40\n0.5\n41\n0\n42\n1.5707963267948966\n" + FromBehind,
            Polyline(false, new(20, 0), new(0, 0), new(0, -10)));

        Assert.Equal(new Vec2(10, -5), outline.Region.Bounds.Centre);
        Assert.Equal(50 * Math.PI, outline.Region.Area, 0.05);
    }

    [Fact]
    public void A_spline_through_points_only_is_read_and_reported()
    {
        var points =
            string.Concat("0 0,20 0,20 20,0 20,0 0".Split(',')
                .Select(p => $"11\n{p.Split(' ')[0]}\n21\n{p.Split(' ')[1]}\n31\n0\n"));
        var outline = Reading.Dxf("0\nSPLINE\n8\n0\n70\n9\n71\n3\n72\n0\n73\n0\n74\n5\n" + points);

        Assert.Equal("spline-through-points", Assert.Single(outline.Notes).Kind);
        // Smooth all round, so it is nearly the circle through the four corners.
        Assert.InRange(outline.Region.Area, 0.93 * 200 * Math.PI, 1.02 * 200 * Math.PI);
    }

    [Theory]
    [InlineData("0\nCIRCLE\n8\n0\n10\n0\n20\n0\n40\n5\n" + Tilted, "its extrusion is tilted")]
    [InlineData("0\nLINE\n8\n0\n10\n0\n20\n0\n30\n0\n11\n9\n21\n0\n31\n40\n", "z from 0 to 40")]
    public void What_does_not_lie_in_plan_is_refused(string entity, string why)
    {
        var refusal = Reading.Refusal(entity);

        Assert.Contains("not in the XY plane", refusal);
        Assert.Contains(why, refusal);
    }

    [Fact]
    public void Writing_is_reported_and_not_cut()
    {
        var outline = Reading.Dxf(Rectangle(0, 0, 80, 50), "0\nTEXT\n8\nNOTES\n10\n5\n20\n5\n40\n3\n1\nHello\n");

        var note = Assert.Single(outline.Notes);
        Assert.Equal(("text-ignored", "left out: 1 TEXT on layer NOTES. Convert text to outlines first if it is to be cut."),
            (note.Kind, note.Message));
    }

    [Fact]
    public void A_hatch_counts_only_where_nothing_else_is_drawn()
    {
        const string hatch = "0\nHATCH\n8\n0\n10\n0\n20\n0\n30\n0\n2\nSOLID\n70\n1\n71\n0\n91\n1\n92\n2\n72\n0\n73\n1\n93\n4\n"
            + "10\n0\n20\n0\n10\n30\n20\n0\n10\n30\n20\n20\n10\n0\n20\n20\n97\n0\n75\n0\n76\n1\n98\n0\n";

        Assert.Equal(600, Reading.Dxf(hatch).Region.Area, 1e-9);
        var beside = Reading.Dxf(hatch, Circle(100, 0, 5));
        Assert.Equal(25 * Math.PI, beside.Region.Area, 1e-9);
        Assert.Equal("hatch-ignored", Assert.Single(beside.Notes).Kind);
    }

    [Fact]
    public void Only_the_layers_asked_for_are_taken()
    {
        var content = File(Circle(0, 0, 5, "CUT"), Circle(0, 0, 20, "NOTES"));

        var outline = OutlineReader.Read(content, "test.dxf", OutlineOptions.Default with { Layers = ["cut"] });

        Assert.Equal(25 * Math.PI, outline.Region.Area, 1e-9);
        Assert.Contains("1 CIRCLE on layer NOTES (layer not asked for)", Assert.Single(outline.Notes).Message);
        Assert.Contains("NOTES (layer not asked for)",
            Reading.Refusal(content, OutlineOptions.Default with { Layers = ["ENGRAVE"] }));
    }
}
