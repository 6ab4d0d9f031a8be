using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;
using BuckGen.Tests.Design.Bucks;
using Xunit;
using static BuckGen.Tests.Intake.Outlines.DxfText;

namespace BuckGen.Tests.Intake.Outlines;

/// <summary>
/// Found by random designs: of an outline of a few thousandths of a millimetre nothing was left, and a base plate had no
/// corners.
/// </summary>
public class OutlineSizeTests
{
    [Fact]
    public void An_outline_that_is_nowhere_wider_than_rounding_is_refused_by_the_reader_and_the_designer_alike()
    {
        // A strip of 9 x 0.0024 mm is joined to a piece of 0.006 x 0.006 mm, so that the loop is no mere line.
        var comb = Loop.Polygon(new(0, 0), new(0.0044, 0), new(0.0044, 0.0108), new(0.0043, 0.0108), new(0.0043, 0.0001),
            new(0.0001, 0.0001), new(0.0001, 0.0108), new(0, 0.0108));
        var refused =
            Assert.Throws<OutlineException>(() =>
                PlainBuck.Create(Region.FromLoops([comb]), PlainBuck.Spec with { Base = new(PlainBuck.Mdf12) }));
        var read = Reading.Refusal(Polyline(true, [.. comb.Segments.Select(s => s.Start)]));

        Assert.Contains("drawn: the outline is 0.0044 x 0.0108 mm and nowhere wider than 0.0025 mm, which is as good as nothing",
            refused.Message, StringComparison.Ordinal);
        Assert.Contains("nowhere wider than 0.0025 mm", read, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_of_a_twentieth_of_a_millimetre_is_made() =>
        Assert.Equal(3,
            PlainBuck.Create(Region.FromLoops([Loop.Rectangle(new(0, 0, 0.05, 0.05))]),
                PlainBuck.Spec with { OutlineAt = OutlineAt.Face, Base = null }).Layers.Length);
}
