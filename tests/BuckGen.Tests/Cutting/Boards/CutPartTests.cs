using BuckGen.Cutting.Boards;
using BuckGen.Cutting.Seams;
using BuckGen.Cutting.CutPaths;
using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using BuckGen.Tests.Design.Bucks;
using Xunit;

namespace BuckGen.Tests.Cutting.Boards;

/// <summary>
/// One piece of 60 x 60 mm, cut with a kerf of 0.2 mm: its outer cut runs 0.1 mm outside, and inner ones 0.1 mm inside.
/// </summary>
public class CutPartTests
{
    [Theory]
    // A hole of 0.1 + r leaves a path of radius r, which is r wide on average: below 0.05 mm it would be a burnt dot.
    [InlineData(0.149, false)]
    [InlineData(0.151, true)]
    public void A_hole_of_which_next_to_nothing_is_left_is_reported_and_not_cut(double radius, bool cut)
    {
        var part = Part(Region.FromLoops([Loop.Rectangle(new(0, 0, 60, 60)), Loop.Circle(new(20, 40), radius)]));

        Assert.Equal(cut ? 1 : 0, part.Loops(CutLayer.CutInner).Length);
        Assert.Equal(cut, part.Lost is null);
        if (!cut) Assert.Equal(0, part.Lost!.Value.DistanceTo(new(20, 40)), 1e-6);
    }

    [Fact]
    public void Marks_do_not_count_as_cut()
    {
        var part = Part(Shapes.Rectangle(60, 60), sandTo: Loop.Rectangle(new(10, 10, 50, 50)));

        Assert.Equal(160, Assert.Single(part.Paths, p => p.Layer == CutLayer.Mark).Length, 1e-9);
        Assert.Equal(240 + 2 * Math.PI * 0.1, part.CutLength, 1e-6);
        // An opening of 20 x 20 mm is cut as well, 19.8 x 19.8 mm.
        Assert.Equal(240 + 2 * Math.PI * 0.1 + 4 * 19.8, Part(Shapes.Counter(60, 60, 20, 20)).CutLength, 1e-6);
    }

    [Fact]
    public void A_line_that_starts_on_the_piece_is_marked_on_it() =>
        Assert.Single(Marks(Loop.Polygon(new(30, 30), new(100, 30), new(100, 40), new(100, 20))));

    [Fact]
    public void A_line_that_starts_outside_is_marked_where_most_of_its_pieces_lie()
    {
        // Of these four pieces the middles of three lie on it, of the other four two, and of the last none.
        Assert.Single(Marks(Loop.Polygon(new(-1, 30), new(10, 50), new(50, 30), new(-5, 35))));
        Assert.Empty(Marks(Loop.Polygon(new(-30, 30), new(10, 50), new(50, 30), new(10, 10))));
        Assert.Empty(Marks(Loop.Polygon(new(-30, 30), new(-10, 50), new(-5, 30), new(-10, 10))));
    }

    [Fact]
    public void The_area_is_that_of_the_finished_piece_and_the_bounds_those_of_the_cut()
    {
        var part = Part(Shapes.Counter(60, 60, 20, 20));

        Assert.Equal(3200, part.Area, 1e-9);
        Assert.Equal((60.2, -0.1), (Math.Round(part.Bounds.Width, 9), Math.Round(part.Bounds.MinX, 9)));
        Assert.Equal("3A", part.Name);
    }

    [Theory]
    // Half the kerf is 0.1 mm: four times that and 0.2 mm are 0.6 mm.
    [InlineData(0.599, false)]
    [InlineData(0.601, true)]
    public void A_place_that_the_cut_misses_by_more_than_its_corners_is_lost(double away, bool lost)
    {
        var nominal = new Island(Loop.Rectangle(new(0, 0, 60, 60)), []);
        var made = new Made(Shapes.RectangleAt(away, 0, 60 - away, 60));
        var path = Shapes.RectangleAt(0.501, 0, 59.499, 60).Islands[0];

        var place = KerfLoss.Find(nominal, path, 0.1, made, default);

        Assert.Equal(lost ? new Vec2(0, 30) : null, place);
        Assert.Equal(-0.1, made.Distance);
    }

    [Fact]
    public void A_path_near_the_whole_edge_is_not_moved_back_to_find_a_loss()
    {
        var nominal = new Island(Loop.Rectangle(new(0, 0, 60, 60)), []);
        var made = new Made(Shapes.Rectangle(10, 10));

        Assert.Null(KerfLoss.Find(nominal, Shapes.RectangleAt(0.499, 0, 59.501, 60).Islands[0], 0.1, made, default));
        Assert.Equal(0, made.Distance);
    }

    private static CutPath[] Marks(Loop line) =>
        [.. Part(Shapes.Rectangle(60, 60), line).Paths.Where(p => p.Layer == CutLayer.Mark)];

    private static CutPart Part(Region shape, params Loop[] sandTo)
    {
        var layer = new Layer(3, LayerRole.Wall, PlainBuck.Mdf12, 24, 36, [new("A", shape.Islands[0], [], [], null)],
            [.. sandTo], []);
        var piece = new NamedPart(layer.NameOf(layer.Parts[0]), layer.Parts[0]);
        return CutPart.FromPiece(layer, piece, new(Kerf: 0.2), new ArcOffsetter(), default);
    }

    /// <summary>An offset with a given result.</summary>
    private sealed class Made(Region result) : IOffsetter
    {
        public double Distance { get; private set; }

        public Region Offset(Region region, double distance, CornerJoin join, CancellationToken cancellation = default)
        {
            Distance = distance;
            return result;
        }
    }
}
