namespace BuckGen.Physics.Heat;

/// <summary>A body that the sheet lies on and that takes up its heat: a wooden buck warms where the sheet touches it.</summary>
/// <remarks>
/// Heat flows through the thickness of the body only, as it does through the sheet. Edges and corners of a body lose heat to
/// the side as well, so they stay cooler than computed.
/// </remarks>
/// <param name="Body">Thickness and material of the body.</param>
/// <param name="Contact">Thermal conductance of the contact between body and sheet, W/(m²·K), 1 to 1 000 000.</param>
/// <param name="FarFace">Heat exchange at the face of the body that the sheet does not touch.</param>
public sealed record SheetBacking(FlatSheet Body, double Contact, SheetFace FarFace)
{
    internal void Validate()
    {
        ArgumentNullException.ThrowIfNull(Body);
        ArgumentNullException.ThrowIfNull(FarFace);
        Body.Validate();
        Bound.Check(Contact, 1, 1_000_000, "conductance of the contact", " W/(m2 K)");
        FarFace.Validate();
    }
}
