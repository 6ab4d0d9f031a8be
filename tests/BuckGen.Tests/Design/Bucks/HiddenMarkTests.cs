using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutPaths;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Lettering;
using BuckGen.Geometry.Tests;
using BuckGen.Tests.Design.Forming;
using CsCheck;
using Xunit;

namespace BuckGen.Tests.Design.Bucks;

/// <summary>Nothing is lettered or drilled where the sheet, or whoever looks at the panel, would show it.</summary>
public class HiddenMarkTests
{
    private static readonly BuckSpec OnBase = PlainBuck.Spec with { Base = new(PlainBuck.Mdf12) };

    [Theory]
    [InlineData(BuckKind.Male)]
    [InlineData(BuckKind.Female)]
    public void The_top_layer_carries_no_lettering_and_no_dowel_holes(BuckKind kind)
    {
        var design = PlainBuck.Create(Shapes.Rectangle(100, 60), OnBase with { Kind = kind });

        Assert.Equal(4, design.Layers.Length);
        var top = Assert.Single(design.Layers[^1].Parts);
        Assert.True(top.IsTop);
        Assert.Null(top.Label);
        Assert.Empty(top.Dowels);
        Assert.All(design.Layers.SkipLast(1).SelectMany(l => l.Parts), p => Assert.Equal((false, 3), (p.IsTop, p.Dowels.Length)));
        Assert.All(design.Layers.SkipLast(1).SelectMany(l => l.Parts), p => Assert.NotNull(p.Label));
    }

    /// <summary>Whatever the shape: lettering and holes lie under the wood of the layer above.</summary>
    [Fact]
    [Trait("Tier", "slow")]
    public void Nothing_shows_on_any_buck()
    {
        var (labels, holes) = (0, 0);
        Gen.Select(RandomRegion.Islands, Gen.Enum<Steps>(), Gen.Enum<BuckKind>()).Sample((region, steps, kind) =>
        {
            var design = PlainBuck.Create(region, OnBase with { Steps = steps, Kind = kind, Depth = 24 });
            for (var n = 0; n < design.Layers.Length; n++)
            {
                var above = n + 1 < design.Layers.Length ? design.Layers[n + 1].Region : Region.Empty;
                foreach (var part in design.Layers[n].Parts)
                {
                    foreach (var vertex in part.Label?.Strokes.SelectMany(s => s.Vertices) ?? [])
                        Assert.True(above.Contains(new(vertex.X, vertex.Y)), $"{part.Label!.Text} shows");
                    foreach (var hole in part.Dowels)
                        Assert.True(above.Contains(hole.Centre) && above.DistanceToEdge(hole.Centre) >= hole.Diameter / 2 - 1e-9);
                    (labels, holes) = (labels + (part.Label is null ? 0 : 1), holes + part.Dowels.Length);
                }
            }
        }, iter: 40, threads: 1);
        Assert.InRange(labels, 20, int.MaxValue);
        Assert.InRange(holes, 20, int.MaxValue);
    }

    [Fact]
    public void A_hole_that_joins_no_two_layers_is_not_cut() =>
        Assert.All(PlainBuck.Create(Shapes.Rectangle(100, 60), OnBase with { Depth = 12 }).Layers,
            l => Assert.Empty(Assert.Single(l.Parts).Dowels));

    [Fact]
    public void Who_wants_the_holes_through_says_so() =>
        Assert.All(
            PlainBuck.Create(Shapes.Rectangle(100, 60), OnBase with { Dowels = new() { ThroughFace = true } }).Layers,
            l => Assert.Equal(3, Assert.Single(l.Parts).Dowels.Length));

    [Fact]
    public void A_top_piece_too_small_for_dowels_needs_none()
    {
        // 9 mm across at the face, 14.2 mm at the foot: no room for two in any layer, and only the lower ones want them.
        var design = PlainBuck.Create(Shapes.Disc(4.5), OnBase with { Depth = 24 });
        Assert.Equal(12, Assert.Single(design.Named("dowels-no-room")).Height);
        Assert.Empty(PlainBuck.Create(Shapes.Disc(4.5), OnBase with { Depth = 12 }).Named("dowels-no-room"));
    }

    [Fact]
    public void Two_top_pieces_without_lettering_are_reported()
    {
        var two = Shapes.Union(Shapes.Rectangle(60, 60), Shapes.RectangleAt(100, 0, 60, 60));

        var finding = Assert.Single(PlainBuck.Create(two).Named("label-on-face"));

        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Equal("2 pieces carry no lettering, for the sheet comes down on them: 3A, 3B.", finding.Message);
        Assert.Empty(PlainBuck.Create(Shapes.Rectangle(60, 60)).Named("label-on-face"));
    }

    [Fact]
    public void Lettering_of_no_height_is_none_and_nothing_is_reported()
    {
        var design = Formed.Design(Formed.Rectangle(100, 60), Panelled with { LetterHeight = 0 });

        Assert.All(design.Layers.Concat(design.Accessories).SelectMany(l => l.Parts), p => Assert.Null(p.Label));
        Assert.DoesNotContain(design.Findings, f => f.Id.StartsWith("label", StringComparison.Ordinal));
    }

    [Fact]
    public void The_panel_is_marked_on_its_back_and_its_file_shows_it_from_there()
    {
        var design = Formed.Design(Notched, Panelled);
        var panel = design.Panel!.Panel;

        var drawing = LayerDrawing.Create(panel);

        Assert.True(panel.MarkedOnBack);
        Assert.Equal("PANEL1 BACK", Assert.Single(panel.Parts).Label!.Text);
        Assert.Contains("seen from the back", drawing.Title);
        // The notch at the upper right lies at the upper left of the file.
        var (box, file) = (panel.Region.Bounds, Region.FromLoops(drawing.Paths.Where(p => p.Layer != CutLayer.Mark)
            .Select(p => p.AsLoop()!)));
        foreach (var p in Enumerable.Range(1, 40).Select(i => new Vec2(box.MinX + box.Width * i / 41, 55)))
            Assert.Equal(panel.Region.Contains(p), file.Contains(new(box.MinX + box.MaxX - p.X, p.Y)));
        Assert.NotEqual(panel.Region.Contains(new(90, 55)), file.Contains(new(90, 55)));
    }

    [Fact]
    public void Lettering_on_the_back_reads_the_right_way_on_the_board()
    {
        var plan = CutPlan.Create(Formed.Design(Notched, Panelled), new());
        var placement = plan.Boards.SelectMany(b => b.Placements).Single(p => p.Part.Name == "PANEL1");

        Assert.True(placement.Part.IsFaceDown && placement.Map.Mirrors);
        // Which side of its first stroke the last letter lies on: a turn keeps it, a mirror does not.
        var plain = StrokeText.Layout("PANEL1 BACK", 8).Select(s => CutPath.FromStroke(CutLayer.Mark, s)).ToArray();
        var marks = placement.Part.Paths.Where(p => p.Layer == CutLayer.Mark).Select(p => p.Transformed(placement.Map)).ToArray();
        Assert.Equal(plain.Length, marks.Length);
        Assert.True(Math.Abs(Side(plain)) > 1);
        Assert.Equal(Math.Sign(Side(plain)), Math.Sign(Side(marks)));
        Assert.Contains("face down: PANEL1",
            plan.Boards.Select(b => BoardDrawing.Create(b).Title).Single(t => t.Contains("face down", StringComparison.Ordinal)));
    }

    private static double Side(CutPath[] strokes) =>
        (strokes[0].Segments[0].End - strokes[0].Segments[0].Start)
            .Cross(strokes[^1].Segments[0].Start - strokes[0].Segments[0].Start);

    private static BuckSpec Panelled => Formed.Spec(BuckKind.Male, 12, 3) with
    {
        Stock = [Formed.Mdf6],
        Base = new(Formed.Mdf6),
        Panel = new(Formed.Mdf6),
    };

    /// <summary>100 x 60 mm less a corner of 30 x 20 mm at the upper right.</summary>
    private static Region Notched => Shapes.Polygon((0, 0), (100, 0), (100, 40), (70, 40), (70, 60), (0, 60));
}
