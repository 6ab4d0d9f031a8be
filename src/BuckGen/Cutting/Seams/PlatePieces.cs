using System.Collections.Immutable;
using BuckGen.Geometry;

namespace BuckGen.Cutting.Seams;

/// <summary>A plate cut in pieces.</summary>
/// <param name="Pieces">The pieces, from the left, then from below.</param>
/// <param name="Seams">The seams between them.</param>
/// <param name="Spec">The size of their joints.</param>
internal sealed record PlatePieces(ImmutableArray<Island> Pieces, ImmutableArray<PlacedSeam> Seams, SeamSpec Spec)
{
    /// <summary>Sizes of keys that are tried, over the size wanted: a narrow margin holds only small ones.</summary>
    private static readonly ImmutableArray<double> Sizes = [1, 0.75, 0.5];

    /// <summary>From a plate to the view in which a level seam is upright, and back.</summary>
    private static readonly Affine Turn = new(0, -1, 1, 0, 0, 0), Back = new(0, 1, -1, 0, 0, 0);

    /// <summary>
    /// Cuts a plate in the fewest pieces of which each fits a rectangle, either way round; with keys as large as wanted, or as
    /// have room.
    /// </summary>
    /// <param name="plate">The plate.</param>
    /// <param name="obstacles">What no seam may come near.</param>
    /// <param name="room">Size of the rectangle, mm.</param>
    /// <param name="spec">The seams.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static (PlatePieces? Cut, Blockage? Blockage) Create(
        Island plate, ImmutableArray<Bounds> obstacles, Vec2 room, SeamSpec spec, CancellationToken cancellation)
    {
        var ways = Sizes.Select(s => spec with { Key = spec.Key * s }).Where(s => s.KeyFault is null)
            .SelectMany(s => new[] { room, new(room.Y, room.X) }.Select(r => Fitted(plate, obstacles, r, s, cancellation)))
            .ToArray();
        var cut = ways.Select(w => w.Cut).OfType<PlatePieces>().MinBy(c => c.Pieces.Length);
        return cut is null ? (null, ways[0].Blockage) : (cut, null);
    }

    private static (PlatePieces? Cut, Blockage? Blockage) Fitted(
        Island plate, ImmutableArray<Bounds> obstacles, Vec2 room, SeamSpec spec, CancellationToken cancellation)
    {
        var (across, blocked) = Strips(plate, obstacles, room.X, spec, cancellation);
        if (across is null) return (null, new(true, blocked!));
        var (pieces, seams) = (new List<Island>(), across.Seams.ToList());
        // A level seam keeps clear of the keys of the upright ones.
        ImmutableArray<Bounds> all = [.. obstacles, .. across.Seams.SelectMany(s => s.JointBounds(spec))];
        foreach (var strip in across.Pieces)
        {
            var (along, stop) = Strips(Map(strip, Turn), [.. all.Select(b => Map(b, Turn))], room.Y, spec, cancellation);
            if (along is null) return (null, new(false, stop!));
            // Turned, up is to the right: the lowest piece comes first.
            pieces.AddRange(along.Pieces.Select(p => Map(p, Back)));
            seams.AddRange(along.Seams.Select(s => s with { IsUpright = false }));
        }

        return (new([.. pieces], [.. seams], spec), null);
    }

    private static (PlatePieces? Cut, Blocked? Blocked) Strips(
        Island plate, ImmutableArray<Bounds> obstacles, double room, SeamSpec spec, CancellationToken cancellation)
    {
        var bounds = plate.Outer.Bounds;
        if (bounds.Width <= room) return (new([plate], [], spec), null);
        var places = new SeamPlaces(plate, obstacles, spec).All(cancellation).ToList();
        var (seams, blocked) = SeamChoice.Choose(bounds.MinX, bounds.MaxX, room, spec.Reach, places);
        if (blocked is not null) return (null, blocked);
        var (done, rest) = (new List<Island>(), ImmutableArray.Create(plate));
        foreach (var seam in seams)
        {
            var halves = rest.Select(r => Apart(r, seam, spec)).ToArray();
            done.AddRange(halves.SelectMany(h => h.Left));
            rest = [.. halves.SelectMany(h => h.Right)];
        }

        return (new([.. done, .. rest], [.. seams.Select(s => new PlacedSeam(true, s))], spec), null);
    }

    private static (ImmutableArray<Island> Left, ImmutableArray<Island> Right) Apart(Island plate, Seam seam, SeamSpec spec) =>
        plate.Outer.Bounds.MaxX <= seam.At ? ([plate], [])
        : plate.Outer.Bounds.MinX >= seam.At ? ([], [plate])
        : PlateCut.Apart(plate, seam, spec);

    private static Island Map(Island island, Affine map) =>
        new(island.Outer.Transformed(map), [.. island.Holes.Select(h => h.Transformed(map))]);

    private static Bounds Map(Bounds b, Affine map) =>
        Bounds.FromCorners(map.Apply(b.LowerLeft), map.Apply(new(b.MaxX, b.MaxY)));

    /// <summary>From the view in which a seam is upright to the plate's own coordinates.</summary>
    public static Affine MapOf(bool isUpright) => isUpright ? Affine.Identity : Back;
}

/// <summary>A seam of a plate.</summary>
/// <param name="IsUpright">True when it runs up the drawing, false when it runs across.</param>
/// <param name="Seam">The seam, in the coordinates in which it is upright.</param>
internal sealed record PlacedSeam(bool IsUpright, Seam Seam)
{
    /// <summary>Rectangles round its joints, in the plate's coordinates.</summary>
    public IEnumerable<Bounds> JointBounds(SeamSpec spec) => Seam.Stretches.SelectMany(s => s.Joints).Select(j =>
    {
        var map = PlatePieces.MapOf(IsUpright);
        return Bounds.FromCorners(map.Apply(new(Seam.At - spec.Key / 2, j - spec.Key / 2)),
            map.Apply(new(Seam.At + Math.Max(spec.Reach, spec.Key / 2), j + spec.Key / 2)));
    });
}

/// <summary>Why a plate can't be cut in pieces that fit.</summary>
/// <param name="IsUpright">True when an upright seam is missing.</param>
/// <param name="Where">Where it would have to stand.</param>
internal sealed record Blockage(bool IsUpright, Blocked Where);
