namespace BuckGen.Physics.Heat;

/// <summary>A sheet so much wider than thick that heat runs only from face to face.</summary>
/// <param name="Thickness">Thickness, mm, 0.02 to 200.</param>
/// <param name="Material">What it is made of.</param>
internal sealed record FlatSheet(double Thickness, SheetMaterial Material)
{
    internal void Validate()
    {
        Bound.Check(Thickness, 0.02, 200, "thickness of the sheet", " mm");
        ArgumentNullException.ThrowIfNull(Material);
        Material.Validate();
    }
}
