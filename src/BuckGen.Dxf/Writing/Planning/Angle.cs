using BuckGen.Dxf.Entities;

namespace BuckGen.Dxf.Writing.Planning;

/// <summary>Angles in degrees, brought into one turn.</summary>
internal static class Angle
{
    /// <summary>The same direction from 0 up to, but not including, 360.</summary>
    public static double Normalised(double degrees) => (Math.IEEERemainder(degrees, 360) + 360) % 360;

    /// <summary>How far an arc turns, from 0 up to, but not including, 360.</summary>
    public static double Sweep(DxfArc arc) => Normalised(arc.EndAngle - arc.StartAngle);
}
