using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using BuckGen.Output.Models;
using BuckGen.Output.Models.Meshing;
using BuckGen.Tests.Intake.Outlines;
using Xunit;

namespace BuckGen.Tests.Output.Models;

/// <summary>The laws of meshes over bucks of every outline of tests/corpus that can be read.</summary>
[Trait("Tier", "slow")]
public class CorpusModelTests(ITestOutputHelper log)
{
    // Outlines of more pieces are left out: designing their bucks takes long, not making the models.
    private const int MaxPieces = 1500;

    private static readonly Lazy<IReadOnlyDictionary<string, Outline>> Read = new(() => Corpus.Files
        .Select(f => (f.Name, Outline: OutlineOf(f)))
        .Where(f => f.Outline is { Region.IsEmpty: false } o && o.Region.Segments.Count() <= MaxPieces)
        .ToDictionary(f => f.Name, f => f.Outline!));

    public static TheoryData<string> Names => [.. Read.Value.Keys];

    [Fact]
    public void Enough_outlines_are_modelled() => Assert.InRange(Read.Value.Count, 100, int.MaxValue);

    [Theory]
    [MemberData(nameof(Names))]
    public void Both_models_are_closed_and_of_the_right_volume(string name)
    {
        // Kinds, corners and where the outline is to size alternate.
        var number = Read.Value.Keys.ToList().IndexOf(name);
        var design = BuckDesign.Create(Read.Value[name], new BuckSpec
        {
            Depth = 24,
            Draft = 5,
            Stock = [new("12 mm", 12)],
            Kind = number % 2 == 0 ? BuckKind.Male : BuckKind.Female,
            Corners = number % 3 == 0 ? CornerJoin.Mitre : CornerJoin.Round,
            OutlineAt = number % 5 == 0 ? OutlineAt.Base
                : OutlineAt.Face,
            Base = number % 4 < 2 ? new(new("9 mm", 9)) : null,
        }, cancellation: TestContext.Current.CancellationToken);

        var (stepped, smooth) = (BuckModel.Stepped(design), BuckModel.Smooth(design));

        Assert.Empty(MeshFaults.Find(stepped));
        Assert.Empty(MeshFaults.Find(smooth));
        // Chords stand in for arcs: of a small piece they take more than a thousandth.
        var (layers, drafted) = (design.Layers.Sum(l => l.Region.Area * l.Thickness), DraftedVolume(design));
        var chords = design.Layers.Sum(l => l.Region.Perimeter * l.Thickness) * SolidBuilder.ChordError;
        Assert.InRange(stepped.Volume, layers * 0.9995 - chords, layers * 1.0005 + chords);
        Assert.InRange(smooth.Volume, drafted * 0.9995 - chords, drafted * 1.0005 + chords);
        // 0.0002 mm is the grid's step.
        var bounds = design.Layers.Aggregate(Bounds.Nothing, (b, l) => b.With(l.Region.Bounds));
        Assert.True(bounds.Grown(0.0002).Contains(Plan(stepped))
            && Plan(stepped).Grown(SolidBuilder.ChordError).Contains(bounds));
        Assert.Equal((0, 0, design.Height), (stepped.MinCorner.Z, smooth.MinCorner.Z, stepped.MaxCorner.Z));
        // A wall whose sides meet below the face ends there, though the layer it ends in is cut in full.
        if (!design.Solid!.Shape.At(design.Solid.Shape.Face).IsEmpty) Assert.Equal(design.Height, smooth.MaxCorner.Z);
        var farthest = Heights(design).Max(h => MaxDistanceFromWall(smooth, h, design));
        log.WriteLine($"The wall is {farthest:F4} mm off at most where it was looked at.");
        Assert.InRange(farthest, 0, BuckModel.MaxDeviation);
    }

    // Three heights between the levels of any design.
    private static readonly double[] Shares = [0.137, 0.523, 0.891];

    private static IEnumerable<double> Heights(BuckDesign design) =>
        Shares.Select(share => design.Solid!.Shape.Foot + share * (design.Solid.Shape.Face - design.Solid.Shape.Foot));

    /// <summary>Farthest distance from where the mesh cuts a level plane to the drafted outline in that plane, mm.</summary>
    private static double MaxDistanceFromWall(SolidMesh mesh, double height, BuckDesign design)
    {
        var outline = design.Solid!.At(height);
        var cuts = mesh.Triangles.SelectMany(t => (IEnumerable<(int, int)>)[(t.A, t.B), (t.B, t.C), (t.C, t.A)])
            .Select(e => (Low: mesh.Points[e.Item1], High: mesh.Points[e.Item2]))
            .Where(e => e.Low.Z < height && e.High.Z > height)
            .Select(e => (e.Low, e.High, Share: (height - e.Low.Z) / (e.High.Z - e.Low.Z)))
            .Select(e => new Vec2(e.Low.X + (e.High.X - e.Low.X) * e.Share, e.Low.Y + (e.High.Y - e.Low.Y) * e.Share));
        return outline.IsEmpty ? 0 : cuts.Select(outline.DistanceToEdge).DefaultIfEmpty().Max();
    }

    private static Bounds Plan(SolidMesh mesh) => new(mesh.MinCorner.X, mesh.MinCorner.Y, mesh.MaxCorner.X, mesh.MaxCorner.Y);

    /// <summary>The plates and, by Simpson's rule, the drafted outlines, mm³.</summary>
    private static double DraftedVolume(BuckDesign design)
    {
        var heights = design.Plan.HeightsFrom(design.Solid!.Shape.Foot).ToArray();
        var plates = design.Layers.Where(l => l.Role != LayerRole.Wall).Sum(l => l.Region.Area * l.Thickness);
        return plates + design.Plan.LayerStocks.Index().Sum(s => Between(heights[2 * s.Index], heights[2 * s.Index + 2], 4));

        // Where loops join or part, the area has no smooth course; there the rule is applied to shorter and shorter stretches.
        double Between(double low, double high, int halvings)
        {
            var middle = (low + high) / 2;
            Region[] plans = [design.Solid.At(low), design.Solid.At(middle), design.Solid.At(high)];
            return halvings > 0 && plans.Select(p => p.Loops.Count()).Distinct().Count() > 1
                ? Between(low, middle, halvings - 1) + Between(middle, high, halvings - 1)
                : (plans[0].Area + 4 * plans[1].Area + plans[2].Area) * (high - low) / 6;
        }
    }

    private static Outline? OutlineOf(CorpusFile file)
    {
        try
        {
            return OutlineReader.Read(file.Content, file.Name, OutlineOptions.Default with { Units = file.Unit });
        }
        catch (OutlineException)
        {
            return null;
        }
    }
}
