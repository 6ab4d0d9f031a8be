using BuckGen.Design.Venting;
using BuckGen.Quantities;

namespace BuckGen.Output.Reports;

/// <summary>A vent.</summary>
/// <param name="X">Centre.</param>
/// <param name="Y">Centre.</param>
/// <param name="Diameter">Diameter of the hole at the surface.</param>
/// <param name="Layer">Layer on whose top face it opens.</param>
/// <param name="Reason">"given", "gap", "counter", "corner", "wall" or "pattern".</param>
public sealed record VentReport(double X, double Y, double Diameter, int Layer, string Reason)
{
    internal static VentReport Of(Vent v) =>
        new(Rounded.Of(v.Centre.X), Rounded.Of(v.Centre.Y), Rounded.Of(v.Diameter), v.Layer, Words.Of(v.Reason));
}
