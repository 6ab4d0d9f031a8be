using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Cutting.Seams;

/// <summary>Where an upright seam may stand in a plate: clear of all that it must not cut, with room for joints.</summary>
/// <param name="plate">The plate.</param>
/// <param name="obstacles">Rectangles round openings, vents, dowels, lettering and what stands on the plate.</param>
/// <param name="spec">The joints and their distance.</param>
internal sealed class SeamPlaces(Island plate, ImmutableArray<Bounds> obstacles, SeamSpec spec)
{
    /// <summary>From one place that is tried to the next, mm.</summary>
    private const double Step = 0.5;

    /// <summary>Maximum number of places tried.</summary>
    private const int MaxPlaces = 4000;

    /// <summary>From one joint to the next, in widths of a key.</summary>
    private const double Pitch = 4;

    /// <summary>All places, rising, with their seams.</summary>
    public IEnumerable<Seam> All(CancellationToken cancellation)
    {
        var bounds = plate.Outer.Bounds;
        var step = Math.Max(Step, bounds.Width / MaxPlaces);
        for (var i = 1; i * step < bounds.Width; i++)
        {
            cancellation.ThrowIfCancellationRequested();
            if (Find(bounds.MinX + i * step) is { } seam) yield return seam;
        }
    }

    /// <summary>The seam at a place; null when it would cut something or has no room for a joint.</summary>
    public Seam? Find(double at)
    {
        var room = spec.Distance;
        if (obstacles.Any(o => o.MinX < at + room && o.MaxX > at - room)) return null;
        var (left, right) = (at - room, at + spec.Reach + room);
        if (left < plate.Outer.Bounds.MinX || right > plate.Outer.Bounds.MaxX) return null;
        var stretches = PlateCut.Stretches(plate, at);
        if (stretches.IsEmpty) return null;
        (double From, double To)[] taken =
        [
            .. obstacles.Where(o => o.MinX < right && o.MaxX > left).Select(o => (o.MinY, o.MaxY)),
            .. plate.Outer.Segments.Select(s => Within(s, left, right)).OfType<(double, double)>(),
        ];
        var joined = stretches.Select(s => s with { Joints = Joints(s, taken) }).ToImmutableArray();
        return joined.Any(s => s.Joints.IsEmpty) ? null : new(at, joined);
    }

    private ImmutableArray<double> Joints(SeamStretch stretch, (double From, double To)[] taken)
    {
        var half = spec.Kind == SeamKind.Keyed ? KeyOutline.HalfSpan(spec) : spec.Key / 2;
        var joints = ImmutableArray.CreateBuilder<double>();
        var from = stretch.From;
        foreach (var (low, high) in taken.Where(t => t.From < stretch.To && t.To > stretch.From).Append((stretch.To, stretch.To))
            .Order())
        {
            var (first, last) = (from + spec.Distance + half, low - spec.Distance - half);
            if (last >= first)
            {
                var count = 1 + (int)((last - first) / (Pitch * spec.Key));
                joints.AddRange(Enumerable.Range(0, count)
                    .Select(i => first + (last - first) * (count == 1 ? 0.5 : (double)i / (count - 1))));
            }

            from = Math.Max(from, high);
        }

        return joints.ToImmutable();
    }

    /// <summary>The heights of a piece of edge between two upright lines; null when it lies outside.</summary>
    private static (double From, double To)? Within(Segment s, double left, double right)
    {
        var b = s.Bounds;
        if (b.MinX >= right || b.MaxX <= left) return null;
        if (s.IsArc || s.Start.X == s.End.X) return (b.MinY, b.MaxY);
        double At(double x) => s.PointAt(Math.Clamp((x - s.Start.X) / (s.End.X - s.Start.X), 0, 1)).Y;
        return (Math.Min(At(left), At(right)), Math.Max(At(left), At(right)));
    }
}
