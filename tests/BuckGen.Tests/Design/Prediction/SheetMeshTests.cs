using BuckGen.Design.Bucks;
using BuckGen.Design.Prediction;
using BuckGen.Geometry;
using BuckGen.Geometry.Tests;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Design.Prediction;

/// <summary>The mesh is finest where the sheet is drawn into a narrow gap.</summary>
public class SheetMeshTests
{
    private static readonly Region Letter = Shapes.Counter(90, 60, 50, 16);

    [Fact]
    public void The_width_of_a_counter_is_found_anywhere_in_it()
    {
        var gaps = Gaps(Letter, isMale: true);

        Assert.Equal(16, gaps.At(new(45, 30), 100), 0.05 * 16);
        Assert.Equal(16, gaps.At(new(45, 24), 100), 0.05 * 16);
        Assert.Equal(16, gaps.At(new(40, 37.9), 100), 0.05 * 16);
        // On the wall itself.
        Assert.Equal(16, gaps.At(new(40, 38), 100), 0.05 * 16);
        Assert.Equal(16, gaps.At(new(40, 38.02), 100), 0.05 * 16);
        // Only small circles touch the wall in a corner, but the gap is not narrower there.
        Assert.InRange(gaps.At(new(20.5, 23), 100), 10, 16.5);
    }

    [Fact]
    public void There_is_no_gap_on_the_wood_nor_in_the_open()
    {
        var gaps = Gaps(Letter, isMale: true);

        Assert.Equal(double.PositiveInfinity, gaps.At(new(10, 30), 100));
        Assert.Equal(double.PositiveInfinity, gaps.At(new(-10, 30), 100));
        Assert.Equal(double.PositiveInfinity, gaps.At(new(45, 30), 15));
    }

    [Fact]
    public void The_gap_of_a_cavity_lies_inside_its_outline()
    {
        var gaps = Gaps(Shapes.Rectangle(80, 20), isMale: false);

        Assert.Equal(20, gaps.At(new(40, 4), 100), 1.0);
        Assert.Equal(double.PositiveInfinity, gaps.At(new(40, -4), 100));
    }

    [Fact]
    public void As_many_triangles_lie_across_a_gap_as_are_wanted()
    {
        var made = Mesh(minSize: 0.5).Create(new(2_000, 6, 100_000));

        var longest = EdgesAt(made, new(45, 30), 6).Max();
        Assert.InRange(longest, 16 / 6.0 / 3, 16 / 6.0 * 1.05);
        Assert.InRange(made.Sizes.AtWalls, 16 / 6.0, 20);
        Assert.Equal(2, made.Sizes.Ball(new(45, 30), 2));
        Assert.Equal(16 / 4.0, made.Sizes.Ball(new(45, 30), 50), 0.2);
        Assert.Equal(2 * made.Sizes.AtWalls, made.Sizes.Ball(new(-10, 30), 2));
    }

    [Fact]
    public void Triangles_are_never_smaller_than_allowed_nor_too_many()
    {
        var (coarse, few) = (Mesh(minSize: 4).Create(new(2_000, 6, 100_000)), Mesh(minSize: 0.5).Create(new(2_000, 12, 3_000)));

        Assert.InRange(EdgesAt(coarse, new(45, 30), 6).Max(), 1.9, 4.01);
        Assert.InRange(few.Mesh.Triangles.Length, 1_000, 3_000);
    }

    [Fact]
    public void The_narrowest_gap_is_found_along_the_outline()
    {
        var comb = Shapes.Union(Shapes.RectangleAt(0, 0, 20, 60), Shapes.RectangleAt(22, 0, 20, 60),
            Shapes.RectangleAt(43.5, 0, 20, 60));

        var narrowest = Gaps(comb, isMale: true).Narrowest(comb, 3)!;

        Assert.Equal(1.5, narrowest.Width, 0.1);
        Assert.InRange(narrowest.Place.X, 42, 43.5);
        Assert.Null(Gaps(comb, isMale: true).Narrowest(comb, 1.4));
        Assert.Null(Gaps(Letter, isMale: true).Narrowest(Letter, 15));
    }

    [Theory]
    // Three triangles as large as the gauge.
    [InlineData(2.8, true)]
    [InlineData(3.3, false)]
    public void A_gap_that_the_sheet_is_too_thick_for_is_not_judged(double width, bool found)
    {
        var apart = Shapes.Union(Shapes.Rectangle(40, 40), Shapes.RectangleAt(40 + width, 0, 40, 40));

        var design = Formed.Design(apart, Formed.Spec(BuckKind.Male, 6) with { Prediction = new() });

        Assert.True(design.Formed!.IsConverged);
        Assert.Equal(found, design.Findings.Any(f => f.Id == "gap-not-judged"));
        if (found) Assert.Equal(width, design.Formed.NotJudged!.Width, 0.15);
    }

    private static IEnumerable<double> EdgesAt(GradedMesh made, Vec2 place, double radius) =>
        made.Mesh.Triangles.Select(t => (A: made.Mesh.Nodes[t.A], B: made.Mesh.Nodes[t.B], C: made.Mesh.Nodes[t.C]))
            .Where(t => t.A.DistanceTo(place) < radius)
            .SelectMany(t => (double[])[t.A.DistanceTo(t.B), t.B.DistanceTo(t.C), t.C.DistanceTo(t.A)]);

    private static SheetMesh Mesh(double minSize)
    {
        var opening = Bounds.FromCorners(new(-40, -40), new(130, 100));
        return new(opening, [new(Letter, opening)], Gaps(Letter, isMale: true), minSize);
    }

    private static GapWidth Gaps(Region region, bool isMale) => new(new(region, region.Bounds.Grown(50)), isMale);
}
