using BuckGen.Bucks;
using BuckGen.Designs;
using BuckGen.Geometry.Offsetting;
using BuckGen.Models;
using BuckGen.Outlines;
using BuckGen.Tests.Outlines;
using Xunit;

namespace BuckGen.Tests.Models;

/// <summary>The laws of meshes over bucks of every outline of tests/corpus that can be read.</summary>
public class CorpusModelTests(ITestOutputHelper log)
{
    // Outlines of more pieces are left out: designing their bucks takes long, not making the models.
    private const int MostPieces = 1500;

    private static readonly Lazy<IReadOnlyDictionary<string, Outline>> Read = new(() => Corpus.Files
        .Select(f => (f.Name, Outline: OutlineOf(f))).Where(f => f.Outline is { Region.IsEmpty: false } o && o.Region.Segments.Count() <= MostPieces)
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
            Depth = 24, Draft = 5, Stock = [new("12 mm", 12)], Kind = number % 2 == 0 ? BuckKind.Male : BuckKind.Female,
            Corners = number % 3 == 0 ? CornerJoin.Mitre : CornerJoin.Round, OutlineAt = number % 5 == 0 ? OutlineAt.Base : OutlineAt.Face,
            Base = number % 4 < 2 ? new(new("9 mm", 9)) : null,
        }, TestContext.Current.CancellationToken);

        var clock = System.Diagnostics.Stopwatch.StartNew();
        var stepped = BuckModel.Stepped(design);
        var t1 = clock.ElapsedMilliseconds;
        Assert.Empty(MeshFaults.Of(stepped));
        Assert.InRange(stepped.Volume / design.Layers.Sum(l => l.Region.Area * l.Thickness), 0.999, 1.001);

        clock.Restart();
        var smooth = BuckModel.Smooth(design);
        var t2 = clock.ElapsedMilliseconds;
        Assert.Empty(MeshFaults.Of(smooth));
        Assert.InRange(smooth.Volume / DraftedVolume(design), 0.999, 1.001);
        log.WriteLine($"{smooth.Volume / DraftedVolume(design):F6}");
        log.WriteLine($"{name}: {stepped.Triangles.Length} in {t1} ms, {smooth.Triangles.Length} in {t2} ms");
    }

    /// <summary>The plates and the drafted outlines summed up in thin slices, mm³.</summary>
    private static double DraftedVolume(BuckDesign design)
    {
        var (solid, foot, face) = (design.Solid!, design.Solid!.Shape.Foot, design.Solid!.Shape.Face);
        const int Slices = 200;
        var plates = design.Layers.Where(l => l.Role != LayerRole.Wall).Sum(l => l.Region.Area * l.Thickness);
        return plates + Enumerable.Range(0, Slices).Sum(i => solid.At(foot + (face - foot) * (i + 0.5) / Slices).Area) * (face - foot) / Slices;
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
