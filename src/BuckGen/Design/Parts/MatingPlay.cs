using BuckGen.Design.Trimming;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Design.Parts;

/// <summary>The play between the walls of a part and its lid. Lengths in mm.</summary>
/// <param name="Fit">How they mate.</param>
/// <param name="Skirt">How far their walls overlap.</param>
/// <param name="Wanted">The smallest play that was asked for, on every side.</param>
/// <param name="Min">The smallest play along the whole skirt; below 0 where the walls would pass through each other.</param>
/// <param name="Max">The largest play along the whole skirt.</param>
/// <param name="MinAt">Where the play is smallest, in plan.</param>
/// <param name="MinDepth">How far below the part's mouth the play is smallest.</param>
public sealed record MatingPlay(
    LidFit Fit, double Skirt, double Wanted, double Min, double Max, Vec2 MinAt, double MinDepth)
{
    /// <summary>Heights at which the play is measured; between them it changes evenly.</summary>
    private const int Heights = 9;

    /// <summary>Distance between the places at which the play is measured along the inner outline, mm.</summary>
    private const double Spacing = 2;

    /// <summary>Measures the play from the outlines of both parts.</summary>
    /// <param name="fit">How they mate.</param>
    /// <param name="skirt">How far their walls overlap, mm.</param>
    /// <param name="wanted">The smallest play that was asked for, mm.</param>
    /// <param name="part">The part.</param>
    /// <param name="lid">The lid.</param>
    /// <param name="cancellation">Stops the work.</param>
    internal static MatingPlay? Measure(
        LidFit fit, double skirt, double wanted, MatingPart part, MatingPart lid, CancellationToken cancellation = default)
    {
        MatingPlay? play = null;
        // The boards may leave the lid's wall shorter than the skirt.
        var reach = Math.Min(skirt, fit == LidFit.Over ? lid.Shell.InsideFace : lid.Shell.Depth - lid.Mouth);
        for (var i = 0; i < Heights; i++)
        {
            var below = reach * i / (Heights - 1);
            var (inner, outer) = fit == LidFit.Over
                ? (part.Outside(below), lid.Shell.Inside(lid.Shell.InsideFace - below))
                : (lid.Outside(below), part.Shell.Inside(Math.Min(part.Mouth + below, part.Shell.InsideFace)));
            if (inner.IsEmpty || outer.IsEmpty) continue;
            var (edges, inside) = (new SegmentIndex([.. outer.Segments]), new RegionInterior(outer));
            foreach (var place in inner.Segments.SelectMany(Places))
            {
                cancellation.ThrowIfCancellationRequested();
                var distance = edges.Distance(place) * (inside.Contains(place) ? 1 : -1);
                play = play is null
                    ? new(fit, skirt, wanted, distance, distance, place, below)
                    : play with { Max = Math.Max(play.Max, distance) };
                if (distance < play.Min) play = play with { Min = distance, MinAt = place, MinDepth = below };
            }
        }

        return play;
    }

    private static IEnumerable<Vec2> Places(Segment segment)
    {
        var count = Math.Max(1, (int)Math.Ceiling(segment.Length / Spacing));
        for (var i = 0; i < count; i++) yield return segment.PointAt((double)i / count);
    }
}

/// <summary>One of two parts that mate.</summary>
/// <param name="Shell">The cooled part.</param>
/// <param name="Mouth">Height of the plane in which the two meet, from the plane of its flange, mm.</param>
internal sealed record MatingPart(PartShell Shell, double Mouth)
{
    /// <summary>Its outside below the plane in which the two meet.</summary>
    public Region Outside(double below) => Shell.Outside(Math.Min(Mouth + below, Shell.Depth));
}
