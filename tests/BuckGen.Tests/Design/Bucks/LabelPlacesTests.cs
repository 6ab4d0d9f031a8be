using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using BuckGen.Geometry.Lettering;
using BuckGen.Geometry.Tests;
using CsCheck;
using Xunit;

namespace BuckGen.Tests.Design.Bucks;

/// <summary>
/// What is known from one size of letters to the next saves time and changes nothing: the same place as by trying each size at
/// each place.
/// </summary>
[Trait("Tier", "slow")]
public class LabelPlacesTests
{
    private static readonly string[] Texts = ["1A", "12AB", "RING1"];

    private static readonly Gen<(Island Piece, Segment[] Lines)> Pieces =
        Gen.Select(RandomRegion.Star, Gen.Double[0.08, 1.2],
            Gen.Select(Gen.Double[-40, 40], Gen.Double[-40, 40], Gen.Double[0.5, 6]).Array[0, 25]).Select((star, scale, holes) =>
    {
        var piece = star.Transformed(Affine.Scaling(scale, new(0, 0))).Islands[0];
        return (piece,
            (Segment[])[.. piece.Outer.Segments,
                .. holes.SelectMany(h => Loop.Circle(new Vec2(h.Item1, h.Item2) * scale, h.Item3 * scale).Segments)]);
    });

    [Fact]
    public void Letters_stand_where_trying_everything_puts_them() =>
        Gen.Select(Pieces, Gen.Int[0, 2].Select(i => Texts[i]), Gen.Double[3, 12], Gen.Bool)
            .Sample((drawn, text, height, hidden) =>
        {
            var preferred = hidden ? Shapes.RectangleAt(-3, -2, 8, 9) : Region.Empty;
            var label = LabelPlacement.Place(text, height, drawn.Piece, new(drawn.Lines), preferred);
            Assert.Equal(
                Tried(text, height, drawn.Piece, drawn.Lines, preferred.IsEmpty ? drawn.Piece.Outer.Bounds : preferred.Bounds),
                label?.Box);
        }, iter: 150);

    /// <summary>
    /// Largest size first, comfortable room before the least, level before turned; of the places the one nearest to the
    /// middle.
    /// </summary>
    private static Bounds? Tried(string text, double height, Island piece, Segment[] lines, Bounds area)
    {
        for (var size = height; size >= 2.5; size *= 0.75)
        {
            foreach (var (room, level) in ((double, bool)[])[(3, true), (3, false), (1, true), (1, false)])
            {
                var width = StrokeText.Width(text, size);
                var (w, h) = level ? (width, size) : (size, width);
                var places =
                    from i in Enumerable.Range(0, 41)
                    from j in Enumerable.Range(0, 41)
                    let p = new Vec2(area.MinX + area.Width * i / 40, area.MinY + area.Height * j / 40)
                    orderby Math.Round((p - area.Centre).LengthSquared, 6), j, i
                    select new Bounds(p.X - w / 2, p.Y - h / 2, p.X + w / 2, p.Y + h / 2);
                foreach (var box in places)
                    if (!lines.Any(s => s.Enters(box.Grown(room))) && piece.Contains(box.Centre)) return box;
            }
        }

        return null;
    }
}
