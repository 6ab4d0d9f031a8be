using BuckGen.Tests.Intake.Outlines;
using Xunit;
using static BuckGen.Tests.Intake.Outlines.DxfText;
using static BuckGen.Tests.Intake.ReaderRules.Files;

namespace BuckGen.Tests.Intake.ReaderRules;

/// <summary>Which entities are mirrored when they are seen from behind, and which way arcs run.</summary>
public class ObjectPlaneRules
{
    private const string FromBehind = "|210 0|220 0|230 -1";
    private static readonly string Block = Blocks(DxfText.Block("A", Rectangle(0, 0, 4, 2)));

    [Theory]
    [InlineData("0 CIRCLE|10 10|20 0|40 2", -12, -8)]
    [InlineData("0 LWPOLYLINE|70 1|10 10|20 0|10 14|20 0|10 14|20 3", -14, -10)]
    [InlineData("0 LWPOLYLINE|70 1|10 10|20 0|42 -1|10 10|20 4", -10, -8)]
    [InlineData("0 LWPOLYLINE|70 1|10 10|20 0|42 1|10 10|20 4", -12, -10)]
    [InlineData("0 POLYLINE|66 1|70 1{0}|0 VERTEX|10 10|20 0|42 -1|0 VERTEX|10 10|20 4|0 SEQEND", -10, -8)]
    [InlineData("0 INSERT|2 A|10 10|20 0", -14, -10)]
    public void Flat_entities_and_their_bulges_are_mirrored(string tags, double left, double right)
    {
        var placed = tags.Contains("{0}") ? tags.Replace("{0}", FromBehind) : tags + FromBehind;

        var bounds = Read(Block, Tags(placed)).Region.Bounds;

        Assert.Equal(left, bounds.MinX, 1e-9);
        Assert.Equal(right, bounds.MaxX, 1e-9);
    }

    [Theory]
    [InlineData("0 ELLIPSE|10 10|20 0|11 4|21 0|40 0.5", 6, 14)]
    [InlineData("0 SPLINE|71 1|40 0|40 0|40 1|40 2|40 3|40 3|10 10|20 0|10 14|20 0|10 14|20 3|10 10|20 0", 10, 14)]
    [InlineData("0 POLYLINE|66 1|70 9{0}|0 VERTEX|10 10|20 0|0 VERTEX|10 14|20 0|0 VERTEX|10 14|20 3|0 SEQEND", 10, 14)]
    [InlineData("0 LINE|10 10|20 0|11 14|21 0{0}|0 LINE|10 14|20 0|11 14|21 3{0}|0 LINE|10 14|20 3|11 10|21 0", 10, 14)]
    public void Entities_in_the_coordinates_of_the_drawing_stay_where_they_are(string tags, double left, double right)
    {
        var placed = tags.Contains("{0}") ? tags.Replace("{0}", FromBehind) : tags + FromBehind;

        var bounds = Read("", Tags(placed)).Region.Bounds;

        Assert.Equal(left, bounds.MinX, 0.01);
        Assert.Equal(right, bounds.MaxX, 0.01);
    }

    [Theory]
    [InlineData(0, 180)]
    [InlineData(360, 540)]
    [InlineData(-360, -180)]
    [InlineData(-720, 180)]
    public void Angles_of_an_arc_repeat_after_a_whole_turn(double from, double to) =>
        Assert.Equal(new(-5, 0, 5, 5), Half(from, to));

    [Theory]
    [InlineData(180, 0)]
    [InlineData(180, 360)]
    [InlineData(-180, 0)]
    [InlineData(540, 360)]
    public void An_arc_always_runs_counter_clockwise(double from, double to) => Assert.Equal(new(-5, -5, 5, 0), Half(from, to));

    /// <summary>Bounds of an arc of radius 5 between two angles with its chord, to nine digits.</summary>
    private static BuckGen.Geometry.Bounds Half(double from, double to)
    {
        var b = Read("", Tags(FormattableString.Invariant($"0 ARC|10 0|20 0|40 5|50 {from}|51 {to}")),
            Line(-5, 0, 5, 0)).Region.Bounds;
        return new(Math.Round(b.MinX, 9) + 0, Math.Round(b.MinY, 9) + 0, Math.Round(b.MaxX, 9) + 0, Math.Round(b.MaxY, 9) + 0);
    }
}
