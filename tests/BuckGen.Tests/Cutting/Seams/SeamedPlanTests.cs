using BuckGen.Cutting.Boards;
using BuckGen.Cutting.CutPaths;
using BuckGen.Cutting.Seams;
using BuckGen.Design.Specs;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Settings;
using BuckGen.Tests.Cutting.Boards;
using BuckGen.Tests.Design.Bucks;
using Xunit;

namespace BuckGen.Tests.Cutting.Seams;

public class SeamedPlanTests
{
    private static readonly BuckSpec OnBase =
        PlainBuck.Spec with { Depth = 24, Draft = 0, Base = new(new("MDF 6", 6), 20) };

    private static readonly Region Two = Shapes.Union(Shapes.Rectangle(300, 100), Shapes.RectangleAt(400, 0, 300, 100));

    [Fact]
    public void Without_seams_a_plate_too_large_is_an_error_that_offers_them()
    {
        var plan = Cuts.Create(Two, new(Kerf: 0.2), OnBase);

        var finding = Assert.Single(plan.Findings, f => f.Id == "part-larger-than-stock");
        Assert.Contains("Part 1A needs 740.2 x 140.2 mm", finding.Message);
        Assert.Contains("[seams]", finding.Remedy);
    }

    [Fact]
    public void Of_a_wall_that_is_too_large_seams_are_not_offered()
    {
        var plan = Cuts.Create(Shapes.Rectangle(620, 100), buck: PlainBuck.Spec with { Depth = 12, Draft = 0 });

        Assert.DoesNotContain("[seams]", Assert.Single(plan.Findings).Remedy);
    }

    [Fact]
    public void With_seams_it_is_cut_in_pieces_with_names_of_their_own()
    {
        var plan = Cuts.Create(Two, new(Kerf: 0.2) { Seams = new() }, OnBase);

        Assert.Equal(["1A-1", "1A-2", "2A", "2B", "3A", "3B"], Names(plan));
        var plate = Assert.Single(plan.Plates);
        Assert.Equal(("1A", 2), (plate.Name, plate.Pieces.Length));
        Assert.Equal((Severity.Note, "plate-in-pieces"), plan.Findings.Select(f => (f.Severity, f.Id)).Single());
        Assert.All(plan.Boards.SelectMany(b => b.Placements), p =>
        {
            Assert.True(p.Bounds.MinX >= 5 - 1e-9 && p.Bounds.MaxX <= 595 + 1e-9, $"{p.Bounds}");
            Assert.True(p.Bounds.MinY >= 5 - 1e-9 && p.Bounds.MaxY <= 395 + 1e-9, $"{p.Bounds}");
        });
    }

    [Fact]
    public void What_stands_on_the_plate_is_drawn_whole_and_each_dowel_hole_is_cut_once()
    {
        var whole = Cuts.Create(Two, new(Kerf: 0) { Bed = new(2000, 1000) }, OnBase with
        {
            Base = new(new("MDF 6", 6, 2000, 1000), 20),
        });
        var pieces = Cuts.Create(Two, new(Kerf: 0) { Seams = new() }, OnBase);

        var (before, after) = (Count(whole, CutLayer.Dowel), Count(pieces, CutLayer.Dowel));
        Assert.True(before > 6, $"{before}");
        Assert.Equal(before, after);
        var foot = pieces.Boards.SelectMany(b => b.Placements).Where(p => p.Part.Name.StartsWith("1A-", StringComparison.Ordinal))
            .SelectMany(p => p.Part.Paths).Where(p => p is { Layer: CutLayer.Mark, Closed: true });
        Assert.Equal(2, foot.Count(p => Math.Abs(p.Length - 800) < 1e-6));
    }

    [Fact]
    public void A_plate_that_fits_turned_is_left_whole() =>
        Assert.Empty(Cuts.Create(Shapes.Rectangle(340, 540), new(Kerf: 0.2) { Seams = new() }, OnBase).Plates);

    [Fact]
    public void Where_an_island_leaves_no_room_the_error_names_place_and_length()
    {
        // The wall itself fits its own boards; only the plate under it does not fit.
        var plan = Cuts.Create(Shapes.Rectangle(700, 100), new(Kerf: 0) { Seams = new() }, OnBase with
        {
            Stock = [new("MDF 12", 12, 1000, 500)],
        });

        var finding = Assert.Single(plan.Findings, f => f.Severity == Severity.Error);
        Assert.Equal("no-place-for-seam", finding.Id);
        Assert.Contains("no seam can stand between x = ", finding.Message);
        Assert.Equal(["2A", "3A"], Names(plan));
    }

    [Fact]
    public void Dowelled_seams_are_straight_and_marked_on_both_pieces()
    {
        var spec = new SeamSpec { Kind = SeamKind.Dowelled };

        var plan = Cuts.Create(Two, new(Kerf: 0) { Seams = spec }, OnBase with { LetterHeight = 0 });

        var joints = plan.Plates.Single().Seams.Single().Joints.Length;
        Assert.True(joints >= 2);
        var pieces = plan.Boards.SelectMany(b => b.Placements).Where(p => p.Part.Name.StartsWith("1A-", StringComparison.Ordinal))
            .ToArray();
        Assert.Equal(2, pieces.Length);
        Assert.All(pieces, p =>
        {
            Assert.Equal(4, p.Part.Paths.Single(path => path.Layer == CutLayer.CutOuter).Segments.Length);
            Assert.Equal(joints, p.Part.Paths.Count(path => path is { Layer: CutLayer.Mark, Closed: false }));
        });
    }

    [Theory]
    [InlineData(12, 6, "A key of 12 mm is too small for a bit of 6 mm; make it at least 18 mm wide")]
    [InlineData(5, 0, "The width of a key is 5 mm; it must be from 6 to 200 mm.")]
    public void A_key_that_cannot_be_cut_is_refused(double key, double bit, string why)
    {
        var refused = Assert.Throws<SpecException>(
            () => Cuts.Create(Two, new() { Seams = new() { Key = key, Bit = bit } }, OnBase));

        Assert.StartsWith(why, refused.Message);
    }

    private static string[] Names(CutPlan plan) =>
        [.. plan.Boards.SelectMany(b => b.Placements).Select(p => p.Part.Name).Order(StringComparer.Ordinal)];

    private static int Count(CutPlan plan, CutLayer layer) =>
        plan.Boards.SelectMany(b => b.Placements).SelectMany(p => p.Part.Paths).Count(p => p.Layer == layer);
}
