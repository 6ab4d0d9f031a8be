using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Forming;
using BuckGen.Findings;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using BuckGen.Intake.Outlines;
using BuckGen.Settings;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Design.Bucks;

/// <summary>Round edges and domes against the formulas of handbooks.</summary>
public class RoundedEdgeTests
{
    /// <summary>
    /// A quarter of a torus: the length of the arc times the way of its centroid, which lies 2r/π from the centre of the arc.
    /// Source: Pappus's theorem, such as in the CRC Standard Mathematical Tables.
    /// </summary>
    [Theory]
    [InlineData(BuckKind.Male, 4)]
    [InlineData(BuckKind.Female, 4)]
    [InlineData(BuckKind.Male, 12)]
    public void The_formed_area_of_a_round_boss_and_of_a_round_lip(BuckKind kind, double edge)
    {
        const double Radius = 40, Depth = 30;
        var arc = Math.PI / 2 * edge;
        var (wall, quarter) = (2 * Math.PI * Radius * (Depth - edge), kind == BuckKind.Male
            ? 2 * Math.PI * (Radius - edge + 2 * edge / Math.PI) * arc
            : 2 * Math.PI * (Radius + edge - 2 * edge / Math.PI) * arc);

        var surface = Formed.Blank(Formed.Disc(2 * Radius), Formed.Spec(kind, Depth) with { EdgeRadius = edge }).Surface;

        // Chords within 0.01 mm of an arc are shorter than it by less than a thousandth.
        Assert.Equal(wall + quarter, surface.Wall, 1e-3 * quarter);
        Assert.NotEqual(wall + quarter, Formed.Blank(Formed.Disc(2 * Radius), Formed.Spec(kind, Depth)).Surface.Wall, 1.0);
        if (kind == BuckKind.Male) return;
        Assert.Equal(Math.PI * (Radius + edge) * (Radius + edge), surface.Flat, 0.01);
        Assert.Equal(Math.PI * Radius * Radius + wall + quarter, surface.Formed, 1e-3 * quarter);
    }

    /// <summary>
    /// A cone with a round edge: the arc turns by 90 degrees less the draft. Its tangent points lie r·tan((90° - draft)/2) from
    /// the sharp edge. Source: trigonometry.
    /// </summary>
    [Theory]
    [InlineData(BuckKind.Male)]
    [InlineData(BuckKind.Female)]
    public void The_arc_is_tangent_to_a_wall_with_draft_and_to_the_plane(BuckKind kind)
    {
        const double Edge = 5, Draft = 20;
        var sign = kind == BuckKind.Male ? -1 : 1;
        var spec = PlainBuck.Spec with { Kind = kind, Draft = Draft, EdgeRadius = Edge };
        var sharp = new DraftedShape(Shapes.Disc(60), spec, 0, 36, new ArcOffsetter());
        var tangent = Edge * Math.Tan((90 - Draft) / 2 * Math.PI / 180);
        var down = tangent * Math.Cos(Draft * Math.PI / 180);

        Assert.Equal(36 - down, sharp.RoundFrom, 1e-9);
        Assert.Equal(sharp.OffsetAt(30), sharp.Finished.OffsetAt(30), 1e-9);
        Assert.Equal(sharp.OffsetAt(36 - down), sharp.Finished.OffsetAt(36 - down), 1e-9);
        Assert.Equal(sign * tangent, sharp.Finished.OffsetAt(36), 1e-9);
        // All bends of the round lie on a circle about one point.
        var round = sharp.Finished.WithBends([36 - down, 36]).ToArray();
        Assert.True(round.Length > 8);
        Assert.All(round, h => Assert.Equal(Edge,
            Math.Sqrt(Math.Pow(sharp.Finished.OffsetAt(h) - sign * tangent, 2) + Math.Pow(h - (36 - Edge), 2)), 1e-6));
    }

    [Fact]
    public void Layers_are_cut_for_the_sharp_edge_and_dowels_keep_off_the_round()
    {
        var (sharp, round) = (PlainBuck.Create(Shapes.Rectangle(100, 60)), PlainBuck.Create(Shapes.Rectangle(100, 60),
            PlainBuck.Spec with { EdgeRadius = 10 }));

        Assert.Equal(sharp.Widths(), round.Widths());
        Assert.Equal([false, false, true], round.Layers.Select(round.IsRounded));
        var through = PlainBuck.Create(Shapes.Rectangle(100, 60),
            PlainBuck.Spec with { EdgeRadius = 10, Dowels = PlainBuck.Spec.Dowels with { ThroughFace = true } });
        var holes = through.Layers[^1].Parts.SelectMany(p => p.Dowels).ToArray();
        Assert.NotEmpty(holes);
        Assert.All(holes, h => Assert.InRange(through.Layers[^1].Region.DistanceToEdge(h.Centre), 10 + h.Diameter / 2, 50));
    }

    [Fact]
    public void A_round_that_takes_the_face_is_reported_with_the_radius_that_would_not()
    {
        // An arm 10 mm wide on a plate: the rounds of its two edges meet from 5 mm of tangent length on.
        var arm = Shapes.Polygon((0, 0), (60, 0), (60, 25), (150, 25), (150, 35), (60, 35), (60, 60), (0, 60));
        Finding[] Of(double edge) =>
            [.. PlainBuck.Create(arm, PlainBuck.Spec with { EdgeRadius = edge }).Named("edge-radius-wide")];

        var finding = Assert.Single(Of(8));
        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.InRange(finding.Place!.Value.X, 60, 150);
        var max = 5 / Math.Tan(42.5 * Math.PI / 180);
        Assert.Equal(max, finding.Limit!.Value, 0.03);
        Assert.Empty(Of(max - 0.03));
        // Nothing of the face is left.
        Assert.Equal(Severity.Error, Assert.Single(PlainBuck.Create(Shapes.Rectangle(100, 20),
            PlainBuck.Spec with { EdgeRadius = 15 }).Named("edge-radius-wide")).Severity);
    }

    [Fact]
    public void A_radius_below_the_gauge_is_noted_and_one_beyond_the_wall_refused()
    {
        var spec = PlainBuck.Spec with { Sheet = new() { Gauge = 2 }, EdgeRadius = 1 };

        Assert.Equal(2, Assert.Single(PlainBuck.Create(Shapes.Rectangle(100, 60), spec).Named("edge-radius-small")).Limit);
        Assert.Empty(PlainBuck.Create(Shapes.Rectangle(100, 60), spec with { EdgeRadius = 2 }).Named("edge-radius-small"));
        Assert.Contains("reaches 36.51 mm down the wall", Assert.Throws<SpecException>(() =>
            PlainBuck.Create(Shapes.Rectangle(200, 200), spec with { EdgeRadius = 40 })).Message);
        Assert.Contains("edge radius is 0.1 mm; it must be 0 or 0.2 to 100 mm", Assert.Throws<SpecException>(() =>
            PlainBuck.Create(Shapes.Rectangle(200, 200), spec with { EdgeRadius = 0.1 })).Message);
    }

    /// <summary>
    /// Stretches between points of a sphere make a cap of it: area 2πRh, volume πh²(3R - h)/3. Source: handbook formulas, such
    /// as Bronshtein, Handbook of Mathematics.
    /// </summary>
    [Theory]
    [InlineData(BuckKind.Male)]
    [InlineData(BuckKind.Female)]
    public void A_dome_of_stretches_is_nearly_the_cap_of_a_sphere(BuckKind kind)
    {
        const double Sphere = 50, Height = 30;
        const int Count = 24;
        // Twenty-four chords of equal angle, from the foot to just beside the pole.
        var foot = Math.Asin((Sphere - Height) / Sphere);
        var turns = Enumerable.Range(0, Count + 1).Select(i => foot + (1.55 - foot) * i / Count).ToArray();
        var side = turns.Zip(turns.Skip(1), (a, b) => new SideStretch
        {
            Height = Sphere * (Math.Sin(b) - Math.Sin(a)),
            Inset = Sphere * (Math.Cos(a) - Math.Cos(b)),
        }).ToArray();
        side[0] = side[0] with { Height = null };
        var depth = Sphere * (Math.Sin(1.55) - Math.Sin(foot));
        var radius = Sphere * Math.Cos(foot);
        var spec = Formed.Spec(kind, depth) with
        {
            Side = [.. side],
            OutlineAt = kind == BuckKind.Male ? OutlineAt.Base : OutlineAt.Face,
            Stock = [new("cap", depth / 10, 2000, 2000)],
        };

        var shape = new DraftedShape(Formed.Disc(2 * radius), spec, 0, depth, new ArcOffsetter());
        double[] heights = [.. shape.CloseHeights([0, depth])];
        var surface = FormedSurface.Compute(shape, kind, 40_000, 0, heights, default);
        var volume = heights.Zip(heights.Skip(1), (a, b) =>
            (shape.At(a).Area + 4 * shape.At((a + b) / 2).Area + shape.At(b).Area) / 6 * (b - a)).Sum();

        Assert.Equal(2 * Math.PI * Sphere * Height, surface.Wall + Math.PI * Math.Pow(Sphere * Math.Cos(1.55), 2), 8.0);
        Assert.Equal(Math.PI * Height * Height * (3 * Sphere - Height) / 3, volume, 200.0);
        // And the design is made of it, with its layers one inside the other.
        var design = Formed.Design(Formed.Disc(2 * radius), spec);
        Assert.Equal(10, design.Layers.Length);
        Assert.Equal(surface.Wall, design.Blank!.Surface.Wall, 0.01);
    }

    // The layers were marked, and dowels set, outside the block.
    [Fact]
    public void A_round_lip_wider_than_the_wood_round_the_cavity_is_refused()
    {
        BuckDesign Create(double edge) => BuckDesign.Create(Outline.FromRegion("disc", Shapes.Disc(60)),
            PlainBuck.Spec with { Kind = BuckKind.Female, Draft = 0, BlockMargin = 8, EdgeRadius = edge });

        Assert.NotEmpty(Create(7.5).Layers);
        var refusal = Assert.Throws<SpecException>(() => Create(9));
        Assert.Contains("9 mm from the cavity", refusal.Message);
        Assert.Contains("only 8 mm of wood", refusal.Message);
    }
}
