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
    public double Plane { get; init; } = PanelSettings.Plane.Value;

    /// <summary>The outer edge.</summary>
    public PanelEdge Edge { get; init; } = PanelSettings.Edge.Default;

    /// <summary>
    /// The drawn outline, in the coordinates of the part's drawing; holes in it are cut too. Only for
    /// <see cref="PanelEdge.Drawn"/>.
    /// </summary>
    public Region? Outline { get; init; }

    /// <summary>From the opening to the outer edge; not for a drawn one.</summary>
    public double Margin { get; init; } = PanelSettings.Margin.Value;

    /// <summary>Radius of a rectangle's corners, less than half of its shorter side.</summary>
    public double CornerRadius { get; init; } = PanelSettings.CornerRadius.Value;

    /// <summary>Diameter of the bit that cuts the opening; 0 for a laser, which makes any corner.</summary>
    public double Bit { get; init; } = PanelSettings.Bit.Value;

    /// <summary>Width of the flange that holds the part behind the panel, from the part's wall.</summary>
    public double Flange { get; init; } = PanelSettings.Flange.Value;

    internal void Validate()
    {
        Stock.Validate();
        if (Edge == PanelEdge.Drawn && Outline is not { IsEmpty: false })
            throw new SpecException("The panel's edge is set to drawn, but no outline is given for it; name its drawing.");
        if (Edge != PanelEdge.Drawn && Outline is not null)
            throw new SpecException(
                "The panel has a drawn outline, but its edge is not set to drawn; set the edge to drawn or leave the "
                + "drawing out.");
        PanelSettings.Fit.Require(Fit);
        PanelSettings.Plane.Require(Plane);
        PanelSettings.Margin.Require(Margin);
        PanelSettings.CornerRadius.Require(CornerRadius);
        PanelSettings.Bit.Require(Bit);
        PanelSettings.Flange.Require(Flange);
    }
}
