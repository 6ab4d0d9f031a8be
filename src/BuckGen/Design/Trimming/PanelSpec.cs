using BuckGen.Design.Bucks;
using BuckGen.Geometry;
using BuckGen.Settings;

namespace BuckGen.Design.Trimming;

/// <summary>The outer edge of a face panel.</summary>
public enum PanelEdge
{
    /// <summary>An upright rectangle, its corners rounded on request.</summary>
    Rectangle,

    /// <summary>The part's own outline, set off.</summary>
    Offset,

    /// <summary>An outline drawn for it.</summary>
    Drawn,
}

/// <summary>The panel the finished part shows through. Lengths in mm.</summary>
/// <param name="Stock">Stock it is cut from.</param>
public sealed record PanelSpec(Stock Stock)
{
    /// <summary>
    /// Room between part and opening on every side; negative for a press fit. Null for what the part needs: half of what its size
    /// may be off, and half of what it grows more than the panel over 30 °C.
    /// </summary>
    public double? Fit { get; init; }

    /// <summary>From the flange to the plane in which the opening must fit.</summary>
    public double Plane { get; init; }

    /// <summary>The outer edge.</summary>
    public PanelEdge Edge { get; init; } = PanelEdge.Rectangle;

    /// <summary>
    /// The drawn outline, in the coordinates of the part's drawing; holes in it are cut too. Only for
    /// <see cref="PanelEdge.Drawn"/>.
    /// </summary>
    public Region? Outline { get; init; }

    /// <summary>From the opening to the outer edge; not for a drawn one.</summary>
    public double Margin { get; init; } = 30;

    /// <summary>Radius of a rectangle's corners.</summary>
    public double CornerRadius { get; init; }

    /// <summary>Diameter of the bit that cuts the opening; 0 for a laser, which makes any corner.</summary>
    public double Bit { get; init; }

    /// <summary>Width of the flange that holds the part behind the panel, from the part's wall.</summary>
    public double Flange { get; init; } = 15;

    internal void Validate()
    {
        Stock.Validate();
        if (Edge == PanelEdge.Drawn && Outline is not { IsEmpty: false }) throw new SpecException("The panel's edge is set to drawn, but no outline is given for it; name its drawing.");
        if (Edge != PanelEdge.Drawn && Outline is not null) throw new SpecException("The panel has a drawn outline, but its edge is not set to drawn; set the edge to drawn or leave the drawing out.");
        if (Fit is { } fit) SpecRange.Require(fit is >= -2 and <= 10, "fit of the panel", fit, " mm", "from -2 to 10 mm");
        SpecRange.Require(Plane is >= 0 and <= 500, "plane of the panel", Plane, " mm", "from 0 to 500 mm above the flange");
        SpecRange.Require(Margin is >= 1 and <= 1000, "margin of the panel", Margin, " mm", "from 1 to 1000 mm");
        SpecRange.Require(CornerRadius is >= 0 and <= 500, "corner radius of the panel", CornerRadius, " mm", "from 0 to 500 mm");
        SpecRange.Require(Bit is >= 0 and <= 50, "bit for the panel", Bit, " mm", "from 0 to 50 mm");
        SpecRange.Require(Flange is >= 0 and <= 200, "flange behind the panel", Flange, " mm", "from 0 to 200 mm");
    }
}
