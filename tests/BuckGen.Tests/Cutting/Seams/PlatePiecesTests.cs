using System.Collections.Immutable;
using BuckGen.Cutting.Seams;
using BuckGen.Geometry;
using Xunit;

namespace BuckGen.Tests.Cutting.Seams;

/// <summary>Laws of a plate in pieces; areas and places are computed from the plate, not from the seams.</summary>
public class PlatePiecesTests
{
    private static readonly SeamSpec NoPlay = new() { Key = 24, Clearance = 0 };

    private static readonly Island Long = new(Loop.Rectangle(new(-20, -30, 920, 130)), []);

    [Theory]
    [InlineData(SeamKind.Keyed, 940, 160, 590, 390, 2)]
    [InlineData(SeamKind.Dowelled, 940, 160, 590, 390, 2)]
    [InlineData(SeamKind.Keyed, 1200, 160, 590, 390, 3)]
    [InlineData(SeamKind.Keyed, 160, 940, 590, 390, 2)]
    [InlineData(SeamKind.Keyed, 1100, 700, 590, 390, 4)]
    [InlineData(SeamKind.Dowelled, 1170, 770, 590, 390, 4)]
    public void The_pieces_are_the_plate_and_each_fits(SeamKind kind, double width, double height, double roomX, double roomY,
        int fewest)
    {
        var plate = new Island(Loop.Rectangle(new(0, 0, width, height)), []);

        var cut = Cut(plate, [], new(roomX, roomY), NoPlay with { Kind = kind });

        Assert.Equal(fewest, cut.Pieces.Length);
        Assert.Equal(plate.Area, cut.Pieces.Sum(p => p.Area), 1e-6);
        Assert.All(cut.Pieces, p => Assert.True(Fits(p, roomX, roomY), $"{p.Outer.Bounds}"));
        EachPlaceLiesOnOnePiece(plate, cut);
    }

    [Fact]
    public void Play_is_taken_off_round_the_keys_and_nowhere_else()
    {
        var spec = NoPlay with { Clearance = 0.2 };

        var cut = Cut(Long, [], new(590, 390), spec);

        var keys = cut.Seams.Single().Seam.Stretches.Single().Joints.Length;
        Assert.Equal(2, keys);
        // Round a key of 24 mm lie its two flanks of 14.84 mm and its head of 24 mm, less what the rounded corners save; the
        // strip beside it is 0.2 mm wide (trigonometry).
        var missing = Long.Area - cut.Pieces.Sum(p => p.Area);
        Assert.InRange(missing / keys / 0.2, 2 * 14.84 + 24 - 3, 2 * 14.84 + 24 + 1);
        // The straight edges meet: the pieces side by side are as long as the plate.
        Assert.Equal(cut.Seams[0].Seam.At, cut.Pieces[1].Outer.Bounds.MinX, 1e-9);
    }

    [Fact]
    public void Seams_and_keys_keep_their_distance_from_what_they_must_not_cut()
    {
        ImmutableArray<Bounds> letters =
            [.. Enumerable.Range(0, 9).Select(i => new Bounds(i * 100, 0, i * 100 + 84, 90))];

        var cut = Cut(Long, letters, new(520, 390), NoPlay);

        var placed = Assert.Single(cut.Seams);
        Assert.All(letters, l => Assert.True(
            placed.Seam.At <= l.MinX - NoPlay.Distance || placed.Seam.At >= l.MaxX + NoPlay.Distance));
        var joints = placed.JointBounds(cut.Spec).ToArray();
        Assert.NotEmpty(joints);
        Assert.All(joints, j => Assert.All(letters, l => Assert.True(j.DistanceTo(l) >= NoPlay.Distance - 1e-9)));
    }

    [Fact]
    public void Holes_stay_whole_and_lie_in_one_piece_each()
    {
        var holes = Enumerable.Range(0, 9).Select(i => Clockwise(Loop.Rectangle(new(i * 100, 0, i * 100 + 84, 90))))
            .ToImmutableArray();
        var plate = new Island(Long.Outer, holes);

        var cut = Cut(plate, [.. holes.Select(h => h.Bounds)], new(500, 390), NoPlay);

        Assert.Equal(holes.Length, cut.Pieces.Sum(p => p.Holes.Length));
        Assert.Equal(plate.Area, cut.Pieces.Sum(p => p.Area), 1e-6);
    }

    [Fact]
    public void A_round_edge_and_a_notch_are_cut_exactly()
    {
        // A plate with round ends, and a notch that an upright seam may cross.
        var plate = new Island(Loop.FromSegments(
        [
            new(new(0, 0), new(900, 0)), Segment.Arc(new(900, 0), new(900, 200), Math.PI), new(new(900, 200), new(600, 200)),
            new(new(600, 200), new(600, 120)), new(new(600, 120), new(300, 120)), new(new(300, 120), new(300, 200)),
            new(new(300, 200), new(0, 200)), Segment.Arc(new(0, 200), new(0, 0), Math.PI),
        ]), []);

        var cut = Cut(plate, [], new(590, 390), NoPlay);

        Assert.Equal(2, cut.Pieces.Length);
        Assert.Equal(plate.Area, cut.Pieces.Sum(p => p.Area), 1e-6);
        EachPlaceLiesOnOnePiece(plate, cut);
    }

    [Fact]
    public void A_plate_that_a_seam_cuts_in_two_stretches_has_keys_in_both()
    {
        // A U on its side: every upright seam right of the web crosses two arms.
        var plate = new Island(Loop.Polygon(new(0, 0), new(900, 0), new(900, 80), new(100, 80), new(100, 160), new(900, 160),
            new(900, 240), new(0, 240)), []);

        var cut = Cut(plate, [], new(590, 390), NoPlay);

        Assert.Equal(3, cut.Pieces.Length);
        Assert.All(cut.Seams.Single().Seam.Stretches, s => Assert.NotEmpty(s.Joints));
        Assert.Equal(plate.Area, cut.Pieces.Sum(p => p.Area), 1e-6);
        EachPlaceLiesOnOnePiece(plate, cut);
    }

    [Fact]
    public void A_bit_can_turn_in_every_inside_corner()
    {
        var spec = NoPlay with { Bit = 6, Clearance = 0.1 };

        var cut = Cut(Long, [], new(590, 390), spec);

        // Clockwise arcs on a counter-clockwise edge are inside corners; a sharp one would turn right between two lines.
        var edges = cut.Pieces.Select(p => p.Outer.Segments).ToArray();
        var inside = edges.SelectMany(e => e).Where(s => s.Bulge < 0).ToArray();
        Assert.NotEmpty(inside);
        Assert.All(inside, s => Assert.True(s.Radius >= 3, $"radius {s.Radius}"));
        Assert.All(edges, e => Assert.All(e.Select((s, i) => (From: s, To: e[(i + 1) % e.Length])),
            pair => Assert.True(pair.From.DirectionAt(1).Cross(pair.To.DirectionAt(0)) > -1e-6)));
    }

    [Fact]
    public void Where_no_seam_can_stand_the_place_and_the_length_that_would_do_are_named()
    {
        ImmutableArray<Bounds> one = [new(100, 0, 800, 90)];

        var (cut, blockage) = PlatePieces.Create(Long, one, new(590, 390), NoPlay, default);

        Assert.Null(cut);
        Assert.True(blockage!.IsUpright);
        // The last place before the obstacle is 5 mm short of it; the next is 5 mm beyond it, and its key reaches 14.4 mm on.
        Assert.Equal(95, blockage.Where.From, 0.5);
        Assert.Equal(805 + 14.4 - 95, blockage.Where.Needed!.Value, 0.5);
    }

    private static PlatePieces Cut(Island plate, ImmutableArray<Bounds> obstacles, Vec2 room, SeamSpec spec) =>
        PlatePieces.Create(plate, obstacles, room, spec, default).Cut!;

    private static bool Fits(Island piece, double x, double y)
    {
        var b = piece.Outer.Bounds;
        return (b.Width <= x + 1e-6 && b.Height <= y + 1e-6) || (b.Width <= y + 1e-6 && b.Height <= x + 1e-6);
    }

    private static void EachPlaceLiesOnOnePiece(Island plate, PlatePieces cut)
    {
        var (box, random, inside) = (plate.Outer.Bounds, new Random(7), 0);
        for (var i = 0; i < 4000; i++)
        {
            var p = new Vec2(box.MinX + random.NextDouble() * box.Width, box.MinY + random.NextDouble() * box.Height);
            var on = plate.Contains(p) ? 1 : 0;
            inside += on;
            Assert.True(cut.Pieces.Count(piece => piece.Contains(p)) == on, $"{p}");
        }

        Assert.True(inside > 1000, $"only {inside} places lie on the plate");
    }

    private static Loop Clockwise(Loop loop) => Loop.Polygon(loop.Segments.Select(s => s.Start).Reverse());
}
