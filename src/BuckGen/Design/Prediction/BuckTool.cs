using BuckGen.Geometry;
using BuckGen.Physics.Membranes;

namespace BuckGen.Design.Prediction;

/// <summary>The buck with its plates on the table of the former, as the tool of the simulation.</summary>
/// <remarks>
/// Wood becomes narrower upward, so every slab can be extended down to the table, and the buck is the union of such pillars. A
/// point beside a slab is nearest to that slab or to a lower one. Between the two outlines of a drafted slab the distance in plan
/// is interpolated, which is exact on straight and on rounded walls. The slope of the wall turns it into a distance in space.
/// </remarks>
internal sealed class BuckTool : ITool
{
    private readonly Pillar[] pillars;
    private readonly double frameHeight;

    /// <param name="slabs">The slabs, lowest first, each on the one before; heights are measured from the table.</param>
    /// <param name="frameHeight">Height of the clamp frame above the table at the end, mm.</param>
    /// <param name="around">The area of the sheet.</param>
    public BuckTool(IEnumerable<WoodSlab> slabs, double frameHeight, Bounds around)
    {
        this.frameHeight = frameHeight;
        var known = new Dictionary<Region, PlanDistance>(ReferenceEqualityComparer.Instance);
        pillars = [.. slabs.Where(s => !s.Upper.IsEmpty && !s.Lower.IsEmpty).Select(s => Pillar.FromSlab(s, DistanceOf))];

        PlanDistance DistanceOf(Region region) => known.TryGetValue(region, out var made)
            ? made
            : known[region] = new(region, around);
    }

    /// <inheritdoc/>
    public double SignedDistance(Vec3 point) => UnionDistance(point, p => p.MinCosine);

    /// <summary>
    /// Distance beside plain walls, mm: exact there, where <see cref="SignedDistance(Vec3)"/> uses the worst corner of a slab; at
    /// sharp corners it may be too large.
    /// </summary>
    public double DistanceFromWalls(Vec3 point) => UnionDistance(point, p => p.MaxCosine);

    private double UnionDistance(Vec3 point, Func<Pillar, double> cosine)
    {
        var (place, height) = (new Vec2(point.X, point.Y), point.Z + frameHeight);
        // The table.
        var nearest = height;
        for (var i = pillars.Length - 1; i >= 0; i--)
        {
            var pillar = pillars[i];
            if (height < pillar.Bottom) continue;
            var above = height - pillar.Top;
            if (above >= nearest) break;
            if (above <= 0) nearest = Math.Min(nearest, Math.Max(above, pillar.SideDistance(place, height) * cosine(pillar)));
            else nearest = Math.Min(nearest, pillar.DistanceAbove(place, above, cosine(pillar)));
        }
        return nearest;
    }

    /// <summary>
    /// A slab with the distances in its two plans, and the cosines of its draft at the place where the draft is largest and where
    /// it is smallest.
    /// </summary>
    private sealed record Pillar(
        double Bottom, double Top, PlanDistance Lower, PlanDistance Upper, double MinCosine, double MaxCosine)
    {
        public static Pillar FromSlab(WoodSlab slab, Func<Region, PlanDistance> distanceOf)
        {
            var (lower, upper) = (distanceOf(slab.Lower), distanceOf(slab.Upper));
            if (lower == upper) return new(slab.Bottom, slab.Top, lower, upper, 1, 1);
            // A sharp corner shifts farther than the wall. No point of the lower edge is farther from the upper one than the
            // worst of its ends and middles.
            var farthest = slab.Lower.Segments.Max(s => Math.Max(upper.At(s.Start), upper.At(s.PointAt(0.5))));
            var nearest = slab.Lower.Segments.Min(s => Math.Max(0, upper.At(s.PointAt(0.5))));
            return new(slab.Bottom, slab.Top, lower, upper, CosineOf(farthest), CosineOf(nearest));

            double CosineOf(double move) =>
                (slab.Top - slab.Bottom) / Math.Sqrt(move * move + (slab.Top - slab.Bottom) * (slab.Top - slab.Bottom));
        }

        /// <summary>Distance in plan of a point between bottom and top.</summary>
        public double SideDistance(Vec2 place, double height)
        {
            var low = Lower.At(place);
            if (Lower == Upper) return low;
            var up = (height - Bottom) / (Top - Bottom);
            return low + (Upper.At(place) - low) * up;
        }

        /// <summary>Distance of a point above the top.</summary>
        public double DistanceAbove(Vec2 place, double above, double cosine)
        {
            var aside = Math.Max(0, Upper.At(place)) * cosine;
            return Math.Sqrt(aside * aside + above * above);
        }
    }
}

/// <summary>Wood between two heights, with vertical or sloping walls.</summary>
/// <param name="Bottom">Height of its lower face above the table, mm.</param>
/// <param name="Top">Height of its upper face above the table, mm.</param>
/// <param name="Lower">The lower face.</param>
/// <param name="Upper">The upper face.</param>
internal sealed record WoodSlab(double Bottom, double Top, Region Lower, Region Upper);
