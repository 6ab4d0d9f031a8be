using BuckGen.Design;
using BuckGen.Design.Bucks;
using BuckGen.Design.Specs;
using BuckGen.Geometry.Offsetting;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using BuckGen.Tests.Intake.Outlines;
using Xunit;

namespace BuckGen.Tests.Design.Prediction;

/// <summary>
/// Outlines that others drew, formed over and into: the prediction comes to rest, keeps the plastic and finds a thinnest wall.
/// </summary>
[Trait("Tier", "slow")]
public class CorpusFormingTests(ITestOutputHelper log)
{
    // A share of the outlines that can be read, of few enough pieces for a quick design.
    private const int Every = 7, MostPieces = 500;

    private static readonly Lazy<IReadOnlyList<(string Name, Outline Outline)>> Read = new(() =>
        [.. Corpus.Files.Select(f => (f.Name, Outline: OutlineOf(f)))
            .Where(f => f.Outline is { Region.IsEmpty: false } o && o.Region.Segments.Count() <= MostPieces)
            .Where((_, i) => i % Every == 0).Select(f => (f.Name, f.Outline!))]);

    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, Read.Value.Count)];

    [Fact]
    public void Enough_outlines_are_formed() => Assert.InRange(Read.Value.Count, 12, 40);

    [Theory]
    [MemberData(nameof(Numbers))]
    public void A_drawn_outline_is_formed_to_the_end(int number)
    {
        var (name, outline) = Read.Value[number];
        var box = outline.Region.Bounds;
        var depth = Math.Clamp(Math.Min(box.Width, box.Height) / 4, 3, 30);
        var design = BuckDesign.Create(outline, new BuckSpec
        {
            Depth = depth,
            Draft = 5,
            Stock = [new("3 mm", 3, 5000, 5000)],
            DepthTolerance = 3,
            Sheet = new() { Gauge = Math.Clamp(depth / 20, 0.3, 2) },
            Kind = number % 2 == 0 ? BuckKind.Male : BuckKind.Female,
            Corners = number % 3 == 0 ? CornerJoin.Mitre
                : CornerJoin.Round,
            Base = number % 4 < 2 ? new(new("9 mm", 9, 5000, 5000)) : null,
            Prediction = new() { Stepped = number % 5 == 0 },
        }, null, null, TestContext.Current.CancellationToken);

        var part = design.Formed!;

        log.WriteLine(
            FormattableString.Invariant($"{name}: {part.Gauge:0.##} mm becomes {part.MeanThickness:0.###} on average, ")
                + FormattableString.Invariant(
                    $"{part.Thinnest?.Thickness:0.###} at the thinnest; {part.MeshSensitivity:+0 %;-0 %} from a coarser ")
                    + FormattableString.Invariant($"net; {part.Webs.Length} webs, {part.Bridged.Length} places not reached"));
        Assert.True(part.IsConverged, name);
        Assert.InRange(part.VolumeError, -0.001, 0.001);
        Assert.True(part.MeanThickness > 0 && part.MeanThickness < part.Gauge, name);
        if (part.Thinnest is { } thinnest) Assert.InRange(thinnest.Thickness, 0.01 * part.Gauge, part.Gauge);
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
