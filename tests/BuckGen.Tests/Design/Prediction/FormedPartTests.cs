using BuckGen.Cutting.Boards;
using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Prediction;
using BuckGen.Design.Specs;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Geometry.Tests;
using BuckGen.Output.Files;
using BuckGen.Settings;
using BuckGen.Tests.Design.Forming;
using Xunit;

namespace BuckGen.Tests.Design.Prediction;

/// <summary>The laws of a predicted part over designs of many kinds, and what its maker learns.</summary>
[Trait("Tier", "slow")]
public class FormedPartTests
{
    private static readonly Dictionary<string, Lazy<BuckDesign>> Designs = new()
    {
        ["block"] = Make(Shapes.Rectangle(80, 50), Male(20)),
        ["block with a base and a plenum"] = Make(Shapes.Slot(60, 20),
            Male(20) with { Base = new(Formed.Mdf6), Plenum = new(Formed.Mdf6), Vents = new() }),
        ["block, stepped"] = Make(Shapes.Rectangle(80, 50), Male(18), new() { Stepped = true }),
        ["letter O"] = Make(Shapes.Counter(90, 70, 50, 32), Male(14)),
        ["letter L"] = Make(Shapes.Polygon((0, 0), (80, 0), (80, 25), (25, 25), (25, 90), (0, 90)), Male(16)),
        ["letter T with sharp corners"] = Make(
            Shapes.Polygon((30, 0), (55, 0), (55, 60), (85, 60), (85, 85), (0, 85), (0, 60), (30, 60)),
            Male(14) with { Corners = CornerJoin.Mitre }),
        ["close neighbours"] = Make(Shapes.Union(Shapes.DiscAt(25, 25, 25), Shapes.RectangleAt(66, 0, 40, 50)), Male(14)),
        ["cavity"] = Make(Shapes.Slot(60, 30), Formed.Spec(BuckKind.Female, 25, 5) with { Stock = [Formed.Mdf6] }),
        ["cavity in a block wider than the frame"] = Make(Shapes.Slot(60, 30),
            Formed.Spec(BuckKind.Female, 25, 5) with
            {
                Stock = [Formed.Mdf6],
                BlockMargin = 60,
                Former = new() { Opening = new(180, 120) }
            }),
        ["fine"] = Make(Shapes.Rectangle(60, 40), Male(12), new() { Detail = FormingDetail.Fine }),
    };

    public static TheoryData<string> Names => [.. Designs.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Plastic_is_kept_and_comes_to_rest(string name)
    {
        var (design, part) = (Designs[name].Value, Designs[name].Value.Formed!);

        Assert.True(part.IsConverged);
        Assert.InRange(part.VolumeError, -0.001, 0.001);
        // Mean thickness is volume over area: the gauge by the ratio of the areas.
        var opening = design.Blank!.Opening;
        Assert.Equal(part.Gauge * opening.Width * opening.Height / part.Triangles.Sum(t => Area(part, t)),
            part.MeanThicknessOfSheet, 1e-6);
        Assert.NotNull(part.Thinnest);
        Assert.InRange(part.Thinnest.Thickness, 0.02, part.MeanThickness);
        Assert.InRange(part.MeanThickness, part.Thinnest.Thickness, part.Gauge * 1.0001);
    }

    /// <summary>No triangle passes through the wood but for cutting off an edge, by no more than its own size allows.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Nothing_passes_through_the_wood(string name)
    {
        var (design, part) = (Designs[name].Value, Designs[name].Value.Formed!);
        var box = part.Points.Aggregate(Bounds.Nothing, (b, p) => b.With(new Vec2(p.X, p.Y)));
        var tool = new BuckTool(BuckSlabs.FromLayers(design.Solid!, design.Layers, part.Spec.Stepped), 0, box);
        Assert.All(part.Points, p => Assert.InRange(tool.SignedDistance(new(p.X, p.Y, p.Z)), -1e-6, double.PositiveInfinity));
        foreach (var t in part.Triangles)
        {
            Vec3[] c = [.. ((int[])[t.A, t.B, t.C]).Select(i => new Vec3(part.Points[i].X, part.Points[i].Y, part.Points[i].Z))];
            var longest = Math.Max((c[1] - c[0]).Length, Math.Max((c[2] - c[1]).Length, (c[0] - c[2]).Length));
            // Over a right-angled edge a chord lies at most half its length below the edge.
            Assert.InRange(tool.SignedDistance((c[0] + c[1] + c[2]) * (1.0 / 3)), -longest / 2 - 1e-6, double.PositiveInfinity);
        }
    }

    [Fact]
    public void The_same_design_gives_the_same_numbers()
    {
        var (first, second) = (Design(Shapes.Counter(90, 70, 50, 32), Male(14)),
            Design(Shapes.Counter(90, 70, 50, 32), Male(14)));

        Assert.Equal(first.Formed!.Points, second.Formed!.Points);
        Assert.Equal(first.Formed.Triangles, second.Formed.Triangles);
    }

    /// <summary>
    /// A design that is its own mirror image gives a part that is, points and thickness, to a millionth of a millimetre.
    /// </summary>
    [Fact]
    public void A_symmetrical_design_gives_a_symmetrical_part()
    {
        var part = Design(Shapes.Rectangle(80, 50), Male(20)).Formed!;
        var rows = part.Points.ToLookup(p => (Math.Round(p.Z, 4), Math.Round(p.Thickness, 4)));
        IEnumerable<FormedPoint> Near(FormedPoint p) =>
            from z in (double[])[-1e-4, 0, 1e-4]
            from t in (double[])[-1e-4, 0, 1e-4]
            from q in rows[(Math.Round(Math.Round(p.Z, 4) + z, 4), Math.Round(Math.Round(p.Thickness, 4) + t, 4))]
            select q;

        Assert.All(part.Points, p => Assert.Contains(Near(p), q =>
            Math.Abs(q.X - (80 - p.X)) < 1e-6 && Math.Abs(q.Y - p.Y) < 1e-6 && Math.Abs(q.Z - p.Z) < 1e-6
                && Math.Abs(q.Thickness - p.Thickness) < 1e-6));
        Assert.All(part.Points, p => Assert.Contains(Near(p), q =>
            Math.Abs(q.X - p.X) < 1e-6 && Math.Abs(q.Y - (50 - p.Y)) < 1e-6 && Math.Abs(q.Z - p.Z) < 1e-6
                && Math.Abs(q.Thickness - p.Thickness) < 1e-6));
    }

    /// <summary>
    /// Common practice, no source: a tall buck thins its sheet most below the top edge, where nothing could follow, and the
    /// face keeps its gauge.
    /// </summary>
    [Fact]
    public void On_a_tall_buck_the_face_keeps_the_gauge_and_the_wall_thins()
    {
        var design = Design(Shapes.Rectangle(80, 60), Male(50, draft: 3));
        var part = design.Formed!;

        Assert.InRange(part.Points.Where(p => p.Z > 49.9 && p.X is > 20 and < 60 && p.Y is > 20 and < 40).Min(p => p.Thickness),
            0.98, 1.0001);
        Assert.InRange(part.Thinnest!.Thickness, 0.15, 0.5);
        Assert.InRange(part.Thinnest.Height, 5, 49.9);
    }

    /// <summary>
    /// Common practice, no source: deeper is thinner, and a box formed into a cavity ends thinner than the same box formed
    /// over a buck.
    /// </summary>
    [Fact]
    public void Deeper_is_thinner_and_a_cavity_thinner_than_a_buck()
    {
        double Thinnest(BuckSpec spec) => Design(Shapes.Rectangle(90, 60), spec).Formed!.Thinnest!.Thickness;
        BuckSpec Cavity(double depth) => Formed.Spec(BuckKind.Female, depth, 3) with { Stock = [Formed.Mdf6] };

        double[] depths = [12, 24, 36];
        double[] over = [.. depths.Select(d => Thinnest(Male(d, 3)))], into = [.. depths.Select(d => Thinnest(Cavity(d)))];

        Assert.Equal(over.OrderDescending(), over);
        Assert.Equal(into.OrderDescending(), into);
        Assert.All(over.Zip(into), t => Assert.True(t.Second < t.First, $"{t}"));
    }

    /// <summary>
    /// Common practice, no source: thin sheet formed down into a deep box with nearly upright walls ends as film in its floor
    /// corners; over the outside of the same box it keeps several times that.
    /// </summary>
    [Fact]
    public void A_deep_box_ends_as_film_inside_and_holds_outside()
    {
        BuckSpec Box(BuckKind kind) => Formed.Spec(kind, 80, 1, gauge: 0.5) with { Stock = [new("8 mm", 8, 2000, 2000)] };
        double Thinnest(BuckKind kind) => Design(Shapes.Rectangle(110, 90), Box(kind)).Formed!.Thinnest!.Thickness;

        var (inside, outside) = (Thinnest(BuckKind.Female), Thinnest(BuckKind.Male));

        Assert.InRange(inside, 0.005, 0.06);
        Assert.InRange(outside / inside, 2.5, 20);
    }

    /// <summary>The figure that is reported hardly depends on the net: that is what the ball is for.</summary>
    [Fact]
    public void The_thinnest_wall_of_a_plain_part_is_the_same_on_a_finer_net()
    {
        foreach (var (outline, spec) in (ReadOnlySpan<(Region, BuckSpec)>)[(Shapes.Slot(60, 25), Male(20)),
            (Shapes.Slot(60, 30), Formed.Spec(BuckKind.Female, 18, 5) with { Stock = [Formed.Mdf6] })])
            Assert.InRange(Design(outline, spec, new() { Detail = FormingDetail.Fine }).Formed!.MeshSensitivity!.Value,
                -0.08, 0.08);
    }

    /// <summary>The gauge is found by forming: formed again with it, the thinnest wall is the one asked for.</summary>
    [Fact]
    public void With_the_gauge_it_names_the_wall_is_as_asked()
    {
        var spec = Male(24);
        var asked = Design(Shapes.Rectangle(80, 50), spec with { Sheet = spec.Sheet! with { MinWall = 0.7 } });
        Assert.Contains(asked.Findings, f => f.Id == "wall-too-thin");

        var again = Design(Shapes.Rectangle(80, 50),
            spec with { Sheet = spec.Sheet with { Gauge = asked.Formed!.RequiredGauge!.Value } });

        Assert.Equal(0.7, again.Formed!.Thinnest!.Thickness, 0.7 * 0.02);
        Assert.InRange(asked.Formed.RequiredGauge.Value, 0.8, 3);
        Assert.Null(again.Formed.RequiredGauge);
    }

    [Fact]
    public void Thin_spots_are_reported_with_their_place()
    {
        var spec = Male(20);
        var told = Design(Shapes.Rectangle(80, 50), spec with { Checks = new() { MaxThinning = 1.2 } }).Findings
            .Single(f => f.Id == "thin-spot");

        Assert.True(told is { Place: not null, Height: not null, Limit: 1.2, Value: > 1.2 });
        Assert.DoesNotContain(Design(Shapes.Rectangle(80, 50), spec).Findings, f => f.Id == "thin-spot");
    }

    [Fact]
    public void A_stiff_sheet_stands_off_in_corners()
    {
        var spec = Formed.Spec(BuckKind.Female, 25, 3) with { Stock = [Formed.Mdf6] };

        Assert.Contains(Design(Shapes.Rectangle(60, 40), spec, new() { Modulus = 1 }).Findings,
            f => f is { Id: "sheet-bridges", Value: > 1, Place: not null });
        Assert.DoesNotContain(Design(Shapes.Rectangle(60, 40), spec, new() { Modulus = 0.01 }).Findings,
            f => f.Id == "sheet-bridges");
    }

    /// <summary>What slides helps the wall: the face gives of its gauge.</summary>
    [Fact]
    public void A_sheet_that_slides_is_thicker_where_it_was_thinnest()
    {
        FormedPart Part(double? friction) =>
            Design(Shapes.Slot(50, 20), Male(18), new() { Friction = friction, Modulus = 0.1 }).Formed!;
        var (stuck, sliding) = (Part(null), Part(0.1));

        Assert.True(sliding.IsConverged);
        Assert.True(sliding.Thinnest!.Thickness > 1.05 * stuck.Thinnest!.Thickness, $"{sliding.Thinnest} {stuck.Thinnest}");
        Assert.InRange(sliding.VolumeError, -0.001, 0.001);
    }

    [Fact]
    public void Findings_can_be_silenced()
    {
        var spec = Male(20) with { Checks = new() { MaxThinning = 1.2, Silenced = [new("thin-spot", "a sample only")] } };

        Assert.Equal("a sample only", Design(Shapes.Rectangle(80, 50), spec).Findings.Single(f => f.Id == "thin-spot").Silenced);
    }

    [Fact]
    public void What_can_t_be_predicted_is_reported()
    {
        BuckSpec[] specs = [Male(20, draft: -2), Male(20) with { Former = new() { Opening = new(70, 60) } }];

        Assert.All(specs,
            s => Assert.True(
                Design(Shapes.Rectangle(80, 50), s) is { Formed: null, Findings: { } f }
                && f.Any(g => g.Id == "wall-not-predicted")));
        Assert.All(specs,
            s => Assert.DoesNotContain(Formed.Design(Shapes.Rectangle(80, 50), s).Findings, f => f.Id == "wall-not-predicted"));
    }

    /// <summary>Walls beside an acute corner, which moves four times as far as they do, are checked as well.</summary>
    [Fact]
    public void An_acute_corner_hides_no_thin_wall()
    {
        var design =
            Design(Shapes.Polygon((0, 0), (120, -32), (120, 32)),
                Male(20, draft: 10) with { Corners = CornerJoin.Mitre, OutlineAt = OutlineAt.Base });
        var thinnest = design.Formed!.Thinnest!;

        Assert.InRange(thinnest.Height, 1, 19.99);
        Assert.InRange(thinnest.Thickness, 0.3, 0.8);
    }

    [Fact]
    public void A_narrow_counter_is_bridged_and_reported()
    {
        var design = Design(Shapes.Counter(70, 60, 7, 40), Male(20));

        Assert.Contains(design.Findings,
            f => f is { Id: "sheet-bridges", Place: { X: > 31 and < 39, Y: > 10 and < 50 }, Value: > 2 });
    }

    [Fact]
    public void A_wall_that_no_sheet_gives_names_no_gauge()
    {
        var spec = Male(24);

        var part = Design(Shapes.Rectangle(80, 50), spec with { Sheet = spec.Sheet! with { MinWall = 20 } }).Formed!;

        Assert.Null(part.RequiredGauge);
    }

    /// <summary>A prediction that was given up is reported, and neither drawn nor put into numbers.</summary>
    [Fact]
    public void What_did_not_come_to_rest_shows_nothing()
    {
        var design = Design(Shapes.Rectangle(80, 50), Male(20));
        var given = design.Formed! with
        {
            IsConverged = false,
            Points = [],
            Triangles = [],
            Thinnest = null,
            ThinnestOfSheet = null,
            BurstAt = new(3, 4)
        };

        Assert.True(FormedPartFindings
            .Find(given, BuckKind.Male, design.Footprint, design.Spec.Sheet!, new(), 6, new(0, 1, 0, 0)).Single()
            is { Id: "forming-unsure", Place: not null });
        var files = OutputFiles.Create(CutPlan.Create(design with { Formed = given }, new()), new() { Model = true });
        Assert.DoesNotContain(files, f => f.Path == "model/part.glb");
        Assert.Contains("did not converge",
            System.Text.Encoding.UTF8.GetString([.. files.Single(f => f.Path == OutputFiles.ReportPath).Content]));
    }

    [Fact]
    public void A_prediction_without_a_sheet_is_refused() =>
        Assert.Contains("thickness of the plastic sheet", Refusal(Male(20) with { Sheet = null, Prediction = new() }));

    [Fact]
    public void What_is_out_of_range_is_refused()
    {
        Assert.Contains("stiffness of the hot sheet", Refusal(Male(20) with { Prediction = new() { Modulus = 0 } }));
        Assert.Contains("ball", Refusal(Male(20) with { Prediction = new() { CornerBall = 0.1 } }));
        Assert.Contains("stiffening", Refusal(Male(20) with { Prediction = new() { Stiffening = -1 } }));
    }

    private static string Refusal(BuckSpec spec) =>
        Assert.Throws<SpecException>(() => Formed.Design(Shapes.Rectangle(80, 50), spec)).Message;

    private static double Area(FormedPart part, FormedTriangle t)
    {
        Vec3 At(int i) => new(part.Points[i].X, part.Points[i].Y, part.Points[i].Z);
        return (At(t.B) - At(t.A)).Cross(At(t.C) - At(t.A)).Length / 2;
    }

    private static BuckSpec Male(double depth, double draft = 5) =>
        Formed.Spec(BuckKind.Male, depth, draft) with { Stock = [Formed.Mdf6, new("2 mm", 2)] };

    private static BuckDesign Design(Region outline, BuckSpec spec, FormingSpec? forming = null) =>
        Formed.Design(outline, spec with { Prediction = forming ?? new() });

    private static Lazy<BuckDesign> Make(Region outline, BuckSpec spec, FormingSpec? forming = null) =>
        new(() => Design(outline, spec, forming));
}
