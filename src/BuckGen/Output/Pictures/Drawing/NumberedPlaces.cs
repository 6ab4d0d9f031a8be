using System.Collections.Immutable;
using System.Globalization;
using BuckGen.Geometry;

namespace BuckGen.Output.Pictures.Drawing;

/// <summary>Rings round places with a number or letter beside each, where it covers no other.</summary>
internal sealed class NumberedPlaces
{
    private const double Radius = 1.6;

    private readonly List<Bounds> taken = [];
    private readonly ImmutableArray<PictureItem>.Builder items = ImmutableArray.CreateBuilder<PictureItem>();

    /// <summary>What has been drawn so far.</summary>
    public ImmutableArray<PictureItem> Items => items.ToImmutable();

    /// <summary>Draws a ring with its label; in a crowd the ring stands alone.</summary>
    public void Add(Vec2 place, string label, string colour) => items.AddRange(Ring(place, label, colour));

    /// <summary>A ring with its label as a link to its finding.</summary>
    public void AddLink(Vec2 place, string label, string colour, string id, string target, string words) =>
        items.Add(new PictureLink(id, target, words, Ring(place, label, colour)));

    private ImmutableArray<PictureItem> Ring(Vec2 place, string label, string colour)
    {
        var ring = ImmutableArray.CreateBuilder<PictureItem>();
        ring.Add(PictureShape.Circle(place, Radius, new(PictureColours.White, 0.9)));
        ring.Add(PictureShape.Circle(place, Radius, new(colour, 0.45)));
        var (width, height) = (label.Length * PictureText.UsualLetterWidth * TextLines.Height, 0.75 * TextLines.Height);
        for (var turn = 0; turn < 8; turn++)
        {
            var direction = new Vec2(1, 0).Turned((turn + 1) * Math.PI / 4);
            var centre = place + new Vec2(direction.X * (Radius + 0.7 + width / 2), direction.Y * (Radius + 0.7 + height / 2));
            var box = new Bounds(centre.X - width / 2, centre.Y - height / 2, centre.X + width / 2, centre.Y + height / 2)
                .Grown(0.2);
            if (taken.Any(t => t.Intersects(box))) continue;
            taken.Add(box);
            ring.Add(new PictureShape([new(Loop.Rectangle(box).Segments, true)], new(null, 0, PictureColours.White)));
            ring.Add(new PictureText(new(centre.X, centre.Y - height / 2), label, TextLines.Height, TextAlign.Middle, colour));
            break;
        }

        return ring.ToImmutable();
    }

    /// <summary>Keeps a place free of labels.</summary>
    public void Keep(Vec2 place) => taken.Add(Bounds.FromCorners(place, place).Grown(Radius));

    /// <summary>A number as a label.</summary>
    public static string Label(int number) => number.ToString(CultureInfo.InvariantCulture);
}
