using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutPaths;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Settings;
using BuckGen.Tests.Design.Bucks;
using Xunit;

namespace BuckGen.Tests.Cutting.Boards;

public class KerfTests
{
    [Fact]
    public void A_piece_is_drawn_larger_and_an_opening_smaller_by_the_kerf()
    {
        // Kerf 0.2 mm: for a piece of 2.0 x 4.0 draw 2.2 x 4.2, for an opening of 2.0 x 4.0 draw 1.8 x 3.8. Source: Snijlab,
        // "kerf width", a laser cutting service's guide. Here ten times as large.
        var part = Part(Shapes.Counter(60, 80, 20, 40), new(Kerf: 0.2));

        var (outer, inner) = (Assert.Single(part.Loops(CutLayer.CutOuter)), Assert.Single(part.Loops(CutLayer.CutInner)));
        Assert.Equal((60.2, 80.2), (outer.Bounds.Width, outer.Bounds.Height), Close);
        Assert.Equal((19.8, 39.8), (inner.Bounds.Width, inner.Bounds.Height), Close);
    }

    /// <summary>Source: a Fab Academy student's record (cardboard): hole 20.14 mm, piece 19.76 mm, kerf 0.19 mm.</summary>
    [Fact]
    public void A_test_square_tells_the_kerf()
    {
        Assert.Equal(0.19, CuttingSpec.KerfOfTest(20.14, 19.76), 1e-9);
        Assert.Equal(0.095, new CuttingSpec(Kerf: CuttingSpec.KerfOfTest(20.14, 19.76)).Compensation, 1e-9);
        Assert.Contains("measure again", Assert.Throws<SpecException>(() => CuttingSpec.KerfOfTest(19.76, 20.14)).Message);
    }

    [Fact]
    public void The_beam_that_follows_the_path_leaves_the_nominal_sizes()
    {
        // A square drawn once came out 20.14 as a hole and 19.76 as a piece: kerf (20.14 - 19.76)/2 = 0.19 mm. Source: a Fab
        // Academy record of 2017. With that kerf allowed for, both come out at the nominal size again.
        const double Kerf = (20.14 - 19.76) / 2;
        var part = Part(Shapes.Counter(60, 60, 20, 20), new(Kerf: Kerf));

        Assert.Equal(60, part.Loops(CutLayer.CutOuter)[0].Bounds.Width - Kerf, 1e-6);
        Assert.Equal(20, part.Loops(CutLayer.CutInner)[0].Bounds.Width + Kerf, 1e-6);
        Assert.Equal(0.095, new CuttingSpec(Kerf: Kerf).Compensation, 1e-12);
    }

    [Fact]
    public void Dowel_holes_are_drawn_smaller_too()
    {
        var part = Cuts.Create(Shapes.Rectangle(100, 60), new(Kerf: 0.2)).Boards[0].Placements[0].Part;

        Assert.Equal(3, part.Loops(CutLayer.Dowel).Length);
        Assert.All(part.Loops(CutLayer.Dowel), d => Assert.Equal((6.15 - 0.2) / 2, d.AsCircle(1e-9)!.Value.Radius, 1e-9));
    }

    [Fact]
    public void Marks_stay_where_they_are()
    {
        var with = Cuts.Create(Shapes.Rectangle(100, 60), new(Kerf: 0.5)).Boards[0].Placements[0].Part;
        var without = Cuts.Create(Shapes.Rectangle(100, 60), new(Kerf: 0)).Boards[0].Placements[0].Part;

        Assert.Equal(Marks(without).SelectMany(m => m.Segments), Marks(with).SelectMany(m => m.Segments));
        Assert.NotEmpty(Marks(with));
    }

    [Fact]
    public void A_router_gets_the_nominal_outlines()
    {
        var part = Part(Shapes.Counter(60, 80, 20, 40), new(Machine.Router, Kerf: 3));

        Assert.Equal(60, part.Loops(CutLayer.CutOuter)[0].Bounds.Width, 1e-9);
        Assert.Equal(20, part.Loops(CutLayer.CutInner)[0].Bounds.Width, 1e-9);
    }

    [Fact]
    public void Corners_of_the_compensated_outline_are_round_so_that_the_piece_comes_out_sharp()
    {
        // A beam round a corner at half its width burns the sharp corner of the piece.
        var outer = Part(Shapes.Rectangle(60, 80), new(Kerf: 0.2)).Loops(CutLayer.CutOuter)[0];

        Assert.Equal(4, outer.Segments.Count(s => s.IsArc));
        Assert.All(outer.Segments.Where(s => s.IsArc), s => Assert.Equal(0.1, s.Radius, 1e-9));
    }

    [Fact]
    public void Layer_files_are_nominal_whatever_the_kerf()
    {
        var plan = Cuts.Create(Shapes.Rectangle(60, 80), new(Kerf: 0.5), PlainBuck.Spec with { Draft = 0 });

        var outer = LayerDrawing.Create(plan.Design.Layers[0]).Paths.Single(p => p.Layer == CutLayer.CutOuter);
        Assert.Equal(280, outer.Length, 1e-6);
    }

    private static CutPart Part(Region region, CuttingSpec cutting) =>
        Cuts.Create(region, cutting, PlainBuck.Spec with { Draft = 0, Depth = 12 }).Boards[0].Placements[0].Part;

    private static CutPath[] Marks(CutPart part) => [.. part.Paths.Where(p => p.Layer == CutLayer.Mark)];

    private static bool Close((double, double) a, (double, double) b) =>
        Math.Abs(a.Item1 - b.Item1) < 1e-6 && Math.Abs(a.Item2 - b.Item2) < 1e-6;
}
