using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Outlines;
using BuckGen.Output.Reports;
using Xunit;

namespace BuckGen.Tests.Output.Reports;

public class MeasuresReportTests
{
    private static readonly Region Parts = Shapes.Union(Shapes.RectangleAt(0, 0, 20, 16), Shapes.RectangleAt(23, 0, 20, 16));

    /// <summary>A comb of two teeth, 3 mm apart.</summary>
    private static readonly Region Slot =
        Shapes.Polygon((0, 0), (43, 0), (43, 30), (23, 30), (23, 10), (20, 10), (20, 30), (0, 30));

    [Fact]
    public void A_gap_is_called_by_what_lies_on_its_sides()
    {
        Assert.Equal(("between-parts", 3), Gap(Parts));
        Assert.Equal(("across-slot", 3), Gap(Slot));
        Assert.Equal(("inside-hole", 3), Gap(Shapes.Counter(40, 30, 12, 3)));

        static (string, double) Gap(Region region) => (Report(region).NarrowestGap!.Kind, Report(region).NarrowestGap!.Width);
    }

    /// <summary>Two programs that save one drawing begin its loops at different corners; a reader compares the numbers.</summary>
    [Fact]
    public void The_ends_of_a_width_stand_from_left_to_right_wherever_a_loop_begins()
    {
        foreach (var region in (Region[])[Parts, Slot])
        {
            var first = Report(region);
            Assert.True(first.NarrowestGap!.From.X < first.NarrowestGap.To.X);
            Assert.NotNull(first.NarrowestNeck);
            for (var turn = 1; turn < 8; turn++)
                Assert.Equal(first, Report(Region.FromLoops(region.Loops.Reverse()
                    .Select(l => Loop.FromSegments([.. l.Segments[(turn % l.Segments.Length)..],
                        .. l.Segments[..(turn % l.Segments.Length)]])))));
        }
    }

    private static MeasuresReport Report(Region region) => OutlineReport.Create(Outline.FromRegion("drawn", region)).Measures;
}
