using BuckGen.Geometry;
using BuckGen.Geometry.Lettering;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Bucks;

/// <summary>Finds room for the lettering of a piece: inside the wood and clear of every line and hole.</summary>
internal static class LabelPlacement
{
    /// <summary>Minimum clear space round the lettering, mm.</summary>
    public const double Clearance = 1;

    /// <summary>Clear space that is tried first, mm.</summary>
    private const double Comfortable = 3;

    /// <summary>Minimum height of lettering that is still read after sanding, mm (common practice, no source).</summary>
    public const double MinHeight = 2.5;

    /// <summary>From one size of letters to the next that is tried.</summary>
    private const double Shrinking = 0.75;

    /// <summary>The lettering in the largest size that fits, nearest to the middle of the preferred place.</summary>
    /// <param name="text">The lettering.</param>
    /// <param name="height">Wanted height of the letters, mm.</param>
    /// <param name="piece">The wood.</param>
    /// <param name="obstacles">Lines and edges the lettering must not touch.</param>
    /// <param name="preferred">Where it is hidden later, under the layer above; empty for anywhere.</param>
    /// <returns>Null when it fits nowhere.</returns>
    public static Label? Place(string text, double height, Island piece, SegmentIndex obstacles, Region preferred)
    {
        var smallest = height;
        while (smallest * Shrinking >= MinHeight) smallest *= Shrinking;
        var minBox = new LabelBox(StrokeText.Width(text, smallest), smallest, Clearance);
        var places =
            new LabelPlaces(piece, obstacles, preferred.IsEmpty ? piece.Outer.Bounds : preferred.Bounds, minBox,
                height / 2 + Comfortable);
        for (var size = height; size >= MinHeight; size *= Shrinking)
        {
            var width = StrokeText.Width(text, size);
            foreach (var (room, upright) in (ReadOnlySpan<(double, bool)>)[(Comfortable, true), (Comfortable, false),
                (Clearance, true), (Clearance, false)])
            {
                var (w, h) = upright ? (width, size) : (size, width);
                if (places.First(new(w, h, room), upright) is { } centre) return Make(text, size, centre, w, h, upright);
            }
        }

        return null;
    }

    private static Label Make(string text, double size, Vec2 centre, double w, double h, bool upright)
    {
        var turn = upright ? Affine.Identity : Affine.Rotation(Math.PI / 2, new(0, 0)).Then(Affine.Translation(new(size, 0)));
        var map = turn.Then(Affine.Translation(centre - new Vec2(w / 2, h / 2)));
        var strokes = StrokeText.Layout(text, size).Select(s => s.Transformed(map));
        return new(text, [.. strokes], new(centre.X - w / 2, centre.Y - h / 2, centre.X + w / 2, centre.Y + h / 2));
    }
}
