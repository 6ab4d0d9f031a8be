namespace BuckGen.Physics.Membranes;

/// <summary>
/// A plug that pushes the sheet down from above, before gas is let in. The sheet sticks where it touches the plug, until the plug
/// is withdrawn under the full pressure. What lay under it has chilled: it keeps its thickness and goes straight down (common
/// practice, no source).
/// </summary>
/// <param name="Shape">The plug at its lowest, in the coordinates of the tool; it must not reach into the tool.</param>
/// <param name="Stroke">How far it comes down, mm, above 0 to 10 000. It begins above the sheet.</param>
public sealed record Plug(ITool Shape, double Stroke)
{
    internal void Validate()
    {
        ArgumentNullException.ThrowIfNull(Shape);
        Bound.Check(Stroke, double.Epsilon, 10_000, "stroke of the plug", " mm");
    }
}
