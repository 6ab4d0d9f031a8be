using System.Collections.Immutable;

namespace BuckGen.Geometry.Offsetting;

/// <summary>An outline near the origin, where doubles are finest, with what all its offsets share.</summary>
internal sealed class OffsetOutline
{
    /// <param name="region">The region that is offset.</param>
    /// <param name="withoutTinyPieces">True to leave out what is too small for a mitre.</param>
    public OffsetOutline(Region region, bool withoutTinyPieces)
    {
        Centre = region.Bounds.Centre;
        var centred = region.Transformed(Affine.Translation(-Centre));
        Inside = new(centred);
        var (carriers, loops) = (new List<Carrier>(), new List<(int, int)>());
        foreach (var loop in centred.Loops)
        {
            var segments = (withoutTinyPieces ? TinyPieces.Remove(loop) : loop).Segments;
            loops.Add((carriers.Count, segments.Length));
            foreach (var segment in segments) carriers.Add(new(segment));
        }

        (Carriers, Loops) = ([.. carriers], [.. loops]);
        Tree = BoxTree.FromItems(Carriers, c => c.Bounds);
    }

    /// <summary>The middle of the region as it was given.</summary>
    public Vec2 Centre { get; }

    /// <summary>Where the region is.</summary>
    public RegionInterior Inside { get; }

    /// <summary>The pieces of all loops, one loop after the other.</summary>
    public Carrier[] Carriers { get; }

    /// <summary>The number of the first piece of each loop, and how many it has.</summary>
    public ImmutableArray<(int First, int Count)> Loops { get; }

    /// <summary>Finds pieces by their bounds.</summary>
    public BoxTree Tree { get; }
}
