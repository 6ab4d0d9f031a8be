using BuckGen.Dxf.Reading;
using BuckGen.Geometry;
using BuckGen.Geometry.Curves;
using BuckGen.Intake.Healing;
using BuckGen.Intake.Measuring;
using BuckGen.Intake.Outlines;
using BuckGen.Intake.Reading;
using BuckGen.Intake.Svg;
using BuckGen.Output.Reports;
using Xunit;
using static BuckGen.Tests.Intake.Outlines.DxfText;

namespace BuckGen.Tests.Intake.Outlines;

/// <summary>Every stage of reading and measuring looks whether it is to stop.</summary>
public class ReadingStopsTests
{
    private static readonly CancellationToken Stopped = new(true);
    private static readonly byte[] Dxf = DxfText.File(Circle(0, 0, 9), Rectangle(20, 0, 9, 9));
    private static readonly byte[] Svg = "<svg xmlns='http://www.w3.org/2000/svg'><rect width='9' height='9'/></svg>"u8.ToArray();

    public static TheoryData<string> Stages => [.. All.Keys];

    private static Dictionary<string, Action<CancellationToken>> All { get; } = new()
    {
        ["a whole DXF"] = c => OutlineReader.Read(Dxf, "a.dxf", null, c),
        ["a whole SVG"] = c => OutlineReader.Read(Svg, "a.svg", null, c),
        ["a stream"] = c => OutlineReader.Read(new MemoryStream(Dxf), "a.dxf", null, c),
        ["the tags of a DXF"] = c => DxfReader.Read(Dxf, cancellation: c),
        ["the XML of an SVG"] = c => SvgReader.Read(Svg, "a.svg", null, c),
        ["healing"] = c =>
            Healer.Heal(new([Path(Loop.Circle(default, 9))], "mm", []), "a", OutlineOptions.Default, PieceBudget.AnyFile, c),
        ["measuring"] = c => OutlineMeasures.Measure(Outline.FromRegion("a", Region.FromLoops([Loop.Circle(default, 9)])), c),
        ["the report"] = c => OutlineReport.Create(Outline.FromRegion("a", Region.FromLoops([Loop.Circle(default, 9)])), c),
    };

    [Theory]
    [MemberData(nameof(Stages))]
    public void A_stage_that_is_stopped_says_so(string stage) =>
        Assert.ThrowsAny<OperationCanceledException>(() => All[stage](Stopped));

    [Theory]
    [MemberData(nameof(Stages))]
    public void A_stage_that_is_not_stopped_goes_to_its_end(string stage) => All[stage](CancellationToken.None);

    [Fact]
    public void A_drawing_is_given_up_in_the_middle_of_its_healing()
    {
        using var source = new CancellationTokenSource();
        DrawnPath[] paths =
            [Path(Loop.Circle(default, 9)),
                Path(Loop.Circle(new(30, 0), 9)) with { Curves = [new Stopping(source), new LineCurve(new(1, 0), default)] }];

        Assert.ThrowsAny<OperationCanceledException>(() =>
            Healer.Heal(new([.. paths], "mm", []), "a", OutlineOptions.Default, PieceBudget.AnyFile, source.Token));
    }

    private static DrawnPath Path(Loop loop) => new(
        [.. loop.Segments.Select(s => (Curve)new LineCurve(s.Start, s.Start.MidpointTo(s.End) + new Vec2(0, 1))),
            .. loop.Segments.Select(s => (Curve)new LineCurve(s.Start, s.End))], true, "a test");

    /// <summary>A curve that stops the work as soon as it is read.</summary>
    private sealed record Stopping(CancellationTokenSource Source) : Curve
    {
        public override Vec2 PointAt(double t)
        {
            Source.Cancel();
            return new(t, 0);
        }

        public override Vec2 DerivativeAt(double t) => new(1, 0);

        public override Curve Transformed(Affine map) => this;
    }
}
