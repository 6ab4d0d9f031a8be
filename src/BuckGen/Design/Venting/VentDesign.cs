using System.Collections.Immutable;
using BuckGen.Findings;
using BuckGen.Intake.Catalogs;

namespace BuckGen.Design.Venting;

/// <summary>The vents of a buck and why they are as they are.</summary>
/// <param name="Spec">What is wanted.</param>
/// <param name="Sizing">How wide the holes may be.</param>
/// <param name="Diameter">How wide they are, mm.</param>
/// <param name="Spacing">Maximum distance along a wall, mm; less than wanted when the flow needs more vents.</param>
/// <param name="Vents">The vents.</param>
/// <param name="Air">Whether they let the air out in time.</param>
/// <param name="Findings">Places without a vent, holes too wide, air too slow.</param>
public sealed record VentDesign(
    VentSpec Spec, VentSizing Sizing, double Diameter, double Spacing, ImmutableArray<Vent> Vents, VentAir Air,
    ImmutableArray<Finding> Findings)
{
    /// <summary>The drill for the vents, with its diameter: "0.65 mm" or "#72 (0.635 mm)".</summary>
    public string DrillText => DrillSeries.Of(Spec.Drills).Describe(Diameter);

    /// <summary>Force with which the air outside presses on the base, N, at the vacuum of the reservoir.</summary>
    public double BoardForce { get; init; }
}
