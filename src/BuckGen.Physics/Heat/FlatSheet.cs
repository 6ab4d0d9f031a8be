namespace BuckGen.Physics.Heat;

/// <summary>A sheet that is so much wider than thick that heat flows through its thickness only.</summary>
/// <param name="Thickness">Thickness, mm, 0.02 to 200.</param>
/// <param name="Material">Thermal properties of the material.</param>
public sealed record FlatSheet(double Thickness, SheetMaterial Material)
{
    internal void Validate()
    {
        Bound.Check(Thickness, 0.02, 200, "thickness of the sheet", " mm");
        ArgumentNullException.ThrowIfNull(Material);
        Material.Validate();
    }
}
