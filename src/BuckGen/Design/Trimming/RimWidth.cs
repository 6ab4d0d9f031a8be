using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Trimming;

/// <summary>How wide a flange is at one place.</summary>
/// <param name="Width">From the part to the rim, mm.</param>
/// <param name="Place">The place on the part or on the rim.</param>
public readonly record struct RimWidth(double Width, Vec2 Place)
{
    /// <summary>Distance of the places that are measured along an edge, mm.</summary>
    private const double Step = 0.5;

    /// <summary>Maximum number of places along either edge.</summary>
    private const double MaxPlaces = 20_000;

    /// <summary>
    /// The narrowest place. Places on each edge are measured exactly to the other, so that between two of them at most Step²/8r
    /// is missed on an edge of radius r.
    /// </summary>
    /// <param name="part">The part's outside.</param>
    /// <param name="rim">The rim, with its holes.</param>
    internal static RimWidth Find(Region part, Region rim)
    {
        var narrowest = new RimWidth(double.PositiveInfinity, default);
        foreach (var (from, to) in (ReadOnlySpan<(Region, Region)>)[(part, rim), (rim, part)])
        {
            var (edges, step) = (new SegmentIndex(to.Segments), Math.Max(Step, from.Perimeter / MaxPlaces));
            foreach (var segment in from.Segments)
            {
                var count = (int)Math.Ceiling(segment.Length / step);
                for (var i = 0; i < count; i++)
                {
                    var place = segment.PointAt((double)i / count);
                    // Only what is nearer than the narrowest so far is of interest.
                    var width = double.IsInfinity(narrowest.Width) ? edges.Distance(place)
                        : edges.DistanceWithin(place, narrowest.Width);
                    if (width < narrowest.Width) narrowest = new(width, place);
                }
            }
        }

        return narrowest;
    }
}
