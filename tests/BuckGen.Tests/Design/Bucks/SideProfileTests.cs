using BuckGen.Cutting.Boards;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using BuckGen.Output.Files;
using BuckGen.Settings;
using Xunit;

namespace BuckGen.Tests.Design.Bucks;

/// <summary>Sides with steps and bends. Sizes by trigonometry.</summary>
public class SideProfileTests
{
    /// <summary>45 degrees, a ledge of 8 mm, and 10 mm that lead in by 2.</summary>
    private static readonly SideStretch[] Stepped =
        [new() { Draft = 45 }, new() { Height = 0, Inset = 8 }, new() { Height = 10, Inset = 2 }];

    [Theory]
    [InlineData(BuckKind.Male, 12, 36)]
    [InlineData(BuckKind.Male, 37.999, 10.001)]
    [InlineData(BuckKind.Male, 38.001, 1.9998)]
    [InlineData(BuckKind.Male, 43, 1)]
    [InlineData(BuckKind.Male, 48, 0)]
    [InlineData(BuckKind.Female, 48, 0)]
    [InlineData(BuckKind.Female, 38, -10)]
    [InlineData(BuckKind.Female, 22.001, -25.999)]
    [InlineData(BuckKind.Female, 21.999, -34.0002)]
    [InlineData(BuckKind.Female, 12, -36)]
    public void The_wall_stands_where_its_stretches_put_it(BuckKind kind, double height, double offset) =>
        Assert.Equal(offset, Shape(kind, Stepped).OffsetAt(height), 1e-3);

    [Fact]
    public void A_ledge_has_a_side_below_and_a_side_above()
    {
        var shape = Shape(BuckKind.Male, Stepped);

        Assert.Equal(38, Assert.Single(shape.Ledges), 1e-9);
        // A board that ends on it is as wide as the wall below; the one over it starts on the wall above.
        Assert.Equal(10, shape.OffsetAt(shape.Below(38)), 1e-3);
        Assert.Equal(2, shape.OffsetAt(shape.Above(38)), 1e-3);
        Assert.Equal((37, 37), (shape.Below(37), shape.Above(37)));
    }

    [Fact]
    public void Boards_that_meet_on_a_ledge_are_cut_to_the_two_walls()
    {
        var spec = PlainBuck.Spec with
        {
            Side = [new() { Draft = 5 }, new() { Height = 0, Inset = 8 }, new() { Height = 12, Draft = 10 }],
        };
        var top = 12 * Math.Tan(10 * Math.PI / 180);
        double[] outside = [16 + 2 * top + 48 * PlainBuck.Tan5, 16 + 2 * top + 24 * PlainBuck.Tan5, 2 * top];
        double[] inside = [16 + 2 * top + 24 * PlainBuck.Tan5, 16 + 2 * top, 0];

        foreach (var (steps, wider) in ((Steps, double[])[])[(Steps.Outside, outside), (Steps.Inside, inside)])
        {
            var widths = PlainBuck.Create(Shapes.Rectangle(100, 60), spec with { Steps = steps }).Widths();
            Assert.Equal(3, widths.Length);
            for (var i = 0; i < 3; i++) Assert.Equal(100 + wider[i], widths[i], 1e-3);
        }

        // The layer under the ledge is sanded to the wall below it, not to the one above.
        var sandTo = PlainBuck.Create(Shapes.Rectangle(100, 60), spec).Layers[1].SandTo;
        Assert.Equal(116 + 2 * top, Assert.Single(sandTo).Bounds.Width, 1e-3);
    }

    [Fact]
    public void A_ledge_within_a_layer_is_reported_with_the_height_where_boards_meet()
    {
        var within = PlainBuck.Spec with
        {
            Side = [new() { Draft = 5 }, new() { Height = 0, Inset = 8 }, new() { Height = 13, Draft = 10 }],
        };

        var finding = Assert.Single(PlainBuck.Create(Shapes.Rectangle(100, 60), within).Named("ledge-in-layer"));
        Assert.Equal(23, finding.Height!.Value, 1e-6);
        Assert.Equal(1, finding.Value!.Value, 1e-6);
        Assert.Contains("24 mm from the flange, 12 mm from the face", finding.Remedy);
        Assert.Empty(PlainBuck.Create(Shapes.Rectangle(100, 60), within with
        {
            Side = [within.Side[0], within.Side[1], within.Side[2] with { Height = 12 }],
        }).Named("ledge-in-layer"));
    }

    [Fact]
    public void One_stretch_and_two_alike_give_the_files_of_one_draft()
    {
        var plain = PlainBuck.Spec with { Draft = 7, Sheet = new() { Gauge = 1 } };
        var files = Files(plain);

        Assert.NotEmpty(files);
        Assert.Equal(files, Files(plain with { Draft = 3, Side = [new() { Draft = 7 }] }));
        Assert.Equal(files, Files(plain with { Side = [new() { Height = 12, Draft = 7 }, new() { Draft = 7 }] }));
        Assert.NotEqual(files, Files(plain with { Side = [new() { Height = 12, Draft = 7 }, new() { Draft = 8 }] }));
    }

    [Fact]
    public void A_stretch_given_by_its_inset_is_one_given_by_its_draft()
    {
        var byDraft = Shape(BuckKind.Male, [new() { Draft = 3 }, new() { Height = 12, Draft = 45 }]);
        var byInset = Shape(BuckKind.Male, [new() { Draft = 3 }, new() { Height = 12, Inset = 12 }]);

        Assert.Equal(byDraft.Side.Bends.Select(Rounded), byInset.Side.Bends.Select(Rounded));
        static (double, double) Rounded(SideBend b) => (Math.Round(b.FromFlange, 9), Math.Round(b.Inset, 9));
    }

    [Fact]
    public void Heights_and_insets_are_those_of_the_cooled_part()
    {
        var side = SideProfile.Create(PlainBuck.Spec with { Side = [.. Stepped] }, 40, 1 / 0.98);

        Assert.Equal(10 / 0.98, side.Bends[^1].FromFlange - side.Bends[^2].FromFlange, 2e-3);
        Assert.Equal(8 / 0.98, side.Bends[2].Inset - side.Bends[1].Inset, 2e-3);
        Assert.Equal(40, side.Depth);
    }

    /// <summary>The other side of a sheet is what discs of its thickness round all points of the wood reach.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_other_side_of_the_sheet_is_reached_by_discs_round_the_wood(bool isMale)
    {
        const double Thickness = 1.7;
        var side = SideProfile.Create(PlainBuck.Spec with { Side = [.. Stepped] }, 36);
        var compared = 0;
        for (var at = 2.0; at < 34; at += 0.37)
        {
            var farthest = double.NegativeInfinity;
            for (var along = at - Thickness; along <= at + Thickness; along += 1e-3)
                farthest = Math.Max(farthest, (isMale ? -1 : 1) * (side.InsetAt(along) - side.InsetAt(at))
                    + Math.Sqrt(Math.Max(0, Thickness * Thickness - (along - at) * (along - at))));
            Assert.Equal(farthest, side.LevelWall(at, Thickness, isMale), 2e-3);
            compared++;
        }

        Assert.True(compared > 50);
        Assert.Equal(Thickness / Math.Cos(5 * Math.PI / 180), SideProfile.Straight(5, 36).LevelWall(3, Thickness, isMale));
    }

    [Fact]
    public void The_steepest_stretch_is_compared_with_the_minimum_draft()
    {
        BuckSpec With(double draft) => PlainBuck.Spec with { Side = [new() { Draft = 8 }, new() { Height = 12, Draft = draft }] };

        var low = Assert.Single(PlainBuck.Create(Shapes.Rectangle(100, 60), With(1)).Named("draft-low"));
        Assert.Contains("from 24 to 36 mm from the flange", low.Message);
        Assert.Equal(1, low.Value!.Value, 1e-9);
        Assert.Single(PlainBuck.Create(Shapes.Rectangle(100, 60), With(0)).Named("draft-locks"));
        Assert.DoesNotContain(PlainBuck.Create(Shapes.Rectangle(100, 60), With(60)).Findings,
            f => f.Id.StartsWith("draft", StringComparison.Ordinal));
    }

    public static TheoryData<string, SideStretch[]> Wrong => new()
    {
        { "draft of stretch 1 of the side is -3 degrees", [new() { Draft = -3 }] },
        { "below 0 the wall overhangs and the part locks", [new() { Inset = -3 }] },
        { "Stretch 1 of the side has neither a draft nor an inset", [new() { Height = 3 }] },
        { "Stretch 2 of the side has a draft and an inset", [new() { Draft = 3 }, new() { Height = 3, Draft = 5, Inset = 4 }] },
        { "height of stretch 1 of the side is -1 mm", [new() { Height = -1, Draft = 3 }] },
        { "it must be 0 for a ledge, or from 0.05 mm", [new() { Draft = 3 }, new() { Height = 0.01, Draft = 3 }] },
        { "no height and no inset", [new() { Draft = 3 }, new() { Height = 0, Draft = 3 }] },
        { "All stretches of the side have a height, 36 mm in all", [new() { Height = 36, Draft = 3 }] },
        { "2 stretches of the side have no height", [new() { Draft = 3 }, new() { Draft = 5 }] },
        { "starts or ends with a ledge", [new() { Draft = 3 }, new() { Height = 0, Inset = 3 }] },
        { "take 36 mm, but the buck is 36 mm deep", [new() { Draft = 3 }, new() { Height = 36, Draft = 5 }] },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void A_side_that_cannot_be_is_refused_with_a_remedy(string says, SideStretch[] side)
    {
        var refused = Assert.Throws<SpecException>(() =>
            PlainBuck.Create(Shapes.Rectangle(100, 60), PlainBuck.Spec with { Side = [.. side] })).Message;

        Assert.Contains(says, refused);
        Assert.Matches("[;:] (give|leave|it must|nothing)", refused);
    }

    private static string[] Files(BuckSpec spec)
    {
        var plan = CutPlan.Create(PlainBuck.Create(Shapes.Rectangle(100, 60), spec), new CuttingSpec());
        return [.. OutputFiles.Create(plan, new OutputOptions()).Select(f => $"{f.Path} {Convert.ToHexString([.. f.Content])}")];
    }

    private static DraftedShape Shape(BuckKind kind, SideStretch[] side)
    {
        var spec = PlainBuck.Spec with { Kind = kind, Side = [.. side] };
        return new(Shapes.Rectangle(200, 200), spec, 12, 48, new ArcOffsetter());
    }
}
