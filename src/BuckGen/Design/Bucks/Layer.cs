using System.Collections.Immutable;
using BuckGen.Geometry;
using BuckGen.Geometry.Lettering;

namespace BuckGen.Design.Bucks;

/// <summary>What a layer is for.</summary>
public enum LayerRole
{
    /// <summary>Part of the drafted wall.</summary>
    Wall,

    /// <summary>A plate under the stack.</summary>
    Base,

    /// <summary>What keeps the base plate off the former's platen and lets the air through.</summary>
    Plenum,

    /// <summary>Part of a jig; its heights are measured from the jig's own bottom.</summary>
    Jig,

    /// <summary>A face panel, or a piece that goes into one.</summary>
    Panel,
}

/// <summary>A hole for a dowel.</summary>
/// <param name="Centre">Its centre.</param>
/// <param name="Diameter">Diameter of the hole, mm.</param>
public sealed record DowelHole(Vec2 Centre, double Diameter);

/// <summary>A hole through which air leaves.</summary>
/// <param name="Centre">Its centre.</param>
/// <param name="Diameter">Diameter, mm.</param>
/// <param name="IsBore">True for a relief bore, false for the narrow hole at the surface.</param>
public sealed record VentHole(Vec2 Centre, double Diameter, bool IsBore);

/// <summary>Lettering on a part.</summary>
/// <param name="Text">The layer's number and the island's letter: "3A".</param>
/// <param name="Strokes">The pen strokes, in the design's coordinates.</param>
/// <param name="Box">The rectangle the lettering stands in.</param>
public sealed record Label(string Text, ImmutableArray<Stroke> Strokes, Bounds Box)
{
    /// <summary>The same lettering, to be read from the back.</summary>
    internal Label FromBack()
    {
        var turn = Affine.Reflection(Box.Centre, new(0, 1));
        return this with { Strokes = [.. Strokes.Select(s => s.Transformed(turn))] };
    }
}

/// <summary>One separate piece of wood of a layer.</summary>
/// <param name="Letter">The island's letter, the same in every layer it reaches.</param>
/// <param name="Shape">What is cut out of the board, nominal size, without dowel holes.</param>
/// <param name="Dowels">Dowel holes through this piece.</param>
/// <param name="Vents">Vents and relief bores through this piece.</param>
/// <param name="Label">Its lettering; null when it does not fit, or would show on the part.</param>
public sealed record LayerPart(
    string Letter, Island Shape, ImmutableArray<DowelHole> Dowels, ImmutableArray<VentHole> Vents, Label? Label)
{
    /// <summary>True when nothing lies on it: the sheet comes down on its top face, which carries no lettering.</summary>
    public bool IsTop { get; init; }

    /// <summary>Further lettering and marks.</summary>
    public ImmutableArray<Label> Marks { get; init; } = [];

    /// <summary>All that is lettered and marked on it.</summary>
    internal IEnumerable<Stroke> Strokes => (Label?.Strokes ?? []).Concat(Marks.SelectMany(m => m.Strokes));
}

/// <summary>One layer of the stack: straight walls, cut from one board.</summary>
/// <param name="Number">1 for the lowest.</param>
/// <param name="Role">What it is for.</param>
/// <param name="Stock">The stock it is cut from.</param>
/// <param name="Bottom">Height of its lower face, mm above the bottom of the stack.</param>
/// <param name="Top">Height of its upper face, mm.</param>
/// <param name="Parts">Its separate pieces.</param>
/// <param name="SandTo">Lines on the top face down to which the step is sanded; empty when nothing is sanded.</param>
/// <param name="GlueUp">
/// Lines on the top face round the footprint of the layer above, as far as the edge or a sand-to line does not already show it.
/// </param>
public sealed record Layer(
    int Number, LayerRole Role, Stock Stock, double Bottom, double Top,
    ImmutableArray<LayerPart> Parts, ImmutableArray<Loop> SandTo, ImmutableArray<Loop> GlueUp)
{
    /// <summary>Thickness, mm.</summary>
    public double Thickness => Top - Bottom;

    /// <summary>The name of one of its pieces: "3A" in the buck, "RING1" in a jig.</summary>
    internal string NameOf(LayerPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return Name.Length == 0 ? FormattableString.Invariant($"{Number}{part.Letter}")
            : FormattableString.Invariant($"{part.Letter}{Number}");
    }

    /// <summary>What it is called before its number, such as "RING"; empty for the layers of the buck.</summary>
    public string Name { get; init; } = "";

    /// <summary>
    /// True when its marks belong on its back: its files show it from there, so that it is cut with its face down.
    /// </summary>
    public bool MarkedOnBack { get; init; }

    /// <summary>From the view from above to that from the back: mirrored left and right, within the same bounds.</summary>
    internal Affine ToBack => Affine.Reflection(Region.Bounds.Centre, new(0, 1));

    /// <summary>All pieces together.</summary>
    public Region Region => new([.. Parts.Select(p => p.Shape)]);
}
