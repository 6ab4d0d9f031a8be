using BuckGen.Geometry;

namespace BuckGen.Physics.Tests.Membranes;

/// <summary>Outlines as signed distances in the plane, mm, negative inside.</summary>
internal static class Plans
{
    /// <summary>
    /// A polygon of one or more loops, inside by the even-odd rule, grown by a radius: its convex corners become round.
    /// </summary>
    public static Func<Vec2, double> Polygon(double radius, params Vec2[][] loops) => p =>
    {
        var (inside, square) = (false, double.PositiveInfinity);
        foreach (var loop in loops)
        {
            for (var i = 0; i < loop.Length; i++)
            {
                var (a, b) = (loop[i], loop[(i + 1) % loop.Length]);
                var along = b - a;
                var near = a + along * Math.Clamp((p - a).Dot(along) / along.LengthSquared, 0, 1);
                square = Math.Min(square, (p - near).LengthSquared);
                if (a.Y > p.Y != b.Y > p.Y && p.X < a.X + (p.Y - a.Y) / (b.Y - a.Y) * along.X) inside = !inside;
            }
        }
        return (inside ? -1 : 1) * Math.Sqrt(square) - radius;
    };

    /// <summary>A rectangle about a place, with round corners.</summary>
    public static Func<Vec2, double> Rectangle(Vec2 middle, double halfX, double halfY, double radius) => Polygon(radius,
        [middle + new Vec2(-halfX + radius, -halfY + radius), middle + new Vec2(halfX - radius, -halfY + radius),
         middle + new Vec2(halfX - radius, halfY - radius), middle + new Vec2(-halfX + radius, halfY - radius)]);

    /// <summary>All of several plans.</summary>
    public static Func<Vec2, double> All(params Func<Vec2, double>[] plans) => p => plans.Min(plan => plan(p));

    /// <summary>A letter, about 100 mm high and 80 mm wide about the origin; its convex corners have a radius.</summary>
    public static Func<Vec2, double> Letter(char letter, double radius)
    {
        const double h = 50, w = 40, bar = 28;
        return letter switch
        {
            'L' => Loop(-w, -h, w, -h, w, -h + bar, -w + bar, -h + bar, -w + bar, h, -w, h),
            'T' => Loop(-w, h - bar, -bar / 2, h - bar, -bar / 2, -h, bar / 2, -h, bar / 2, h - bar, w, h - bar, w, h, -w, h),
            'U' => Loop(-w, -h, w, -h, w, h, w - bar, h, w - bar, -h + bar, -w + bar, -h + bar, -w + bar, h, -w, h),
            'O' => p =>
            Math.Max(Rectangle(new(0, 0), w, h, Math.Max(radius, 1))(p),
            -Rectangle(new(0, 0), w - bar, h - bar, Math.Max(radius, 1))(p)),
            _ => throw new ArgumentOutOfRangeException(nameof(letter)),
        };

        Func<Vec2, double> Loop(params double[] xy) =>
            Polygon(radius,
            Inset([.. Enumerable.Range(0, xy.Length / 2).Select(i => new Vec2(xy[2 * i], xy[2 * i + 1]))], radius));
    }

    /// <summary>A star of some points about the origin.</summary>
    public static Func<Vec2, double> Star(int points, double outer, double inner, double radius) => Polygon(radius,
        [.. Enumerable.Range(0, 2 * points)
        .Select(i => new Vec2(0, i % 2 == 0 ? outer - 2 * radius : inner - radius).Turned(Math.PI * i / points))]);

    /// <summary>A smooth outline about the origin whose waves follow from a seed.</summary>
    public static Func<Vec2, double> Blob(int seed, double radius)
    {
        var random = new Random(seed);
        (double Size, double Phase)[] waves =
            [.. Enumerable.Range(2, 5).Select(k => (0.35 / k * random.NextDouble(), 2 * Math.PI * random.NextDouble()))];
        return Polygon(0, [.. Enumerable.Range(0, 180).Select(i =>
        {
            var angle = 2 * Math.PI * i / 180;
            return new Vec2(radius * (1 + waves.Select((w, k) => w.Size * Math.Cos((k + 2) * angle + w.Phase)).Sum()), 0)
                .Turned(angle);
        })]);
    }

    /// <summary>A loop of level and upright sides, counter-clockwise, moved inwards.</summary>
    private static Vec2[] Inset(Vec2[] loop, double by) => [.. loop.Select((p, i) =>
    {
        var (before, after) = (p - loop[(i + loop.Length - 1) % loop.Length], loop[(i + 1) % loop.Length] - p);
        return p + (new Vec2(-before.Y, before.X) * (1 / before.Length) + new Vec2(-after.Y, after.X) * (1 / after.Length)) * by;
    })];
}
