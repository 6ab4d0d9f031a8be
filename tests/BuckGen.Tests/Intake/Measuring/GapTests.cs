using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Measuring;
using Xunit;
using static BuckGen.Tests.Intake.Measuring.Measured;

namespace BuckGen.Tests.Intake.Measuring;

public class GapTests
{
    [Fact]
    public void Two_squares_at_a_distance_leave_a_gap_between_parts()
    {
        var gap = GapOf(Shapes.Union(Shapes.RectangleAt(0, 0, 20, 20), Shapes.RectangleAt(22.5, 4, 20, 20)));

        Is(2.5, GapKind.BetweenParts, gap);
        At(21.25, 12, gap.Middle);
    }

    [Fact]
    public void Squares_corner_to_corner_leave_a_gap_from_tip_to_tip()
    {
        var gap = GapOf(Shapes.Union(Shapes.RectangleAt(0, 0, 20, 20), Shapes.RectangleAt(23, 24, 20, 20)));

        Is(5, GapKind.BetweenParts, gap);
        At(21.5, 22, gap.Middle);
    }

    [Fact]
    public void Two_discs_leave_a_gap_on_the_line_of_their_centres()
    {
        var gap = GapOf(Shapes.Union(Shapes.DiscAt(0, 0, 10), Shapes.DiscAt(18, 24, 15)));

        Is(5, GapKind.BetweenParts, gap);
        At(12.5 * 0.6, 12.5 * 0.8, gap.Middle);
    }

    [Fact]
    public void A_disc_beside_a_square_leaves_a_gap_square_to_its_side() =>
        Is(1.5, GapKind.BetweenParts, GapOf(Shapes.Union(Shapes.RectangleAt(0, 0, 20, 20), Shapes.DiscAt(31.5, 8, 10))));

    [Fact]
    public void A_disc_in_a_ring_leaves_a_gap_between_parts() =>
        Is(2, GapKind.BetweenParts, GapOf(Shapes.Union(Shapes.Ring(30, 20), Shapes.DiscAt(0, 3, 15))));

    [Fact]
    public void A_disc_round_one_centre_with_its_ring_leaves_the_same_gap_all_round() =>
        Is(5, GapKind.BetweenParts, GapOf(Shapes.Union(Shapes.Ring(30, 20), Shapes.Disc(15))));

    [Theory]
    [InlineData(3)]
    [InlineData(10)]
    public void A_slot_of_one_part_is_reported_as_such(double width)
    {
        // 12 mm deep, open above.
        var gap = GapOf(
            Shapes.Polygon((0, 0), (60, 0), (60, 30), (30 + width, 30), (30 + width, 18), (30, 18), (30, 30), (0, 30)));

        Is(width, GapKind.AcrossSlot, gap);
        Assert.Equal(30 + width / 2, gap.Middle.X, Near);
    }

    [Fact]
    public void A_slot_is_measured_at_its_mouth_when_its_bottom_is_too_near_to_its_middle()
    {
        // 8 mm deep and 10 mm wide: the circle has room only half out of it.
        var gap = GapOf(Shapes.Polygon((0, 0), (60, 0), (60, 30), (40, 30), (40, 22), (30, 22), (30, 30), (0, 30)));

        Is(10, GapKind.AcrossSlot, gap);
        At(35, 30, gap.Middle);
    }

    [Fact]
    public void A_dent_is_no_gap() =>
        Assert.Null(
            Measure(Shapes.Polygon((0, 0), (60, 0), (60, 30), (40, 30), (40, 26), (30, 26), (30, 30), (0, 30))).NarrowestGap);

    [Fact]
    public void The_angle_between_the_legs_of_an_L_is_no_gap() =>
        Assert.Null(Measure(Shapes.Polygon((0, 0), (60, 0), (60, 10), (10, 10), (10, 50), (0, 50))).NarrowestGap);

    [Fact]
    public void The_notch_of_a_V_is_no_gap() =>
        Assert.Null(Measure(Shapes.Polygon((0, 0), (60, 0), (60, 30), (32, 30), (30, 5), (28, 30), (0, 30))).NarrowestGap);

    [Fact]
    public void A_hole_is_as_narrow_as_it_is_wide() => Is(34, GapKind.InsideHole, GapOf(Shapes.Ring(20, 17)));

    [Fact]
    public void A_slot_in_a_hole_belongs_to_the_hole() =>
        Is(6, GapKind.InsideHole, GapOf(Shapes.Counter(60, 40, 30, 6)));

    [Fact]
    public void Holes_of_several_parts_are_reported_as_holes()
    {
        var ring = Shapes.Counter(60, 40, 30, 6);

        Is(6, GapKind.InsideHole,
            GapOf(Shapes.Union(Shapes.RectangleAt(-90, 0, 20, 20), Shapes.RectangleAt(-60, 0, 20, 20), ring)));
    }

    [Fact]
    public void A_half_round_groove_is_as_wide_as_its_mouth()
    {
        var gap = GapOf(
            Region.FromLoops(
                [Loop.FromCorners(
                    [(new(0, 0), 0), (new(40, 0), 0), (new(40, 20), 0), (new(25, 20), -1), (new(15, 20), 0), (new(0, 20), 0)])]));

        Is(10, GapKind.AcrossSlot, gap);
        At(20, 20, gap.Middle);
    }

    [Fact]
    public void Where_parts_touch_no_gap_is_measured() =>
        Assert.Null(Measure(Shapes.Union(Shapes.RectangleAt(0, 0, 10, 10), Shapes.RectangleAt(10, 10, 10, 10))).NarrowestGap);

    [Fact]
    public void A_convex_part_has_no_gap() => Assert.Null(Measure(Shapes.Slot(30, 4)).NarrowestGap);

    [Fact]
    public void An_outline_without_anything_has_no_measures()
    {
        var measures = Measure(Region.Empty);

        Assert.Equal(new(null, null, null, null, null, 0), measures);
    }

    private static void Is(double width, GapKind kind, Gap gap)
    {
        Assert.Equal(width, gap.Width, Near);
        Assert.Equal(kind, gap.Kind);
    }
}
