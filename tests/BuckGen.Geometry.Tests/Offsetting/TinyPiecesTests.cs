using BuckGen.Geometry.Offsetting;
using Xunit;

namespace BuckGen.Geometry.Tests.Offsetting;

/// <summary>A rectangle of 100 x 60 mm with something too small to be meant in its bottom edge.</summary>
public class TinyPiecesTests
{
    private static readonly Vec2[] Rest = [new(100, 0), new(100, 60), new(0, 60)];

    [Fact]
    public void A_loop_without_any_stays_itself()
    {
        var loop = Loop.Polygon([new(0, 0), .. Rest]);

        Assert.Same(loop, TinyPieces.Remove(loop));
    }

    [Theory]
    [InlineData(0.001)]
    [InlineData(-0.001)]
    public void A_tiny_spike_or_notch_becomes_one_corner(double height)
    {
        var tidied = TinyPieces.Remove(Loop.Polygon([new(0, 0), new(50, 0), new(50.0005, height), new(50.001, 0), .. Rest]));

        Assert.Equal([new(0, 0), new(50, 0), .. Rest], tidied.Segments.Select(s => s.Start));
    }

    [Fact]
    public void A_loop_may_start_within_the_spike()
    {
        Vec2[] corners = [new(0, 0), new(50, 0), new(50.0005, 0.001), new(50.001, 0), .. Rest];
        for (var start = 0; start < corners.Length; start++)
        {
            var tidied = TinyPieces.Remove(Loop.Polygon([.. corners[start..], .. corners[..start]]));

            Assert.Equal(5, tidied.Segments.Length);
            Assert.Equal(6000, tidied.SignedArea, 1e-6);
            Assert.All(tidied.Segments, s => Assert.True(s.Length > 49));
        }
    }

    [Fact]
    public void A_run_may_go_over_the_start_of_the_loop()
    {
        // Its two pieces stay within reach of where they begin, not of the corner between them, 0.0035 mm from the end.
        Vec2[] corners = [new(50, 0), new(50.002, 0.001), new(49.9985, 0.0005), .. Rest, new(0, 0)];
        for (var start = 0; start < corners.Length; start++)
            Assert.Equal(5, TinyPieces.Remove(Loop.Polygon([.. corners[start..], .. corners[..start]])).Segments.Length);
    }

    [Theory]
    [InlineData(0.0024, 5)]
    [InlineData(0.0026, 6)]
    public void A_piece_from_a_quarter_of_a_hundredth_on_is_meant(double length, int pieces) =>
        Assert.Equal(pieces,
            TinyPieces.Remove(Loop.Polygon([new(0, 0), new(50, 0), new(50 + length, 0.0001), .. Rest])).Segments.Length);

    [Fact]
    public void An_arc_between_near_ends_may_be_large()
    {
        // Its ends lie 0.001 mm apart, its middle 10 mm away.
        var loop = Loop.FromCorners([(new(0, 0), 0), (new(50, 0), 20000), (new(50.001, 0), 0), .. Rest.Select(p => (p, 0.0))]);

        Assert.Same(loop, TinyPieces.Remove(loop));
    }

    [Fact]
    public void A_run_is_as_long_as_what_lies_within_reach_of_its_first_point()
    {
        // Six pieces go, a seventh makes a second run.
        Vec2[] zigzag = [.. Enumerable.Range(0, 8).Select(i => new Vec2(50 + i % 2 * 0.001, i * 0.0001))];

        var tidied = TinyPieces.Remove(Loop.Polygon([new(0, 0), .. zigzag, .. Rest]));

        Assert.Equal(5, tidied.Segments.Length);
    }

    [Theory]
    [InlineData(0.001, 0.002)]
    [InlineData(-0.001, 0.002)]
    public void A_sliver_is_folded_away(double back, double forth)
    {
        // The edge runs to its end, 40 mm back and forth again.
        var tidied =
            TinyPieces.Remove(Loop.Polygon([new(0, 0), new(100, 0), new(60, back), new(100, forth), new(100, 60), new(0, 60)]));

        Assert.Equal([new(0, 0), new(60, back), new(100, forth), new(100, 60), new(0, 60)], tidied.Segments.Select(s => s.Start));
    }

    [Fact]
    public void A_sliver_may_run_back_before_its_edge()
    {
        // A slot whose mouth, from (20, 0) to (60, 0), is drawn back before the edge is drawn over it.
        var tidied =
            TinyPieces.Remove(Loop.Polygon([new(0, 0), new(20, -0.001), new(60, -30), new(60, 0), new(20, 0.001), .. Rest]));

        Assert.Equal([new(0, 0), new(20, -0.001), new(60, -30), new(60, 0), .. Rest], tidied.Segments.Select(s => s.Start));
    }

    [Fact]
    public void A_circle_loses_a_tiny_piece_as_well()
    {
        var flawed = Loop.FromCorners([(new(5, 0), 1), (new(-5, 0), 1), (new(5, -0.001), 0)]);

        Assert.Equal(2, TinyPieces.Remove(flawed).Segments.Length);
    }

    [Fact]
    public void A_loop_that_is_tiny_all_round_keeps_two_pieces() =>
        Assert.Equal(2,
            TinyPieces.Remove(Loop.Polygon(new(0, 0), new(0.001, 0), new(0.001, 0.001), new(0, 0.001))).Segments.Length);

    [Fact]
    public void A_needle_and_a_slit_stay()
    {
        // Nothing but the needle itself reaches its tip.
        var needle = Loop.Polygon([new(0, 0), new(50, 0), new(50.0005, -40), new(50.001, 0), .. Rest]);
        var slit = Loop.Polygon([new(0, 0), new(50, 0), new(50.0005, 40), new(50.001, 0), .. Rest]);

        Assert.Equal(40, TinyPieces.Remove(needle).Bounds.Height - 60, 1e-9);
        Assert.Contains(TinyPieces.Remove(slit).Segments, s => s.End == new Vec2(50.0005, 40));
    }

    [Fact]
    public void A_corner_that_runs_too_far_is_cut_where_it_crosses()
    {
        // The last edge runs 0.001 mm below the first one.
        var tidied = TinyPieces.Remove(Loop.Polygon([new(0, 0), .. Rest, new(0.0005, -0.001)]));

        Assert.Equal(4, tidied.Segments.Length);
        Assert.All(tidied.Segments, s => Assert.InRange(s.Start.Y, -1e-12, 60));
    }
}
