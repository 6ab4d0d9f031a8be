using System.Collections.Immutable;
using BuckGen.Design.Bucks;
using BuckGen.Findings;
using BuckGen.Geometry;
using BuckGen.Intake.Healing;
using BuckGen.Settings;

namespace BuckGen.Design.Trimming;

/// <summary>What a jig is made of.</summary>
internal static class JigResult
{
    /// <summary>
    /// Maximum number of layers of a plug-in's jig, of pieces, holes or lines of a layer, and of lines and arcs in all.
    /// </summary>
    private const int MaxLayers = 200, MaxPieces = 2000, MaxSegments = 200_000;

    private const int MaxNameLength = 20;

    /// <summary>The parts, a copy; none when the job has no such jig.</summary>
    /// <exception cref="ForeignResultException">A plug-in's jig returned something that can't be cut.</exception>
    public static ImmutableArray<JigParts> Make(IJig jig, PartShell part, TrimmingSpec spec)
    {
        if (jig.Make(part, spec) is not { } parts) return [];
        if (!ForeignCode.IsForeign(jig)) return [parts];
        var layers = ForeignResult.List(parts.Layers, MaxLayers, "layer", NameFault).Select(Copied).ToImmutableArray();
        if (layers.Sum(l => Loops(l).Sum(loop => (long)loop.Segments.Length)) > MaxSegments)
            throw new ForeignResultException($"it has more than {MaxSegments} lines and arcs");
        if (layers.FirstOrDefault(l => Crosses(l, spec.Stack.Tolerance)) is { } crossed)
            throw new ForeignResultException(
                $"the edges of layer {crossed.Name} {crossed.Number} cross, or run the wrong way round");
        return [new(layers, FindingResult.Validate(parts.Findings))];
    }

    /// <summary>Files are called after the layers, so their names are plain.</summary>
    private static string? NameFault(Layer layer) =>
        layer.Name is not { Length: > 0 and <= MaxNameLength } name || !name.All(char.IsAsciiLetterUpper)
            ? $"must be named in 1 to {MaxNameLength} capital letters A to Z"
            : layer.Number is < 1 or > 99
            ? FormattableString.Invariant($"({name}) has the number {layer.Number}; it must be from 1 to 99")
            : layer.Role is not (LayerRole.Jig or LayerRole.Panel) ? $"({name}) is neither for a jig nor for a panel"
            : !ForeignResult.IsPlace(layer.Bottom) || !ForeignResult.IsPlace(layer.Top)
            || layer.Top <= layer.Bottom ? $"({name}) has no height"
            : StockFault(layer.Stock) is { } stock ? $"({name}) {stock}"
            : null;

    private static string? StockFault(Stock? stock)
    {
        if (stock?.Name is null) return "has no stock";
        try
        {
            stock.Validate();
            return null;
        }
        catch (SpecException fault)
        {
            return $"has a stock that can't be used: {fault.Message}";
        }
    }

    private static Layer Copied(Layer layer) => layer with
    {
        Parts = [.. ValidateList(layer, layer.Parts, "piece", PieceFault).Select(p => Copied(layer, p))],
        SandTo = ValidateList(layer, layer.SandTo, "line", LoopFault),
        GlueUp = ValidateList(layer, layer.GlueUp, "line", LoopFault),
    };

    private static LayerPart Copied(Layer layer, LayerPart part) => part with
    {
        Shape = new(part.Shape.Outer, ValidateList(layer, part.Shape.Holes, "hole", LoopFault)),
        Dowels = ValidateList(layer, part.Dowels, "dowel hole", d => HoleFault(d.Centre, d.Diameter)),
        Vents = ValidateList(layer, part.Vents, "vent", v => HoleFault(v.Centre, v.Diameter)),
        Label = part.Label is { } label
            ? label with
            {
                Strokes = [
                .. ValidateList(layer, label.Strokes, "stroke", s => s.Vertices.IsDefaultOrEmpty ? "is empty" : null)
                    .Select(s =>
                        s with { Vertices = ValidateList(layer, s.Vertices, "corner",
                            v => HoleFault(new(v.X, v.Y), Math.Abs(v.Bulge))) })]
            } : null,
    };

    private static ImmutableArray<T> ValidateList<T>(Layer layer, ImmutableArray<T> given, string what, Func<T, string?> fault)
    {
        try
        {
            return ForeignResult.List(given, MaxPieces, what, fault);
        }
        catch (ForeignResultException wrong)
        {
            throw new ForeignResultException(FormattableString.Invariant($"layer {layer.Name} {layer.Number}: {wrong.Message}"));
        }
    }

    private static string? PieceFault(LayerPart part) =>
        ForeignResult.WordsFault(part.Letter, MaxNameLength) is { } letter ? $"has a letter that {letter}"
        : part.Shape?.Outer is not { } outer ? "has no shape"
        : part.Label is { Text: null } ? "has a label without text"
        : LoopFault(outer) is { } fault ? $"has an edge that {fault}" : null;

    private static string? LoopFault(Loop loop) =>
        ForeignResult.IsPlace(loop.Bounds.MinX) && ForeignResult.IsPlace(loop.Bounds.MinY)
            && ForeignResult.IsPlace(loop.Bounds.MaxX) && ForeignResult.IsPlace(loop.Bounds.MaxY)
        ? null
        : "reaches farther than 1 km";

    private static string? HoleFault(Vec2 centre, double diameter) =>
        ForeignResult.IsPlace(centre.X) && ForeignResult.IsPlace(centre.Y) && diameter >= 0
            && ForeignResult.IsPlace(diameter) ? null : "is not a place within 1 km, or has no size";

    private static IEnumerable<Loop> Loops(Layer layer) => layer.Parts.SelectMany(p => p.Shape.Loops);

    /// <summary>True when edges cross, or when the pieces are not those that their edges enclose.</summary>
    private static bool Crosses(Layer layer, Tolerance tolerance)
    {
        ImmutableArray<Loop> loops = [.. Loops(layer)];
        if (layer.Parts.Any(p => p.Shape.Outer.SignedArea <= 0 || p.Shape.Holes.Any(h => h.SignedArea >= 0))) return true;
        var search = CrossingSearch.Run(loops, tolerance, CancellationToken.None);
        return search.Entangled || !search.Crossings.IsEmpty
            || Math.Abs(Region.FromLoops(loops).Area - layer.Region.Area) > tolerance.Chord * layer.Region.Perimeter;
    }
}
