using BuckGen.Cutting.Drilling;
using Xunit;

namespace BuckGen.Tests.Cutting.Drilling;

public class RunTests
{
    [Fact]
    public void Holes_are_split_by_layer_and_bit()
    {
        DrillHole[] holes = [.. Holes.Few, new(new(1, 1), 3, 12, 2, ""), new(new(2, 2), 3.0000001, 12, 2, "")];
        Assert.Equal(
            [(1, 3.0, 2), (2, 1.5, 3), (2, 3.0, 2)],
            DrillRun.Split(holes).Select(r => (r.Layer, r.Diameter, r.Holes.Length)));
    }

    [Fact]
    public void Each_run_follows_its_own_path_from_the_origin()
    {
        var run = DrillRun.Split(Holes.At(PointSets.Make("anywhere", 40, 7))).Single();
        var ordered = run.Holes.Select(h => h.Centre).ToArray();
        Assert.Equal(DrillPath.Order(ordered), Enumerable.Range(0, 40));
        Assert.Equal(DrillPath.Length(ordered), run.PathLength);
    }

    [Fact]
    public void Holes_at_one_place_keep_no_memory_of_how_they_came()
    {
        DrillHole[] holes = [new(new(1, 1), 3, 5, 1, "b"), new(new(1, 1), 3, 5, 1, "a"), new(new(1, 1), 3, 2, 1, "c")];
        Assert.Equal(DrillRun.Split(holes).Single().Holes, DrillRun.Split([.. holes.Reverse()]).Single().Holes);
    }

    [Theory]
    [InlineData(double.NaN, 1, 1, 1, "its centre must lie within 100000 mm")]
    [InlineData(1, 0, 1, 1, "its diameter is 0 mm")]
    [InlineData(1, 1, -2.5, 1, "its depth is -2.5 mm; it must be from 0.001 to 1000 mm")]
    [InlineData(1, 1, double.PositiveInfinity, 1, "its depth is")]
    [InlineData(1, 1, 1, 0, "its layer is 0; layers count from 1")]
    public void A_hole_out_of_range_is_refused(double x, double diameter, double depth, int layer, string problem)
    {
        DrillHole hole = new(new(x, 0), diameter, depth, layer, "vent");
        var refusal = Holes.Under("de-DE", () => Assert.Throws<DrillException>(() => DrillRun.Split([hole])));
        Assert.Contains(problem, refusal.Message, StringComparison.Ordinal);
    }
}
