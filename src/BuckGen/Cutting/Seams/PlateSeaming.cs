using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Geometry.Offsetting;

namespace BuckGen.Cutting.Seams;

/// <summary>Cuts the plates of a layer in pieces where they are too large.</summary>
internal static class PlateSeaming
{
    /// <summary>The finding about a plate in which no seam can stand.</summary>
    public const string NoPlaceId = "no-place-for-seam";

    /// <summary>True for what is flat and not part of the drafted wall: a seam does not show on what is formed.</summary>
    public static bool IsPlate(Layer layer) => layer.Role != LayerRole.Wall;

    /// <summary>The layer as it is cut.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="room">Maximum size of a piece; null for no limit.</param>
    /// <param name="spec">The seams; null for none.</param>
    /// <param name="letterHeight">Wanted height of the lettering; 0 for none.</param>
    /// <param name="cancellation">Stops the work.</param>
    public static SeamedLayer Apply(
        Layer layer, Vec2? room, SeamSpec? spec, double letterHeight, CancellationToken cancellation)
    {
        var parts = ImmutableArray.CreateBuilder<NamedPart>();
        var plates = ImmutableArray.CreateBuilder<SeamedPlate>();
        var findings = ImmutableArray.CreateBuilder<Finding>();
        foreach (var part in layer.Parts)
        {
            var (name, bounds) = (layer.NameOf(part), part.Shape.Outer.Bounds);
            if (spec is null || room is not { } size || !IsPlate(layer) || Fits(bounds, size))
            {
                parts.Add(new(name, part));
                continue;
            }

            var (cut, blockage) = PlatePieces.Create(part.Shape, Obstacles(layer, part), size, spec, cancellation);
            if (cut is null)
            {
                parts.Add(new(name, part));
                findings.Add(NoPlace(name, bounds, size, spec, blockage!));
                continue;
            }

            var pieces = cut.Pieces.Select((piece, i) =>
                Piece(layer, part, piece, FormattableString.Invariant($"{name}-{i + 1}"), cut, spec, letterHeight)).ToArray();
            parts.AddRange(pieces);
            plates.Add(new(name, [.. pieces.Select(p => p.Name)], [.. cut.Seams.SelectMany(Seams)]));
            findings.Add(InPieces(name, bounds, layer, plates[^1], spec));
        }

        return new(parts.ToImmutable(), plates.ToImmutable(), findings.ToImmutable());
    }

    private static bool Fits(Bounds part, Vec2 room) =>
        (part.Width <= room.X && part.Height <= room.Y) || (part.Width <= room.Y && part.Height <= room.X);

    /// <summary>What no seam may cut: openings, holes, lettering, and the outlines of what stands on the plate.</summary>
    private static ImmutableArray<Bounds> Obstacles(Layer layer, LayerPart part) =>
    [
        .. part.Shape.Holes.Concat(layer.GlueUp).Concat(layer.SandTo).Select(l => l.Bounds),
        .. part.Dowels.Select(d => Round(d.Centre, d.Diameter)), .. part.Vents.Select(v => Round(v.Centre, v.Diameter)),
        .. part.Marks.Select(m => m.Box),
    ];

    private static Bounds Round(Vec2 centre, double diameter) => Bounds.FromCorners(centre, centre).Grown(diameter / 2);

    private static NamedPart Piece(
        Layer layer, LayerPart whole, Island shape, string name, PlatePieces cut, SeamSpec spec, double letterHeight)
    {
        var piece = whole with
        {
            Shape = shape,
            Dowels = [.. whole.Dowels.Where(d => shape.Contains(d.Centre))],
            Vents = [.. whole.Vents.Where(v => shape.Contains(v.Centre))],
            Marks =
            [
                .. whole.Marks.Where(m => shape.Contains(m.Box.Centre)),
                .. spec.Kind == SeamKind.Dowelled ? cut.Seams.SelectMany(s => DowelMarks(s, shape, spec)) : [],
            ],
        };
        var obstacles = new SegmentIndex(
        [
            .. shape.Loops.Concat(layer.GlueUp).Concat(layer.SandTo).SelectMany(l => l.Segments),
            .. piece.Dowels.SelectMany(d => Loop.Circle(d.Centre, d.Diameter / 2).Segments),
            .. piece.Vents.SelectMany(v => Loop.Circle(v.Centre, v.Diameter / 2).Segments),
            .. piece.Marks.SelectMany(m => Loop.Rectangle(m.Box.Grown(LabelPlacement.Clearance)).Segments),
        ]);
        var label = letterHeight == 0 ? null : LabelPlacement.Place(name, letterHeight, shape, obstacles, Region.Empty);
        return new(name, piece with { Label = layer.MarkedOnBack ? label?.FromBack() : label });
    }

    /// <summary>A line on either side of a dowelled seam, across it, where a dowel goes.</summary>
    private static IEnumerable<Label> DowelMarks(PlacedSeam placed, Island piece, SeamSpec spec)
    {
        var map = PlatePieces.MapOf(placed.IsUpright);
        foreach (var joint in placed.Seam.Stretches.SelectMany(s => s.Joints))
            foreach (var side in (int[])[-1, 1])
            {
                var (from, to) = (map.Apply(new(placed.Seam.At, joint)),
                    map.Apply(new(placed.Seam.At + side * spec.Distance, joint)));
                if (piece.Contains(from.MidpointTo(to)))
                    yield return new("", [new([new(from.X, from.Y, 0), new(to.X, to.Y, 0)])], Bounds.FromCorners(from, to));
            }
    }

    private static IEnumerable<PlateSeam> Seams(PlacedSeam placed)
    {
        // Turned back, what was right of the origin is above it, and up is to the left.
        var sign = placed.IsUpright ? 1 : -1;
        foreach (var stretch in placed.Seam.Stretches)
        {
            var (a, b) = (sign * stretch.From, sign * stretch.To);
            yield return new(placed.IsUpright, placed.Seam.At, Math.Min(a, b), Math.Max(a, b),
                [.. stretch.Joints.Select(j => sign * j).Order()]);
        }
    }

    private static Finding InPieces(string name, Bounds bounds, Layer layer, SeamedPlate plate, SeamSpec spec)
    {
        var keyed = spec.Kind == SeamKind.Keyed;
        var seam = plate.Seams[0];
        var middle = (seam.From + seam.To) / 2;
        return new("plate-in-pieces", Severity.Note,
            FormattableString.Invariant($"Part {name} of {bounds.Width:0.#} x {bounds.Height:0.#} mm is cut in ")
                + FormattableString.Invariant($"{plate.Pieces.Length} pieces with {(keyed ? "keyed" : "dowelled")} seams: ")
                + $"{string.Join(", ", plate.Pieces)}.",
            keyed
                ? "Glue the pieces together on a flat board, and glue a strip under every seam where there is room."
                : FormattableString.Invariant($"Drill for dowels into the middle of the edge of {layer.Thickness:0.##} mm, at ")
                    + "the marks; glue the pieces together on a flat board.")
        {
            Place = seam.IsUpright ? new(seam.At, middle) : new(middle, seam.At),
        };
    }

    private static Finding NoPlace(string name, Bounds bounds, Vec2 room, SeamSpec spec, Blockage blockage)
    {
        var (axis, where) = (blockage.IsUpright ? "x" : "y", blockage.Where);
        var middle = (where.From + where.To) / 2;
        return new(NoPlaceId, Severity.Error,
            FormattableString.Invariant($"Part {name} of {bounds.Width:0.#} x {bounds.Height:0.#} mm is larger than the ")
                + FormattableString.Invariant($"{room.X:0.#} x {room.Y:0.#} mm that can be cut, and no seam can stand between ")
                + FormattableString.Invariant($"{axis} = {where.From:0.#} and {where.To:0.#} mm: nowhere there is ")
                + FormattableString.Invariant($"{spec.Distance:0.##} mm of room to openings, vents, dowels and islands."),
            (where.Needed is { } needed
                ? FormattableString.Invariant($"Use a board and a bed that hold a piece of {needed:0.#} mm, or ")
                : "Use a larger board and bed, or ")
                + (spec.Kind == SeamKind.Keyed ? "less distance or a smaller key in [seams]" : "less distance in [seams]")
                + ", or draw the islands further apart.")
        {
            Place = blockage.IsUpright ? new(middle, bounds.Centre.Y) : new(bounds.Centre.X, middle),
            Value = where.Needed,
            Limit = Math.Max(room.X, room.Y),
        };
    }
}
