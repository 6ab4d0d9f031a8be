using BuckGen.Design.Bucks;
using BuckGen.Physics.Air;

namespace BuckGen.Design.Venting;

/// <summary>Whether the vents let the air out in time.</summary>
/// <param name="Volume">Air under the sheet, L.</param>
/// <param name="Needed">Vents that would draw it out in the wanted time; null when no number would.</param>
/// <param name="RuledByFlow">True when vents were added for the flow, false when the shape alone needed enough.</param>
/// <param name="DrawDown">How the air leaves through the vents placed.</param>
public sealed record VentAir(double Volume, int? Needed, bool RuledByFlow, DrawDownResult DrawDown)
{
    /// <summary>Length of the narrow hole, mm: the whole surface layer, or what a bore drilled from below leaves of it.</summary>
    internal static double HoleLength(LayerBlank surface, VentSpec spec) =>
        Math.Min(surface.Top - surface.Bottom, spec.FaceThickness);
}
