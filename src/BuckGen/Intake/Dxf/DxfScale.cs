using System.Globalization;
using BuckGen.Dxf;
using BuckGen.Geometry;
using BuckGen.Intake.Outlines;

namespace BuckGen.Intake.Dxf;

/// <summary>The length of a unit of a DXF drawing, and where it comes from.</summary>
/// <param name="MillimetresPerUnit">The factor to millimetres.</param>
/// <param name="Words">The unit and its origin: "mm ($INSUNITS 4)".</param>
/// <param name="Basis">The source of the unit.</param>
internal sealed record DxfScale(double MillimetresPerUnit, string Words, DxfScale.Origin Basis)
{
    /// <summary>Larger than any board that is cut or sheet that is formed in a workshop, mm.</summary>
    private const double BeyondAnyBoard = 2600;

    /// <summary>The source of a unit.</summary>
    public enum Origin
    {
        /// <summary>The user named it.</summary>
        Asked,

        /// <summary>The file names it.</summary>
        Declared,

        /// <summary>The file names only the family of units, metric or imperial.</summary>
        Family,

        /// <summary>Nothing names it.</summary>
        Assumed,
    }

    /// <summary>The given unit, else the one in the header, else millimetres.</summary>
    public static DxfScale FromDrawing(DxfDrawing drawing, string? asked)
    {
        if (asked is not null) return new(DrawingUnit.MillimetresIn(asked), $"{asked} (as asked)", Origin.Asked);
        if (drawing.InsertionUnits is { } code && DxfUnits.MillimetresPerUnit(code) is { } factor)
            return new(factor, $"{DxfUnits.Name(code)} ($INSUNITS {code})", Origin.Declared);
        return drawing.Measurement switch
        {
            0 => new(25.4, "inches ($MEASUREMENT 0)", Origin.Family),
            1 => new(1, "millimetres ($MEASUREMENT 1)", Origin.Family),
            _ => new(1, "millimetres, assumed", Origin.Assumed),
        };
    }

    /// <summary>The note about an assumed unit, once the size is known.</summary>
    public ReadNote? Note(Bounds bounds)
    {
        if (Basis is Origin.Asked or Origin.Declared) return null;
        var known = Basis == Origin.Family ? "says only whether its unit is metric" : "does not say its unit";
        var other = MillimetresPerUnit == 1 ? (Name: "inches", Factor: 25.4) : (Name: "millimetres", Factor: 1 / 25.4);
        return new("unit-assumed", string.Create(CultureInfo.InvariantCulture,
            $"the file {known}; taken as {(MillimetresPerUnit == 1 ? "millimetres" : "inches")} the drawing is "
            + $"{bounds.Width:0.###} x {bounds.Height:0.###} mm "
            + $"({bounds.Width / 25.4:0.###} x {bounds.Height / 25.4:0.###} in). If it was drawn in {other.Name} it is "
            + $"{bounds.Width * other.Factor:0.###} x {bounds.Height * other.Factor:0.###} mm: name the unit then."));
    }

    /// <summary>Refuses a size that only a wrong unit in the header explains.</summary>
    public void RefuseUnlikelySize(Bounds bounds, string name)
    {
        var largest = Math.Max(bounds.Width, bounds.Height);
        if (Basis == Origin.Asked || MillimetresPerUnit <= 1 || largest <= BeyondAnyBoard) return;
        throw new OutlineException(string.Create(CultureInfo.InvariantCulture,
            $"{name}: by its header the drawing is in {Words} and {bounds.Width:0.#} x {bounds.Height:0.#} mm large, "
            + $"beyond {BeyondAnyBoard} mm. In millimetres it would be {bounds.Width / MillimetresPerUnit:0.###} x "
            + $"{bounds.Height / MillimetresPerUnit:0.###} mm: name the unit to be used"));
    }
}
