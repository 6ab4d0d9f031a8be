using System.Collections.Immutable;
using BuckGen.Geometry;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;

namespace BuckGen.Tests.Output.Pictures;

/// <summary>A page of a PDF as another program reads it, in millimetres from its lower left corner.</summary>
internal sealed class PrintedPage(Page page)
{
    private const double Millimetre = 25.4 / 72;

    public static ImmutableArray<PrintedPage> Read(ImmutableArray<byte> file)
    {
        using var document = PdfDocument.Open([.. file]);
        return [.. document.GetPages().Select(p => new PrintedPage(p))];
    }

    public Vec2 Size { get; } = new(page.Width * Millimetre, page.Height * Millimetre);

    /// <summary>The words in the order in which they were written.</summary>
    public string Text { get; } = page.Text;

    public ImmutableArray<(string Value, Vec2 Place, double Width, Bounds Box)> Letters { get; } =
        [.. page.Letters
            .Select(l => (l.Value, At(l.StartBaseLine), (l.EndBaseLine.X - l.StartBaseLine.X) * Millimetre, Box(l.BoundingBox)))];

    /// <summary>Paths that are drawn, not clipped by.</summary>
    public ImmutableArray<PdfPath> Paths { get; } = [.. page.Paths.Where(p => !p.IsClipping)];

    /// <summary>What closed curves of eight arcs enclose.</summary>
    public IEnumerable<(Vec2 Centre, double Radius)> Circles =>
        from path in Paths
        where path.Count == 1 && path[0].Commands.OfType<PdfSubpath.CubicBezierCurve>().Count() == 8
            && !path[0].Commands.OfType<PdfSubpath.Line>().Any()
        let box = Corners(path[0])
        where Math.Abs(box.Width - box.Height) < 1e-3
        select (box.Centre, box.Width / 2);

    /// <summary>Boxes that are drawn but not filled.</summary>
    public IEnumerable<Bounds> Boxes =>
        from path in Paths
        where path.IsStroked && !path.IsFilled && path.Count == 1
            && path[0].Commands.OfType<PdfSubpath.Line>().Count() is 3 or 4
        select Corners(path[0]);

    public IEnumerable<(Vec2 From, Vec2 To)> Lines =>
        Paths.SelectMany(p => p).SelectMany(s => s.Commands).OfType<PdfSubpath.Line>().Select(l => (At(l.From), At(l.To)));

    private static Bounds Corners(PdfSubpath path) => path.Commands
        .SelectMany(c =>
            c switch
            {
                PdfSubpath.Line l => [l.From, l.To],
                PdfSubpath.CubicBezierCurve b => [b.StartPoint, b.EndPoint],
                _ =>
                Array.Empty<PdfPoint>()
            })
        .Aggregate(Bounds.Nothing, (b, p) => b.With(At(p)));

    private static Bounds Box(PdfRectangle r) => Bounds.FromCorners(At(r.BottomLeft), At(r.TopRight)).With(At(r.TopLeft));

    private static Vec2 At(PdfPoint p) => new(p.X * Millimetre, p.Y * Millimetre);
}
